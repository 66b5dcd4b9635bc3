package org.tidewright.husbandry.quarantine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.journal.Event.Turn;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.plan.model.UnitSystem;

/** Days without fish, against the published studies of the parasites' lives. */
class FallowTest {
    private static FallowState running(Log log, double temperature, int today) {
        List<FallowState> running = FallowState.running(log.lines(), temperature, Log.day(today));
        assertThat(running).hasSize(1);
        return running.get(0);
    }

    /** A worked example: begun on 3 March, 76 days, so from 18 May; a net dipped on day 40 begins it anew. */
    @Test
    void seventySixDaysFromTheThirdOfMarchEndOnTheEighteenthOfMay() {
        Log log = new Log().fallow(3, Parasite.WHITE_SPOT, Turn.BEGAN, "");
        FallowState state = running(log, 25.5, 10);
        assertThat(state.restock()).isEqualTo(LocalDate.parse("2026-05-18"));
        assertThat(state.earliest()).isEqualTo(LocalDate.parse("2026-04-10"));
        assertThat(state.dayOf(LocalDate.parse("2026-04-12"))).isEqualTo(41);
        log.fallow(43, Parasite.WHITE_SPOT, Turn.BROKEN, "a net of the box was dipped");
        FallowState broken = running(log, 25.5, 60);
        assertThat(broken.countedFrom()).isEqualTo(LocalDate.parse("2026-04-12"));
        assertThat(broken.restock()).isEqualTo(LocalDate.parse("2026-06-27"));
        assertThat(broken.breaks().get(0).why()).isEqualTo("a net of the box was dipped");
    }

    @Test
    void anyArrivalBreaksIt() {
        Log log = new Log().fallow(3, Parasite.VELVET, Turn.BEGAN, "").came(20, 3, "turban snail");
        assertThat(running(log, 25, 30).countedFrom()).isEqualTo(Log.day(20));
        assertThat(running(log, 25, 30).breaks().get(0).why()).isEqualTo("3 turban snail came in");
    }

    @Test
    void itIsOverWhenTheLogSaysSo() {
        Log log = new Log()
                .fallow(3, Parasite.VELVET, Turn.BEGAN, "")
                .fallow(50, Parasite.VELVET, Turn.ENDED, "")
                .fallow(60, Parasite.FLUKES, Turn.BEGAN, "");
        assertThat(FallowState.running(log.lines(), 25, Log.day(70)))
                .singleElement()
                .satisfies(state -> assertThat(state.parasite()).isEqualTo(Parasite.FLUKES));
        assertThat(FallowState.running(log.lines(), 25, Log.day(55))).isEmpty();
    }

    @Test
    void ofTwoTheLongerLeads() {
        Log log = new Log()
                .fallow(3, Parasite.BROOKLYNELLA, Turn.BEGAN, "")
                .fallow(3, Parasite.WHITE_SPOT, Turn.BEGAN, "");
        assertThat(FallowState.running(log.lines(), 25, Log.day(10)))
                .extracting(FallowState::parasite)
                .containsExactly(Parasite.WHITE_SPOT, Parasite.BROOKLYNELLA);
    }

    /**
     * Colorni 1985, Dis. Aquat. Org. 1, 19-22: tomites came from 3 to 28 days after the trophont left, theronts lived 24 to 48
     * hours.
     */
    @Test
    void theShortestSpanForWhiteSpotOutlastsTheLastTomontOfColorni() {
        FallowSpan span = FallowSpan.of(Parasite.WHITE_SPOT, 25);
        assertThat(span.shortest()).isEqualTo(38).isGreaterThan(28 + 2);
        // 72 days claimed of tomonts later (Colorni and Burgess 1997), and the swimmers.
        assertThat(span.customary()).isEqualTo(76).isGreaterThan(72 + 2);
    }

    /**
     * Cheung, Nigrelli and Ruggieri 1979, J. Fish Dis. 2, 93-97: all excysted on day 7 at 30 °C, 70 % on day 9 at 25 °C, 40 %
     * on day 10 at 20 °C. Warmth makes the quick ones quicker and says nothing of the last.
     */
    @Test
    void coolWaterLengthensItByMoreThanCheungSawAndWarmWaterNeverShortensIt() {
        double warm = FallowSpan.of(Parasite.WHITE_SPOT, 30).customary();
        double usual = FallowSpan.of(Parasite.WHITE_SPOT, 25).customary();
        double cool = FallowSpan.of(Parasite.WHITE_SPOT, 20).customary();
        assertThat(warm).isEqualTo(usual);
        // 60 % on day 8 at 25 °C, 40 % on day 10 at 20 °C: at least a quarter longer.
        assertThat(cool / usual).isGreaterThanOrEqualTo(10.0 / 8).isLessThanOrEqualTo(2);
        assertThat(FallowSpan.of(Parasite.WHITE_SPOT, 30).shortest()).isGreaterThan(7);
        assertThat(FallowSpan.of(Parasite.WHITE_SPOT, 20).shortest()).isGreaterThan(3 * 10);
    }

