package org.tidewright.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.random.RandomGenerator;

/**
 * What one case of {@link SeededCases} draws. Ranges give their ends more often than chance would, since that is where
 * things break.
 */
public final class Draw {
    /** One draw in so many is an end of its range. */
    private static final int ENDS = 16;

    private static final int LONGEST_TEXT = 255;

    private final RandomGenerator random;
    private final List<Object> drawn = new ArrayList<>();

    Draw(long seed) {
        random = new SplittableRandom(seed);
    }

    /** A number from {@code least} to {@code most}, both possible. */
    public double between(double least, double most) {
        int die = random.nextInt(2 * ENDS);
        return noted(die == 0 ? least : die == 1 ? most : random.nextDouble(least, most));
    }

    /** A whole number from {@code least} to {@code most}, both possible. */
    public int whole(int least, int most) {
        int die = random.nextInt(2 * ENDS);
        return noted(die == 0 ? least : die == 1 ? most : (int) random.nextLong(least, most + 1L));
    }

    /** Any long. */
    public long anyLong() {
        return noted(random.nextLong());
    }

    /** One of the given values. */
    @SafeVarargs
    public final <T> T oneOf(T... values) {
        return noted(values[random.nextInt(values.length)]);
    }

    /** A list of {@code least} to {@code most} values. */
    public <T> List<T> list(int least, int most, Function<Draw, T> value) {
        int size = whole(least, most);
        List<T> list = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            list.add(value.apply(this));
        }
        return list;
    }

    /** Any text: mostly short, of plain characters, control characters and everything between, paired or not. */
    public String text() {
        double share = random.nextDouble();
        int length = (int) (share * share * share * LONGEST_TEXT);
        StringBuilder text = new StringBuilder(length);
        boolean plain = random.nextBoolean();
        for (int i = 0; i < length; i++) {
            text.append((char) (plain ? random.nextInt(' ', 0x7F) : random.nextInt(1 << 16)));
        }
        return noted(text.toString());
    }

    private <T> T noted(T value) {
        drawn.add(value);
        return value;
    }

    /** All that was drawn so far. */
    @Override
    public String toString() {
        return drawn.toString();
    }
}
