package org.tidewright.plan.text;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.fault.Places;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.rule.PlanRules;

/** Reads and writes plans. Reading never throws for what stands in the text: it answers with faults. */
public final class PlanText {
    /** A plan is a few kilobytes; anything near this size is another file. */
    public static final int LARGEST_BYTES = 1_000_000;

    private PlanText() {}

    public static PlanReading read(String text) {
        if (text.length() > LARGEST_BYTES) {
            return tooLarge(text.length());
        }
        List<Fault> faults = new ArrayList<>();
        MappingNode tree = YamlTree.parse(text, faults);
        if (tree == null) {
            return new PlanReading.Faulty(faults);
        }
        Places places = new Places();
        Plan plan = new RecordReader(faults, places).read(tree, Plan.class);
        if (plan == null || !faults.isEmpty()) {
            faults.sort(Fault.BY_PLACE);
            return new PlanReading.Faulty(faults);
        }
        List<Fault> broken = new ArrayList<>(PlanRules.check(plan, places::of));
        if (!broken.isEmpty()) {
            broken.sort(Fault.BY_PLACE);
            return new PlanReading.Faulty(broken);
        }
        return new PlanReading.Sound(new PlanDocument(plan, text, tree));
    }

    /** Reads a file; its size is looked at before its content. */
    public static PlanReading read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST_BYTES + 1);
            if (bytes.length > LARGEST_BYTES) {
                return tooLarge(Files.size(file));
            }
            try {
                return read(StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(ByteBuffer.wrap(bytes))
                        .toString());
            } catch (CharacterCodingException notText) {
                return new PlanReading.Faulty(List.of(new Fault(
                        1,
                        1,
                        "",
                        "bytes that are not text in UTF-8",
                        "a plan in YAML, saved as UTF-8",
                        "Save the file again as UTF-8, or choose another file.")));
            }
        }
    }

    /** A plan as text, keys in the order of the records. */
    public static String write(Plan plan) {
        return RecordWriter.write(plan, null);
    }

    private static PlanReading tooLarge(long size) {
        return new PlanReading.Faulty(List.of(new Fault(
                1,
                1,
                "",
                "a file of " + size + " bytes",
                "a plan of at most " + LARGEST_BYTES + " bytes",
                "A plan is a few kilobytes of text: this is likely another file.")));
    }
}
