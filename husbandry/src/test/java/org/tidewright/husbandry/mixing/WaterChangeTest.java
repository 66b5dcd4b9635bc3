package org.tidewright.husbandry.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.mixing.Shift.Pace;
import org.tidewright.husbandry.mixing.WaterChange.Split;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.testkit.SeededCases;

class WaterChangeTest {
    private static final double DAY = 86_400;

    private static KnownWater water(double degrees) {
        return KnownWater.of(35, 25).with(WaterQuantity.ALKALINITY, Alkalinity.fromGermanDegrees(degrees));
    }

    private static WaterChange change(double litres, KnownWater old, KnownWater fresh) {
        return new WaterChange(new Portion(0.2, old), litres * 1e-3, fresh);
    }

    static String text(Sentence sentence) {
        return sentence.text(UnitSystem.METRIC).replace('\u00a0', ' ').replace("\u202f", "");
    }

    /** A fifth of water at 11 dKH on 8: 0.6 dKH up. */
    @Test
    void aFifthBringsAFifthOfTheDifference() {
        Shift shift = change(40, water(8), water(11)).shifts().stream()
                .filter(each -> each.quantity() == WaterQuantity.ALKALINITY)
                .findFirst()
                .orElseThrow();
        assertThat(Alkalinity.toGermanDegrees(shift.step())).isCloseTo(0.6, within(1e-9));
        assertThat(shift.pace(Keeping.SOFT_CORALS)).isEqualTo(Pace.BRISK);
        assertThat(shift.pace(Keeping.SMALL_POLYPS)).isEqualTo(Pace.BRISK);
    }

    @Test
    void beyondTheCeilingItShocks() {
        Shift shift = new Shift(WaterQuantity.SALINITY, 35, 33.9);
        assertThat(shift.pace(Keeping.SOFT_CORALS)).isEqualTo(Pace.BRISK);
        assertThat(new Shift(WaterQuantity.SALINITY, 33.9, 35).pace(Keeping.SOFT_CORALS))
                .isEqualTo(Pace.SHOCK);
        assertThat(new Shift(WaterQuantity.SALINITY, 33.9, 35).pace(Keeping.FISH))
                .isEqualTo(Pace.BRISK);
        assertThat(new Shift(WaterQuantity.TEMPERATURE, 25, 23.9).pace(Keeping.FISH))
                .isEqualTo(Pace.SHOCK);
        assertThat(new Shift(WaterQuantity.NITRATE, 0.040, 0.028).pace(Keeping.FISH))
                .isEqualTo(Pace.SHOCK);
        assertThat(new Shift(WaterQuantity.NITRATE, 0.040, 0.041).pace(Keeping.FISH))
                .isEqualTo(Pace.WITHOUT_RULE);
        assertThat(new Shift(WaterQuantity.MAGNESIUM, 1.30, 1.34).pace(Keeping.FISH))
                .isEqualTo(Pace.COMFORTABLE);
    }

    /** 0.6 dKH at 0.3 a day is two parts; 2 dKH from 6.2 to 8.2 at 0.3 a day is seven days. */
    @Test
    void aShockIsSplitIntoAsManyDaysAsThePaceAsks() {
        assertThat(change(40, water(8), water(11)).split(WaterQuantity.ALKALINITY, Keeping.SMALL_POLYPS))
                .contains(new Split(2, DAY));
        assertThat(change(40, water(8), water(11)).split(WaterQuantity.ALKALINITY, Keeping.SOFT_CORALS))
                .contains(new Split(2, DAY));
        assertThat(change(100, water(6.2), water(10.2)).split(WaterQuantity.ALKALINITY, Keeping.SMALL_POLYPS))
                .contains(new Split(7, DAY));
    }

    /** A tenth of water 8 K colder: 0.8 K, twice 0.4 an hour apart; a fifth 8 K colder: 1.6 K, over days. */
    @Test
    void coolWaterIsPouredOverHoursWhileTheDayAllowsIt() {
        assertThat(change(20, KnownWater.of(35, 25), KnownWater.of(35, 17))
                        .split(WaterQuantity.TEMPERATURE, Keeping.FISH))
                .contains(new Split(2, 3600));
        assertThat(change(40, KnownWater.of(35, 25), KnownWater.of(35, 17))
                        .split(WaterQuantity.TEMPERATURE, Keeping.FISH))
                .contains(new Split(4, DAY));
    }

    @Test
    void noPartOfASplitIsUncomfortableAndOneFewerWouldBe() {
        SeededCases.check(300, draw -> {
            WaterChange change = change(draw.between(5, 180), water(draw.between(6, 9)), water(draw.between(6, 14)));
            Keeping keeping = draw.oneOf(Keeping.values());
            Split split = change.split(WaterQuantity.ALKALINITY, keeping).orElseThrow();
            assertThat(pace(change.part(split.parts()), keeping)).isEqualTo(Pace.COMFORTABLE);
            if (split.parts() > 1) {
                assertThat(pace(change.part(split.parts() - 1), keeping)).isNotEqualTo(Pace.COMFORTABLE);
            }
        });
    }

    private static Pace pace(WaterChange change, Keeping keeping) {
        return change.shifts().stream()
                .filter(shift -> shift.quantity() == WaterQuantity.ALKALINITY)
                .findFirst()
                .orElseThrow()
                .pace(keeping);
    }

