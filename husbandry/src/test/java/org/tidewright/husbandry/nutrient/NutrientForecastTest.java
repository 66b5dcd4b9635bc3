package org.tidewright.husbandry.nutrient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.rehearsal.Band;

/**
 * The first example: 0.5 g of pellets and 2 g of mysids twice a day, 0.4 g of seaweed every other day; but next to no
 * vinegar, so that nitrate rises.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NutrientForecastTest {
    /** kg/s in a gram a day. */
    private static final double GRAM_A_DAY = 1e-3 / 86_400;

    private final Plan plan = TestPlans.example("harbour-room", "per_day: 60 mL/d", "per_day: 0.1 mL/d");
    private final NutrientForecast forecast = NutrientForecast.of(plan);
    private final NutrientReport asRun = forecast.report(UnitSystem.METRIC, Map.of());
    private final NutrientReport lessFeed = forecast.report(UnitSystem.METRIC, Map.of("feed_percent", 80.0));

    private static FlowPicture picture(NutrientReport report, Element element) {
        return Objects.requireNonNull(report.of(element)).drawn();
    }

    private static NutrientCurve curve(NutrientReport report, Quantity quantity) {
        return report.curves().stream()
                .filter(curve -> curve.quantity() == quantity)
                .findFirst()
                .orElseThrow();
    }

    private static String lead(NutrientReport report) {
        return report.lead().text(UnitSystem.METRIC).replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @EnumSource
    void allThatComesInGoesOutOrStays(Element element) {
        for (NutrientReport report : List.of(asRun, lessFeed)) {
            FlowPicture picture = picture(report, element);
            double total = picture.total();
            assertThat(total).isPositive();
            double ends = 0;
            for (FlowPicture.Node node : picture.nodes()) {
                double in = picture.into(node);
                double out = picture.outOf(node);
                switch (node.kind()) {
                    case SOURCE -> assertThat(in).as(node.words()).isZero();
                    case PLACE -> assertThat(in).as(node.words()).isCloseTo(out, within(1e-9 * total));
                    case OUT, STAYS -> {
                        assertThat(out).as(node.words()).isZero();
                        ends += in;
                    }
                }
            }
            assertThat(ends).isCloseTo(total, within(1e-9 * total));
        }
    }

    /** Pellets 0.5 g twice a day with 7.7 % nitrogen and 1.2 % phosphorus; the rest likewise. */
    @Test
    void foodBringsWhatIsInIt() {
        assertThat(of(picture(asRun, Element.NITROGEN), "in pellets")).isCloseTo(2 * 0.5 * 0.077, within(1e-9));
        assertThat(of(picture(asRun, Element.NITROGEN), "in mysids")).isCloseTo(2 * 2 * 0.0185, within(1e-9));
        assertThat(of(picture(asRun, Element.NITROGEN), "in seaweed")).isCloseTo(0.5 * 0.4 * 0.055, within(1e-9));
        assertThat(of(picture(asRun, Element.PHOSPHORUS), "in pellets")).isCloseTo(2 * 0.5 * 0.012, within(1e-9));
        assertThat(of(picture(lessFeed, Element.NITROGEN), "in pellets"))
                .isCloseTo(0.8 * 2 * 0.5 * 0.077, within(1e-9));
    }

    private static double of(FlowPicture picture, String id) {
        return picture.nodes().stream()
                        .filter(node -> node.id().equals(id))
                        .mapToDouble(picture::outOf)
                        .sum()
                / GRAM_A_DAY;
    }

    /** 45 L a week of old water for new that holds 0.2 mg/L: 14.007/62.004 of the nitrate is nitrogen. */
    @Test
    void aWaterChangeTakesTheWatersNitrogen() {
        FlowPicture picture = picture(asRun, Element.NITROGEN);
        double out = picture.rate("water", "out weekly change") / GRAM_A_DAY;
        double nitrate = curve(asRun, Quantity.NITRATE).endAsRun() * 45 / 7 / 1000 * 14.0067 / 62.004;
        // What drifts in the water goes along, and the mean of the last week is not the water of either change.
        assertThat(out).isBetween(0.95 * nitrate, 1.1 * nitrate);
        FlowPicture.Node fresh = picture.nodes().stream()
                .filter(node -> node.words().equals("new water"))
                .findFirst()
                .orElseThrow();
        assertThat(picture.outOf(fresh) / GRAM_A_DAY).isCloseTo(0.2 * 45 / 7 / 1000 * 14.0067 / 62.004, within(1e-6));
    }

    @Test
    void everyMealChangeAndHarvestIsCountedAsOftenAsItHappens() {
        // Meals every day and every other, a sock every other, changes weekly, harvests fortnightly.
        assertThat(NutrientForecast.averagedDays(plan)).isEqualTo(14);
        assertThat(picture(asRun, Element.NITROGEN).days()).isCloseTo(14, within(1e-9));
    }

    @Test
    void everyPoolThatHoldsTheElementsHasItsPlace() {
        for (FlowPicture picture : List.of(picture(asRun, Element.NITROGEN), picture(asRun, Element.PHOSPHORUS))) {
            assertThat(picture.nodes())
                    .extracting(FlowPicture.Node::words)
                    .contains("pellets", "fish", "water", "skimmer", "weekly change")
                    .noneMatch(words -> words.startsWith("piles up: "));
        }
        assertThat(picture(asRun, Element.NITROGEN).nodes())
                .extracting(FlowPicture.Node::words)
                .contains("nitrogen gas", "growth of the fish", "harvest in the refugium");
        assertThat(picture(asRun, Element.PHOSPHORUS).nodes())
                .extracting(FlowPicture.Node::words)
                .contains("into the phosphate reactor");
    }

    @Test
    void nothingTurnsInCircles() {
        for (Element element : Element.values()) {
            FlowPicture picture = picture(asRun, element);
            for (FlowPicture.Node start : picture.nodes()) {
                assertThat(reaches(picture, start, start, 0)).as(start.words()).isFalse();
            }
        }
    }

    private static boolean reaches(FlowPicture picture, FlowPicture.Node from, FlowPicture.Node goal, int deep) {
        return deep > picture.nodes().size()
                || picture.flows().stream()
                        .filter(flow -> flow.from().equals(from))
                        .anyMatch(flow -> flow.to().equals(goal) || reaches(picture, flow.to(), goal, deep + 1));
    }

    @Test
    void thePlansOwnWaterIsTheStart() {
        assertThat(curve(asRun, Quantity.NITRATE).start()).isCloseTo(8, within(1e-6));
        assertThat(curve(asRun, Quantity.PHOSPHATE).start()).isCloseTo(0.06, within(1e-6));
    }

    @Test
    void theHandlesAreWhatThePlanHas() {
        assertThat(Handles.of(plan, UnitSystem.METRIC))
                .extracting(Handle::key)
                .containsExactly(
                        "feed_percent",
                        "skimmer_strength_percent",
                        "filter_sock_strength_percent",
                        "refugium_lamp_hours_h",
                        "refugium_lit_area_cm2",
                        "phosphate_reactor_mass_g",
                        "water_changes_percent",
                        "siphoning_percent");
        assertThat(Handles.of(plan, UnitSystem.METRIC))
                .extracting(Handle::planned)
                .containsExactly(100.0, 100.0, 100.0, 12.0, 900.0, 200.0, 100.0, 100.0);
    }

    /** 1 in² is 6.4516 cm², 1 oz is 28.349523125 g. */
    @Test
    void readersInTheUnitedStatesMoveSquareInchesAndOunces() {
        List<Handle> handles = Handles.of(plan, UnitSystem.US);
        assertThat(handles).extracting(Handle::symbol).containsExactly("%", "%", "%", "h", "in²", "oz", "%", "%");
        assertThat(handles.get(4).planned()).isCloseTo(900 / 6.4516, within(1e-6));
        assertThat(handles.get(5).planned()).isCloseTo(200 / 28.349523125, within(1e-6));
        // A field shows thousandths of an ounce; that alone moves nothing.
        assertThat(handles.get(5).isMoved(7.055)).isFalse();
        assertThat(handles.get(5).isMoved(7.1)).isTrue();
        double grams = curve(
                        forecast.report(UnitSystem.METRIC, Map.of("phosphate_reactor_mass_g", 400.0)),
                        Quantity.PHOSPHATE)
                .end();
        double ounces = curve(
                        forecast.report(UnitSystem.US, Map.of("phosphate_reactor_mass_oz", 400 / 28.349523125)),
                        Quantity.PHOSPHATE)
                .end();
        assertThat(ounces).isCloseTo(grams, within(1e-9));
    }

    @Test
    void onceDrawnTheCourseAsItIsRunLiesInItsBand() {
        assertThat(asRun.draws()).isZero();
        assertThat(curve(asRun, Quantity.NITRATE).drawn()).isNull();
        forecast.draw(20);
        NutrientReport drawn = forecast.report(UnitSystem.METRIC, Map.of("feed_percent", 80.0));
        assertThat(drawn.draws()).isEqualTo(20);
        assertThat(drawn.doubt().toString()).contains("20 draws");
        assertThat(asRun.doubt().toString()).contains("no band yet");
        for (Quantity quantity : List.of(Quantity.NITRATE, Quantity.PHOSPHATE)) {
            NutrientCurve curve = curve(drawn, quantity);
            Band band = Objects.requireNonNull(curve.drawn());
            assertThat(band.low()).hasSameSizeAs(curve.asRun());
            // 2 mg/L of nitrate and 0.02 of phosphate are stated as the start's standard errors.
            double doubt = quantity == Quantity.NITRATE ? 2 : 0.02;
            assertThat(curve.start()).isBetween(band.low()[0], band.high()[0]);
            assertThat(band.high()[0] - band.low()[0]).isBetween(2 * 1.3 * doubt, 2 * 2.2 * doubt);
        }
        assertThat(curve(drawn, Quantity.AMMONIA).drawn()).isNull();
    }

    /** A handle's name is one of the twin's levers, and what the plan does is what the lever says. */
    @Test
    void everyHandleMovesALeverOfTheTwin() {
        Forecast twin = Forecast.of(plan);
        for (Handle handle : Handles.of(plan, UnitSystem.METRIC)) {
            double initial = twin.twin().levers().get(handle.lever()).setting().initial();
            assertThat(handle.planned() * handle.perUnit())
                    .as(handle.lever())
                    .isCloseTo(initial, within(1e-9 * initial));
        }
    }

    @Test
    void lessFeedIsLessNitrateAndThePageSaysWhereItEnds() {
        NutrientCurve nitrate = curve(lessFeed, Quantity.NITRATE);
        assertThat(nitrate.end()).isLessThan(nitrate.endAsRun());
        assertThat(nitrate.endAsRun()).isEqualTo(curve(asRun, Quantity.NITRATE).endAsRun());
        assertThat(lead(lessFeed))
                .startsWith("Set the feed to 80 %: nitrate comes to ")
                .contains(" in place of ");
        assertThat(lessFeed.isChanged()).isTrue();
        assertThat(asRun.isChanged()).isFalse();
    }

    @Test
    void withoutAChangeTheSentenceSaysWhereItGoes() {
        assertThat(lead(asRun))
                .startsWith("Feed less or take out more: nitrate rises to ")
                .contains("between 1 and 12");
        assertThat(asRun.doubt().text(UnitSystem.METRIC)).contains("usual values", "nitrogen gas", "skimmer");
    }

    @Test
    void theExampleAsItIsRunIsLeftAsItIs() {
        NutrientReport run =
                NutrientForecast.of(TestPlans.example("harbour-room")).report(UnitSystem.METRIC, Map.of());
        assertThat(lead(run)).startsWith("Leave the feed as it is: nitrate ");
    }

    /** Fish that get nothing burn themselves: whatever it does for the water, it is not advised. */
    @Test
    void starvingTheFishIsNotAdvised() {
        for (double feed : new double[] {30, 5, 0}) {
            NutrientReport little = forecast.report(UnitSystem.METRIC, Map.of("feed_percent", feed));
            assertThat(lead(little))
                    .startsWith("Leave the feed at 100 %: at " + (int) feed + " % the fish lose weight");
            assertThat(little.cautions()).anyMatch(words -> words.startsWith("The fish get less than they burn"));
        }
        assertThat(lessFeed.cautions()).anyMatch(words -> words.startsWith("Feed less only while"));
        assertThat(asRun.cautions()).noneMatch(words -> words.contains("weight"));
    }

    @Test
    void twoMovedAtOnceAreWarnedOf() {
        NutrientReport two =
                forecast.report(UnitSystem.METRIC, Map.of("feed_percent", 50.0, "skimmer_strength_percent", 150.0));
        assertThat(lead(two)).startsWith("Move one thing at a time: with all two moved");
        assertThat(two.cautions()).anyMatch(words -> words.startsWith("Never change two things at once"));
        assertThat(lessFeed.cautions()).noneMatch(words -> words.startsWith("Never change two things at once"));
    }

    @Test
    void aValueNoSliderReachesIsRefused() {
        assertThatThrownBy(() -> forecast.report(UnitSystem.METRIC, Map.of("feed_percent", 1e6)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Feed cannot be 1000000.0 %");
    }

    @Test
    void everySourceLetterInTheSentenceIsExplained() {
        assertThat(asRun.lead().parts().stream()
                        .filter(part -> part instanceof org.tidewright.husbandry.advice.Sentence.Part.Sounding)
                        .map(part -> ((org.tidewright.husbandry.advice.Sentence.Part.Sounding) part).source()))
                .allMatch(key ->
                        asRun.sources().stream().anyMatch(source -> source.key().equals(key)));
    }
}
