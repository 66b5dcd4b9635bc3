package org.tidewright.husbandry.wishlist;

import java.util.Locale;
import java.util.OptionalLong;
import java.util.regex.Pattern;

/** Amounts of money in hundredths of a unit that nobody names. */
public final class Money {
    /** Highest that is taken, in units. */
    public static final int MOST = 100_000;

    private static final Pattern AMOUNT = Pattern.compile("\\d{1,6}(?:[.,]\\d{1,2})?");

    private Money() {}

    /** {@code 45}, {@code 45.5} or {@code 45,50}; empty where it is no such amount. */
    public static OptionalLong read(String text) {
        if (!AMOUNT.matcher(text).matches()) {
            return OptionalLong.empty();
        }
        String[] parts = text.split("[.,]", 2);
        String cents = parts.length < 2 ? "00" : (parts[1] + "0").substring(0, 2);
        long amount = 100 * Long.parseLong(parts[0]) + Long.parseLong(cents);
        return amount > 100L * MOST ? OptionalLong.empty() : OptionalLong.of(amount);
    }

    /** {@code 45} or {@code 45.50}. */
    public static String text(long amount) {
        return amount % 100 == 0
                ? Long.toString(amount / 100)
                : String.format(Locale.ROOT, "%d.%02d", amount / 100, amount % 100);
    }

    /** What an amount should have been, for a fault. */
    static String expected() {
        return "an amount such as 45 or 45.50, at most " + MOST;
    }
}