    /** In parts it ends at new + (old − new)(1 − w/n)^n, a little short of the change in one go. */
    @Test
    void partsEndWhereTheFormulaSays() {
        SeededCases.check(200, draw -> {
            double w = draw.between(0.05, 0.9);
            int parts = draw.whole(1, 8);
            Portion system = new Portion(0.2, water(8));
            for (int i = 0; i < parts; i++) {
                Portion now = new WaterChange(system, w / parts * 0.2, water(11)).after();
                // What a part puts in is what it takes out, at one density to rounding.
                system = new Portion(0.2, now.water());
            }
            double expected = 11 + (8 - 11) * Math.pow(1 - w / parts, parts);
            double got = Alkalinity.toGermanDegrees(
                    system.water().value(WaterQuantity.ALKALINITY).orElseThrow());
            assertThat(got).isCloseTo(expected, within(1e-9));
        });
    }

    @Test
    void aGentleChangeIsToldToGoAhead() {
        Advice advice = change(20, water(8), water(8.5)).advice(Keeping.SMALL_POLYPS);
        assertThat(text(advice.lead())).startsWith("Go ahead with 20 L");
        assertThat(text(advice.remarks().get(0)))
                .startsWith("Not known of both waters")
                .contains("calcium, magnesium, nitrate, phosphate");
    }

    @Test
    void aShockIsToldWithItsPartsAndTheCeiling() {
        Advice advice = change(100, water(6.2), water(10.2)).advice(Keeping.SMALL_POLYPS);
        assertThat(text(advice.lead()))
                .isEqualTo(
                        "Split it into 7 parts of 14.3 L, a day apart: in one go it would raise the alkalinity by 2 dKH,"
                                + " and 0.3 dKH a day is comfortable for stony corals of small polyps, 1 dKH the ceiling.");
        assertThat(advice.cautions()).anySatisfy(caution -> assertThat(caution).contains("residual-current"));
        assertThat(advice.sources())
                .allSatisfy(source -> assertThat(source.detail()).isNotEmpty());
    }

    /** A fifth of clean water takes a fifth of the nitrate: above the comfortable tenth, below the ceiling of a quarter. */
    @Test
    void nitrateThatFallsByAFifthHoldsNoChangeUp() {
        WaterChange change = change(
                40,
                KnownWater.of(35, 25).with(WaterQuantity.NITRATE, 0.030),
                KnownWater.of(35, 25).with(WaterQuantity.NITRATE, 0));
        Advice advice = change.advice(Keeping.SOFT_CORALS);
        assertThat(text(advice.lead())).startsWith("Go ahead with 40 L").endsWith("than soft corals bear in a day.");
        assertThat(text(advice.remarks().get(0))).startsWith("For nitrate, 2 parts of 20 L, a day apart");
    }

    @Test
    void saltIsToldBeforeWarmthWhichIsMendedFirstAnyway() {
        WaterChange change = change(60, KnownWater.of(34, 25), KnownWater.of(36, 17));
        Advice advice = change.advice(Keeping.SOFT_CORALS);
        assertThat(text(advice.lead())).startsWith("Better split it into 2 parts of 30 L");
        assertThat(text(advice.remarks().get(0))).startsWith("Bring the new water to between 23.3 °C");
    }

    @Test
    void coldWaterIsToldToBeWarmedFirst() {
        Advice advice = change(40, KnownWater.of(35, 25), KnownWater.of(35, 17)).advice(Keeping.SOFT_CORALS);
        assertThat(text(advice.lead()))
                .startsWith("Bring the new water to between 22.5 °C and 27.5 °C before you pour");
    }

    @Test
    void nothingKnownIsMeasuredFirst() {
        KnownWater unknown = new KnownWater(Map.of());
        assertThat(text(change(20, unknown, unknown).advice(Keeping.FISH).lead()))
                .startsWith("Measure both waters before you pour");
    }

    @Test
    void moreThanTheSystemHoldsIsRefused() {
        assertThatThrownBy(() -> change(300, water(8), water(8)))
                .hasMessageContaining("is it more than the system holds?");
    }

    @Test
    void everyMoveIsToldBesideItsLimits() {
        Advice advice = change(40, water(8), water(11)).advice(Keeping.SMALL_POLYPS);
        assertThat(advice.working())
                .anySatisfy(step -> assertThat(text(step))
                        .isEqualTo(
                                "In one go alkalinity rises by 0.6 dKH; 0.3 dKH a day is comfortable for stony corals of"
                                        + " small polyps, 1 dKH the ceiling."));
    }

    /** Four fifths of ± 0.2 are left. */
    @Test
    void theDoubtOfAReadingGoesIntoTheMixture() {
        KnownWater read = KnownWater.of(35, 25)
                .with(WaterQuantity.ALKALINITY, Alkalinity.fromGermanDegrees(8), Alkalinity.fromGermanDegrees(0.2));
        assertThat(change(40, read, water(11)).advice(Keeping.FISH).figures()).anySatisfy(told -> {
            assertThat(told.name()).isEqualTo("alkalinity after the change");
            assertThat(text(Sentence.of(told.figure()))).isEqualTo("8.6 ± 0.2 dKH");
        });
    }
}
