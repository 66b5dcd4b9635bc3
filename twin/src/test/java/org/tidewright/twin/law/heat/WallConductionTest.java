package org.tidewright.twin.law.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WallConductionTest {
    private static final Wall PANE = Wall.ofGlass(0.55, 0.012, Wall.CIRCULATED);

    /** What passes the pane must leave its outer face: conservation of heat. */
    @Test
    void theSameHeatPassesThePaneAndTheAir() {
        for (double room : new double[] {5, 15, 25, 25.4, 26, 35, 45}) {
            var found = WallConduction.through(PANE, 25.5, room);
            double throughPane = (25.5 - found.outsideTemperature()) / (1 / 300.0 + 0.012);
            double intoRoom = found.outsideFilm() * (found.outsideTemperature() - room);
            assertThat(throughPane).isCloseTo(intoRoom, within(1e-6));
            assertThat(found.transmittance() * (25.5 - room)).isCloseTo(intoRoom, within(1e-6));
        }
    }

    @Test
    void atEqualTemperaturesTheFilmIsAlmostRadiationAlone() {
        var found = WallConduction.through(PANE, 25, 25);
        assertThat(found.outsideTemperature()).isEqualTo(25);
        // 4 eps sigma T^3 = 5.409 by hand, and 0.68 k/H = 0.032 of resting air
        assertThat(found.outsideFilm()).isCloseTo(5.41 + 0.03, within(0.01));
    }

    /** 20 mm of foam alone lets 1.75 W/(m^2 K) through, so a wall behind it less. */
    @Test
    void insulationActsAsItsResistanceInSeries() {
        var insulated = WallConduction.through(PANE.behind(0.020, Wall.FOAM), 25.5, 21);
        assertThat(insulated.transmittance()).isLessThan(0.035 / 0.020);
        assertThat(WallConduction.insulated(1.5, 0.020, 0.035)).isCloseTo(1 / (1 / 1.5 + 0.020 / 0.035), within(1e-15));
    }

    @Test
    void refusesNonsense() {
        assertThatThrownBy(() -> WallConduction.through(PANE, 298, 21)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Wall.ofGlass(0.55, 12, Wall.STILL))
                .hasMessageContaining("wall thickness 12.0 m is outside 0.0 to 1.0 m");
    }
}
