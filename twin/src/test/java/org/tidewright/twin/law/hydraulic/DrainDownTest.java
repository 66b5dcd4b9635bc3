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
import static org.tidewright.twin.law.hydraulic.ExampleSystem.ROCK_AND_SAND;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.RUNNING_HEAD;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.SECTION_3;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.SUMP;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.SUMP_RIM;
import static org.tidewright.twin.law.hydraulic.ExampleSystem.plastic;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Numbers of the {@link ExampleSystem}: outlet 30 mm, break hole 10 mm below the crest, a skimmer of 6 L. */
class DrainDownTest {
    private static final double FREEBOARD_LINE = SUMP_RIM - 0.030;
    private static final double PUMP_INTAKE = 0.05;
    private static final double ROOM = DISPLAY_SURFACE * (DISPLAY_HEIGHT - CREST - RUNNING_HEAD);

    private static final List<ReturnOutlet> OUTLETS =
            List.of(new ReturnOutlet(0.030, OptionalDouble.of(0.010)), new ReturnOutlet(-0.020));

    private static DrainDown drainDown(boolean holeWorks) {
        return DrainDown.of(
                DISPLAY_SURFACE,
                RUNNING_HEAD,
                ReturnOutlet.deepest(OUTLETS, holeWorks),
                BOX_SURFACE,
                0.45,
                0.10,
                plastic(0.025, 1.6, 0).contents(),
                6 * LITRES);
    }

    @Test
    void theVolumesOfTheSystemAreThoseOfTheExample() {
        double display = DISPLAY_SURFACE * CREST - ROCK_AND_SAND;
        double box = BOX_SURFACE * 0.45;
        assertThat(DISPLAY_SURFACE).isCloseTo(0.675, FOUR_DIGITS);
        assertThat(display).isCloseTo(346.2 * LITRES, FOUR_DIGITS);
        assertThat(box).isCloseTo(18.66 * LITRES, FOUR_DIGITS);
        assertThat(SUMP.water()).isCloseTo(104.2 * LITRES, FOUR_DIGITS);
        assertThat(display + box + SUMP.water() + plastic(0.025, 1.6, 0).contents())
                .isCloseTo(469.9 * LITRES, FOUR_DIGITS);
        assertThat(SECTION_3 * 0.01).isCloseTo(11.16 * LITRES / 10, FOUR_DIGITS);
    }

    @Test
    void everyPartIsThatOfTheExample() {
        DrainDown down = drainDown(false);
        assertThat(down.overTheCrest()).isCloseTo(10.76 * LITRES, FOUR_DIGITS);
        assertThat(down.siphon()).isCloseTo(20.25 * LITRES, FOUR_DIGITS);
        assertThat(down.box()).isCloseTo(14.52 * LITRES, FOUR_DIGITS);
        assertThat(down.pipes()).isCloseTo(0.7854 * LITRES, FOUR_DIGITS);
        assertThat(down.total()).isCloseTo(52.31 * LITRES, FOUR_DIGITS);
        assertThat(drainDown(true).siphon()).isCloseTo(6.75 * LITRES, FOUR_DIGITS);
    }

    @Test
    void theSumpTakesItWithTheMarginOfTheExample() {
        double free = SUMP.freeVolume(FREEBOARD_LINE);
        assertThat(free).isCloseTo(63.61 * LITRES, FOUR_DIGITS);
        assertThat(free - drainDown(false).total()).isCloseTo(11.30 * LITRES, FOUR_DIGITS);
    }

    @Test
    void theHighestRunningLevelIsThatOfTheExample() {
        double down = drainDown(false).total();
        OptionalDouble level = SUMP.highestRunningLevel(down, FREEBOARD_LINE);
        assertThat(level.orElseThrow()).isCloseTo(0.2784, FOUR_DIGITS);
        assertThat(SUMP.withLastLevel(level.orElseThrow()).freeVolume(FREEBOARD_LINE))
                .isCloseTo(down, within(1e-12));
    }

    @Test
    void aSumpThatIsTooFullMustRunLowerOrCannotHelpAtAll() {
        // By hand: 63.612 L free; 70 L need 6.388 L more, 6.388e-3 / 0.1116 = 57.24 mm lower.
        assertThat(SUMP.highestRunningLevel(70 * LITRES, FREEBOARD_LINE).orElseThrow())
                .isCloseTo(0.14276, within(1e-5));
        assertThat(SUMP.highestRunningLevel(90 * LITRES, FREEBOARD_LINE)).isEmpty();
    }

    @Test
    void aSectionThatStandsAboveTheMarkMustRunBelowIt() {
        SumpCascade bucket = new SumpCascade(List.of(new SumpSection(0.1, 0.30, 0.40)));
        // By hand: 10 L on 0.1 m^2 are 0.10 m, so no higher than 0.20 - 0.10 m.
        assertThat(bucket.highestRunningLevel(10 * LITRES, 0.20).orElseThrow()).isCloseTo(0.10, within(1e-15));
    }

    @Test
    void afterTheDrainDownAllSectionsStandAtTheLevelOfTheExample() {
        SumpCascade.Settled rest = SUMP.settle(drainDown(false).total());
        assertThat(rest.spilled()).isZero();
        assertThat(rest.sump().sections())
                .allSatisfy(section -> assertThat(section.level()).isCloseTo(0.3917, FOUR_DIGITS));
    }

