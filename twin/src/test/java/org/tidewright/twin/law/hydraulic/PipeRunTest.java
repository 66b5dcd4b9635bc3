package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.FOUR_DIGITS;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.LITRES;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.VISCOSITY;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.plastic;

import org.junit.jupiter.api.Test;

class PipeRunTest {
    @Test
    void theReturnPipeOfTheExampleHoldsItsWater() {
        assertThat(plastic(0.025, 1.6, 0).contents()).isCloseTo(0.7854 * LITRES, FOUR_DIGITS);
    }

    @Test
    void aLaminarHoseFollowsHagenAndPoiseuille() {
        // Q = pi g h d^4 / (128 nu L): 4 mm hose, 2 m, 0.10 m of head, nu 1e-6 m^2/s: 3.0807e-6 m^3/s, Re 981.
        PipeRun hose = new PipeRun(0.004, 2, 0, 0);
        double expected = Math.PI * 9.80665 * 0.10 * Math.pow(0.004, 4) / (128 * 1e-6 * 2);
        assertThat(hose.flow(0.10, 1e-6)).isCloseTo(expected, within(1e-9 * expected));
    }

    @Test
    void fittingsAloneFollowTorricelli() {
        PipeRun orifice = new PipeRun(0.025, 0, 0, 2.25);
        double expected = Math.PI / 4 * 0.025 * 0.025 * Math.sqrt(2 * 9.80665 * 0.5 / 2.25);
        assertThat(orifice.flow(0.5, 1e-6)).isCloseTo(expected, within(1e-14));
    }

    @Test
    void aRibbedHoseLosesAsManyTimesMoreByFriction() {
        PipeRun smooth = new PipeRun(0.025, 2, 0, 0);
        PipeRun ribbed = new PipeRun(0.025, 2, 0, 0, PipeFriction.RIBBED_HOSE_MULTIPLIER);
        assertThat(ribbed.headLoss(7e-4, VISCOSITY)).isCloseTo(2.5 * smooth.headLoss(7e-4, VISCOSITY), within(1e-14));
    }

    @Test
    void waterAtRestLosesNothing() {
        assertThat(plastic(0.025, 2, 3).headLoss(0, VISCOSITY)).isZero();
        assertThat(plastic(0.025, 2, 3).flow(0, VISCOSITY)).isZero();
    }

    @Test
    void anExtraFittingAddsItsVelocityHead() {
        PipeRun run = plastic(0.025, 2, 3);
        double speed = run.speed(7e-4);
        assertThat(run.withExtraLoss(2).headLoss(7e-4, VISCOSITY) - run.headLoss(7e-4, VISCOSITY))
                .isCloseTo(2 * speed * speed / (2 * 9.80665), within(1e-14));
    }

    @Test
    void foulingTakesFlow() {
        PipeRun run = plastic(0.025, 2, 3);
        assertThat(run.withRoughness(PipeFriction.FOULED_MOST).flow(1, VISCOSITY))
                .isLessThan(run.flow(1, VISCOSITY));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> plastic(0, 2, 3)).hasMessageContaining("bore is 0.0 m");
        assertThatThrownBy(() -> plastic(0.025, -2, 3)).hasMessageContaining("length of the run");
        assertThatThrownBy(() -> plastic(0.025, 2, Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> plastic(0.025, 2, 3).flow(Double.NaN, VISCOSITY))
                .hasMessageContaining("NaN");
        assertThatThrownBy(() -> plastic(0.025, 2, 3).headLoss(Double.NaN, VISCOSITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> plastic(0.025, 2, 3).flow(1, 0)).hasMessageContaining("viscosity");
        assertThatThrownBy(() -> plastic(0.025, 0, 0).flow(1, VISCOSITY)).hasMessageContaining("no length and no loss");
    }
}
