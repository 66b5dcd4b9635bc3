package org.tidewright.plan.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.tidewright.plan.Examples;

/** Whatever the text, reading answers with a plan or with faults that have a place and words. */
class PlanFuzzTest {
    private static final String PIECES = "{}[]:,-#&*!|>'\"%@`\n\t 0123456789.±°²xyzé\u0000\uFEFF\u2028";

    @Property
    void anyTextIsAnswered(@ForAll String text) {
        answered(text);
    }

    /** Real plans with bytes changed, cut out, doubled or swapped. */
    @Property(tries = 400)
    void anyDamageToAPlanIsAnswered(@ForAll long seed) {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder(Examples.text(Examples.NAMES.get(random.nextInt(3))));
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
        answered(text.toString());
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
