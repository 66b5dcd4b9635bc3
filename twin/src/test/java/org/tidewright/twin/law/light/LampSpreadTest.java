package org.tidewright.twin.law.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class LampSpreadTest {
    @Test
    void anEndlessLampLightsAllPlacesAlike() {
        assertThat(LampSpread.under(900, 900, 900, 900, 0.3)).isCloseTo(1, within(1e-3));
        assertThat(LampSpread.under(900, 900, 900, 900, 0.6)).isCloseTo(1, within(1e-3));
    }

    @Test
    void aSmallLampFallsOffWithTheSquareOfTheDistance() {
        double near = LampSpread.under(0.005, 0.005, 0.005, 0.005, 1);
        assertThat(near / LampSpread.under(0.005, 0.005, 0.005, 0.005, 2)).isCloseTo(4, within(1e-3));
        // A flat lamp that shines alike into all directions lights by its area over pi r^2.
        assertThat(near).isCloseTo(1e-4 / Math.PI, within(1e-8));
    }

    /**
     * Mean over a square opposite an equal square, against the published closed form for parallel plates (Incropera and
     * DeWitt, Fundamentals of Heat and Mass Transfer, table 13.2): F = 2/(pi w^2) {ln[(1 + w^2)/sqrt(1 + 2 w^2)] + 2 w
     * sqrt(1 + w^2) atan(w/sqrt(1 + w^2)) - 2 w atan w}; 0.1998 for a cube.
     */
    @Test
    void itsMeanOverAFloorIsThatOfParallelPlates() {
        for (double w : new double[] {0.5, 1, 3}) {
            double x = Math.sqrt(1 + w * w);
            double published = 2
                    / (Math.PI * w * w)
                    * (Math.log(x * x / Math.sqrt(1 + 2 * w * w))
                            + 2 * w * x * Math.atan(w / x)
                            - 2 * w * Math.atan(w));
            assertThat(meanOverFloor(w)).isCloseTo(published, within(2e-4));
        }
        assertThat(meanOverFloor(1)).isCloseTo(0.1998, within(2e-4));
    }

    private static double meanOverFloor(double side) {
        int parts = 60;
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            for (int j = 0; j < parts; j++) {
                double x = side * (i + 0.5) / parts;
                double y = side * (j + 0.5) / parts;
                sum += LampSpread.under(x, side - x, y, side - y, 1);
            }
        }
        return sum / parts / parts;
    }

    @Test
    void deeperUnderALampIsNeverBrighter() {
        SeededCases.check(300, draw -> {
            double length = draw.between(0.2, 3);
            double width = draw.between(0.2, 1);
            double x = draw.between(0, length);
            double y = draw.between(0, width);
            double before = Double.POSITIVE_INFINITY;
            for (double depth = 0; depth < 0.8; depth += 0.05) {
                double share = LampSpread.under(x, length - x, y, width - y, LampSpread.apparentDistance(0.2, depth));
                assertThat(share).isBetween(0.0, before);
                before = share;
            }
        });
    }

    @Test
    void waterBringsALampNearer() {
        assertThat(LampSpread.apparentDistance(0.2, 0.67)).isCloseTo(0.7, within(1e-12));
    }
}
