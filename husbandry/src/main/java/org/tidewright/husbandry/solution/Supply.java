package org.tidewright.husbandry.solution;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Salt;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.seawater.ions.MajorIon;
import org.tidewright.seawater.unit.Unit;

/** What a solution is dosed for, and how it is counted in a bottle and in a tank. */
public enum Supply {
    /** Moles of charge: meq/mL in the bottle, dKH in the tank. */
    ALKALINITY("alkalinity", Salt::alkalinity, Measure.ALKALINE_STRENGTH, Measure.ALKALINITY_RISE, 1),
    /** mg/mL in the bottle, mg/L in the tank. */
    CALCIUM("calcium", Salt::calcium, Measure.ELEMENT_STRENGTH, Measure.ELEMENT_RISE, MajorIon.CALCIUM.molarMass()),
    /** mg/mL in the bottle, mg/L in the tank. */
    MAGNESIUM(
            "magnesium",
            Salt::magnesium,
            Measure.ELEMENT_STRENGTH,
            Measure.ELEMENT_RISE,
            MajorIon.MAGNESIUM.molarMass()),
    /** mg/mL in the bottle, mg/L in the tank. */
    POTASSIUM(
            "potassium",
            Salt::potassium,
            Measure.ELEMENT_STRENGTH,
            Measure.ELEMENT_RISE,
            MajorIon.POTASSIUM.molarMass()),
    /** mg/mL of NO3 in the bottle, mg/L in the tank; IUPAC standard atomic weights. */
    NITRATE("nitrate", Salt::nitrate, Measure.ELEMENT_STRENGTH, Measure.ELEMENT_RISE, 62.0049e-3),
    /** mg/mL of PO4 in the bottle, mg/L in the tank; IUPAC standard atomic weights. */
    PHOSPHATE("phosphate", Salt::phosphate, Measure.ELEMENT_STRENGTH, Measure.ELEMENT_RISE, 94.9714e-3);

    private final String words;
    private final ToDoubleFunction<Salt> perMole;
    private final Measure inBottle;
    private final Measure inTank;
    private final double perAmount; // coherent unit of both measures in a mole

    Supply(String words, ToDoubleFunction<Salt> perMole, Measure inBottle, Measure inTank, double perAmount) {
        this.words = words;
        this.perMole = perMole;
        this.inBottle = inBottle;
        this.inTank = inTank;
        this.perAmount = perAmount;
    }

    /** What brings a quantity of the water; empty where no solution does. */
    public static Optional<Supply> of(WaterQuantity quantity) {
        return Optional.ofNullable(
                switch (quantity) {
                    case ALKALINITY -> ALKALINITY;
                    case CALCIUM -> CALCIUM;
                    case MAGNESIUM -> MAGNESIUM;
                    case NITRATE -> NITRATE;
                    case PHOSPHATE -> PHOSPHATE;
                    case TEMPERATURE, SALINITY, PH, NITRITE, AMMONIA, OXYGEN -> null;
                });
    }

    public String words() {
        return words;
    }

    /** From a mole of a salt. */
    @Unit("mol/mol")
    public double of(Salt salt) {
        return perMole.applyAsDouble(salt);
    }

    /** A strength of a solution from what is written on bottles: meq/mL, or mg/mL. */
    @Unit("mol/m^3")
    public double fromBottle(@Unit("*") double reading) {
        return reading / (inBottle.unit(UnitSystem.METRIC).factor() * perAmount);
    }

    /** An amount per volume of tank water from what is read there: dKH, or mg/L. */
    @Unit("mol/m^3")
    public double fromTank(@Unit("*") double reading) {
        return reading / (inTank.unit(UnitSystem.METRIC).factor() * perAmount);
    }

    /** From an amount per volume, in moles, to how it is told per volume: of charge as it is, an element as its mass. */
    @Unit("*")
    public double told(@Unit("mol/m^3") double amount) {
        return perAmount * amount;
    }

    /** Moles for what is held of it per volume: the inverse of {@link #told}. */
    @Unit("mol/m^3")
    public double amount(@Unit("*") double told) {
        return told / perAmount;
    }

    /** A use a day as a figure. */
    Figure use(double perDay, double standardError) {
        return figure(
                this == ALKALINITY ? Measure.ALKALINITY_A_DAY : Measure.CONCENTRATION_A_DAY, perDay, standardError);
    }

    /** A strength of the solution as a figure. */
    Figure inBottle(double strength, double standardError) {
        return figure(inBottle, strength, standardError);
    }

    /** A rise in the tank as a figure. */
    Figure inTank(double rise, double standardError) {
        return figure(inTank, rise, standardError);
    }

    private Figure figure(Measure measure, double amount, double standardError) {
        return standardError > 0
                ? Figure.about(measure, perAmount * amount, perAmount * standardError)
                : Figure.exact(measure, perAmount * amount);
    }
}
