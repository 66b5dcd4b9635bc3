package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.Bounds;

/**
 * Finds the hydrogen ion concentration at which the charges add up to the given alkalinity.
 *
 * <p>The roots are enclosed beforehand from the extremes every acid can reach, after Munhoven 2013, Geosci. Model Dev. 6,
 * 1367-1388, doi 10.5194/gmd-6-1367-2013, for inorganic carbon, and Munhoven 2021, Geosci. Model Dev. 14, 4225-4240, doi
 * 10.5194/gmd-14-4225-2021, for carbon dioxide and carbonate. Newton's method runs inside the enclosure and halves it
 * (on a logarithmic scale) where a step would leave it, so that it cannot fail: with alkalinity and carbon or carbon
 * dioxide there is always exactly one root.
 */
final class AlkalinityBalance {
    /** Newton's error after a step is below the step squared: relative steps below this end at rounding. */
    private static final double LAST_STEP = 1e-8;

    private AlkalinityBalance() {}

    /** From alkalinity and inorganic carbon. */
    static double withCarbon(Equilibria e, double alkalinity, double dic) {
        double low = waterAlone(e, alkalinity - e.leastOther());
        double high = waterAlone(e, alkalinity - e.mostOther() - 2 * dic);
        double ofCarbonate = roughlyOfCarbonate(e, alkalinity);
        double guess = positiveRoot(ofCarbonate, e.k1 * (ofCarbonate - dic), e.k1 * e.k2 * (ofCarbonate - 2 * dic));
        return enclosed(e, Carbon.ALL, dic, alkalinity, guess, low, high);
    }

    /** The same from a guess near by, which saves steps; the enclosure is kept. */
    static double withCarbonNear(Equilibria e, double alkalinity, double dic, double guess) {
        double low = waterAlone(e, alkalinity - e.leastOther());
        double high = waterAlone(e, alkalinity - e.mostOther() - 2 * dic);
        return enclosed(e, Carbon.ALL, dic, alkalinity, guess, low, high);
    }

    /** From alkalinity and dissolved carbon dioxide. */
    static double withCarbonDioxide(Equilibria e, double alkalinity, double co2) {
        double low = waterAlone(e, alkalinity - e.leastOther());
        // Half of the free hydrogen ion outweighs the term with 1/h^2, the other half those with 1/h and the rest.
        double high = Math.max(
                Math.cbrt(4 * e.totalOverFree * e.k1 * e.k2 * co2),
                positiveRoot(1 / (2 * e.totalOverFree), alkalinity - e.mostOther(), -(e.k1 * co2 + e.kWater)));
        double guess = positiveRoot(roughlyOfCarbonate(e, alkalinity), -e.k1 * co2, -2 * e.k1 * e.k2 * co2);
        return enclosed(e, Carbon.DIOXIDE, co2, alkalinity, guess, low, high);
    }

    /** What of the carbon is given. Each finds the alkalinity of carbonate and its derivative by h. */
    private enum Carbon {
        ALL {
            @Override
            void balance(Equilibria e, double dic, double h) {
                double below = h * h + e.k1 * (h + e.k2);
                double charge = e.k1 * (h + 2 * e.k2) / below;
                e.carbonateAlkalinity = dic * charge;
                e.carbonateSlope = dic * (e.k1 - charge * (2 * h + e.k1)) / below;
            }
        },
        DIOXIDE {
            @Override
            void balance(Equilibria e, double co2, double h) {
                double bicarbonate = e.k1 * co2 / h;
                double carbonate = bicarbonate * e.k2 / h;
                e.carbonateAlkalinity = bicarbonate + 2 * carbonate;
                e.carbonateSlope = -(bicarbonate + 4 * carbonate) / h;
            }
        };

        abstract void balance(Equilibria e, double amount, double h);
    }

    private static double enclosed(
            Equilibria e, Carbon carbon, double amount, double alkalinity, double guess, double least, double most) {
        double low = least;
        double high = most;
        double h = guess > low && guess < high ? guess : Math.sqrt(low * high);
        while (true) {
            e.balance(h);
            carbon.balance(e, amount, h);
            double excess = e.carbonateAlkalinity + e.otherAlkalinity - alkalinity;
            double slope = e.carbonateSlope + e.otherSlope;
            if (excess > 0) {
                low = h;
            } else {
                high = h;
            }
            double next = h - excess / slope;
            if (!(next >= low && next <= high)) {
                next = Math.sqrt(low * high);
            }
            if (Math.abs(next - h) <= LAST_STEP * h) {
                return next;
            }
            h = next;
        }
    }

    /**
     * From alkalinity and carbonate ion: the acid one of the two roots. The other is a caustic solution beyond pH 10
     * whose alkalinity is mostly hydroxide. The balance is convex in h, so Newton's steps from the acid side fall onto
     * the root one after the other without passing it; where the slope turns first, there is none. In water so acid that
     * free hydrogen ion outweighs carbonate the balance falls throughout, and the steps rise onto its only root.
     */
    static double withCarbonate(Equilibria e, double alkalinity, double carbonate) {
        double perHydrogen = carbonate / e.k2 - 1 / e.totalOverFree;
        double left = alkalinity - 2 * carbonate - e.leastOther();
        double direction = perHydrogen > 0 ? 1 : -1;
        double h = direction > 0 ? left / perHydrogen : waterAlone(e, alkalinity - e.leastOther());
        while (h > 0) {
            e.balance(h);
            double excess = carbonate * (2 + h / e.k2) + e.otherAlkalinity - alkalinity;
            double slope = carbonate / e.k2 + e.otherSlope;
            if (!(slope * direction > 0)) {
                break;
            }
            double next = h - excess / slope;
            if (Math.abs(next - h) <= LAST_STEP * h) {
                return next;
            }
            h = next;
        }
        throw tooMuchCarbonate(alkalinity, carbonate);
    }

    private static IllegalArgumentException tooMuchCarbonate(double alkalinity, double carbonate) {
        return Bounds.refusal(
                carbonate,
                "mol/kg",
                "carbonate ion",
                "less, as an alkalinity of " + alkalinity + " mol/kg has no room for it at any pH");
    }

    /** Where hydroxide less free hydrogen ion is so much. */
    private static double waterAlone(Equilibria e, double hydroxideLessHydrogen) {
        return positiveRoot(1 / e.totalOverFree, hydroxideLessHydrogen, -e.kWater);
    }

    /** Leaves a fifth of their most to the other acids: near enough in seawater for three steps to end at rounding. */
    private static double roughlyOfCarbonate(Equilibria e, double alkalinity) {
        return alkalinity - e.mostOther() / 5;
    }

    /** The positive root of a h^2 + b h + c with c < 0 < a: no difference of near numbers is taken. Else anything. */
    private static double positiveRoot(double a, double b, double c) {
        double root = Math.sqrt(b * b - 4 * a * c);
        return b > 0 ? -2 * c / (b + root) : (root - b) / (2 * a);
    }
}
