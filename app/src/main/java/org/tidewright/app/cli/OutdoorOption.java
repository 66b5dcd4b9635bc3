package org.tidewright.app.cli;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.tidewright.plan.quantity.AmountText;
import org.tidewright.plan.quantity.SiUnit;
import org.tidewright.twin.rehearsal.Outdoors;

/** The weather of a rehearsal from the command line: one temperature, or a CSV file. */
final class OutdoorOption {
    private static final String TIME = "time_h";
    private static final String TEMPERATURE = "outdoor_temperature_c";
    private static final double SECONDS_PER_HOUR = 3600;
    private static final long LARGEST_BYTES = 1_000_000;

    private OutdoorOption() {}

    /**
     * Reads the option.
     *
     * @throws IllegalArgumentException with words for the keeper
     */
    static Outdoors read(String text) {
        try {
            return Outdoors.constant(AmountText.read(text, SiUnit.of("degC")).in("degC"));
        } catch (AmountText.Unreadable noTemperature) {
            Path file = Path.of(text);
            if (Files.isRegularFile(file)) {
                return series(file);
            }
            throw new IllegalArgumentException(
                    "--outdoor: found " + noTemperature.found() + "; expected a temperature such as 35C or 20F, or the"
                            + " name of a CSV file with the columns " + TIME + "," + TEMPERATURE,
                    noTemperature);
        }
    }

    private static Outdoors series(Path file) {
        List<Double> times = new ArrayList<>();
        List<Double> temperatures = new ArrayList<>();
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                throw new IllegalArgumentException(file + ": found " + Files.size(file)
                        + " bytes; expected a weather file of at most " + LARGEST_BYTES);
            }
            try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(file)) {
                for (NamedCsvRecord row : reader) {
                    times.add(SECONDS_PER_HOUR * number(file, row, TIME));
                    temperatures.add(number(file, row, TEMPERATURE));
                }
            }
        } catch (IOException | de.siegmar.fastcsv.reader.CsvParseException unreadable) {
            throw new IllegalArgumentException(file + " cannot be read as CSV: " + unreadable.getMessage(), unreadable);
        }
        if (times.isEmpty()) {
            throw new IllegalArgumentException(file + ": found no rows; expected the columns " + TIME + ","
                    + TEMPERATURE + " and at least one row");
        }
        try {
            return new Outdoors(
                    times.stream().mapToDouble(Double::doubleValue).toArray(),
                    temperatures.stream().mapToDouble(Double::doubleValue).toArray());
        } catch (IllegalArgumentException noSeries) {
            throw new IllegalArgumentException(file + ": " + noSeries.getMessage(), noSeries);
        }
    }

    private static double number(Path file, NamedCsvRecord row, String column) {
        String text = row.findField(column)
                .orElseThrow(() -> new IllegalArgumentException(file + ":" + row.getStartingLineNumber()
                        + ": found no column " + column + "; expected " + TIME + "," + TEMPERATURE));
        try {
            double number = Double.parseDouble(text.strip());
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException noNumber) {
            // reported below, with its place
        }
        throw new IllegalArgumentException(
                file + ":" + row.getStartingLineNumber() + ": " + column + ": found “" + text + "”; expected a number");
    }
}
