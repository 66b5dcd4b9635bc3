package org.tidewright.husbandry.note;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.quantity.SiUnit;
import org.tidewright.plan.quantity.TextUnit;
import org.tidewright.seawater.unit.Unit;

/**
 * Writes a line of the journal as {@link NoteText} reads it. Readings stay as they were written; an amount is told in the unit
 * in which its number is roundest, which is how it was most likely written, and in the reader's where there is no telling.
 */
public final class NoteWords {
    private static final MathContext DIGITS = new MathContext(7);
    private static final double TEN_LITRES_A_DAY = 0.010 / 86_400;
    private static final double TEN_LITRES_AN_HOUR = 0.010 / 3600;
    private static final double A_LITRE = 1e-3;
    private static final double A_KILOGRAM = 1;

    private NoteWords() {}

    public static String of(Event event, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        if (event instanceof Event.Reading reading) {
            return reading.quantity().words() + " " + written(reading.written(), reading.unit()) + by(reading.method());
        } else if (event instanceof Event.MethodChecked checked) {
            return checked(checked);
        } else if (event instanceof Event.Dose dose) {
            return "dose " + dose.solution() + " "
                    + (dose.volume() != null
                            ? volume(dose.volume(), us)
                            : mass(Objects.requireNonNull(dose.saltMass()), us));
        } else if (event instanceof Event.WaterChanged change) {
            return "changed " + volume(change.volume(), us);
        } else if (event instanceof Event.Fed fed) {
            return "fed " + mass(fed.mass(), us) + " " + fed.food();
        } else if (event instanceof Event.AnimalMoved moved) {
            Double length = moved.length();
            return moved.move().name().toLowerCase(Locale.ROOT) + " " + moved.count() + " " + moved.animal()
                    + (length == null ? "" : " of " + roundest(length, "m", us, "cm", "in"));
        } else if (event instanceof Event.WorkDone work) {
            return "did " + work.work()
                    + (work.took() == null
                            ? ""
                            : " for " + in((double) work.took().toSeconds(), "s", "min"));
        } else if (event instanceof Event.Observation seen) {
            return "saw " + seen.seen();
        } else if (event instanceof Event.AnimalsChecked checked) {
            return HealthNotes.words(checked);
        } else if (event instanceof Event.Treated treated) {
            return HealthNotes.words(treated, treated.volume() == null ? null : volume(treated.volume(), us));
        } else if (event instanceof Event.Fallow fallow) {
            return HealthNotes.words(fallow);
        }
        return moved((Event.LeverMoved) event, us);
    }

    private static String checked(Event.MethodChecked checked) {
        String error = checked.standardError() > 0 ? " ± " + plain(checked.standardError()) : "";
        return "check " + checked.quantity().words() + by(checked.method()) + " " + plain(checked.shown()) + " for "
                + written(checked.standard(), checked.unit(), error);
    }

    private static String moved(Event.LeverMoved moved, boolean us) {
        String told = switch (moved.unit()) {
            case "1" -> roundest(moved.after(), "1", us, "%", "%");
            case "m^3/s" -> flow(moved.after(), us);
            case "s" -> roundest(moved.after(), "s", us, "h", "h");
            case "degC" -> roundest(moved.after(), "degC", us, "°C", "°F");
            case "kg" -> mass(moved.after(), us);
            case "m^2" -> roundest(moved.after(), "m^2", us, "cm²", "ft²");
            case "1/s" -> roundest(moved.after(), "1/s", us, "/h", "/h");
            default -> plain(moved.after()) + " " + moved.unit();
        };
        return "set " + moved.lever() + " " + told;
    }

    private static String written(@Unit("*") double number, QuantityUnit unit) {
        return written(number, unit, "");
    }

    private static String written(@Unit("*") double number, QuantityUnit unit, String error) {
        return plain(number) + error + (unit.symbol().isEmpty() ? "" : " " + unit.symbol());
    }

    private static String by(@Nullable String method) {
        return method == null ? "" : " by " + method.replace('_', ' ');
    }

    private static String volume(double volume, boolean us) {
        return volume < A_LITRE ? roundest(volume, "m^3", false, "mL", "mL") : roundest(volume, "m^3", us, "L", "gal");
    }

    /** A dose by the day, what drips by the minute, what a pump moves by the hour. */
    private static String flow(double flow, boolean us) {
        if (flow < TEN_LITRES_A_DAY) {
            return roundest(flow, "m^3/s", us, flow < TEN_LITRES_A_DAY / 10 ? "mL/d" : "L/d", "gal/d");
        }
        return flow < TEN_LITRES_AN_HOUR
                ? roundest(flow, "m^3/s", false, "mL/min", "mL/min")
                : roundest(flow, "m^3/s", us, "L/h", "gal/h");
    }

    private static String mass(double mass, boolean us) {
        return roundest(mass, "kg", us, mass < A_KILOGRAM ? "g" : "kg", "oz");
    }

    private static String roundest(double value, String held, boolean us, String metric, String customary) {
        String asMetric = in(value, held, metric);
        String asCustomary = in(value, held, customary);
        boolean metricIsRounder = digits(asMetric) < digits(asCustomary);
        boolean noTelling = digits(asMetric) == digits(asCustomary);
        return metricIsRounder || (noTelling && !us) ? asMetric : asCustomary;
    }

    private static long digits(String told) {
        return told.chars().filter(Character::isDigit).count();
    }

    private static String in(double value, String held, String symbol) {
        TextUnit unit = TextUnit.spelt(symbol, SiUnit.of(held)).orElseThrow();
        return plain(unit.fromSi(value, SiUnit.of(held))) + " " + unit.symbol();
    }

    /** As a keeper writes a number: no exponent, no noise of binary fractions. */
    private static String plain(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number).round(DIGITS);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
