package org.tidewright.web.page;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;

/** The error of a reading by its method, in the unit it was written in. */
final class ReadingDoubt {
    private static final int MOST_DECIMALS = 4;

    private ReadingDoubt() {}

    /** {@code ± 0.3}, one standard error against the truth; null for what is no reading, or by no known method. */
    static @Nullable String of(Event event) {
        if (!(event instanceof Event.Reading reading) || reading.method() == null) {
            return null;
        }
        Optional<TestMethod> method = TestMethods.find(reading.quantity(), reading.method());
        if (method.isEmpty()) {
            return null;
        }
        double held = reading.value();
        double error = reading.unit().errorFromHeld(held, method.get().standardError(held));
        int decimals = (int) Math.max(0, Math.min(MOST_DECIMALS, -Math.floor(Math.log10(error))));
        return "±\u00a0" + FigureText.number(error, decimals);
    }
}
