package org.tidewright.husbandry.newtank;

import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Rock;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.NewTank;

/**
 * What is asked of a new tank.
 *
 * @param seed nitrifiers brought in on the first day
 * @param withFish whether it begins with a first fish and not with ammonium chloride
 * @param testDose ammonia the test doses bring it to, as nitrogen
 * @param fish how many are to come
 */
public record NewTankOrder(
        NewTank.Seed seed,
        boolean withFish,
        @Unit("mg/L") double testDose,
        @Unit("degC") double temperature,
        int fish,
        @Unit("kg") double massOfOne) {
    private static final int FOUR = 4;
    private static final double USUAL_MASS = 0.01;

    /** The order a page opens with: the rock and the temperature of the plan, and four fish of its mean mass. */
    public static NewTankOrder usual(Plan plan) {
        Rock rock = plan.display().rock();
        NewTank.Seed seed = rock == null
                ? NewTank.Seed.NONE
                : switch (rock.stateOrLive()) {
                    case DRY -> NewTank.Seed.NONE;
                    case SEEDED -> NewTank.Seed.SOME;
                    case LIVE -> NewTank.Seed.RIPE;
                };
        Inhabitants inhabitants = plan.inhabitants();
        int count = 0;
        double mass = 0;
        if (inhabitants != null) {
            for (Inhabitants.Fish each : inhabitants.fish()) {
                count += each.count();
                mass += each.count() * each.massOfOne();
            }
        }
        double one = count == 0 ? USUAL_MASS : Math.min(0.5, Math.max(0.001, Math.round(mass / count * 1e3) / 1e3));
        return new NewTankOrder(
                seed, false, 1, plan.water().temperature().in("degC"), count == 0 ? FOUR : Math.min(FOUR, count), one);
    }
}
