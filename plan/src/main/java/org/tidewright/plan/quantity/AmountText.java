package org.tidewright.plan.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads an {@link Amount} from text. */
public final class AmountText {
    private static final String NUMBER = "[-+]?(?:\\d+ \\d+/\\d+|\\d+/\\d+|\\d+(?:\\.\\d+)?(?:[eE][-+]?\\d+)?|\\.\\d+)";
    private static final Pattern ONE_AMOUNT =
            Pattern.compile("(?<number>" + NUMBER + ")\\s*(?<unit>(?:1/)?[^\\d\\s±+].*?)?");
    private static final Pattern WITH_DOUBT = Pattern.compile("(?<amount>.*?)\\s*(?:±|\\+/-|\\+-)\\s*(?<doubt>.*)");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[-+]?\\d+,\\d+.*");
    /** Longer text is no amount; the bound also keeps a hostile file from long matching. */
    private static final int LONGEST = 80;

    /** Why a text is no amount: the message says what was found, in words for the keeper. */
    public static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1L;

        private final String expected;
        private final String unknownUnit;

        Unreadable(String found, String expected) {
            this(found, expected, "");
        }

        Unreadable(String found, String expected, String unknownUnit) {
            super(found);
            this.expected = expected;
            this.unknownUnit = unknownUnit;
        }

        /** What was found instead of an amount. */
        public String found() {
            return String.valueOf(getMessage());
        }

        /** The unit that is none, empty where that was not the trouble. */
        public String unknownUnit() {
            return unknownUnit;
        }

        /** What should have stood there. */
        public String expected() {
            return expected;
        }
    }

    private AmountText() {}

    /**
     * Reads {@code "90 cm"}, {@code "1 1/2 in"}, {@code "60 kg ± 5 kg"}, {@code "60 ± 5 kg"}, {@code "35"}.
     *
     * @param target the coherent unit the place asks for; the text may use any unit of the same kind
     */
    public static Amount read(String text, SiUnit target) throws Unreadable {
        String trimmed = text.strip();
        if (trimmed.length() > LONGEST) {
            throw new Unreadable("a text of " + trimmed.length() + " characters", example(target));
        }
        Matcher doubt = WITH_DOUBT.matcher(trimmed);
        if (!doubt.matches()) {
            return one(trimmed, target);
        }
        Amount error = one(doubt.group("doubt"), target);
        String amountText = doubt.group("amount");
        // "60 ± 5 kg": the unit may stand once, at the end.
        boolean unitStandsOnce = ONE_AMOUNT.matcher(amountText).matches() && !amountText.matches(".*[^\\d./ ].*");
        Amount amount = one(unitStandsOnce ? amountText + " " + error.unit().symbol() : amountText, target);
        if (error.number() < 0) {
            throw new Unreadable("a negative doubt, " + error, "a doubt of zero or more after ±");
        }
        double inSameUnit = error.unit() == amount.unit()
                ? error.number()
                : error.unit().differenceToSi(error.number(), target)
                        / amount.unit().differenceToSi(1, target);
        return new Amount(amount.number(), amount.unit(), inSameUnit);
    }

    private static Amount one(String text, SiUnit target) throws Unreadable {
        if (DECIMAL_COMMA.matcher(text).matches()) {
            throw new Unreadable("“" + text + "” (write the decimals after a point)", example(target));
        }
        Matcher matcher = ONE_AMOUNT.matcher(text.strip());
        if (!matcher.matches()) {
            throw new Unreadable("“" + text + "”", example(target));
        }
        double number = number(matcher.group("number"));
        String unitText =
                matcher.group("unit") == null ? "" : matcher.group("unit").strip();
        if (!Double.isFinite(number)) {
            throw new Unreadable("“" + text + "”", "a number that is not larger than any number can be");
        }
        if (unitText.isEmpty() && !target.text().equals("1")) {
            throw new Unreadable("“" + text + "” without a unit", example(target));
        }
        TextUnit unit = TextUnit.spelt(unitText, target)
                .orElseThrow(() -> new Unreadable("the unknown unit “" + unitText + "”", example(target), unitText));
        if (!unit.isCompatibleWith(target)) {
            throw new Unreadable("“" + text + "”, which is not " + target.quantity(), example(target));
        }
        return new Amount(number, unit, 0);
    }

    private static double number(String text) {
        int slash = text.indexOf('/');
        if (slash < 0) {
            return Double.parseDouble(text);
        }
        int space = text.indexOf(' ');
        double whole = space < 0 ? 0 : Double.parseDouble(text.substring(0, space));
        String numerator = text.substring(space + 1, slash);
        double fraction = Double.parseDouble(numerator) / Double.parseDouble(text.substring(slash + 1));
        return whole + (whole < 0 ? -fraction : fraction);
    }

    /** {@code a length such as 40 cm or 16 in (units: m, cm, mm, in, ft)}. */
    private static String example(SiUnit target) {
        if (target.text().equals("1")) {
            return "a number such as 35 or 50 %";
        }
        String units = String.join(
                ", ", target.spellings().stream().map(TextUnit::symbol).toList());
        return target.quantity() + " with its unit, one of: " + units;
    }
}
