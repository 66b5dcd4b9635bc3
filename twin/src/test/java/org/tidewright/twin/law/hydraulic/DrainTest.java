package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.BOX_SURFACE;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.CREST;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.DESIGN_FLOW;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.DISPLAY_HEIGHT;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.DISPLAY_SURFACE;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.FOUR_DIGITS;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.LITRES;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.LITRES_PER_HOUR;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.MILLIMETRES;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.RUNNING_HEAD;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.VISCOSITY;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.plastic;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers of the {@link ExampleSystem}: a 25 mm siphon of 1.2 m with a loss sum of 3.5 and a drop of 0.90 m. */
class DrainTest {
    private static final double DROP = 0.90;
    private static final PipeRun SIPHON = plastic(0.025, 1.2, 3.5);

    @Test
    void theOpenSiphonPassesTheFlowOfTheExample() {
        assertThat(FullSiphon.capacity(SIPHON, DROP, VISCOSITY)).isCloseTo(3502 * LITRES_PER_HOUR, FOUR_DIGITS);
    }

    @Test
    void theValveOfTheExampleThrottlesItToTheDesignFlow() {
        double loss = FullSiphon.throttlingLoss(SIPHON, DROP, DESIGN_FLOW, VISCOSITY);
        assertThat(loss).isCloseTo(4.249, FOUR_DIGITS);
        assertThat(FullSiphon.capacity(SIPHON.withExtraLoss(loss), DROP, VISCOSITY))
                .isCloseTo(DESIGN_FLOW, within(1e-13));
    }

    @Test
    void noValveHelpsASiphonThatIsTooSmall() {
        assertThat(FullSiphon.throttlingLoss(SIPHON, DROP, 2 * DESIGN_FLOW, VISCOSITY))
                .isNegative();
    }

    @Test
    void onePerCentOfFlowMovesTheLevelByEighteenMillimetres() {
        assertThat(FullSiphon.levelShift(DROP, 0.01)).isCloseTo(0.018, within(1e-15));
    }

    @Test
    void theThrottledSiphonClearsItsAir() {
        assertThat(SIPHON.speed(DESIGN_FLOW)).isCloseTo(1.415, FOUR_DIGITS);
        assertThat(PipeFroude.number(DESIGN_FLOW, 0.025)).isCloseTo(2.857, FOUR_DIGITS);
        assertThat(PipeFroude.at(DESIGN_FLOW, 0.025)).isEqualTo(PipeFroude.CLEARS_ITS_AIR);
        assertThat(PipeFroude.at(DESIGN_FLOW, 0.040)).isEqualTo(PipeFroude.GULPING);
        assertThat(PipeFroude.at(849 * LITRES_PER_HOUR, 0.040)).isEqualTo(PipeFroude.SELF_VENTING);
    }

    @Test
    void aWidePipeVentsItselfUpToTheFlowOfTheExample() {
        assertThat(VentedDrain.selfVentingLimit(0.040)).isCloseTo(850.0 * LITRES_PER_HOUR, FOUR_DIGITS);
    }

    @ParameterizedTest
    @CsvSource({"20, 428.7", "25, 777.3", "32, 1501", "40, 2722", "50, 4935"})
    void theQuietAnnularLimitIsThatOfTheExample(double bore, double litresPerHour) {
        assertThat(VentedDrain.annularLimit(bore * MILLIMETRES))
                .isCloseTo(litresPerHour * LITRES_PER_HOUR, FOUR_DIGITS);
    }

    @Test
    void theAnnularLimitAgreesWithTheFormOfUsPlumbingCodes() {
        // Q [US gal/min] = 27.8 r^(5/3) D^(8/3), D in inches; the two forms round differently, 0.12 % apart.
        double gallonsPerMinute = 27.8 * Math.pow(7.0 / 24, 5.0 / 3) * Math.pow(25 / 25.4, 8.0 / 3);
        double flow = gallonsPerMinute * 3.785412 * LITRES / 60;
        assertThat(flow).isCloseTo(776.4 * LITRES_PER_HOUR, FOUR_DIGITS);
        assertThat(VentedDrain.annularLimit(0.025)).isCloseTo(flow, within(0.0015 * flow));
    }

    @Test
    void theEmergencyMouthsOfTheExampleNeedTheirHeads() {
        assertThat(new DrainMouth(0.040).head(DESIGN_FLOW)).isCloseTo(43.25 * MILLIMETRES, FOUR_DIGITS);
        assertThat(new DrainMouth(0.025).head(DESIGN_FLOW)).isCloseTo(283.5 * MILLIMETRES, FOUR_DIGITS);
    }

