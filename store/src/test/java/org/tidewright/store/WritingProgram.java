package org.tidewright.store;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;
import java.util.UUID;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.ProbeLog.Probe;
import org.tidewright.husbandry.journal.ProbeLog.Value;
import org.tidewright.plan.method.WaterQuantity;

/**
 * A program that writes until it is killed, and says what it was told is kept: {@code line ID REVISION REMARK} or
 * {@code value TIME NUMBER}.
 */
final class WritingProgram {
    static final Probe SUMP = new Probe(WaterQuantity.TEMPERATURE, "probe", "sump");

    private WritingProgram() {}

    public static void main(String[] arguments) {
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        SplittableRandom random = new SplittableRandom(Long.parseLong(arguments[1]));
        try (Store store = Store.open(Path.of(arguments[0]), Clock.systemUTC())) {
            for (int deed = 0; ; deed++) {
                String remark = arguments[1] + "-" + deed;
                switch (random.nextInt(4)) {
                    case 0 -> out.println(said(store.journal().write(Samples.REEF, Samples.draft(remark))));
                    case 1 -> {
                        List<Draft> drafts = List.of(Samples.draft(remark), Samples.draft(remark));
                        store.journal().writeAll(Samples.REEF, drafts, done -> {});
                        drafts.forEach(draft -> out.println(said(draft.id(), 1, remark)));
                    }
                    case 2 -> {
                        Line line = store.journal().write(Samples.REEF, Samples.draft(remark));
                        Draft mended = new Draft(line.id(), line.at(), line.event(), remark + "-mended");
                        store.journal().correct(Samples.REEF, 1, mended).ifPresent(each -> out.println(said(each)));
                    }
                    default -> {
                        Value value = new Value(Instant.ofEpochMilli(random.nextInt(1 << 30)), deed);
                        store.probes().append(Samples.REEF, SUMP, List.of(value));
                        out.println(said(value));
                    }
                }
            }
        }
    }

    static String said(Line line) {
        return said(line.id(), line.revision(), line.remark());
    }

    private static String said(UUID id, int revision, String remark) {
        return "line " + id + " " + revision + " " + remark;
    }

    static String said(Value value) {
        return "value " + value.at() + " " + value.value();
    }
}
