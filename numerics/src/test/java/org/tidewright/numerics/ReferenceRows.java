package org.tidewright.numerics;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The rows of a reference table, without its comments and its heading. */
public final class ReferenceRows {
    private ReferenceRows() {}

    public static List<String[]> of(String resource) {
        try (InputStream stream = ReferenceRows.class.getResourceAsStream("/reference/" + resource)) {
            if (stream == null) {
                throw new IllegalArgumentException("There is no reference table " + resource);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The numbers of a row or of a list within a cell. */
    public static double[] numbers(String... cells) {
        double[] numbers = new double[cells.length];
        for (int i = 0; i < cells.length; i++) {
            numbers[i] = Double.parseDouble(cells[i]);
        }
        return numbers;
    }
}
