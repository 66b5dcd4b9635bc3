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
 * The fish of a plan taken together. Where it names none, those that may still come are taken for grown ones of ten grams,
 * since nothing is known of them but their mass.
 *
 * @param mass live, of all the plan names
 * @param measures mass, breath and fasting of all, each fish counted by its own mass
 * @param diet what becomes of what they eat
 */
record Shoal(@Unit("kg") double mass, Fish.Shoal measures, Fish.Diet diet) {
    private static final double REFERENCE = 25;

    /** A fish that may come where the plan names none; an estimate. */
    private static final double ORDINARY = 0.010; // kg

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
        return mass > 0
                ? new Shoal(mass, new Fish.Shoal(mass, resting, fasting), diet(growing / resting))
                : new Shoal(0, ordinary(), diet(0));
    }

    private static Fish.Shoal ordinary() {
        return new Fish.Shoal(
                ORDINARY,
                FishRespiration.resting(ORDINARY, REFERENCE),
                Digestion.fasting(ORDINARY, Digestion.FASTING.usual(), REFERENCE));
    }

    /** Food is shared out as breath is: small fish eat more for their mass, and growing ones keep more of it. */
    private static Fish.Diet diet(double growing) {
        return new Fish.Diet(
                Digestion.CARBON_ADULT.towards(Digestion.CARBON_GROWING, growing),
                Digestion.NITROGEN_ADULT.towards(Digestion.NITROGEN_GROWING, growing),
                Digestion.PHOSPHORUS_ADULT.towards(Digestion.PHOSPHORUS_GROWING, growing));
    }

    /** What becomes of the plan's food while its fish are those it names: all is left where there are none. */
    Fish.Diet ofThePlan() {
        return mass > 0 ? diet : NOBODYS;
    }
}
