package org.tidewright.husbandry.reef;

import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.carbonate.Calcification;

/**
 * How fast corals grow in this tank over how fast they grow on a reef: skeleton and extension alike.
 *
 * @param factor on the field's rates
 * @param all factor besides on the use of corals and coralline algae together, found from a use that was seen; else 1
 * @param basis the common guess, or whose record the use stands in
 */
public record Captivity(@Unit("1") Ranged factor, @Unit("1") Ranged all, Basis basis) {
    /** The guess where nothing was seen yet. */
    public static final Captivity USUAL = new Captivity(
            new Ranged(Calcification.CAPTIVITY_USUAL, Calcification.CAPTIVITY_LOW, Calcification.CAPTIVITY_HIGH),
            Ranged.exactly(1),
            Basis.COMMON_PRACTICE);

    private static final double NINETY_PER_CENT = 1.645;

    /** Least share of its computed use by which a use that was seen can be told from nothing. */
    private static final double LEAST = 1e-3;

    /**
     * Found from a use that was seen: seen over computed.
     *
     * @param seen alkalinity used by the whole system
     * @param standardError of it
     * @param computed what the areas would use at the usual factor
     * @param basis whose record the use stands in
     */
    public static Captivity fitted(
            @Unit("mol/s") double seen,
            @Unit("mol/s") double standardError,
            @Unit("mol/s") double computed,
            Basis basis) {
        Bounds.positive(computed, "mol/s", "computed use of alkalinity");
        double least = LEAST * computed;
        double usual = Math.max(least, seen);
        Ranged all = new Ranged(
                usual / computed,
                Math.max(least, Math.min(usual, seen - NINETY_PER_CENT * standardError)) / computed,
                Math.max(usual, seen + NINETY_PER_CENT * standardError) / computed);
        return new Captivity(Ranged.exactly(clipped(Calcification.CAPTIVITY_USUAL * all.value())), all, basis);
    }

    /** Extension follows the factor as far as corals can: a use five times too high is not growth alone. */
    private static double clipped(double factor) {
        return Math.max(Calcification.CAPTIVITY_LOW, Math.min(Calcification.CAPTIVITY_HIGH, factor));
    }

    public boolean isFitted() {
        return basis != Basis.COMMON_PRACTICE;
    }

    /** The factor the areas would need to explain the use, not clipped. */
    public @Unit("1") double apparent() {
        return isFitted() ? Calcification.CAPTIVITY_USUAL * all.value() : factor.value();
    }

    /** Whether areas and use disagree beyond what growth in tanks is known to differ. */
    public boolean isStrange() {
        return apparent() < Calcification.CAPTIVITY_LOW || apparent() > Calcification.CAPTIVITY_HIGH;
    }
}
