package org.tidewright.twin.system;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.WaterKept;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.nutrient.ElementMass;
import org.tidewright.twin.tank.Water;

/**
 * What is dissolved in the water as it is kept, per volume; where the plan does not say, as in the sea at its salinity,
 * and without nutrients.
 *
 * @param salt kg/m³
 */
record KeptWater(
        @Unit("kg/m^3") double salt,
        @Unit("mol/m^3") double alkalinity,
        @Unit("mol/m^3") double calcium,
        @Unit("mol/m^3") double magnesium,
        @Unit("mol/m^3") double nitrate,
        @Unit("mol/m^3") double nitrite,
        @Unit("mol/m^3") double ammonia,
        @Unit("mol/m^3") double phosphate) {
    /** Molar masses, IUPAC 2021 abridged. */
    static final double CALCIUM_MASS = 40.078e-3;

    static final double MAGNESIUM_MASS = 24.305e-3;
    static final double NITRATE_MASS = 62.004e-3;
    static final double NITRITE_MASS = 46.005e-3;
    static final double PHOSPHATE_MASS = 94.970e-3;

    /** Reference composition at S 35, mol/kg: Millero et al. 2008, Deep-Sea Res. I 55, table 4. */
    private static final double SEA_CALCIUM = 0.0102821;

    private static final double SEA_MAGNESIUM = 0.0528171;
    private static final double SEA_ALKALINITY = 0.0023;
    private static final double SEA_SALT = 35.16504e-3;
    private static final double SEA_SALINITY = 35;

    /** Clean outdoor air; the carbon of freshly mixed and aired water. */
    private static final double CARBON_DIOXIDE_OF_AIR = 423e-6;

    /** The sea diluted or concentrated to a salinity. */
    static KeptWater ofSea(double salinity, double density) {
        double share = salinity / SEA_SALINITY * density;
        return new KeptWater(
                share * SEA_SALT, share * SEA_ALKALINITY, share * SEA_CALCIUM, share * SEA_MAGNESIUM, 0, 0, 0, 0);
    }

    /** The water of a plan. */
    static KeptWater of(WaterKept kept, Water water) {
        KeptWater sea = ofSea(water.salinity(), water.density());
        return new KeptWater(
                sea.salt,
                or(kept.alkalinity(), "mol/m^3", 1, sea.alkalinity),
                or(kept.calcium(), "kg/m^3", CALCIUM_MASS, sea.calcium),
                or(kept.magnesium(), "kg/m^3", MAGNESIUM_MASS, sea.magnesium),
                or(kept.nitrate(), "kg/m^3", NITRATE_MASS, 0),
                or(kept.nitrite(), "kg/m^3", NITRITE_MASS, 0),
                or(kept.ammonia(), "kg/m^3", ElementMass.NITROGEN, 0),
                or(kept.phosphate(), "kg/m^3", PHOSPHATE_MASS, 0));
    }

    private static double or(@Nullable Amount stated, String unit, double perMole, double otherwise) {
        return stated == null ? otherwise : stated.in(unit) / perMole;
    }

    /** Dissolved inorganic carbon at rest with clean air. */
    static @Unit("mol/m^3") double carbonUnderAir(
            double temperature, double salinity, double alkalinity, double density) {
        return carbonUnder(CARBON_DIOXIDE_OF_AIR, temperature, salinity, alkalinity, density);
    }

    /** Dissolved inorganic carbon at rest with air of a partial pressure of carbon dioxide. */
    static @Unit("mol/m^3") double carbonUnder(
            double partialPressure, double temperature, double salinity, double alkalinity, double density) {
        return CarbonateSystem.at(temperature, salinity)
                        .fromAlkalinityAndPartialPressure(alkalinity / density, partialPressure)
                        .inorganicCarbon()
                * density;
    }
}
