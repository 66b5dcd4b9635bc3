package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;

/** Real pump curves published with WNTR; between the points scipy's interpolation of them. */
class PumpCurveReferenceTest {
    /** Its flows step back between two points, as measured curves may. */
    private static final String CURVE_THAT_TURNS_BACK = "3";

    private static final List<Row> POINTS = ReferenceTable.read(
                    PumpCurveReferenceTest.class, "/reference/hydraulic/wntr_pump_curves.csv")
            .rows();
    private static final List<Row> BETWEEN = ReferenceTable.read(
                    PumpCurveReferenceTest.class, "/reference/hydraulic/scipy_pchip_pump_curves.csv")
            .rows();

    @Test
    void everyCurvePassesThroughItsPoints() {
        assertThat(POINTS.stream().filter(row -> !row.text("curve").equals(CURVE_THAT_TURNS_BACK)))
                .hasSize(98)
                .allSatisfy(row -> {
                    TabulatedPump pump = curve(row.text("curve"));
                    assertThat(pump.head(row.number("flow_m3_per_s"))).isEqualTo(row.number("head_m"));
                });
    }

    @Test
    void betweenThePointsTheCubicIsThatOfScipy() {
        assertThat(BETWEEN).hasSize(352).allSatisfy(row -> {
            TabulatedPump pump = curve(row.text("curve"));
            double head = row.number("head_m");
            double flow = row.number("flow_m3_per_s");
            assertThat(pump.head(flow)).isCloseTo(head, within(1e-12 * head));
            assertThat(pump.flow(head)).isCloseTo(flow, within(1e-9 * flow));
        });
    }

    @Test
    void theCurveWhoseFlowsTurnBackIsRefused() {
        assertThatThrownBy(() -> curve(CURVE_THAT_TURNS_BACK))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("flow 13 of the pump curve is 0.212702829 m^3/s");
    }

    private static TabulatedPump curve(String key) {
        List<Row> rows =
                POINTS.stream().filter(row -> row.text("curve").equals(key)).toList();
        return new TabulatedPump(
                rows.stream().mapToDouble(row -> row.number("flow_m3_per_s")).toArray(),
                rows.stream().mapToDouble(row -> row.number("head_m")).toArray());
    }
}
