package org.tidewright.husbandry.newtank;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.NewTank;
import org.tidewright.twin.forecast.NewTank.Beginning;
import org.tidewright.twin.forecast.NewTank.Seed;
import org.tidewright.twin.forecast.Quantity;

/**
 * The first weeks of a new tank, worked through.
 *
 * @param beginning as ordered
 * @param beside the same with another seed, to compare with
 * @param besideSeed that seed
 * @param slow day it is ready where nitrifiers grow a third slower; infinite for not yet
 * @param quick the same where they grow two fifths faster
 * @param firstDose of ammonium chloride
 * @param laterDose of ammonium chloride, the test dose
 */
public record NewTankStudy(
        NewTankOrder order,
        Beginning beginning,
        Beginning beside,
        Seed besideSeed,
        @Unit("d") double slow,
        @Unit("d") double quick,
        @Unit("kg") double firstDose,
        @Unit("kg") double laterDose,
        List<Milestone> milestones,
        List<Stocking> stockings,
        List<Source> sources) {
    /** Days that are followed. */
    public static final int DAYS = 60;

    private static final double SLOWER = 0.7;
    private static final double FASTER = 1.4;

    /**
     * A day on the way.
     *
     * @param day as ordered; infinite for not within the days followed
     * @param beside the same of the tank compared with
     * @param practice what keepers see with dry rock at 25 to 27 °C; empty for nothing known
     */
    public record Milestone(
            String words, @Unit("d") double day, @Unit("d") double beside, String practice) {}

    /** Works it through on the twin. */
    public static NewTankStudy of(Plan plan, NewTankOrder order) {
        NewTank tank = new NewTank(plan, order.temperature(), order.fish(), order.massOfOne());
        Seed besideSeed = order.seed() == Seed.NONE ? Seed.SOME : Seed.NONE;
        Beginning beginning = begin(tank, order, order.seed());
        Beginning beside = begin(tank, order, besideSeed);
        return new NewTankStudy(
                order,
                beginning,
                beside,
                besideSeed,
                begin(tank.growing(SLOWER), order, order.seed()).ready(),
                begin(tank.growing(FASTER), order, order.seed()).ready(),
                tank.ammoniumChloride(NewTank.FIRST_DOSE),
                tank.ammoniumChloride(order.testDose()),
                milestones(order, beginning, beside),
                stockings(tank, order, beginning),
                NewTankWords.sources());
    }

    private static Beginning begin(NewTank tank, NewTankOrder order, Seed seed) {
        return order.withFish() ? tank.firstFish(seed, DAYS) : tank.fishless(seed, order.testDose(), DAYS);
    }

    private static List<Milestone> milestones(NewTankOrder order, Beginning beginning, Beginning beside) {
        Course one = beginning.course();
        Course other = beside.course();
        List<Milestone> milestones = new ArrayList<>();
        if (order.withFish()) {
            milestones.add(new Milestone(
                    "Ammonia at its highest",
                    Peak.of(one, Quantity.AMMONIA).day(),
                    Peak.of(other, Quantity.AMMONIA).day(),
                    "3–10"));
        }
        milestones.add(new Milestone(
                "Ammonia clear",
                Peak.fallsBelow(one, Quantity.AMMONIA, NewTank.CLEAR),
                Peak.fallsBelow(other, Quantity.AMMONIA, NewTank.CLEAR),
                "10–21"));
        milestones.add(new Milestone(
                "Nitrite at its highest",
                Peak.of(one, Quantity.NITRITE).day(),
                Peak.of(other, Quantity.NITRITE).day(),
                "12–30"));
        milestones.add(new Milestone(
                "Nitrite clear for the first time",
                Peak.fallsBelow(one, Quantity.NITRITE, NewTank.CLEAR),
                Peak.fallsBelow(other, Quantity.NITRITE, NewTank.CLEAR),
                "25–50"));
        milestones.add(new Milestone(
                order.withFish() ? "Both stay clear with the fish in it" : "Ready: two doses cleared within a day",
                beginning.ready(),
                beside.ready(),
                order.withFish() ? "" : "28–56"));
        return milestones;
    }

    private static List<Stocking> stockings(NewTank tank, NewTankOrder order, Beginning beginning) {
        int days = Math.max(DAYS, NewTank.FORTNIGHT * (order.fish() - 1) + 30);
        String all = order.fish() == 1 ? "The fish" : "All " + order.fish() + " at once";
        List<Stocking> stockings = new ArrayList<>();
        var filled = tank.filled(order.seed());
        stockings.add(Stocking.of(all + " on the day it is filled", true, false, tank.stocked(filled, 0, days)));
        if (order.fish() > 1) {
            stockings.add(Stocking.of(
                    "One a fortnight from the day it is filled",
                    false,
                    false,
                    tank.stocked(filled, NewTank.FORTNIGHT, days)));
        }
        if (!order.withFish() && beginning.atReady() != null) {
            stockings.add(Stocking.of(
                    all + " on the day it is ready", true, true, tank.stocked(beginning.atReady(), 0, days)));
            if (order.fish() > 1) {
                stockings.add(Stocking.of(
                        "One a fortnight from the day it is ready",
                        false,
                        true,
                        tank.stocked(beginning.atReady(), NewTank.FORTNIGHT, days)));
            }
        }
        return stockings;
    }

    /** The stocking of that kind; null where it was not worked through. */
    public @Nullable Stocking stocking(boolean atOnce, boolean ripe) {
        return stockings.stream()
                .filter(each -> each.atOnce() == atOnce && each.ripe() == ripe)
                .findFirst()
                .orElse(null);
    }

    /** What to do, and why. */
    public String lead() {
        return NewTankWords.lead(this);
    }

    /** How far the days may be off. */
    public String range() {
        return NewTankWords.range(this);
    }

    /** What to dose, and what that takes from the water; empty where it begins with a fish. */
    public String dosing() {
        return NewTankWords.dosing(this);
    }

    /** Four at once against one a fortnight. */
    public String stockingWords() {
        return NewTankWords.stocking(this);
    }

    /** What to mind. */
    public List<String> cautions() {
        return NewTankWords.cautions(order);
    }
}
