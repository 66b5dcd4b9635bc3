package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class SumpCascadePropertyTest {
    private static final double RIM = 0.5;

    @Property
    void noLitreIsLostOrMadeWhenWaterComesDown(
            @ForAll("sumps") SumpCascade sump, @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.6) double volume) {
        SumpCascade.Settled rest = sump.settle(volume);
        assertThat(rest.sump().water() + rest.spilled()).isCloseTo(sump.water() + volume, within(1e-12));
    }

    @Property
    void nothingSpillsBeforeEverySectionIsBrimful(
            @ForAll("sumps") SumpCascade sump, @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.6) double volume) {
        SumpCascade.Settled rest = sump.settle(volume);
        if (rest.spilled() > 1e-12) {
            assertThat(rest.sump().freeVolume(RIM)).isCloseTo(0, within(1e-12));
        }
    }

    @Property
    void waterAtRestStaysAtRest(
            @ForAll("sumps") SumpCascade sump, @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.6) double volume) {
        SumpCascade once = sump.settle(volume).sump();
        SumpCascade twice = once.settle(0).sump();
        for (int i = 0; i < once.sections().size(); i++) {
            assertThat(twice.sections().get(i).level())
                    .isCloseTo(once.sections().get(i).level(), within(1e-12));
        }
    }

    @Property
    void neighboursDifferInLevelOnlyWhereABaffleHoldsTheUpperOne(
            @ForAll("sumps") SumpCascade sump, @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.6) double volume) {
        List<SumpSection> rest = sump.settle(volume).sump().sections();
        for (int i = 0; i + 1 < rest.size(); i++) {
            double upper = rest.get(i).level();
            double lower = rest.get(i + 1).level();
            if (Math.abs(upper - lower) > 1e-12) {
                assertThat(Math.max(upper, lower))
                        .isLessThanOrEqualTo(rest.get(i).wall() + 1e-12);
            }
        }
    }

    @Property
    void atTheHighestRunningLevelTheVolumeJustFits(
            @ForAll("sumps") SumpCascade sump, @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double share) {
        double height = RIM - 0.03;
        double volume = share * sump.freeVolume(height);
        double level = sump.highestRunningLevel(volume, height).orElseThrow();
        assertThat(level).isBetween(0.0, height);
        // All sections stand brimful to their walls here, so the last level alone decides.
        assertThat(sump.withLastLevel(level).freeVolume(height)).isCloseTo(volume, within(1e-12));
    }

    @Property
    void movingTheLastLevelChangesTheMovableWaterByWhatWasAdded(
            @ForAll("sumps") SumpCascade sump, @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double share) {
        double level = sump.sections().get(sump.sections().size() - 1).level();
        SumpCascade fuller = sump.withLastLevel(level + share * (RIM - level));
        assertThat(fuller.movable(0) - sump.movable(0)).isCloseTo(fuller.water() - sump.water(), within(1e-12));
    }

    /** Sumps as they run: baffles falling in the order of flow, every section but the last full to its baffle. */
    @Provide
    Arbitrary<SumpCascade> sumps() {
        Arbitrary<Double> surface = Arbitraries.doubles().between(0.02, 0.4).ofScale(9);
        Arbitrary<List<Double>> surfaces = surface.list().ofMinSize(1).ofMaxSize(5);
        Arbitrary<List<Double>> drops =
                Arbitraries.doubles().between(0, 0.08).ofScale(9).list().ofSize(5);
        Arbitrary<Double> lastShare = Arbitraries.doubles().between(0, 1).ofScale(9);
        return Combinators.combine(surfaces, drops, lastShare).as(SumpCascadePropertyTest::sump);
    }

    private static SumpCascade sump(List<Double> surfaces, List<Double> drops, double lastShare) {
        List<SumpSection> sections = new ArrayList<>();
        double wall = 0.42;
        for (int i = 0; i + 1 < surfaces.size(); i++) {
            wall -= drops.get(i);
            sections.add(new SumpSection(surfaces.get(i), wall, wall));
        }
        sections.add(new SumpSection(surfaces.get(surfaces.size() - 1), lastShare * wall, RIM));
        return new SumpCascade(sections);
    }
}
