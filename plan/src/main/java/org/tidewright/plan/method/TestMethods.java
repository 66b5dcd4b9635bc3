package org.tidewright.plan.method;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.tidewright.plan.source.Basis;

/** The kinds of tests that keepers use, from {@code test-methods.csv}. */
public final class TestMethods {
    private static final String CATALOGUE = "test-methods.csv";
    private static final List<TestMethod> ALL = read();

    private TestMethods() {}

    /** All of them, in the order of the catalogue. */
    public static List<TestMethod> all() {
        return ALL;
    }

    /** Those that measure a quantity, in the order of the catalogue. */
    public static List<TestMethod> of(WaterQuantity quantity) {
        return ALL.stream().filter(method -> method.quantity() == quantity).toList();
    }

    /** The method of a quantity with this key. */
    public static Optional<TestMethod> find(WaterQuantity quantity, String key) {
        return of(quantity).stream().filter(method -> method.key().equals(key)).findFirst();
    }

    private static List<TestMethod> read() {
        try (Reader text = new InputStreamReader(
                        Objects.requireNonNull(TestMethods.class.getResourceAsStream(CATALOGUE), CATALOGUE),
                        StandardCharsets.UTF_8);
                CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text)) {
            List<TestMethod> methods = new ArrayList<>();
            rows.forEach(row -> methods.add(method(row)));
            return List.copyOf(methods);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(CATALOGUE + " cannot be read", unreadable);
        }
    }

    private static TestMethod method(NamedCsvRecord row) {
        WaterQuantity quantity =
                WaterQuantity.ofKey(row.getField("quantity")).orElseThrow(() -> unknown(row, "quantity"));
        QuantityUnit unit = quantity.unitOfKey(row.getField("unit")).orElseThrow(() -> unknown(row, "unit"));
        return new TestMethod(
                row.getField("key"),
                quantity,
                row.getField("name"),
                unit.errorToHeld(0, number(row, "scatter")),
                number(row, "relative_scatter"),
                unit.errorToHeld(0, number(row, "resolution")),
                unit.errorToHeld(0, number(row, "bias")),
                number(row, "relative_bias"),
                row.getField("continuous").equals("yes"),
                Arrays.stream(Basis.values())
                        .filter(basis -> basis.words().equals(row.getField("basis")))
                        .findFirst()
                        .orElseThrow(() -> unknown(row, "basis")),
                row.getField("source"));
    }

    private static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }

    private static IllegalStateException unknown(NamedCsvRecord row, String column) {
        return new IllegalStateException(CATALOGUE + ", line " + row.getStartingLineNumber() + ": no " + column
                + " is called “" + row.getField(column) + "”");
    }
}
