package org.tidewright.app.forecast;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.forecast.ForecastReport;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Outlook;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.rehearsal.Band;

/** Every sample of a forecast: time, each quantity as run, and each with the changes; with their bands where it was drawn. */
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
            ForecastReport.Doubt doubt = report.doubt();
            int rows = report.asRun().time().length;
            for (int row = 0; row < rows; row++) {
                List<String> fields = new ArrayList<>();
                fields.add(Double.toString(report.asRun().time()[row] / DAY));
                add(fields, report.asRun(), row);
                if (doubt != null) {
                    add(fields, doubt.asRun(), row);
                }
                if (changed != null) {
                    add(fields, changed, row);
                }
                if (doubt != null && doubt.changed() != null) {
                    add(fields, doubt.changed(), row);
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
        names(names, "", report.doubt() != null);
        if (report.changed() != null) {
            names(names, CHANGED, report.doubt() != null);
        }
        return names;
    }

    private static void names(List<String> names, String prefix, boolean bands) {
        for (Quantity quantity : Quantity.values()) {
            names.add(prefix + quantity.key());
        }
        if (bands) {
            for (Quantity quantity : Quantity.values()) {
                for (String end : new String[] {"_low", "_middle", "_high"}) {
                    names.add(prefix + quantity.key() + end);
                }
            }
        }
    }

    private static void add(List<String> fields, Course course, int row) {
        for (Quantity quantity : Quantity.values()) {
            fields.add(field(course.of(quantity), row));
        }
    }

    private static void add(List<String> fields, Outlook outlook, int row) {
        for (Quantity quantity : Quantity.values()) {
            Band band = outlook.of(quantity);
            fields.add(field(band.low(), row));
            fields.add(field(band.middle(), row));
            fields.add(field(band.high(), row));
        }
    }

    /** Empty where the course has ended before. */
    private static String field(double[] values, int row) {
        return row < values.length ? Double.toString(values[row]) : "";
    }
}
