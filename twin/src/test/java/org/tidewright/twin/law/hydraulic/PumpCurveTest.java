package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.FOUR_DIGITS;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.PUMP;

import java.util.List;
import org.junit.jupiter.api.Test;

class PumpCurveTest {
    private static final TabulatedPump TABLE =
            new TabulatedPump(new double[] {0, 5e-4, 1e-3, 1.4e-3}, new double[] {3.0, 2.6, 1.6, 0.4});

    @Test
    void theTwoPointCurvePassesThroughItsTwoPoints() {
        assertThat(PUMP.head(0)).isEqualTo(4.0);
        assertThat(PUMP.head(PUMP.freeFlow())).isZero();
        // Half the free flow leaves three quarters of the head, by hand.
        assertThat(PUMP.head(PUMP.freeFlow() / 2)).isCloseTo(3.0, within(1e-15));
    }

    @Test
    void aLowerExponentTakesHeadAwayAtMidFlow() {
        // By hand: 1 - 0.5^1.3 = 0.593874.
        TwoPointPump pump = new TwoPointPump(4.0, 1e-3, 1.3);
        assertThat(pump.head(5e-4)).isCloseTo(4 * 0.593874, within(1e-5));
    }

    @Test
    void everyCurveIsClippedAtItsEnds() {
        assertThat(List.of(PUMP, TABLE, PUMP.atSpeed(0.6), TABLE.worn(0.2))).allSatisfy(pump -> {
            assertThat(pump.head(-1e-4)).isEqualTo(pump.shutOffHead());
            assertThat(pump.head(2 * pump.freeFlow())).isZero();
            assertThat(pump.flow(pump.shutOffHead() + 1)).isZero();
            assertThat(pump.flow(-1)).isCloseTo(pump.freeFlow(), within(1e-15));
        });
    }

    @Test
    void halfSpeedGivesHalfTheFlowAtAQuarterOfTheHead() {
        PumpCurve slow = TABLE.atSpeed(0.5);
        assertThat(slow.head(2.5e-4)).isCloseTo(2.6 / 4, within(1e-15));
        assertThat(slow.flow(2.6 / 4)).isCloseTo(2.5e-4, within(1e-15));
        assertThat(slow.freeFlow()).isEqualTo(0.5 * TABLE.freeFlow());
    }

    @Test
    void aWornPumpLosesHeadAndFlowAlike() {
        PumpCurve worn = TABLE.worn(0.2);
        assertThat(worn.head(0.8 * 5e-4)).isCloseTo(0.8 * 2.6, within(1e-15));
    }

    @Test
    void aPumpThatStandsStillGivesNothing() {
        PumpCurve still = PUMP.atSpeed(0);
        assertThat(still.head(0)).isZero();
        assertThat(still.flow(0)).isZero();
        assertThat(still.freeFlow()).isZero();
    }

    @Test
    void theLeastSpeedThatLiftsTheExampleIsFiftySevenPerCent() {
        assertThat(PUMP.leastSpeed(1.30)).isCloseTo(0.5701, FOUR_DIGITS);
        assertThat(PUMP.leastSpeed(-0.2)).isZero();
    }

    @Test
    void aTableGoesOnStraightBeyondItsLastPoint() {
        // The last secant falls 1.2 m in 4e-4 m^3/s: 0.4 m more are spent after 1.3333e-4 m^3/s.
        assertThat(TABLE.freeFlow()).isCloseTo(1.4e-3 + 4e-4 / 3, within(1e-15));
        assertThat(TABLE.head(1.5e-3)).isCloseTo(0.1, within(1e-12));
        assertThat(TABLE.flow(0.1)).isCloseTo(1.5e-3, within(1e-15));
        assertThat(TABLE.withinTable(1.5e-3)).isFalse();
        assertThat(TABLE.withinTable(1.0e-3)).isTrue();
    }

    @Test
    void twoPointsMakeAStraightLine() {
        TabulatedPump line = new TabulatedPump(new double[] {0, 1e-3}, new double[] {2, 1});
        assertThat(line.head(2.5e-4)).isCloseTo(1.75, within(1e-15));
        assertThat(line.flow(1.25)).isCloseTo(7.5e-4, within(1e-15));
        assertThat(line.freeFlow()).isCloseTo(2e-3, within(1e-15));
    }

    @Test
    void theTableCannotBeChangedFromOutside() {
        double[] flows = {0, 1e-3};
        double[] heads = {2, 1};
        TabulatedPump pump = new TabulatedPump(flows, heads);
        heads[0] = 100;
        assertThat(pump.shutOffHead()).isEqualTo(2);
    }

    @Test
    void curvesThatDoNotFallAreRefused() {
        assertThatThrownBy(() -> new TabulatedPump(new double[] {0, 2e-3, 1e-3}, new double[] {3, 2, 1}))
                .hasMessageContaining("flow 3 of the pump curve is 0.001 m^3/s");
        assertThatThrownBy(() -> new TabulatedPump(new double[] {0, 1e-3, 2e-3}, new double[] {3, 3.1, 1}))
                .hasMessageContaining("head 2 of the pump curve is 3.1 m");
        assertThatThrownBy(() -> new TabulatedPump(new double[] {1e-4, 1e-3}, new double[] {3, 1}))
                .hasMessageContaining("first flow");
        assertThatThrownBy(() -> new TabulatedPump(new double[] {0}, new double[] {3}))
                .hasMessageContaining("at least two");
        assertThatThrownBy(() -> new TabulatedPump(new double[] {0, Double.NaN}, new double[] {3, 1}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new TwoPointPump(0, 1e-3)).hasMessageContaining("shut-off head");
        assertThatThrownBy(() -> PUMP.atSpeed(-0.1)).hasMessageContaining("speed ratio");
        assertThatThrownBy(() -> PUMP.worn(1.1)).hasMessageContaining("outside 0.0 to 1.0");
        assertThat(List.<PumpCurve>of(PUMP, TABLE)).allSatisfy(pump -> {
            assertThatThrownBy(() -> pump.head(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> pump.flow(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        });
    }
}
