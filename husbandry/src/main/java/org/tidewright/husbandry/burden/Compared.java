package org.tidewright.husbandry.burden;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Outlook.Range;

/**
 * A figure without the animals and with them; of 100 draws 5 lie below, 50, and 95.
 *
 * @param more how much higher with them, draw by draw
 */
public record Compared(Range without, Range with, Range more) {
    /** How much lower with them, draw by draw. */
    public Range less() {
        return new Range(-more.high(), -more.middle(), -more.low());
    }

    static <T> Compared of(List<T> draws, @Unit("*") ToDoubleFunction<T> without, @Unit("*") ToDoubleFunction<T> with) {
        return of(
                draws.stream().mapToDouble(without).toArray(),
                draws.stream().mapToDouble(with).toArray());
    }

    private static Compared of(double[] without, double[] with) {
        double[] more = new double[with.length];
        for (int i = 0; i < more.length; i++) {
            more[i] = with[i] - without[i];
        }
        return new Compared(Range.of(without), Range.of(with), Range.of(more));
    }
}