    /** Yoshinaga 2001, Fish Pathol. 36, 231-235: four weeks at 24 % oxygen, then release 10 to 11 days after re-oxygenation. */
    @Test
    void theLongestSpanTakesInTheDormancyOfYoshinaga() {
        FallowSpan span = FallowSpan.of(Parasite.WHITE_SPOT, 25);
        assertThat(span.longest() - span.customary()).isEqualTo(28 + 11);
        assertThat(span.longest()).isEqualTo(115);
    }

    /** Virginia Cooperative Extension 600-200: the whole cycle takes 7 to 20 days; dinospores infect for about 15 days. */
    @Test
    void sixWeeksOutlastTheSlowestCycleOfVelvet() {
        FallowSpan span = FallowSpan.of(Parasite.VELVET, 25);
        assertThat(span.shortest()).isEqualTo(20 + 15);
        assertThat(span.customary()).isEqualTo(42);
    }

    /**
     * Ernst et al. 2005, J. Fish Dis. 28, 157-164: Benedenia seriolae hatched first 5 days after laying at 28 °C and 16 at 14
     * °C. Fish Pathology 30, 1995: Neobenedenia girellae began to hatch after 5 to 6 days at 25 °C, matured 10 to 11 days
     * later, 15 to 17 from egg to maturity.
     */
    @Test
    void flukesHatchAsErnstSawAndFourWeeksHoldAWholeGeneration() {
        assertThat(FallowSpan.firstHatch(28)).isCloseTo(5, within(1e-12));
        assertThat(FallowSpan.firstHatch(14)).isCloseTo(16, within(1e-12));
        // Another species, a day quicker than the line through Ernst's two.
        assertThat(FallowSpan.firstHatch(25)).isCloseTo(5.5, within(1.0));
        FallowSpan span = FallowSpan.of(Parasite.FLUKES, 25);
        assertThat(span.shortest()).isEqualTo(28).isGreaterThan(17);
        assertThat(span.customary()).isEqualTo(42).isGreaterThan(2 * 17);
        FallowSpan cool = FallowSpan.of(Parasite.FLUKES, 18);
        assertThat(cool.shortest()).isGreaterThan(3 * FallowSpan.firstHatch(18));
        assertThat(cool.customary()).isBetween(60.0, 80.0);
    }

    @ParameterizedTest
    @EnumSource
    void spansAreInOrderWhateverTheWater(Parasite parasite) {
        for (double temperature = 10; temperature <= 34; temperature++) {
            FallowSpan span = FallowSpan.of(parasite, temperature);
            assertThat(span.shortest()).isLessThanOrEqualTo(span.customary());
            assertThat(span.customary()).isLessThanOrEqualTo(span.longest());
            assertThat(span.customary()).isEqualTo(Math.rint(span.customary()));
        }
    }

    @Test
    void itIsToldWithItsDoubtAndWhatBreaksIt() {
        Log log = new Log().fallow(3, Parasite.WHITE_SPOT, Turn.BEGAN, "");
        Advice advice = FallowWords.of(running(log, 25.5, 10), "Harbour room", Log.day(10));
        assertThat(advice.lead().text(UnitSystem.METRIC))
                .isEqualTo(
                        "Leave Harbour room without any fish until Monday 18 May: 76\u00a0days from Tuesday 3 March, what"
                                + " careful keepers wait for white spot.");
        String remarks = advice.remarks().stream()
                .map(remark -> remark.text(UnitSystem.METRIC))
                .reduce("", String::concat);
        assertThat(remarks)
                .contains(
                        "Friday 10 April", "38\u00a0days", "anything wet", "oxygen is short", "25.5\u00a0°C", "hides");
        assertThat(advice.sources())
                .extracting(source -> source.detail())
                .anySatisfy(detail -> assertThat(detail).contains("Colorni 1985"));
        Advice over = FallowWords.of(running(log, 25.5, 80), "Harbour room", Log.day(90));
        assertThat(over.lead().text(UnitSystem.METRIC))
                .startsWith("Fish may come back to Harbour room, out of quarantine");
    }

    @ParameterizedTest
    @EnumSource
    void everyParasiteIsTold(Parasite parasite) {
        Log log = new Log().fallow(3, parasite, Turn.BEGAN, "").fallow(9, parasite, Turn.BROKEN, "");
        for (double temperature : new double[] {12, 20, 26, 31}) {
            Advice advice = FallowWords.of(running(log, temperature, 10), "Harbour room", Log.day(10));
            assertThat(advice.lead().text(UnitSystem.US)).startsWith("Leave Harbour room without any fish until");
            assertThat(advice.remarks()).isNotEmpty();
            assertThat(advice.cautions()).isNotEmpty();
        }
    }
}
