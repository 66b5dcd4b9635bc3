package org.tidewright.twin.system;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.WaterKept;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Draw;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.law.nutrient.ElementMass;

/**
 * What is dissolved in a water, per volume.
 *
 * @param salt kg/m³
 */
record KeptWater(
        @Unit("1") double salinity,
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

    /** The water of a plan in each draw of what it states with a doubt. */
    @FunctionalInterface
    interface InDraw {
        KeptWater in(Draw draw);
    }

    /** The sea diluted or concentrated to a salinity. */
    static KeptWater ofSea(double salinity, double density) {
        double share = salinity / SEA_SALINITY * density;
        return new KeptWater(
                salinity,
                share * SEA_SALT,
                share * SEA_ALKALINITY,
                share * SEA_CALCIUM,
                share * SEA_MAGNESIUM,
                0,
                0,
                0,
                0);
    }

    /** The water as it is kept; where the plan does not say, as in the sea at its salinity, and without nutrients. */
    static InDraw of(WaterKept kept, double density, Stated stated) {
        Drawn salinity = stated.of("salinity of the water at the start", kept.salinity(), "1");
        Constituents dissolved = new Constituents(stated, draw -> ofSea(salinity.in(draw), density));
        Drawn alkalinity = dissolved.of("alkalinity", kept.alkalinity(), "mol/m^3", 1, KeptWater::alkalinity);
        Drawn calcium = dissolved.of("calcium", kept.calcium(), "kg/m^3", CALCIUM_MASS, KeptWater::calcium);
        Drawn magnesium = dissolved.of("magnesium", kept.magnesium(), "kg/m^3", MAGNESIUM_MASS, KeptWater::magnesium);
        Drawn nitrate = dissolved.of("nitrate", kept.nitrate(), "kg/m^3", NITRATE_MASS, KeptWater::nitrate);
        Drawn nitrite = dissolved.of("nitrite", kept.nitrite(), "kg/m^3", NITRITE_MASS, KeptWater::nitrite);
        Drawn ammonia = dissolved.of("ammonia", kept.ammonia(), "kg/m^3", ElementMass.NITROGEN, KeptWater::ammonia);
        Drawn phosphate = dissolved.of("phosphate", kept.phosphate(), "kg/m^3", PHOSPHATE_MASS, KeptWater::phosphate);
        return draw -> new KeptWater(
                salinity.in(draw),
                ofSea(salinity.in(draw), density).salt,
                alkalinity.in(draw),
                calcium.in(draw),
                magnesium.in(draw),
                nitrate.in(draw),
                nitrite.in(draw),
                ammonia.in(draw),
                phosphate.in(draw));
    }

    /** What the plan states of a water, and the sea for what it does not. */
    private record Constituents(Stated stated, InDraw sea) {
        private interface Read {
            double of(KeptWater water);
        }

        Drawn of(String name, @Nullable Amount amount, String unit, double perMole, Read inTheSea) {
            if (amount == null) {
                return draw -> inTheSea.of(sea.in(draw));
            }
            Drawn mass = stated.of(name + " of the water at the start", amount, unit);
            return draw -> mass.in(draw) / perMole;
        }
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
