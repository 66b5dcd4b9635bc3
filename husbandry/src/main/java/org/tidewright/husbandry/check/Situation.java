package org.tidewright.husbandry.check;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.water.DrainDownStudy;
import org.tidewright.husbandry.water.SystemWater;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.plan.model.Sump;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.hydraulic.SumpCascade;
import org.tidewright.twin.law.hydraulic.SumpSection;
import org.tidewright.twin.rehearsal.PowerCut;
import org.tidewright.twin.tank.RunningState;
import org.tidewright.twin.tank.Vessels;
import org.tidewright.twin.tank.Water;

/** A plan with everything its checks share, each part computed when first asked for. Not for several threads. */
final class Situation {
    /** Room kept under the rim of a sump; common practice. */
    static final double FREEBOARD = 0.030;

    private final Plan plan;
    private final Vessels vessels;
    private final Water water;
    private final RunningState running;
    private @Nullable DrainDownStudy holesClear;
    private @Nullable DrainDownStudy holesBlocked;
    private @Nullable DrainDownStudy checkValveHolds;
    private PowerCut.@Nullable Result restart;
    private PowerCut.@Nullable Result drainsStop;

    Situation(Plan plan) {
        this.plan = plan;
        this.vessels = Vessels.of(plan);
        this.water = Water.of(plan);
        this.running = RunningState.of(plan, vessels, water.viscosity());
    }

    Plan plan() {
        return plan;
    }

    Vessels vessels() {
        return vessels;
    }

    Water water() {
        return water;
    }

    RunningState running() {
        return running;
    }

    Overflow overflow() {
        return requireNonNull(plan.overflow());
    }

    Sump sump() {
        return requireNonNull(plan.sump());
    }

    ReturnLine returnLine() {
        return requireNonNull(plan.returnLine());
    }

    boolean hasAirHoles() {
        return returnLine().outlets().stream().anyMatch(outlet -> outlet.airHole() != null)
                || (plan.refugium() != null && plan.refugium().outlet().airHole() != null);
    }

    DrainDownStudy holesClear() {
        if (holesClear == null) {
            holesClear = DrainDownStudy.of(plan, true, false);
        }
        return holesClear;
    }

    DrainDownStudy holesBlocked() {
        if (!hasAirHoles()) {
            return holesClear();
        }
        if (holesBlocked == null) {
            holesBlocked = DrainDownStudy.of(plan, false, false);
        }
        return holesBlocked;
    }

    DrainDownStudy checkValveHolds() {
        if (checkValveHolds == null) {
            checkValveHolds = DrainDownStudy.of(plan, true, true);
        }
        return checkValveHolds;
    }

    /** The power back after a cut, the full siphon not forming again. */
    PowerCut.Result restart() {
        if (restart == null) {
            restart = holesClear().cut().powerReturns(holesClear().result().end(), false);
        }
        return restart;
    }

    /** Every drain stopped while the pump and the top-off go on. */
    PowerCut.Result drainsStop() {
        if (drainsStop == null) {
            drainsStop = holesClear().cut().drainsStop(plan.topOff() != null);
        }
        return drainsStop;
    }

    /** Room the sump must keep. */
    @Unit("m^3")
    double roomNeeded() {
        if (plan.limits() != null && plan.limits().roomToSpare() != null) {
            return plan.limits().roomToSpare().in("m^3");
        }
        double top = 0;
        for (Vessels.Section section : vessels.sections()) {
            double rim = section.vessel().rimLevel();
            top += section.vessel().shape().volume(rim)
                    - section.vessel().shape().volume(rim - FREEBOARD);
        }
        return top;
    }

    /** The sump's sections as they run. */
    SumpCascade cascade() {
        return cascade(running.sectionLevels());
    }

    /** The highest level of the last section at which what falls back in a study still finds room under the freeboard. */
    @Unit("m")
    OptionalDouble highestRunningLevel(DrainDownStudy study) {
        // Sections that the last one drowns today stand lower when it does.
        return cascade(running.sectionLevelsAt(plan, vessels, 0))
                .highestRunningLevel(
                        study.fellBack(), vessels.lastSection().vessel().rimLevel() - FREEBOARD);
    }

    private SumpCascade cascade(double[] levels) {
        List<SumpSection> sections = new ArrayList<>();
        for (int i = 0; i < vessels.sections().size(); i++) {
            Vessels.Section section = vessels.sections().get(i);
            double rim = section.vessel().rimLevel();
            double level = Math.min(rim, levels[i]);
            sections.add(new SumpSection(
                    section.vessel().shape().surface(level), level, Math.min(rim, section.baffleLevel())));
        }
        return new SumpCascade(sections);
    }

    /** All the water that circulates. */
    @Unit("m^3")
    double systemVolume() {
        return SystemWater.volume(plan);
    }
}
