package org.tidewright.seawater.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.density.Teos10;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;

class ColumnsTest {
    private static final List<Row> ROWS = ReferenceTable.read(ColumnsTest.class, "/reference/density/teos10.csv")
            .rows();

    private static double[] column(String name) {
        return ROWS.stream().mapToDouble(row -> row.number(name)).toArray();
    }

    /** The Gibbs function by GSW 3.6.16, all rows in one call. */
    @Test
    void everyPointGetsTheLawsValue() {
        double[] densities = new double[ROWS.size()];
        Columns.fill(Teos10::density, column("temperature_c"), column("practical_salinity"), densities);
        for (int i = 0; i < densities.length; i++) {
            Close.relative(ROWS.get(i), "density_gibbs_kg_m3", densities[i], 1e-12);
        }
    }

    /** The same, with the salinity closed over. */
    @Test
    void aLawOfOneColumnMayCloseOverTheRest() {
        double[] temperatures = column("temperature_c");
        double[] densities = new double[temperatures.length];
        Columns.fill(temperature -> Teos10.density(temperature, 35), temperatures, densities);
        for (int i = 0; i < densities.length; i++) {
            if (ROWS.get(i).number("practical_salinity") == 35) {
                Close.relative(ROWS.get(i), "density_gibbs_kg_m3", densities[i], 1e-12);
            }
        }
    }

    @Test
    void aColumnMayBeFilledInItsPlace() {
        double[] values = {1, 2, 3};
        Columns.fill((first, second) -> first + 10 * second, values, values, values);
        assertThat(values).containsExactly(11, 22, 33);
        Columns.fill(value -> -value, values, values);
        assertThat(values).containsExactly(-11, -22, -33);
    }

    @Test
    void aRefusedPointIsNamedByItsIndexAndWhatIsBeforeItIsFilled() {
        double[] out = new double[3];
        double[] salinities = {35, 35_000, 35};
        assertThatThrownBy(() -> Columns.fill(Teos10::density, new double[] {25, 25, 25}, salinities, out))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("point 1: practical salinity 35000.0")
                .hasMessageContaining("mg/kg");
        assertThat(out[0]).isEqualTo(Teos10.density(25, 35));
        assertThat(out[1]).isZero();
        double[] temperatures = {20, 21, Double.NaN};
        assertThatThrownBy(() -> Columns.fill(t -> Teos10.density(t, 35), temperatures, out))
                .hasMessageStartingWith("point 2: water temperature NaN");
    }

    @Test
    void columnsOfOtherLengthsAreRefused() {
        double[] two = new double[2];
        double[] three = new double[3];
        assertThatThrownBy(() -> Columns.fill(Teos10::density, three, two, three))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the second column has 2 points; the first has 3");
        assertThatThrownBy(() -> Columns.fill(Teos10::density, three, three, two))
                .hasMessage("the column to fill has 2 points; the first has 3");
        assertThatThrownBy(() -> Columns.fill(Math::abs, two, three))
                .hasMessage("the column to fill has 3 points; the first has 2");
    }

    @Test
    void emptyColumnsStayEmpty() {
        double[] none = {};
        Columns.fill(Teos10::density, none, none, none);
        assertThat(none).isEmpty();
    }

    /** The virtual machine's own count of what this thread took. */
    @Test
    void noMemoryIsTakenForAPoint() {
        int size = 2000;
        double[] temperatures = new double[size];
        double[] salinities = new double[size];
        double[] out = new double[size];
        Arrays.fill(temperatures, 25);
        Arrays.fill(salinities, 35);
        Law law = Teos10::density;
        Columns.fill(law, temperatures, salinities, out);
        var thread = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long before = thread.getThreadAllocatedBytes(id);
        Columns.fill(law, temperatures, salinities, out);
        assertThat(thread.getThreadAllocatedBytes(id) - before).isLessThan(size);
    }
}
