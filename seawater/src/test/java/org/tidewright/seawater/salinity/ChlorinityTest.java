package org.tidewright.seawater.salinity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class ChlorinityTest {
    /** Standard seawater, from memory: chlorinity 19.374 is salinity 35.000. */
    @Test
    void standardSeawaterHasItsChlorinity() {
        assertThat(Chlorinity.fromPractical(35)).isCloseTo(19.374, within(5e-4));
        assertThat(Chlorinity.toPractical(19.374)).isCloseTo(35.000, within(5e-4));
    }

    @Test
    void everySalinityComesBack() {
        SeededCases.check(draw -> {
            double salinity = draw.between(0, 120);
            assertThat(Chlorinity.toPractical(Chlorinity.fromPractical(salinity)))
                    .isCloseTo(salinity, within(1e-13));
        });
    }

    @Test
    void milligramsAreRefused() {
        assertThatThrownBy(() -> Chlorinity.toPractical(19_374))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("mg/kg");
        assertThatThrownBy(() -> Chlorinity.fromPractical(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
