package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.twin.law.hydraulic.ReferenceRows.number;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Real pump curves published with WNTR; between the points scipy's interpolation of them. */
class PumpCurveReferenceTest {
    /** Its flows step back between two points, as measured curves may. */
    private static final String CURVE_THAT_TURNS_BACK = "3";

    private static final List<NamedCsvRecord> POINTS = ReferenceRows.of("wntr_pump_curves.csv");
    private static final List<NamedCsvRecord> BETWEEN = ReferenceRows.of("scipy_pchip_pump_curves.csv");

    @Test
    void everyCurvePassesThroughItsPoints() {
        assertThat(POINTS.stream().filter(row -> !row.getField("curve").equals(CURVE_THAT_TURNS_BACK)))
                .hasSize(98)
                .allSatisfy(row -> {
                    TabulatedPump pump = curve(row.getField("curve"));
                    assertThat(pump.head(number(row, "flow_m3_per_s"))).isEqualTo(number(row, "head_m"));
                });
    }

    @Test
    void betweenThePointsTheCubicIsThatOfScipy() {
        assertThat(BETWEEN).hasSize(352).allSatisfy(row -> {
            TabulatedPump pump = curve(row.getField("curve"));
            double head = number(row, "head_m");
            double flow = number(row, "flow_m3_per_s");
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
        List<NamedCsvRecord> rows =
                POINTS.stream().filter(row -> row.getField("curve").equals(key)).toList();
        return new TabulatedPump(
                rows.stream().mapToDouble(row -> number(row, "flow_m3_per_s")).toArray(),
                rows.stream().mapToDouble(row -> number(row, "head_m")).toArray());
    }
}
