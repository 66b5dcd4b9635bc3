package org.tidewright.husbandry.advice;

import org.tidewright.plan.source.Basis;
import org.tidewright.twin.contract.Parameter;

/**
 * Something a rehearsal had to assume, with the range it was drawn from.
 *
 * @param figure usual value, with the 5th and 95th of 100 draws
 */
public record Assumption(String name, Figure figure, Basis basis, String detail) {
    public static Assumption of(Parameter parameter) {
        Measure measure = switch (parameter.unit()) {
            case "s" -> Measure.DURATION;
            case "W" -> Measure.POWER;
            case "W/K" -> Measure.CONDUCTANCE;
            case "m/s" -> Measure.TRANSFER_VELOCITY;
            case "1/m" -> Measure.SHARE_PER_LENGTH;
            case "1/s" -> Measure.PACE;
            case "mol/s" -> Measure.METABOLISM;
            case "mol/m^3" -> Measure.MOLARITY;
            case "mol/kg" -> Measure.HOLDING;
            case "m^3/(kg*s)" -> Measure.CLEARANCE;
            case "mol/(m^2*s)" -> Measure.LIGHT;
            case "1" -> Measure.FACTOR;
            default ->
                throw new IllegalArgumentException("no measure tells " + parameter.name() + " in " + parameter.unit());
        };
        Figure figure = parameter.low() == parameter.high()
                ? Figure.exact(measure, parameter.usual())
                : Figure.between(measure, parameter.usual(), parameter.low(), parameter.high());
        return new Assumption(parameter.name(), figure, parameter.basis(), parameter.source());
    }
}
