package org.tidewright.numerics.sample;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;

class QuantilesTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    @Test
    void agreesWithAnIndependentCode() {
        for (Row row : ReferenceTable.read(getClass(), "/reference/sample/quantiles.csv")
                .rows()) {
            double[] values = Stream.of(row.text("values").split(" ", -1))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            Close.relative(row, "quantile", Quantiles.quantile(values, row.number("probability")), 1e-12);
        }
    }

    @Test
    void aHandWorkedSampleOfFour() {
        // n = 4: position 4 p + (p + 1) / 3. p = 1/4: 17/12, so 5/12 of the way from 1 to 2; p = 1/2: 2.5.
        double[] values = {10, 1, 5, 2};
        assertThat(Quantiles.quantile(values, 0.25)).isCloseTo(17.0 / 12, within(1e-15));
        assertThat(Quantiles.quantile(values, 0.5)).isEqualTo(3.5);
        assertThat(values).containsExactly(10, 1, 5, 2);
    }

    @Test
    void aQuantileThatReachesIntoNeverIsNever() {
        // Five values, two of them never. Median: position 3, exactly the third value. Above it the fourth is mixed in.
        Quantiles hours = Quantiles.of(new double[] {NEVER, 3, 1, NEVER, 2});
        assertThat(hours.at(0.5)).isEqualTo(3.0);
        assertThat(hours.at(0.51)).isEqualTo(NEVER);
        assertThat(hours.at(0.9)).isEqualTo(NEVER);
        assertThat(hours.at(1)).isEqualTo(NEVER);
        assertThat(hours.at(0.25)).isFinite();
    }

    @Test
    void aWholePositionIsNotPushedIntoNeverByRounding() {
        // In whole numbers, 3000 times the position n p + (p + 1) / 3 at p in thousandths; all whole positions up to n
        // = 200.
        int found = 0;
        for (int n = 1; n <= 200; n++) {
            for (int thousandths = 0; thousandths <= 1000; thousandths++) {
                int position = 3 * n * thousandths + thousandths + 1000;
                int rank = position / 3000;
                if (position % 3000 == 0 && rank >= 1 && rank < n) {
                    double[] values = new double[n];
                    for (int i = 0; i < n; i++) {
                        values[i] = i < rank ? i : NEVER;
                    }
                    assertThat(Quantiles.quantile(values, thousandths / 1000.0))
                            .as("n = %d, p = %d/1000", n, thousandths)
                            .isCloseTo(rank - 1, within(1e-12));
                    found++;
                }
            }
        }
        assertThat(found).isGreaterThan(200);
    }

    @Test
    void allNeverIsNever() {
        assertThat(Quantiles.quantile(new double[] {NEVER, NEVER}, 0.4)).isEqualTo(NEVER);
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> Quantiles.of(new double[0])).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Quantiles.of(new double[] {1, Double.NaN}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Value 1 is NaN");
        assertThatThrownBy(() -> Quantiles.of(new double[] {Double.NEGATIVE_INFINITY}))
                .isInstanceOf(IllegalArgumentException.class);
        Quantiles one = Quantiles.of(new double[] {1});
        for (double probability : new double[] {-0.01, 1.01, Double.NaN}) {
            assertThatThrownBy(() -> one.at(probability)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
