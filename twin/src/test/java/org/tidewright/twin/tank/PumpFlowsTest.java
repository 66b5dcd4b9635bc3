package org.tidewright.twin.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.law.hydraulic.Manifold;
import org.tidewright.twin.law.hydraulic.PipeRun;
import org.tidewright.twin.law.hydraulic.PumpCurve;
import org.tidewright.twin.law.hydraulic.TwoPointPump;

/** Reading between the grid's points against solving the pipes at the very heights. */
class PumpFlowsTest {
    private static final double VISCOSITY = 0.94e-6;
    private static final PumpCurve PUMP = new TwoPointPump(4.0, 6000e-3 / 3600);
    private static final double CLOSE = 0.002 * PUMP.freeFlow();

    @Test
    void oneOutletIsReadToAFifthOfAPercentOfTheFreeFlowAndToOneNearItsEnd() {
        Function<List<Double>, Manifold> lines = heights -> new Manifold(
                new PipeRun(0.025, 0.05, 1.5e-6, 0),
                List.of(new Manifold.Branch(heights.get(0), new PipeRun(0.025, 2.4, 1.5e-6, 7.5))));
        PumpFlows flows = new PumpFlows(PUMP, lines, 1, VISCOSITY);
        SeededCases.check(300, draw -> {
            double height = draw.between(0.02, 4.2);
            double solved = lines.apply(List.of(height))
                    .divide(PUMP, VISCOSITY)
                    .branchFlows()
                    .get(0);
            double close = height > 0.99 * PUMP.shutOffHead() ? 5 * CLOSE : CLOSE;
            assertThat(flows.to(0, height, height)).isCloseTo(Math.max(0, solved), within(close));
        });
    }

    @Test
    void twoOutletsAreReadToAFifthOfAPercentOfTheFreeFlow() {
        Function<List<Double>, Manifold> lines = heights -> new Manifold(
                new PipeRun(0.025, 0.05, 1.5e-6, 0),
                List.of(
                        new Manifold.Branch(heights.get(0), new PipeRun(0.025, 1.4, 1.5e-6, 4.5)),
                        new Manifold.Branch(heights.get(1), new PipeRun(0.012, 1.0, 1.5e-6, 40))));
        PumpFlows flows = new PumpFlows(PUMP, lines, 2, VISCOSITY);
        SeededCases.check(300, draw -> {
            double first = draw.between(0.3, 3.0);
            double second = draw.between(0.1, 2.0);
            List<Double> solved =
                    lines.apply(List.of(first, second)).divide(PUMP, VISCOSITY).branchFlows();
            assertThat(flows.to(0, first, second)).isCloseTo(Math.max(0, solved.get(0)), within(CLOSE));
            assertThat(flows.to(1, first, second)).isCloseTo(Math.max(0, solved.get(1)), within(CLOSE));
        });
    }
}
