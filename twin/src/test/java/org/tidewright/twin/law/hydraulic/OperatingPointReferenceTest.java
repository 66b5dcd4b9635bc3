package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;

/**
 * EPANET's example network Net1, hour by hour: its pump 9 lifts from a reservoir at 800 ft through pipe 10 (10530 ft,
 * 18 in, Hazen-Williams C 100) to junction 11, whose head the solver prints. In US units throughout; the curve and the
 * crossing do not mind.
 */
class OperatingPointReferenceTest {
    private static final double RESERVOIR = 800;

    /** EPANET's one-point curve (1500 gpm, 250 ft): shut-off head 4/3, free flow twice that (EPANET 2 manual). */
    private static final TwoPointPump PUMP_9 = new TwoPointPump(4.0 / 3 * 250, 2 * 1500);

    private static final List<Row> LINKS = ReferenceTable.read(
                    OperatingPointReferenceTest.class, "/reference/hydraulic/epanet_net1_links.csv")
            .rows();
    private static final List<Row> NODES = ReferenceTable.read(
                    OperatingPointReferenceTest.class, "/reference/hydraulic/epanet_net1_nodes.csv")
            .rows();

    @Test
    void thePumpCurveGivesTheLiftTheSolverPrints() {
        assertThat(runningHours()).hasSize(15).allSatisfy(row -> {
            // Flow and lift are printed to four decimals.
            double lift = -row.number("headloss");
            assertThat(PUMP_9.head(row.number("flow_gpm"))).isCloseTo(lift, within(1e-3));
            assertThat(PUMP_9.flow(lift)).isCloseTo(row.number("flow_gpm"), within(1e-2));
        });
    }

    @Test
    void pumpAndPipeCrossWhereTheSolverPutsThem() {
        assertThat(runningHours()).allSatisfy(row -> {
            double junction11 = head(row.text("hour"), "11");
            OperatingPoint point = OperatingPoint.of(PUMP_9, flow -> junction11 - RESERVOIR + lossOfPipe10(flow));
            // The solver stops at 0.1 % of flow change (ACCURACY 0.001); heads are printed to 0.001 ft.
            assertThat(point.flow()).isCloseTo(row.number("flow_gpm"), within(0.2));
            assertThat(point.head() + RESERVOIR).isCloseTo(head(row.text("hour"), "10"), within(0.03));
        });
    }

    /** Hazen-Williams as in the EPANET 2 manual: h = 4.727 C^-1.852 d^-4.871 L q^1.852 (ft, cubic feet a second). */
    private static double lossOfPipe10(double gallonsPerMinute) {
        double cubicFeetPerSecond = gallonsPerMinute / 448.831;
        return 4.727 * Math.pow(100, -1.852) * Math.pow(1.5, -4.871) * 10530 * Math.pow(cubicFeetPerSecond, 1.852);
    }

    private static List<Row> runningHours() {
        return LINKS.stream()
                .filter(row -> row.text("link").equals("9") && row.number("flow_gpm") > 0)
                .toList();
    }

    private static double head(String hour, String node) {
        return NODES.stream()
                .filter(row -> row.text("hour").equals(hour) && row.text("node").equals(node))
                .mapToDouble(row -> row.number("head_ft"))
                .findFirst()
                .orElseThrow();
    }
}
