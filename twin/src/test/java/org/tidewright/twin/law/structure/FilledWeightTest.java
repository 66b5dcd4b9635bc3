package org.tidewright.twin.law.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** A reef system worked through by a script in another language: 469.9 L, panes of 12 mm, bottom 15 mm. */
class FilledWeightTest {
    private static final double GLASS_VOLUME = 2 * (1.20 + 0.60) * 0.60 * 0.012 + 1.20 * 0.60 * 0.015;

    private static final FilledWeight SYSTEM = FilledWeight.of(0.469911, 1023.1901, 40, 30, GLASS_VOLUME, 80);

    @Test
    void theFilledMassIsThatOfTheExample() {
        assertThat(SYSTEM.total()).isCloseTo(722.6, withinPercentage(0.1));
    }

    @Test
    void thePressureOverTheFootprintIsThatOfTheExample() {
        assertThat(SYSTEM.meanPressure(1.20 * 0.60)).isCloseTo(9842, withinPercentage(0.1));
    }

    @Test
    void theGlassOfTheExampleWeighsWhatItsVolumeSays() {
        // By hand: 0.02592 + 0.0108 = 0.03672 m^3, times 2500.
        assertThat(SYSTEM.glass()).isCloseTo(91.8, within(1e-9));
    }

    @Test
    void aFootOfSixCarriesAQuarterMoreThanItsShare() {
        // By hand: 600 kg x 9.80665 / 6 x 1.25 = 1225.83 N.
        assertThat(new FilledWeight(500, 50, 0, 30, 20).loadOfAFoot(6)).isCloseTo(1225.83, within(0.01));
    }

    @Test
    void anEngineerIsAskedAboveThreeHundredKilogramsOrWithoutASlab() {
        FilledWeight light = new FilledWeight(200, 20, 10, 20, 20);
        assertThat(light.asksForAnEngineer(true)).isFalse();
        assertThat(light.asksForAnEngineer(false)).isTrue();
        assertThat(SYSTEM.asksForAnEngineer(true)).isTrue();
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new FilledWeight(-1, 0, 0, 0, 0)).hasMessageContaining("mass of the water");
        assertThatThrownBy(() -> SYSTEM.meanPressure(0)).hasMessageContaining("footprint");
        assertThatThrownBy(() -> SYSTEM.loadOfAFoot(0)).hasMessageContaining("number of feet");
        assertThatThrownBy(() -> FilledWeight.of(1, Double.NaN, 0, 0, 0, 0)).hasMessageContaining("density");
    }
}
