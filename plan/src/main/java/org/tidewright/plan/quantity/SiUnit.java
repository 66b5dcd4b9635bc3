package org.tidewright.plan.quantity;

import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.*;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Unit;

/**
 * A coherent unit the computing modules take, named as in {@link org.tidewright.seawater.unit.Unit}.
 *
 * @param text as in the annotation, {@code "m^3/s"}
 * @param quantity what it measures, in words, for messages
 */
public record SiUnit(String text, String quantity, Unit<?> unit) {
    private static final Map<String, SiUnit> BY_TEXT = Stream.of(
                    new SiUnit("m", "a length", METRE),
                    new SiUnit("m^2", "an area", SQUARE_METRE),
                    new SiUnit("m^3", "a volume", CUBIC_METRE),
                    new SiUnit("kg", "a mass", KILOGRAM),
                    new SiUnit("s", "a time", SECOND),
                    new SiUnit("degC", "a temperature", CELSIUS),
                    new SiUnit("K", "a temperature difference", KELVIN),
                    new SiUnit("W", "a power", WATT),
                    new SiUnit("J", "an energy", JOULE),
                    new SiUnit("W/K", "a heat loss per degree", WATT.divide(KELVIN)),
                    new SiUnit("m^3/s", "a flow", CUBIC_METRE.divide(SECOND)),
                    new SiUnit("m^3/kg", "a volume per mass", CUBIC_METRE.divide(KILOGRAM)),
                    new SiUnit("m/s", "a speed", METRE.divide(SECOND)),
                    new SiUnit("1/s", "a number per time", ONE.divide(SECOND)),
                    new SiUnit("kg/m^3", "a concentration", KILOGRAM.divide(CUBIC_METRE)),
                    new SiUnit("kg/m^2", "a mass per area", KILOGRAM.divide(SQUARE_METRE)),
                    new SiUnit("mol/m^3", "an alkalinity", MOLE.divide(CUBIC_METRE)),
                    new SiUnit(
                            "mol/(m^3*s)",
                            "an alkalinity per time",
                            MOLE.divide(CUBIC_METRE).divide(SECOND)),
                    new SiUnit(
                            "mol/(m^2*s)",
                            "a photon flux",
                            MOLE.divide(SQUARE_METRE).divide(SECOND)),
                    new SiUnit("1", "a number", ONE))
            .collect(Collectors.toUnmodifiableMap(SiUnit::text, unit -> unit));

    public static SiUnit of(String text) {
        SiUnit found = BY_TEXT.get(text);
        if (found == null) {
            throw new IllegalArgumentException("no coherent unit is called " + text);
        }
        return found;
    }

    boolean isDifference() {
        return text.equals("K");
    }

    /** The symbols a plan may use for this quantity, in the table's order. */
    public List<TextUnit> spellings() {
        return TextUnit.all().stream()
                .filter(candidate -> candidate.isCompatibleWith(this))
                .sorted(Comparator.comparing(candidate -> candidate.symbol().isEmpty() ? 1 : 0))
                .toList();
    }
}
