package org.tidewright.app.forecast;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.forecast.ForecastReport;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Quantity;

/** Every sample of a forecast: time, each quantity as run, and each with the changes. */
public final class ForecastCsv {
    private static final double DAY = 86_400;
    private static final String CHANGED = "changed_";

    private ForecastCsv() {}

    /** The whole file; names end in their unit, numbers are metric and whole. */
    public static String text(ForecastReport report) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(text)) {
            csv.writeRecord(head(report));
            Course changed = report.changed();
            int rows = report.asRun().time().length;
            for (int row = 0; row < rows; row++) {
                List<String> fields = new ArrayList<>();
                fields.add(Double.toString(report.asRun().time()[row] / DAY));
                add(fields, report.asRun(), row);
                if (changed != null) {
                    add(fields, changed, row);
                }
                csv.writeRecord(fields);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static List<String> head(ForecastReport report) {
        List<String> names = new ArrayList<>();
        names.add("time_d");
        for (Quantity quantity : Quantity.values()) {
            names.add(quantity.key());
        }
        if (report.changed() != null) {
            for (Quantity quantity : Quantity.values()) {
                names.add(CHANGED + quantity.key());
            }
        }
        return names;
    }

    private static void add(List<String> fields, Course course, int row) {
        for (Quantity quantity : Quantity.values()) {
            double[] values = course.of(quantity);
            fields.add(row < values.length ? Double.toString(values[row]) : "");
        }
    }
}
