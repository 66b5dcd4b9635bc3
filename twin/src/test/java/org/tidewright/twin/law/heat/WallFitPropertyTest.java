package org.tidewright.twin.law.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

/** The short formula against the full iteration of films it stands for. */
class WallFitPropertyTest {
    @Test
    void theFitStaysWithinFourPercentOfTheFilmsItStandsFor() {
        SeededCases.check(2000, draw -> {
            Wall wall = Wall.ofGlass(
                    draw.between(0.1, 1.0), draw.between(0.003, 0.025), draw.oneOf(Wall.STILL, Wall.CIRCULATED));
            double water = draw.between(15, 35);
            double room = water + draw.between(1, 20) * draw.oneOf(-1, 1);
            double exact = WallConduction.through(wall, water, room).transmittance();
            assertThat(WallFit.of(wall).transmittance(water, room) / exact)
                    .as("%s, water %s, room %s", wall, water, room)
                    .isCloseTo(1, within(0.04));
        });
    }
}
