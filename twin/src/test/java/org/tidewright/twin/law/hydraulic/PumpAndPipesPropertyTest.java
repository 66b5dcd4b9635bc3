package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.tidewright.twin.law.hydraulic.Manifold.Branch;
import org.tidewright.twin.law.hydraulic.Manifold.Division;

class PumpAndPipesPropertyTest {
    private static final double VISCOSITY = 0.93e-6;

    @Property
    void everyHeadHasTheFlowThatGivesIt(
            @ForAll("pumps") PumpCurve pump, @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 0.999) double share) {
        double head = share * pump.shutOffHead();
        assertThat(pump.head(pump.flow(head))).isCloseTo(head, within(1e-9 * pump.shutOffHead()));
    }

    @Property
    void headNeverRisesWithFlow(
            @ForAll("pumps") PumpCurve pump,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.99) double share,
            @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 0.5) double more) {
        double flow = share * pump.freeFlow();
        assertThat(pump.head(flow + more * pump.freeFlow())).isLessThanOrEqualTo(pump.head(flow));
    }

    @Property
    void atTheOperatingPointThePumpGivesWhatTheLineAsks(
            @ForAll("pumps") PumpCurve pump,
            @ForAll("runs") PipeRun line,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.99) double liftShare) {
        double lift = liftShare * pump.shutOffHead();
        OperatingPoint point = OperatingPoint.of(pump, lift, line, VISCOSITY);
        assertThat(point.flow()).isPositive();
        assertThat(pump.head(point.flow()))
                .isCloseTo(lift + line.headLoss(point.flow(), VISCOSITY), within(1e-9 * pump.shutOffHead()));
    }

    @Property
    void whatThePumpGivesLeavesThroughTheBranches(
            @ForAll("pumps") PumpCurve pump,
            @ForAll("runs") PipeRun common,
            @ForAll @Size(min = 1, max = 5) List<@From("branches") Branch> branches) {
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
    }

    @Provide
    Arbitrary<PumpCurve> pumps() {
        Arbitrary<PumpCurve> twoPoint = Combinators.combine(
                        Arbitraries.doubles().between(0.5, 12).ofScale(9),
                        Arbitraries.doubles().between(5e-5, 5e-3).ofScale(9),
                        Arbitraries.doubles().between(1.3, 2).ofScale(9))
                .as((head, flow, exponent) -> new TwoPointPump(head, flow, exponent));
        Arbitrary<PumpCurve> table = Combinators.combine(
                        Arbitraries.doubles()
                                .between(1e-5, 1e-3)
                                .ofScale(9)
                                .list()
                                .ofMinSize(1)
                                .ofMaxSize(9),
                        Arbitraries.doubles().between(0.05, 2).ofScale(9).list().ofSize(10))
                .as(PumpAndPipesPropertyTest::tableFromSteps);
        return Combinators.combine(
                        Arbitraries.oneOf(twoPoint, table),
                        Arbitraries.doubles().between(0.3, 1.2).ofScale(9),
                        Arbitraries.doubles().between(0, 0.5).ofScale(9))
                .as((pump, speed, wear) -> pump.atSpeed(speed).worn(wear));
    }

    private static PumpCurve tableFromSteps(List<Double> flowSteps, List<Double> headSteps) {
        int points = flowSteps.size() + 1;
        double[] flows = new double[points];
        double[] heads = new double[points];
        for (int i = 1; i < points; i++) {
            flows[i] = flows[i - 1] + flowSteps.get(i - 1);
        }
        for (int i = points - 2; i >= 0; i--) {
            heads[i] = heads[i + 1] + headSteps.get(i);
        }
        return new TabulatedPump(flows, heads);
    }

    @Provide
    Arbitrary<PipeRun> runs() {
        return Combinators.combine(
                        Arbitraries.doubles().between(0.008, 0.050).ofScale(9),
                        Arbitraries.doubles().between(0.1, 10).ofScale(9),
                        Arbitraries.doubles().between(0, 300e-6).ofScale(9),
                        Arbitraries.doubles().between(0, 60).ofScale(9))
                .as((bore, length, roughness, loss) -> new PipeRun(bore, length, roughness, loss));
    }

    @Provide
    Arbitrary<Branch> branches() {
        return Combinators.combine(
                        Arbitraries.doubles().between(-0.5, 4).ofScale(9), runs(), Arbitraries.of(true, false))
                .as(Branch::new);
    }
}
