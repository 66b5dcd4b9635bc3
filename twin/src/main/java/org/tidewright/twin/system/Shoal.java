package org.tidewright.twin.system;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Inhabitants.GrowthStage;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.biota.Digestion;
import org.tidewright.twin.law.biota.Partition;
import org.tidewright.twin.law.gas.FishRespiration;
import org.tidewright.twin.mechanism.biota.Fish;

/**
 * The fish of a plan taken together.
 *
 * @param measures mass, breath and fasting of all, each fish counted by its own mass
 * @param diet what becomes of their food; all is left where there are none
 */
record Shoal(Fish.Shoal measures, Fish.Diet diet) {
    private static final double REFERENCE = 25;
    private static final Partition LEFT = new Partition(0, 0, 0, 1);
    private static final Fish.Diet NOBODYS = new Fish.Diet(LEFT, LEFT, LEFT);

    static Shoal of(@Nullable Inhabitants inhabitants) {
        double mass = 0;
        double resting = 0;
        double growing = 0;
        double fasting = 0;
        if (inhabitants != null) {
            for (Inhabitants.Fish each : inhabitants.fish()) {
                double ofOne = each.massOfOne();
                double breath = each.count() * FishRespiration.resting(ofOne, REFERENCE);
                mass += each.count() * ofOne;
                resting += breath;
                growing += each.stageOrAdult() == GrowthStage.GROWING ? breath : 0;
                fasting += each.count() * Digestion.fasting(ofOne, Digestion.FASTING.usual(), REFERENCE);
            }
        }
        return new Shoal(new Fish.Shoal(mass, resting, fasting), mass > 0 ? diet(growing / resting) : NOBODYS);
    }

    /** Food is shared out as breath is: small fish eat more for their mass, and growing ones keep more of it. */
    private static Fish.Diet diet(double growing) {
        return new Fish.Diet(
                Digestion.CARBON_ADULT.towards(Digestion.CARBON_GROWING, growing),
                Digestion.NITROGEN_ADULT.towards(Digestion.NITROGEN_GROWING, growing),
                Digestion.PHOSPHORUS_ADULT.towards(Digestion.PHOSPHORUS_GROWING, growing));
    }

    /** Live mass of all. */
    @Unit("kg")
    double mass() {
        return measures.mass();
    }
}
