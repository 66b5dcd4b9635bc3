package org.tidewright.husbandry.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.plan.fault.Fault;

/** Sheets for tests, and what came of them as text. */
final class Sheets {
    static final String SYSTEM = "an invented tank";

    private Sheets() {}

    static String resource(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(Sheets.class.getResourceAsStream("/spreadsheet/" + name), name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** A file in these characters; those with two bytes begin with their mark. */
    static Spreadsheet saved(String text, Charset charset) {
        boolean mark = charset.name().startsWith("UTF-16");
        byte[] bytes = ((mark ? "\uFEFF" : "") + text).getBytes(charset);
        return new Spreadsheet(() -> new ByteArrayInputStream(bytes));
    }

    static Spreadsheet saved(String text) {
        return saved(text, StandardCharsets.UTF_8);
    }

    static Taking.Taken taken(Taking taking) {
        assertThat(taking).isInstanceOf(Taking.Taken.class);
        return (Taking.Taken) taking;
    }

    /** As the files of expected drafts have it; words without a number stand as a remark. */
    static String csv(List<Draft> drafts) throws IOException {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord("at", "quantity", "written", "unit", "remark");
            for (Draft draft : drafts) {
                if (draft.event() instanceof Event.Reading reading) {
                    String written = Double.toString(reading.written());
                    csv.writeRecord(
                            draft.at().toString(),
                            reading.quantity().key(),
                            written.endsWith(".0") ? written.substring(0, written.length() - 2) : written,
                            reading.unit().key(),
                            draft.remark());
                } else {
                    csv.writeRecord(draft.at().toString(), "", "", "", ((Event.Observation) draft.event()).seen());
                }
            }
        }
        return text.toString();
    }

    /** Line, column and sentence of each. */
    static String told(List<Fault> faults) {
        StringBuilder text = new StringBuilder();
        faults.forEach(fault -> text.append(fault.line())
                .append(':')
                .append(fault.column())
                .append(' ')
                .append(fault.sentence())
                .append('\n'));
        return text.toString();
    }
}
