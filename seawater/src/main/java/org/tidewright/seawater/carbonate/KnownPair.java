package org.tidewright.seawater.carbonate;

import org.tidewright.seawater.range.Bounds;

/**
 * The two quantities of a carbonate system that are known, in this order. Fugacity stands for dissolved carbon dioxide
 * and for partial pressure, which are proportional to it.
 */
public enum KnownPair {
    /** Alkalinity and inorganic carbon, both mol/kg. */
    ALKALINITY_CARBON {
        @Override
        void solve(Equilibria e, double first, double second, CarbonateState into) {
            double alkalinity = alkalinity(first);
            double dic = carbon(second);
            into.set(AlkalinityBalance.withCarbon(e, alkalinity, dic), alkalinity, dic);
        }
    },

    /** Alkalinity, mol/kg, and pH on the total scale. */
    ALKALINITY_PH {
        @Override
        void solve(Equilibria e, double first, double second, CarbonateState into) {
            double alkalinity = alkalinity(first);
            double h = hydrogen(second);
            e.balance(h);
            double ofCarbonate = alkalinity - e.otherAlkalinity;
            if (!(ofCarbonate > 0)) {
                throw Bounds.refusal(
                        alkalinity,
                        "mol/kg",
                        "alkalinity",
                        "more than the " + e.otherAlkalinity + " mol/kg that water of pH " + second
                                + " has without any carbon");
            }
            into.set(h, alkalinity, ofCarbonate / e.carbonateCharge(h));
        }
    },

    /** Alkalinity, mol/kg, and fugacity of carbon dioxide, atm. */
    ALKALINITY_FUGACITY {
        @Override
        void solve(Equilibria e, double first, double second, CarbonateState into) {
            double alkalinity = alkalinity(first);
            double co2 = carbonDioxide(e, second);
            double h = AlkalinityBalance.withCarbonDioxide(e, alkalinity, co2);
            into.set(h, alkalinity, co2 / e.carbonDioxideShare(h));
        }
    },

    /** Alkalinity and carbonate ion, both mol/kg; of the two waters that have both, the less caustic. */
    ALKALINITY_CARBONATE {
        @Override
        void solve(Equilibria e, double first, double second, CarbonateState into) {
            double alkalinity = alkalinity(first);
            double carbonate = carbonate(second);
            double h = AlkalinityBalance.withCarbonate(e, alkalinity, carbonate);
            into.set(h, alkalinity, carbonate / e.carbonateShare(h));
        }
    },

    /** Inorganic carbon, mol/kg, and pH on the total scale. */
    CARBON_PH {
        @Override
        void solve(Equilibria e, double first, double second, CarbonateState into) {
            into.setFromCarbon(hydrogen(second), carbon(first));
        }
    },

    /** Inorganic carbon, mol/kg, and fugacity of carbon dioxide, atm. */
    CARBON_FUGACITY {
        @Override
        void solve(Equilibria e, double first, double second, CarbonateState into) {
            double dic = carbon(first);
            double co2 = carbonDioxide(e, second);
            double ions = ionsBesides(co2, dic, "carbon dioxide");
            // dic = co2 (1 + K1/h + K1 K2/h^2)
            double half = co2 * e.k1 / (2 * ions);
            double h = half + Math.sqrt(half * half + co2 * e.k1 * e.k2 / ions);
            into.setFromCarbon(h, dic);
        }
    },

    /** Inorganic carbon and carbonate ion, both mol/kg. */
    CARBON_CARBONATE {
        @Override
        void solve(Equilibria e, double first, double second, CarbonateState into) {
            double dic = carbon(first);
            double carbonate = carbonate(second);
            double others = ionsBesides(carbonate, dic, "carbonate ion");
            // dic = carbonate (1 + h/K2 + h^2/(K1 K2))
            double h = 2 * others * e.k2 / (carbonate * (1 + Math.sqrt(1 + 4 * others * e.k2 / (carbonate * e.k1))));
            into.setFromCarbon(h, dic);
        }
    },

    /** pH on the total scale, and fugacity of carbon dioxide, atm. */
    PH_FUGACITY {
        @Override
        void solve(Equilibria e, double first, double second, CarbonateState into) {
            double h = hydrogen(first);
            into.setFromCarbon(h, carbonDioxide(e, second) / e.carbonDioxideShare(h));
        }
    },

    /** pH on the total scale, and carbonate ion, mol/kg. */
    PH_CARBONATE {
        @Override
        void solve(Equilibria e, double first, double second, CarbonateState into) {
            double h = hydrogen(first);
            into.setFromCarbon(h, carbonate(second) / e.carbonateShare(h));
        }
    },

    /** Fugacity of carbon dioxide, atm, and carbonate ion, mol/kg. */
    FUGACITY_CARBONATE {
        @Override
        void solve(Equilibria e, double first, double second, CarbonateState into) {
            double co2 = carbonDioxide(e, first);
            double carbonate = carbonate(second);
            double h = Math.sqrt(e.k1 * e.k2 * co2 / carbonate);
            into.setFromCarbon(h, carbonate / e.carbonateShare(h));
        }
    };

    /** Finds the state of water of these constants in which both hold. */
    abstract void solve(Equilibria e, double first, double second, CarbonateState into);

    static double alkalinity(double amount) {
        return Bounds.within(amount, "mol/kg", -0.1, 1, "alkalinity", "is it in umol/kg, meq/L or dKH?");
    }

    static double carbon(double amount) {
        return Bounds.within(
                amount, "mol/kg", Double.MIN_NORMAL, 1, "inorganic carbon", "is it 0, or in umol/kg or mg/L?");
    }

    private static double carbonate(double amount) {
        return Bounds.within(amount, "mol/kg", Double.MIN_NORMAL, 1, "carbonate ion", "is it 0, or in umol/kg?");
    }

    private static double hydrogen(double ph) {
        return Math.exp(-Math.log(10) * Bounds.within(ph, "1", 0, 14, "pH"));
    }

    private static double carbonDioxide(Equilibria e, double fugacity) {
        Bounds.within(
                fugacity, "atm", Double.MIN_NORMAL, 10, "fugacity of carbon dioxide", "is it 0, or in uatm or ppm?");
        return e.k0 * fugacity;
    }

    private static double ionsBesides(double part, double dic, String what) {
        if (!(part < dic)) {
            throw Bounds.refusal(
                    part, "mol/kg", what, "less than the inorganic carbon it is part of, " + dic + " mol/kg");
        }
        return dic - part;
    }
}
