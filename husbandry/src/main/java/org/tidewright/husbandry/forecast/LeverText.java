package org.tidewright.husbandry.forecast;

import org.tidewright.twin.system.Lever;

/** How the values of a lever are written. */
public final class LeverText {
    private LeverText() {}

    /** A unit a keeper may write, for the lever's coherent one. */
    public static String unit(Lever lever) {
        return switch (lever.unit()) {
            case "s" -> "h or min";
            case "kg" -> "g or kg";
            case "m^3/s" -> "mL/d, L/d or L/h";
            case "1/s" -> "/h";
            case "m^2" -> "cm² or m²";
            case "degC" -> "°C or °F";
            case "1" -> "a number";
            default -> lever.unit();
        };
    }
}