    @Test
    void aMouthIsARimUntilTheWaterIsAThirdOfItsBoreDeepAndAHoleAfter() {
        // By hand, h = 0.6 d sqrt(2g) / (4 x 1.84) = 0.36103 d: 14.44 mm for 40 mm.
        DrainMouth mouth = new DrainMouth(0.040);
        double crossing = 0.6 * 0.040 * Math.sqrt(2 * 9.80665) / (4 * 1.84);
        assertThat(crossing).isCloseTo(0.01444, within(1e-5));
        assertThat(mouth.flow(0.9 * crossing))
                .isCloseTo(1.84 * Math.PI * 0.040 * Math.pow(0.9 * crossing, 1.5), within(1e-15));
        assertThat(mouth.flow(1.1 * crossing))
                .isCloseTo(0.6 * Math.PI / 4 * 0.0016 * Math.sqrt(2 * 9.80665 * 1.1 * crossing), within(1e-15));
    }

    @Test
    void theSpareOfTheExampleCarriesEverythingLoudly() {
        SpareDrain spare = new SpareDrain(new DrainMouth(0.040), 0.47);
        assertThat(spare.quietShare(DESIGN_FLOW)).isCloseTo(1.089, FOUR_DIGITS);
        assertThat(spare.levelFor(DESIGN_FLOW)).isCloseTo(0.47 + 0.04325, within(1e-5));
    }

    @Test
    void withTheMainDrainShutBoxAndDisplayRiseInTheTimesOfTheExample() {
        assertThat(SpareDrain.timeToRise(BOX_SURFACE, 0.050, DESIGN_FLOW)).isCloseTo(2.986, FOUR_DIGITS);
        double room = DISPLAY_HEIGHT - CREST - RUNNING_HEAD;
        assertThat(DISPLAY_SURFACE * room).isCloseTo(22.99 * LITRES, FOUR_DIGITS);
        assertThat(SpareDrain.timeToRise(DISPLAY_SURFACE, room, DESIGN_FLOW)).isCloseTo(33.10, FOUR_DIGITS);
    }

    @Test
    void theLeastLimitRules() {
        PipeRun stand = plastic(0.040, 1.0, 2.5);
        DrainCapacity shallow = DrainCapacity.of(0.005, DROP, stand, VISCOSITY);
        assertThat(shallow.limitedBy()).isEqualTo(DrainCapacity.Limit.ENTRY);
        assertThat(shallow.quiet()).isEqualTo(new DrainMouth(0.040).flow(0.005));

        DrainCapacity deep = DrainCapacity.of(0.10, DROP, stand, VISCOSITY);
        assertThat(deep.limitedBy()).isEqualTo(DrainCapacity.Limit.ANNULAR);
        assertThat(deep.quiet()).isEqualTo(VentedDrain.annularLimit(0.040));
        assertThat(deep.carried()).isEqualTo(new DrainMouth(0.040).flow(0.10));

        DrainCapacity strangled = DrainCapacity.of(0.10, 0.02, stand.withExtraLoss(100), VISCOSITY);
        assertThat(strangled.limitedBy()).isEqualTo(DrainCapacity.Limit.PIPE);
        assertThat(strangled.carried()).isEqualTo(strangled.pipe());
    }

    @Test
    void withoutWaterOrDropNothingFlows() {
        assertThat(new DrainMouth(0.040).flow(0)).isZero();
        assertThat(FullSiphon.capacity(SIPHON, 0, VISCOSITY)).isZero();
        assertThat(FullSiphon.capacity(SIPHON, -0.1, VISCOSITY)).isZero();
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new DrainMouth(-0.04)).hasMessageContaining("bore of the mouth");
        assertThatThrownBy(() -> new DrainMouth(0.04).flow(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> VentedDrain.annularLimit(0.04, 1.2, 0.25e-3)).hasMessageContaining("filled share");
        assertThatThrownBy(() -> FullSiphon.throttlingLoss(SIPHON, DROP, 0, VISCOSITY))
                .hasMessageContaining("flow wanted");
        assertThatThrownBy(() -> FullSiphon.capacity(SIPHON, Double.NaN, VISCOSITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> PipeFroude.number(-1, 0.04)).hasMessageContaining("flow");
        assertThatThrownBy(() -> SpareDrain.timeToRise(0.04, 0.05, 0)).hasMessageContaining("flow");
    }
}
