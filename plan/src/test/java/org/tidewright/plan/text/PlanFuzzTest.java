package org.tidewright.plan.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.testkit.SeededCases;

/** Whatever the text, reading answers with a plan or with faults that have a place and words. */
class PlanFuzzTest {
    private static final String PIECES = "{}[]:,-#&*!|>'\"%@`\n\t 0123456789.±°²xyzé\u0000\uFEFF\u2028";

    @Test
    void anyTextIsAnswered() {
        SeededCases.check(draw -> answered(draw.text()));
    }

    /** Real plans with bytes changed, cut out, doubled or swapped. */
    @Test
    void anyDamageToAPlanIsAnswered() {
        SeededCases.check(draw -> answered(damaged(new Random(draw.anyLong()))));
    }

    private static String damaged(Random random) {
        StringBuilder text =
                new StringBuilder(Examples.text(Examples.NAMES.get(random.nextInt(Examples.NAMES.size()))));
        for (int i = random.nextInt(12); i >= 0; i--) {
            int at = random.nextInt(text.length());
            int until = Math.min(text.length(), at + 1 + random.nextInt(40));
            switch (random.nextInt(4)) {
                case 0 -> text.setCharAt(at, PIECES.charAt(random.nextInt(PIECES.length())));
                case 1 -> text.delete(at, until);
                case 2 -> text.insert(at, text.substring(at, until));
                default -> text.insert(at, PIECES.charAt(random.nextInt(PIECES.length())));
            }
        }
        return text.toString();
    }

    private static void answered(String text) {
        if (PlanText.read(text) instanceof PlanReading.Faulty faulty) {
            assertThat(faulty.faults()).isNotEmpty().allSatisfy(fault -> {
                assertThat(fault.line()).isPositive();
                assertThat(fault.column()).isPositive();
                assertThat(fault.found()).isNotEmpty();
                assertThat(fault.expected()).isNotEmpty();
            });
        }
    }
}
