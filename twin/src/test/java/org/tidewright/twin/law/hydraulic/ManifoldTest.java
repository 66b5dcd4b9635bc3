package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.FOUR_DIGITS;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.LITRES_PER_HOUR;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.PUMP;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.VISCOSITY;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.plastic;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.twin.law.hydraulic.Manifold.Branch;
import org.tidewright.twin.law.hydraulic.Manifold.Division;

class ManifoldTest {
    private static final PipeRun COMMON = plastic(0.025, 1.0, 3);
    private static final Branch DISPLAY = new Branch(1.30, plastic(0.025, 1.4, 4.5));
    private static final Branch REACTOR = new Branch(0.40, plastic(0.012, 1.0, 40));

    @Test
    void twoBranchesDivideTheFlowAsInTheExample() {
        Division division = new Manifold(COMMON, List.of(DISPLAY, REACTOR)).divide(PUMP, VISCOSITY);
        assertThat(division.junctionHead()).isCloseTo(2.105, FOUR_DIGITS);
        assertThat(division.branchFlows().get(0)).isCloseTo(2941 * LITRES_PER_HOUR, FOUR_DIGITS);
        assertThat(division.branchFlows().get(1)).isCloseTo(361.2 * LITRES_PER_HOUR, FOUR_DIGITS);
    }

    @Test
    void oneBranchIsAPumpOnOneLine() {
        Division division = new Manifold(COMMON, List.of(DISPLAY)).divide(PUMP, VISCOSITY);
        OperatingPoint line = OperatingPoint.of(PUMP, 1.30, plastic(0.025, 2.4, 7.5), VISCOSITY);
        assertThat(division.total()).isCloseTo(line.flow(), within(1e-13));
    }

    @Test
    void aSlowPumpFeedsOnlyTheLowBranch() {
        Division division = new Manifold(COMMON, List.of(DISPLAY, REACTOR)).divide(PUMP.atSpeed(0.5), VISCOSITY);
        assertThat(division.branchFlows().get(0)).isZero();
        assertThat(division.branchFlows().get(1)).isPositive();
    }

    @Test
    void aPumpThatLiftsNothingGivesNothing() {
        Division division = new Manifold(COMMON, List.of(DISPLAY)).divide(PUMP.atSpeed(0.5), VISCOSITY);
        assertThat(division.total()).isZero();
        assertThat(division.branchFlows()).containsExactly(0.0);
        assertThat(division.junctionHead()).isEqualTo(1.0);
    }

    @Test
    void aDrownedOutletFeedsTheOtherBranchWhenThePumpStandsStill() {
        Branch drowned = new Branch(1.30, DISPLAY.run(), true);
        Division division = new Manifold(COMMON, List.of(drowned, REACTOR)).divide(PUMP.atSpeed(0), VISCOSITY);
        assertThat(division.total()).isCloseTo(0, within(1e-15));
        assertThat(division.branchFlows().get(1)).isPositive();
        assertThat(division.branchFlows().get(0))
                .isCloseTo(-division.branchFlows().get(1), within(1e-15));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new Manifold(COMMON, List.of())).hasMessageContaining("0 branches");
        assertThatThrownBy(() -> new Branch(Double.NaN, COMMON)).hasMessageContaining("height of the outlet");
    }
}
