package org.tidewright.twin.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Every number follows by hand from area times height. */
class ShapeTest {
    private static final double ROUNDING = 1e-15;

    @Test
    void anUprightVesselHoldsItsAreaTimesItsLevel() {
        Shape bucket = Shape.upright(0.5, 0, 0);
        assertThat(bucket.volume(0.3)).isCloseTo(0.15, within(ROUNDING));
        assertThat(bucket.level(0.15)).isCloseTo(0.3, within(ROUNDING));
        assertThat(bucket.surface(0.1)).isEqualTo(0.5);
    }

    @Test
    void solidsTakeTheirVolumeBelowTheirTopAndNoneOfTheSurfaceAbove() {
        // 50 L of rock up to 0.25 m in 0.5 m²: 0.2 m² are left for the water beside it.
        Shape reef = Shape.upright(0.5, 0.05, 0.25);
        assertThat(reef.surface(0.1)).isCloseTo(0.3, within(ROUNDING));
        assertThat(reef.volume(0.1)).isCloseTo(0.03, within(ROUNDING));
        assertThat(reef.volume(0.25)).isCloseTo(0.075, within(ROUNDING));
        assertThat(reef.surface(0.3)).isEqualTo(0.5);
        assertThat(reef.volume(0.4)).isCloseTo(0.15, within(ROUNDING));
        assertThat(reef.level(0.15)).isCloseTo(0.4, within(ROUNDING));
        assertThat(reef.level(0.03)).isCloseTo(0.1, within(ROUNDING));
    }

    @Test
    void underAHungBoxTheVesselIsWider() {
        // 8 L of water stand under the box, spread over the lowest 0.2 m: 0.04 m² more than above.
        Shape display = Shape.upright(0.3, -0.008, 0.2);
        assertThat(display.surface(0.1)).isCloseTo(0.34, within(ROUNDING));
        assertThat(display.volume(0.2)).isCloseTo(0.068, within(ROUNDING));
        assertThat(display.volume(0.4)).isCloseTo(0.128, within(ROUNDING));
        assertThat(display.level(0.128)).isCloseTo(0.4, within(ROUNDING));
    }

    @Test
    void aSteppedVesselChangesItsAreaAtTheStep() {
        Shape hung = Shape.stepped(0.06, 0.1, 0.02);
        assertThat(hung.volume(0.05)).isCloseTo(0.003, within(ROUNDING));
        assertThat(hung.volume(0.1)).isCloseTo(0.006, within(ROUNDING));
        assertThat(hung.volume(0.2)).isCloseTo(0.008, within(ROUNDING));
        assertThat(hung.level(0.008)).isCloseTo(0.2, within(ROUNDING));
        assertThat(hung.surface(0.05)).isEqualTo(0.06);
        assertThat(hung.surface(0.15)).isEqualTo(0.02);
    }

    @Test
    void aBodyWithoutASurfaceHasNoLevel() {
        assertThat(Shape.none().level(1)).isNaN();
        assertThat(Shape.none().volume(1)).isNaN();
        assertThat(Shape.none().surface(1)).isZero();
    }

    @Test
    void aVesselThatSolidsFillIsRefused() {
        assertThatThrownBy(() -> Shape.upright(0.5, 0.125, 0.25)).hasMessageContaining("cannot hold 0.125 m³");
        assertThatThrownBy(() -> Shape.upright(0, 0, 0)).hasMessageContaining("a vessel of 0.0 m²");
        assertThatThrownBy(() -> Shape.upright(0.5, 0.01, 0)).hasMessageContaining("up to 0.0 m");
        assertThatThrownBy(() -> Shape.upright(Double.NaN, 0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Shape.upright(0.5, Double.NaN, 0.1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Shape.stepped(0.5, 0.1, 0)).hasMessageContaining("must be positive");
        assertThatThrownBy(() -> Shape.stepped(0.5, -1, 0.1)).hasMessageContaining("-1.0 m");
    }
}
