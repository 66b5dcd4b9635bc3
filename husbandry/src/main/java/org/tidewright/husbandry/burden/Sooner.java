package org.tidewright.husbandry.burden;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Outlook.Range;

/**
 * A time without the animals and with them, in seconds and infinite for never; of 100 draws 5 lie below, 50, and 95.
 *
 * @param sooner how much sooner with them, draw by draw; infinite where it never came without them
 */
public record Sooner(Range without, Range with, Range sooner) {
    static Sooner of(@Unit("s") double[] without, @Unit("s") double[] with) {
        double[] sooner = new double[with.length];
        for (int i = 0; i < sooner.length; i++) {
            boolean neither = Double.isInfinite(without[i]) && Double.isInfinite(with[i]);
            sooner[i] = neither ? 0 : without[i] - with[i];
        }
        return new Sooner(Range.of(without), Range.of(with), Range.of(sooner));
    }
}
