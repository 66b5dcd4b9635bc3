package org.tidewright.numerics.ode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;

/** The coefficients: the conditions that give the methods their order, and another code's table. */
class AdditiveTableauTest {
    private final AdditiveTableau tableau = AdditiveTableau.KENNEDY_CARPENTER_4;

    /**
     * b c^(k-1) = 1/k, b A c = 1/6 and so on for every way to mix the two parts: conditions of order for additive methods,
     * Kennedy and Carpenter 2003, section 2.
     */
    @Test
    void meetsEveryConditionOfItsOrderWhicheverPartStandsWhere() {
        double[] b = tableau.weights();
        double[] c = tableau.nodes();
        List<double[][]> parts = List.of(explicit(), implicit());
        assertThat(sum(b)).isCloseTo(1, within(1e-14));
        assertThat(dot(b, c)).isCloseTo(1.0 / 2, within(1e-14));
        assertThat(dot(b, times(c, c))).isCloseTo(1.0 / 3, within(1e-14));
        for (double[][] a : parts) {
            assertThat(dot(b, apply(a, c))).isCloseTo(1.0 / 6, within(1e-14));
            assertThat(dot(times(b, c), apply(a, c))).isCloseTo(1.0 / 8, within(1e-14));
            assertThat(dot(b, apply(a, times(c, c)))).isCloseTo(1.0 / 12, within(1e-14));
            for (double[][] outer : parts) {
                assertThat(dot(b, apply(outer, apply(a, c)))).isCloseTo(1.0 / 24, within(1e-14));
            }
        }
        assertThat(dot(b, times(c, times(c, c)))).isCloseTo(1.0 / 4, within(1e-14));
    }

    @Test
    void theEmbeddedWeightsHaveOneOrderLess() {
        double[] b = tableau.embedded();
        double[] c = tableau.nodes();
        assertThat(sum(b)).isCloseTo(1, within(1e-14));
        assertThat(dot(b, c)).isCloseTo(1.0 / 2, within(1e-14));
        assertThat(dot(b, times(c, c))).isCloseTo(1.0 / 3, within(1e-14));
        assertThat(dot(b, apply(explicit(), c))).isCloseTo(1.0 / 6, within(1e-14));
        assertThat(dot(b, apply(implicit(), c))).isCloseTo(1.0 / 6, within(1e-14));
    }

    @Test
    void bothPartsShareTheirNodes() {
        for (double[][] a : List.of(explicit(), implicit())) {
            for (int i = 0; i < a.length; i++) {
                assertThat(sum(a[i])).isCloseTo(tableau.nodes()[i], within(1e-14));
            }
        }
    }

    @Test
    void everyCoefficientIsThatOfTheOtherCode() {
        for (Row row : ReferenceTable.read(getClass(), "/reference/ode/additive_tableaux.csv")
                .rows()) {
            int i = (int) row.number("row");
            int j = (int) row.number("column");
            double ours = switch (row.text("part")) {
                case "explicit" -> explicit()[i][j];
                case "implicit" -> implicit()[i][j];
                case "explicit_weight", "implicit_weight" -> tableau.weights()[i];
                case "explicit_embedded", "implicit_embedded" -> tableau.embedded()[i];
                default -> tableau.nodes()[i];
            };
            double expected = row.number("value");
            assertThat(ours).as(row.toString()).isCloseTo(expected, within(3e-16 * Math.abs(expected)));
        }
    }

    private double[][] explicit() {
        double[][] a = new double[tableau.stages()][tableau.stages()];
        for (int i = 0; i < a.length; i++) {
            System.arraycopy(tableau.explicit()[i], 0, a[i], 0, i);
        }
        return a;
    }

    private double[][] implicit() {
        double[][] a = new double[tableau.stages()][tableau.stages()];
        for (int i = 1; i < a.length; i++) {
            System.arraycopy(tableau.implicit()[i], 0, a[i], 0, i);
            a[i][i] = tableau.gamma();
        }
        return a;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }

    private static double dot(double[] left, double[] right) {
        return sum(times(left, right));
    }

    private static double[] times(double[] left, double[] right) {
        double[] product = new double[left.length];
        for (int i = 0; i < left.length; i++) {
            product[i] = left[i] * right[i];
        }
        return product;
    }

    private static double[] apply(double[][] matrix, double[] vector) {
        double[] product = new double[vector.length];
        for (int i = 0; i < vector.length; i++) {
            product[i] = dot(matrix[i], vector);
        }
        return product;
    }
}
