package org.tidewright.husbandry.advice;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import org.tidewright.plan.model.UnitSystem;

/**
 * A figure in the reader's units, rounded so that its last digit is one the doubt can reach.
 *
 * @param value the number, {@code "24"}; for "never" the words
 * @param doubt {@code "± 3"} or {@code "(6–9)"}, empty when there is none
 * @param unit symbol, empty for a plain number; stands after value and doubt
 */
public record FigureText(String value, String doubt, String unit) {
    /** Half of the width that holds 90 of 100 draws, in standard errors. */
    private static final double NINETY_PER_CENT = 1.645;

    private static final MathContext THREE_DIGITS = new MathContext(3);
    private static final char NO_BREAK = '\u00a0';
    private static final char THIN_NO_BREAK = '\u202f';
    private static final char MINUS = '\u2212';

    public static FigureText of(Figure figure, UnitSystem system) {
        if (figure.measure() == Measure.DURATION) {
            return duration(figure);
        }
        return in(figure, figure.measure().unit(system));
    }

    /** On one line, {@code 24 ± 3 L}, with no-break spaces. */
    public String line() {
        StringBuilder text = new StringBuilder(value);
        boolean range = doubt.startsWith("(");
        if (!doubt.isEmpty() && !range) {
            text.append(NO_BREAK).append(doubt);
        }
        if (!unit.isEmpty()) {
            text.append(NO_BREAK).append(unit);
        }
        if (range) {
            text.append(NO_BREAK).append(doubt);
        }
        return text.toString();
    }

    private static FigureText in(Figure figure, Measure.Unit unit) {
        if (Double.isInfinite(figure.value())) {
            return new FigureText("never", "", "");
        }
        double shown = unit.shown(figure.value());
        if (figure.doubt() instanceof Doubt.StandardError error) {
            double size = Math.abs(error.size() * unit.factor());
            int decimals = decimalsFor(size, unit.decimals());
            double least = Math.pow(10, -decimals);
            return new FigureText(
                    number(shown, decimals), "±" + NO_BREAK + number(Math.max(size, least), decimals), unit.symbol());
        } else if (figure.doubt() instanceof Doubt.Range range) {
            double low = unit.shown(range.low());
            double high = unit.shown(range.high());
            int decimals = decimalsFor((high - low) / 2 / NINETY_PER_CENT, unit.decimals());
            return new FigureText(
                    number(shown, decimals),
                    "(" + number(low, decimals) + "–" + number(high, decimals) + ")",
                    unit.symbol());
        }
        return new FigureText(plain(shown, unit.decimals()), "", unit.symbol());
    }

    /** A number told without doubt: three digits that count, no empty decimals. */
    private static String plain(double shown, int finest) {
        double rounded = new BigDecimal(shown).round(THREE_DIGITS).doubleValue();
        int decimals = decimalsFor(Math.abs(rounded) / 100, finest);
        // Rounded twice, 5.548 would come to 5.6 at one decimal.
        boolean fewer = Math.abs(rounded) / 100 < Math.pow(10, -finest);
        String told = number(fewer ? shown : rounded, decimals);
        return told.contains(".") ? told.replaceAll("\\.?0+$", "") : told;
    }

    /** Decimals at which one standard error still shows one digit, never finer than makes sense. */
    private static int decimalsFor(double standardError, int finest) {
        if (!(standardError > 0) || Double.isInfinite(standardError)) {
            return standardError > 0 ? 0 : finest;
        }
        int decimals = (int) -Math.floor(Math.log10(standardError));
        return Math.max(0, Math.min(finest, decimals));
    }

    private static FigureText duration(Figure figure) {
        double seconds = figure.value();
        if (Double.isInfinite(seconds)) {
            String never = figure.doubt() instanceof Doubt.Range range && Double.isFinite(range.low())
                    ? "(" + span(range.low()) + " at the earliest)"
                    : "";
            return new FigureText("not reached", never, "");
        }
        Scale scale = Scale.of(seconds);
        if (figure.doubt() instanceof Doubt.Range range) {
            double spread = Double.isInfinite(range.high()) ? seconds - range.low() : (range.high() - range.low()) / 2;
            int decimals = Math.min(1, decimalsFor(spread / NINETY_PER_CENT / scale.seconds, 1));
            String high = Double.isInfinite(range.high()) ? "never" : scale.told(range.high(), decimals);
            String both = "(" + scale.told(range.low(), decimals) + "–" + high + ")";
            return new FigureText(scale.told(seconds, decimals), both, scale.symbol);
        } else if (figure.doubt() instanceof Doubt.StandardError error) {
            int decimals = decimalsFor(error.size() / scale.seconds, 1);
            String size = scale.told(error.size(), decimals);
            return new FigureText(scale.told(seconds, decimals), "±" + NO_BREAK + size, scale.symbol);
        }
        return new FigureText(plain(seconds / scale.seconds, scale == Scale.SECONDS ? 0 : 1), "", scale.symbol);
    }

    private static String span(double seconds) {
        Scale scale = Scale.of(seconds);
        return plain(seconds / scale.seconds, 1) + NO_BREAK + scale.symbol;
    }

    /** The unit a span of time is told in. */
    private enum Scale {
        SECONDS("s", 1),
        MINUTES("min", 60),
        HOURS("h", 3600),
        DAYS("days", 86400);

        private final String symbol;
        private final double seconds;

        Scale(String symbol, double seconds) {
            this.symbol = symbol;
            this.seconds = seconds;
        }

        static Scale of(double span) {
            if (span < 100) {
                return SECONDS;
            } else if (span < 95 * 60) {
                return MINUTES;
            }
            return span < 72 * 3600 ? HOURS : DAYS;
        }

        String told(double span, int decimals) {
            return number(span / seconds, decimals);
        }
    }

    /** A number as the pages write it: real minus sign, thin spaces between thousands. */
    public static String number(double value, int decimals) {
        String digits = String.format(Locale.ROOT, "%,." + decimals + "f", Math.abs(value))
                .replace(',', THIN_NO_BREAK);
        boolean negative = value < 0 && digits.chars().anyMatch(c -> c >= '1' && c <= '9');
        return negative ? MINUS + digits : digits;
    }
}
