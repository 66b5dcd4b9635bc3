package org.tidewright.testkit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.tidewright.testkit.ReferenceTable.Row;

/**
 * A published function held against a reference table, like {@link Close}; and the worst it was off is remembered, so
 * that the table of worst deviations is made by the tests and not by hand.
 */
public final class Validation {
    /** Only ever added to, by the tests of one run. */
    private static final Map<String, Worst> WORST = new TreeMap<>();

    private final String function;

    private Validation(String function) {
        this.function = function;
    }

    /**
     * The function under test.
     *
     * @param owner the class it belongs to
     * @param method its name; refused where the class has no public method of that name
     */
    public static Validation of(Class<?> owner, String method) {
        return of(owner, method, owner.getSimpleName());
    }

    /** The function of one constant of an enum. */
    public static Validation of(Enum<?> owner, String method) {
        Class<?> type = owner.getDeclaringClass();
        return of(type, method, type.getSimpleName() + "." + owner.name());
    }

    private static Validation of(Class<?> owner, String method, String name) {
        if (Arrays.stream(owner.getMethods()).noneMatch(each -> each.getName().equals(method))) {
            throw new IllegalArgumentException(owner + " has no public method " + method);
        }
        return new Validation(name + "." + method);
    }

    /** As {@link Close#absolute}. */
    public void absolute(Row row, String column, double got, double tolerance) {
        Close.absolute(row, column, got, tolerance);
        remember(row, column, Close.absoluteError(row, column, got), tolerance, false);
    }

    /** As {@link Close#relative}. */
    public void relative(Row row, String column, double got, double tolerance) {
        Close.relative(row, column, got, tolerance);
        remember(row, column, Close.relativeError(row, column, got), tolerance, true);
    }

    private void remember(Row row, String column, double error, double tolerance, boolean relative) {
        String key = function + " " + row.file() + " " + column + " " + relative;
        Worst one = new Worst(
                function,
                row.file(),
                row.heading("source"),
                row.heading("taken"),
                column,
                1,
                error,
                tolerance,
                relative);
        synchronized (WORST) {
            WORST.merge(key, one, Worst::with);
        }
    }

    /** The worst deviations of this run so far, by table, column and function. */
    public static List<Worst> worst() {
        synchronized (WORST) {
            return WORST.values().stream()
                    .sorted(Comparator.comparing(Worst::file)
                            .thenComparing(Worst::function)
                            .thenComparing(Worst::column))
                    .toList();
        }
    }

    /**
     * How far a function came at worst from a column of a reference table.
     *
     * @param function class and method
     * @param file path of the table
     * @param source the publication, from the table's heading
     * @param taken how the numbers were taken from it, from the heading
     * @param points compared
     * @param error the largest
     * @param tolerance the largest any test allows it
     * @param relative whether error and tolerance are shares of the expected value, or in the unit of the column
     */
    public record Worst(
            String function,
            String file,
            String source,
            String taken,
            String column,
            int points,
            double error,
            double tolerance,
            boolean relative) {
        private Worst with(Worst other) {
            return new Worst(
                    function,
                    file,
                    source,
                    taken,
                    column,
                    points + other.points,
                    Math.max(error, other.error),
                    Math.max(tolerance, other.tolerance),
                    relative);
        }
    }
}
