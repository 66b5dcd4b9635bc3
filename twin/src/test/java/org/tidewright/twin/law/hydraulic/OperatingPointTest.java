package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.CREST;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.DENSITY;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.DISPLAY_SURFACE;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.FOUR_DIGITS;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.LITRES_PER_HOUR;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.PUMP;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.ROCK_AND_SAND;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.VISCOSITY;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.plastic;

import org.junit.jupiter.api.Test;

/** Numbers of the {@link ExampleSystem}: 25 mm line of 2.4 m with a loss sum of 7.5, lift 1.30 m. */
class OperatingPointTest {
    private static final double LIFT = 1.30;
    private static final PipeRun LINE = plastic(0.025, 2.4, 7.5);

    private final OperatingPoint point = OperatingPoint.of(PUMP, LIFT, LINE, VISCOSITY);

    @Test
    void flowAndHeadAreThoseOfTheExample() {
        assertThat(point.flow()).isCloseTo(3182 * LITRES_PER_HOUR, FOUR_DIGITS);
        assertThat(point.head()).isCloseTo(2.875, FOUR_DIGITS);
        assertThat(point.head() - LIFT).isCloseTo(1.575, FOUR_DIGITS);
    }

    @Test
    void reynoldsNumberAndFrictionFactorsAreThoseOfTheExample() {
        double reynolds = PipeFriction.reynolds(LINE.speed(point.flow()), LINE.bore(), VISCOSITY);
        double roughness = LINE.roughness() / LINE.bore();
        assertThat(reynolds).isCloseTo(4.857e4, FOUR_DIGITS);
        assertThat(PipeFriction.churchill(reynolds, roughness)).isCloseTo(0.02115, FOUR_DIGITS);
        assertThat(PipeFriction.swameeJain(reynolds, roughness)).isCloseTo(0.02114, FOUR_DIGITS);
        assertThat(PipeFriction.colebrook(reynolds, roughness)).isCloseTo(0.02124, FOUR_DIGITS);
    }

    @Test
    void powerAndEfficiencyAreThoseOfTheExample() {
        assertThat(point.hydraulicPower(DENSITY)).isCloseTo(25.50, FOUR_DIGITS);
        assertThat(point.efficiency(DENSITY, 70)).isCloseTo(0.3643, FOUR_DIGITS);
    }

    @Test
    void theDisplayTurnsOverAsInTheExample() {
        double displayWater = DISPLAY_SURFACE * CREST - ROCK_AND_SAND;
        assertThat(point.flow() * 3600 / displayWater).isCloseTo(9.189, FOUR_DIGITS);
    }

    @Test
    void aWiderPipeGivesTheFlowOfTheExample() {
        OperatingPoint wide = OperatingPoint.of(PUMP, LIFT, plastic(0.032, 2.4, 7.5), VISCOSITY);
        assertThat(wide.flow()).isCloseTo(4028 * LITRES_PER_HOUR, FOUR_DIGITS);
    }

    @Test
    void seventyPerCentSpeedGivesTheFlowOfTheExample() {
        OperatingPoint slow = OperatingPoint.of(PUMP.atSpeed(0.7), LIFT, LINE, VISCOSITY);
        assertThat(slow.flow()).isCloseTo(1556 * LITRES_PER_HOUR, FOUR_DIGITS);
    }

    @Test
    void belowTheLeastSpeedThePumpTurnsAndNothingFlows() {
        double least = PUMP.leastSpeed(LIFT);
        OperatingPoint under = OperatingPoint.of(PUMP.atSpeed(0.999 * least), LIFT, LINE, VISCOSITY);
        assertThat(under.flow()).isZero();
        assertThat(under.head()).isEqualTo(PUMP.atSpeed(0.999 * least).shutOffHead());
        assertThat(OperatingPoint.of(PUMP.atSpeed(1.001 * least), LIFT, LINE, VISCOSITY)
                        .flow())
                .isPositive();
    }

    @Test
    void downhillMoreThanTheFreeFlowRunsThroughAPumpThatAddsNothing() {
        OperatingPoint downhill = OperatingPoint.of(PUMP, -20, LINE, VISCOSITY);
        assertThat(downhill.flow()).isCloseTo(LINE.flow(20, VISCOSITY), within(1e-12));
        assertThat(downhill.flow()).isGreaterThan(PUMP.freeFlow());
        assertThat(downhill.head()).isZero();
    }
}
