package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

class SumpCascadePropertyTest {
    private static final double RIM = 0.5;

    @Test
    void noLitreIsLostOrMadeWhenWaterComesDown() {
        SeededCases.check(draw -> {
            SumpCascade sump = sump(draw);
            double volume = draw.between(0, 0.6);
            SumpCascade.Settled rest = sump.settle(volume);
            assertThat(rest.sump().water() + rest.spilled()).isCloseTo(sump.water() + volume, within(1e-12));
        });
    }

    @Test
    void nothingSpillsBeforeEverySectionIsBrimful() {
        SeededCases.check(draw -> {
            SumpCascade sump = sump(draw);
            double volume = draw.between(0, 0.6);
            SumpCascade.Settled rest = sump.settle(volume);
            if (rest.spilled() > 1e-12) {
                assertThat(rest.sump().freeVolume(RIM)).isCloseTo(0, within(1e-12));
            }
        });
    }

    @Test
    void waterAtRestStaysAtRest() {
        SeededCases.check(draw -> {
            SumpCascade sump = sump(draw);
            double volume = draw.between(0, 0.6);
            SumpCascade once = sump.settle(volume).sump();
            SumpCascade twice = once.settle(0).sump();
            for (int i = 0; i < once.sections().size(); i++) {
                assertThat(twice.sections().get(i).level())
                        .isCloseTo(once.sections().get(i).level(), within(1e-12));
            }
        });
    }

    @Test
    void neighboursDifferInLevelOnlyWhereABaffleHoldsTheUpperOne() {
        SeededCases.check(draw -> {
            SumpCascade sump = sump(draw);
            double volume = draw.between(0, 0.6);
            List<SumpSection> rest = sump.settle(volume).sump().sections();
            for (int i = 0; i + 1 < rest.size(); i++) {
                double upper = rest.get(i).level();
                double lower = rest.get(i + 1).level();
                if (Math.abs(upper - lower) > 1e-12) {
                    assertThat(Math.max(upper, lower))
                            .isLessThanOrEqualTo(rest.get(i).wall() + 1e-12);
                }
            }
        });
    }

    @Test
    void atTheHighestRunningLevelTheVolumeJustFits() {
        SeededCases.check(draw -> {
            SumpCascade sump = sump(draw);
            double share = draw.between(0, 1);
            double height = RIM - 0.03;
            double volume = share * sump.freeVolume(height);
            double level = sump.highestRunningLevel(volume, height).orElseThrow();
            assertThat(level).isBetween(0.0, height);
            // All sections stand brimful to their walls here, so the last level alone decides.
            assertThat(sump.withLastLevel(level).freeVolume(height)).isCloseTo(volume, within(1e-12));
        });
    }

    @Test
    void movingTheLastLevelChangesTheMovableWaterByWhatWasAdded() {
        SeededCases.check(draw -> {
            SumpCascade sump = sump(draw);
            double share = draw.between(0, 1);
            double level = sump.sections().get(sump.sections().size() - 1).level();
            SumpCascade fuller = sump.withLastLevel(level + share * (RIM - level));
            assertThat(fuller.movable(0) - sump.movable(0)).isCloseTo(fuller.water() - sump.water(), within(1e-12));
        });
    }

    /** A sump as it runs: baffles falling in the order of flow, every section but the last full to its baffle. */
    private static SumpCascade sump(Draw draw) {
        List<SumpSection> sections = new ArrayList<>();
        double wall = 0.42;
        for (int baffles = draw.whole(0, 4); baffles > 0; baffles--) {
            wall -= draw.between(0, 0.08);
            sections.add(new SumpSection(draw.between(0.02, 0.4), wall, wall));
        }
        sections.add(new SumpSection(draw.between(0.02, 0.4), draw.between(0, 1) * wall, RIM));
        return new SumpCascade(sections);
    }
}
