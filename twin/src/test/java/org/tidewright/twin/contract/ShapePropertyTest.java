package org.tidewright.twin.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

/** What geometry demands of any shape. */
class ShapePropertyTest {
    private static Shape shape(Draw draw) {
        double area = draw.between(0.01, 5);
        double height = draw.between(0.05, 1);
        return switch (draw.whole(0, 2)) {
            case 0 -> Shape.upright(area, 0, 0);
            case 1 -> Shape.upright(area, draw.between(-0.5, 0.9) * area * height, height);
            default -> Shape.stepped(area, height, draw.between(0.01, 5));
        };
    }

    @Test
    void levelAndVolumeAreEachOthersInverse() {
        SeededCases.check(draw -> {
            Shape shape = shape(draw);
            double level = draw.between(0, 1.5);
            assertThat(shape.level(shape.volume(level))).isCloseTo(level, within(1e-14));
        });
    }

    @Test
    void moreWaterStandsHigher() {
        SeededCases.check(draw -> {
            Shape shape = shape(draw);
            double level = draw.between(0, 1.5);
            double higher = level + draw.between(1e-6, 0.2);
            assertThat(shape.volume(higher)).isGreaterThan(shape.volume(level));
        });
    }

    @Test
    void theSurfaceIsTheSlopeOfTheVolume() {
        SeededCases.check(draw -> {
            Shape shape = shape(draw);
            double level = draw.between(0.001, 1.5);
            double step = 1e-6;
            double below = shape.volume(level - step);
            double above = shape.volume(level + step);
            double slope = (above - below) / (2 * step);
            // Across a kink the slope lies between the areas of its two sides.
            double one = shape.surface(level - step);
            double other = shape.surface(level + step);
            assertThat(slope).isBetween(Math.min(one, other) - 1e-8, Math.max(one, other) + 1e-8);
        });
    }
}
