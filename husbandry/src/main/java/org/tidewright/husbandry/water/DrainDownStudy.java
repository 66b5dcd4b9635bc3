package org.tidewright.husbandry.water;

import static java.util.Objects.requireNonNull;

import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.rehearsal.PowerCut;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.tank.Place;
import org.tidewright.twin.tank.Plumbing;
import org.tidewright.twin.tank.RunningState;
import org.tidewright.twin.tank.Vessels;

/**
 * A power cut on a plan with a sump: the twin's run, and how much room it leaves.
 *
 * @param cut the plumbing it ran on
 * @param result the run
 * @param roomLeft along the run: water the sump still takes up to its rim; negative once water is on the floor
 * @param doubt one standard error of the room left in the end
 */
public record DrainDownStudy(
        PowerCut cut,
        PowerCut.Result result,
        @Unit("m^3") double[] roomLeft,
        @Unit("m^3") double doubt) {
    /** One standard error of a height taken with a tape, 3 mm; common practice. Counts where the plan states none. */
    public static final double TAPE_ERROR = 0.003;

    /** One standard error of what a skimmer or reactor lets go, as a share; from memory. */
    private static final double GEAR_ERROR = 0.2;

    /** Exponent of the head in the weir's law: a doubt of the flow's coefficient is 2/3 of that in the head. */
    private static final double HEAD_PER_FLOW = 2.0 / 3;

    /** One standard error of the weir's coefficient at thin sheets, as a share: 15 % at 90 of 100; from memory. */
    private static final double WEIR_ERROR = 0.15 / 1.645;

    /** Runs the cut. */
    public static DrainDownStudy of(Plan plan, boolean airHolesClear, boolean checkValveWorks) {
        PowerCut cut = new PowerCut(plan, new Plumbing.Assumptions(airHolesClear, checkValveWorks));
        PowerCut.Result result = cut.everythingStops();
        return new DrainDownStudy(
                cut, result, roomLeft(cut, result.movement()), doubt(plan, cut, airHolesClear, checkValveWorks));
    }

    /** The letter of the source of what a study tells. */
    public static String source(Sources sources) {
        return sources.key(
                "Levels and litres of the power cut",
                Basis.COMPUTED,
                "weir and pipe flow on the plan's geometry; heights ± 3 mm where the plan states no doubt");
    }

    /** Room in the end. */
    public @Unit("m^3") double room() {
        return roomLeft[roomLeft.length - 1];
    }

    /** Height of the rim over the highest water in the sump, in the end. */
    public @Unit("m") double belowRim() {
        double least = Double.POSITIVE_INFINITY;
        for (Vessels.Section section : cut.plumbing().vessels().sections()) {
            double[] level = result.movement().vessel(section.vessel().name()).level();
            least = Math.min(least, section.vessel().rimLevel() - level[level.length - 1]);
        }
        return least;
    }

    /** Room in the sump while all runs, before anything falls back. */
    public @Unit("m^3") double roomWhileRunning() {
        return roomLeft[0];
    }

    /** Water that fell back from above. */
    public @Unit("m^3") double fellBack() {
        return roomLeft[0] - room();
    }

    private static double[] roomLeft(PowerCut cut, WaterMovement movement) {
        double capacity = 0;
        for (Vessels.Section section : cut.plumbing().vessels().sections()) {
            capacity += section.vessel().shape().volume(section.vessel().rimLevel());
        }
        double[] room = new double[movement.time().length];
        for (int i = 0; i < room.length; i++) {
            double inSump = 0;
            double onFloor = 0;
            for (WaterMovement.Vessel vessel : movement.vessels()) {
                if (vessel.place() == Place.SUMP_SECTION) {
                    inSump += vessel.volume()[i];
                } else if (vessel.place() == Place.FLOOR) {
                    onFloor += vessel.volume()[i];
                }
            }
            // A film stands over the rim while water runs over it: on the floor or as good as there.
            room[i] = onFloor > 0 ? -onFloor : Math.max(0, capacity - inSump);
        }
        return room;
    }

    /** Errors of the measured heights and of the weir's head, each through the area it acts on, added in squares. */
    private static double doubt(Plan plan, PowerCut cut, boolean airHolesClear, boolean checkValveWorks) {
        Vessels vessels = cut.plumbing().vessels();
        RunningState running = cut.plumbing().running();
        double displayArea = vessels.display().shape().surface(running.displayLevel());
        double head = HEAD_PER_FLOW * WEIR_ERROR * running.crestHead();
        double crest = error(requireNonNull(plan.overflow()).crest());
        double squares = square(displayArea * head);
        if (checkValveWorks) {
            squares += square(displayArea * crest);
        } else {
            ReturnLine.Outlet outlet =
                    requireNonNull(plan.returnLine()).outlets().get(0);
            boolean hole = airHolesClear && outlet.airHole() != null;
            double air = error(hole ? requireNonNull(outlet.airHole()).height() : outlet.lowerEdge());
            squares += square(displayArea * air) + square(displayArea * crest);
        }
        squares += square(requireNonNull(vessels.box()).shape().surface(running.boxLevel()) * TAPE_ERROR);
        Amount lastLevel = requireNonNull(requireNonNull(plan.sump())
                .sections()
                .get(plan.sump().sections().size() - 1)
                .waterLevel());
        squares += square(vessels.lastSection().vessel().shape().surface(lastLevel.in("m")) * error(lastLevel));
        double gear = plan.gear().stream()
                .mapToDouble(
                        each -> each.holdsBack() == null ? 0 : each.holdsBack().in("m^3"))
                .sum();
        return Math.sqrt(squares + square(GEAR_ERROR * gear));
    }

    private static double error(Amount height) {
        return height.doubt() > 0 ? height.doubtIn("m") : TAPE_ERROR;
    }

    private static double square(double value) {
        return value * value;
    }
}
