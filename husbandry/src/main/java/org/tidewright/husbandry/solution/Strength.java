package org.tidewright.husbandry.solution;

import org.tidewright.husbandry.advice.Figure;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * How much of one thing a volume of a solution brings.
 *
 * @param value moles per volume of the solution; of charge, where it is alkalinity; below 0 for an acid
 * @param standardError of the value
 */
public record Strength(
        Supply supply,
        @Unit("mol/m^3") double value,
        @Unit("mol/m^3") double standardError) {
    /** Standard error of what labels of bottles say, as a share of it; common practice. */
    @Unit("1")
    public static final double LABEL_ERROR = 0.05;

    public Strength {
        Bounds.finite(value, "mol/m^3", "strength of the solution");
        Bounds.notNegative(standardError, "mol/m^3", "standard error of the strength");
    }

    /** A number read or measured, with its standard error. */
    public record Measured(
            @Unit("*") double value, @Unit("*") double standardError) {
        private double relative() {
            return standardError / Math.abs(value);
        }
    }

    /**
     * From what a known dose did to a known volume of water.
     *
     * <pre>c = d V/v, (s_c/c)^2 = (s_d/d)^2 + (s_V/V)^2 + (s_v/v)^2</pre>
     *
     * @param rise d in the water, mol/m^3: what came after less what was before, with the errors of both readings; what
     *     the animals took in between must be added to it
     * @param water V, m^3
     * @param dose v, m^3
     * @source errors that do not depend on one another, to first order
     */
    public static Strength fromRise(Supply supply, Measured rise, Measured water, Measured dose) {
        Bounds.positive(rise.value(), "mol/m^3", "rise in the water");
        Bounds.positive(water.value(), "m^3", "volume of water");
        Bounds.positive(dose.value(), "m^3", "dose");
        double value = rise.value() * water.value() / dose.value();
        double relative =
                Math.sqrt(Math.pow(rise.relative(), 2) + Math.pow(water.relative(), 2) + Math.pow(dose.relative(), 2));
        return new Strength(supply, value, value * relative);
    }

    /**
     * From a label such as "1 mL raises 100 L by 0.1 dKH".
     *
     * @param rise in the water
     * @param water it speaks of
     * @param dose it speaks of
     */
    public static Strength fromLabel(
            Supply supply, @Unit("mol/m^3") double rise, @Unit("m^3") double water, @Unit("m^3") double dose) {
        return fromRise(supply, new Measured(rise, LABEL_ERROR * rise), new Measured(water, 0), new Measured(dose, 0));
    }

    /** What a dose does to a volume of water, evenly mixed and before anything takes it up. */
    @Unit("mol/m^3")
    public double rise(@Unit("m^3") double dose, @Unit("m^3") double water) {
        Bounds.notNegative(dose, "m^3", "dose");
        Bounds.positive(water, "m^3", "volume of water");
        return value * dose / water;
    }

    /** Volume to dose for a rise in a volume of water, the inverse of {@link #rise}. */
    @Unit("m^3")
    public double doseFor(@Unit("mol/m^3") double rise, @Unit("m^3") double water) {
        Bounds.notNegative(rise, "mol/m^3", "rise in the water");
        Bounds.positive(water, "m^3", "volume of water");
        Bounds.positive(value, "mol/m^3", "strength of the solution");
        return rise * water / value;
    }

    /** As a figure of the bottle. */
    public Figure figure() {
        return supply.inBottle(value, standardError);
    }

    /** What a dose does to a volume of water, as a figure of the tank. */
    public Figure riseFigure(@Unit("m^3") double dose, @Unit("m^3") double water) {
        return supply.inTank(rise(dose, water), standardError * dose / water);
    }
}