    @Test
    void aStuckTopOffBeforeThePowerCutWetsTheFloorAsInTheExample() {
        double water = drainDown(false).total() + 25 * LITRES;
        assertThat(water - SUMP.freeVolume(FREEBOARD_LINE)).isCloseTo(13.70 * LITRES, FOUR_DIGITS);
        assertThat(SUMP.settle(water).spilled()).isCloseTo(1.713 * LITRES, FOUR_DIGITS);
    }

    @Test
    void aLostOverflowStaysInTheDisplayOfTheExample() {
        LostOverflow lost = new LostOverflow(SUMP.movable(PUMP_INTAKE), ROOM, 0);
        assertThat(lost.moved()).isCloseTo(16.74 * LITRES, FOUR_DIGITS);
        assertThat(lost.excess()).isCloseTo(-6.247 * LITRES, FOUR_DIGITS);
        assertThat(lost.spilled()).isZero();
        assertThat(lost.timeToDry(DESIGN_FLOW)).isCloseTo(24.11, FOUR_DIGITS);
    }

    @Test
    void anOverfilledSumpOrATopOffReservoirPutsItOnTheFloor() {
        double overfilled = SUMP.withLastLevel(0.30).movable(PUMP_INTAKE);
        assertThat(new LostOverflow(overfilled, ROOM, 0).spilled()).isCloseTo(9.413 * LITRES, FOUR_DIGITS);
        double normal = SUMP.movable(PUMP_INTAKE);
        assertThat(new LostOverflow(normal, ROOM, 25 * LITRES).spilled()).isCloseTo(18.75 * LITRES, FOUR_DIGITS);
    }

    @Test
    void theDeepestOutletThatStillSucksCounts() {
        ReturnOutlet high = new ReturnOutlet(0.010);
        ReturnOutlet low = new ReturnOutlet(0.200, OptionalDouble.of(0.005));
        assertThat(ReturnOutlet.deepest(List.of(high, low), false)).isEqualTo(0.200);
        assertThat(ReturnOutlet.deepest(List.of(high, low), true)).isEqualTo(0.010);
        assertThat(ReturnOutlet.deepest(List.of(), true)).isZero();
        assertThat(new ReturnOutlet(0.05, OptionalDouble.of(-0.01)).drawsDownTo(true))
                .isZero();
    }

    @Test
    void aHalfEmptyFirstSectionKeepsWhatItCanHold() {
        // By hand: 0.10 m^2 x (0.30 - 0.20) = 10 L stay, 5 L go on to 0.05 m^2: 0.10 m more.
        SumpCascade sump =
                new SumpCascade(List.of(new SumpSection(0.10, 0.20, 0.30), new SumpSection(0.05, 0.10, 0.40)));
        List<SumpSection> rest = sump.settle(15 * LITRES).sump().sections();
        assertThat(rest.get(0).level()).isCloseTo(0.30, within(1e-12));
        assertThat(rest.get(1).level()).isCloseTo(0.20, within(1e-12));
        assertThat(sump.settle(8 * LITRES).sump().sections().get(1).level()).isEqualTo(0.10);
    }

    @Test
    void anOverfullLastSectionRunsBackOverItsBaffle() {
        // By hand: 0.05 m^2 x (0.34 - 0.30) = 2 L run back into 0.10 m^2: 20 mm more.
        SumpCascade sump =
                new SumpCascade(List.of(new SumpSection(0.10, 0.20, 0.30), new SumpSection(0.05, 0.34, 0.40)));
        List<SumpSection> rest = sump.settle(0).sump().sections();
        assertThat(rest.get(0).level()).isCloseTo(0.22, within(1e-12));
        assertThat(rest.get(1).level()).isCloseTo(0.30, within(1e-12));
    }

    @Test
    void aHigherBaffleFurtherDownBacksTheFirstSectionUp() {
        SumpCascade sump = new SumpCascade(List.of(
                new SumpSection(0.10, 0.20, 0.20),
                new SumpSection(0.10, 0.30, 0.30),
                new SumpSection(0.05, 0.10, 0.40)));
        List<SumpSection> rest = sump.settle(10 * LITRES).sump().sections();
        assertThat(rest.get(0).level()).isCloseTo(0.30, within(1e-12));
        assertThat(rest.get(2).level()).isCloseTo(0.10, within(1e-12));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new SumpCascade(List.of())).hasMessageContaining("0 sections");
        assertThatThrownBy(() -> new SumpCascade(List.of(new SumpSection(0.1, 0.5, 0.4))))
                .hasMessageContaining("level of a sump section 0.5 m is outside 0.0 to 0.4 m");
        assertThatThrownBy(() -> SUMP.freeVolume(0.5)).hasMessageContaining("height to fill to");
        assertThatThrownBy(() -> SUMP.settle(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new DrainDown(0, 0, -1, 0, 0)).hasMessageContaining("water of the box");
        assertThatThrownBy(() -> new LostOverflow(0, 0, Double.NaN)).hasMessageContaining("top-off");
    }
}
