package org.tidewright.husbandry.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

/** Whatever the bytes, reading answers with a journal that is kept or with faults that have a place and words. */
class CopyFuzzTest {
    private static final String PIECES = "{}[]:,\"'\\0123456789.-+eE \n\t\u0000ntfu=@\uFFFD";

    @Test
    void anyTextIsAnswered() {
        SeededCases.check(300, draw -> {
            byte[] bytes = draw.text().getBytes(StandardCharsets.UTF_8);
            MemoryRecords into = new MemoryRecords();
            answered(CopyFiles.restoreJson(bytes, into.as("x")), into);
        });
    }

    @Test
    void anyDamageToAJsonCopyIsAnswered() {
        SeededCases.check(1000, draw -> {
            byte[] damaged = damaged(CopyFiles.json(small(draw).as("x")), new Random(draw.anyLong()));
            MemoryRecords into = new MemoryRecords();
            answered(CopyFiles.restoreJson(damaged, into.as("x")), into);
        });
    }

    @Test
    void anyDamageToACsvCopyIsAnswered() {
        SeededCases.check(1000, draw -> {
            Random random = new Random(draw.anyLong());
            CopyFiles files = CopyFiles.csv(small(draw).as("x"));
            for (String file : Arrays.asList("readings.csv", "doses.csv", "manifest.csv", "probes.csv")) {
                if (random.nextInt(3) == 0) {
                    byte[] damaged = damaged(files.text(file), random);
                    files.create(file).write(damaged);
                }
            }
            MemoryRecords into = new MemoryRecords();
            answered(JournalCsv.restore(files, into.as("x")), into);
        });
    }

    private static MemoryRecords small(Draw draw) {
        return new RandomJournal(draw).records();
    }

    /** Bytes changed, cut out, doubled or put in. */
    private static byte[] damaged(String sound, Random random) {
        StringBuilder text = new StringBuilder(sound);
        for (int i = random.nextInt(4); i >= 0; i--) {
            int at = random.nextInt(text.length());
            int until = Math.min(text.length(), at + 1 + random.nextInt(60));
            switch (random.nextInt(5)) {
                case 0 -> text.setCharAt(at, PIECES.charAt(random.nextInt(PIECES.length())));
                case 1 -> text.delete(at, until);
                case 2 -> text.insert(at, text.substring(at, until));
                case 3 -> text.setLength(Math.max(1, at));
                default -> text.insert(at, PIECES.charAt(random.nextInt(PIECES.length())));
            }
            if (text.isEmpty()) {
                text.append('x');
            }
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        if (random.nextInt(4) == 0) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    private static void answered(Restoring restoring, MemoryRecords into) throws IOException {
        if (restoring instanceof Restoring.Faulty faulty) {
            assertThat(into.calls()).isZero();
            assertThat(faulty.count()).isGreaterThanOrEqualTo(faulty.faults().size());
            assertThat(faulty.faults()).isNotEmpty().allSatisfy(fault -> {
                assertThat(fault.line()).isPositive();
                assertThat(fault.column()).isPositive();
                assertThat(fault.found()).isNotEmpty();
                assertThat(fault.expected()).isNotEmpty();
            });
        } else {
            assertThat(into.everything("")).hasSize(((Restoring.Done) restoring).newLines());
        }
    }
}
