package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.law.hydraulic.Manifold.Branch;
import org.tidewright.twin.law.hydraulic.Manifold.Division;

class PumpAndPipesPropertyTest {
    private static final double VISCOSITY = 0.93e-6;

    @Test
    void everyHeadHasTheFlowThatGivesIt() {
        SeededCases.check(draw -> {
            PumpCurve pump = pump(draw);
            double head = draw.between(0.001, 0.999) * pump.shutOffHead();
            assertThat(pump.head(pump.flow(head))).isCloseTo(head, within(1e-9 * pump.shutOffHead()));
        });
    }

    @Test
    void headNeverRisesWithFlow() {
        SeededCases.check(draw -> {
            PumpCurve pump = pump(draw);
            double flow = draw.between(0, 0.99) * pump.freeFlow();
            double more = draw.between(1e-6, 0.5) * pump.freeFlow();
            assertThat(pump.head(flow + more)).isLessThanOrEqualTo(pump.head(flow));
        });
    }

    @Test
    void atTheOperatingPointThePumpGivesWhatTheLineAsks() {
        SeededCases.check(draw -> {
            PumpCurve pump = pump(draw);
            PipeRun line = run(draw);
            double lift = draw.between(0, 0.99) * pump.shutOffHead();
            OperatingPoint point = OperatingPoint.of(pump, lift, line, VISCOSITY);
            assertThat(point.flow()).isPositive();
            assertThat(pump.head(point.flow()))
                    .isCloseTo(lift + line.headLoss(point.flow(), VISCOSITY), within(1e-9 * pump.shutOffHead()));
        });
    }

    @Test
    void whatThePumpGivesLeavesThroughTheBranches() {
        SeededCases.check(draw -> {
            PumpCurve pump = pump(draw);
            PipeRun common = run(draw);
            List<Branch> branches = draw.list(1, 5, PumpAndPipesPropertyTest::branch);
            Division division = new Manifold(common, branches).divide(pump, VISCOSITY);
            double sum = division.branchFlows().stream().mapToDouble(q -> q).sum();
            assertThat(sum).isCloseTo(division.total(), within(1e-12));
            double fromThePump = pump.head(division.total()) - common.headLoss(division.total(), VISCOSITY);
            boolean branchesSettleAmongThemselves = division.total() < 1e-12;
            if (!branchesSettleAmongThemselves) {
                assertThat(division.junctionHead()).isCloseTo(fromThePump, within(1e-6));
            }
            for (int i = 0; i < branches.size(); i++) {
                assertThat(division.branchFlows().get(i))
                        .isEqualTo(branches.get(i).flow(division.junctionHead(), VISCOSITY));
                if (!branches.get(i).mayFlowBack()) {
                    assertThat(division.branchFlows().get(i)).isNotNegative();
                }
            }
        });
    }

    private static PumpCurve pump(Draw draw) {
        PumpCurve pump = draw.oneOf(true, false)
                ? new TwoPointPump(draw.between(0.5, 12), draw.between(5e-5, 5e-3), draw.between(1.3, 2))
                : table(draw);
        return pump.atSpeed(draw.between(0.3, 1.2)).worn(draw.between(0, 0.5));
    }

    private static PumpCurve table(Draw draw) {
        int points = draw.whole(2, 10);
        double[] flows = new double[points];
        double[] heads = new double[points];
        for (int i = 1; i < points; i++) {
            flows[i] = flows[i - 1] + draw.between(1e-5, 1e-3);
        }
        for (int i = points - 2; i >= 0; i--) {
            heads[i] = heads[i + 1] + draw.between(0.05, 2);
        }
        return new TabulatedPump(flows, heads);
    }

    private static PipeRun run(Draw draw) {
        return new PipeRun(
                draw.between(0.008, 0.050), draw.between(0.1, 10), draw.between(0, 300e-6), draw.between(0, 60));
    }

    private static Branch branch(Draw draw) {
        return new Branch(draw.between(-0.5, 4), run(draw), draw.oneOf(true, false));
    }
}
