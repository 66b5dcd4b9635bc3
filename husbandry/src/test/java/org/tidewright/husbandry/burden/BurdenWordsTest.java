package org.tidewright.husbandry.burden;

import static java.lang.Double.POSITIVE_INFINITY;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.forecast.Outlook.Range;

/** What is said of burdens made by hand: the act first, and the same words whichever the reason. */
class BurdenWordsTest {
    private final HandMadeBurden made = new HandMadeBurden();

    private static Range all(double value) {
        return HandMadeBurden.all(value);
    }

    private Advice advice() {
        return made.burden().advice();
    }

    private String lead() {
        return advice().lead().text(UnitSystem.METRIC);
    }

    private String remarks() {
        return String.join(
                "\n",
                advice().remarks().stream()
                        .map(remark -> remark.text(UnitSystem.METRIC))
                        .toList());
    }

    @Test
    void calmWaterTakesItToday() {
        assertThat(lead())
                .startsWith("Add it today, as far as ammonia goes: free ammonia stays at 0.002\u00a0mg/L")
                .endsWith("in the three weeks after, where 0.02\u00a0mg/L is to be watched.");
        assertThat(remarks())
                .contains("A test should show no ammonia")
                .contains("Leave the means against nitrate as they are")
                .contains("The night's air is enough")
                .contains("makes no difference you would notice");
    }

    @Test
    void severalAreThem() {
        made.addition = Addition.today(0.01, 3, 0.08);
        assertThat(lead()).startsWith("Add them today");
        made.grownNitrate = 20;
        assertThat(remarks()).contains("as they grow: ").contains("with them grown");
    }

    @Test
    void whatNeedsTimeIsToldItsDay() {
        made.calm = new Range(0, 7, 21);
        made.calmToday = 0.4;
        assertThat(lead()).startsWith("Wait with it until day\u00a021: the bacteria are still catching up");
        made.addition = made.addition.on(28);
        assertThat(lead()).startsWith("Add it on day\u00a028, and not before day\u00a021, as far as ammonia goes");
    }

    @Test
    void whereSomeDrawsNeverCalmItIsUpToTheTests() {
        made.calm = new Range(0, 0, POSITIVE_INFINITY);
        made.calmToday = 0.9;
        assertThat(lead())
                .startsWith("Add it today only if you will test")
                .contains("in 90\u00a0% of the draws")
                .contains("waiting would not help");
        made.calm = new Range(0, 14, POSITIVE_INFINITY);
        assertThat(lead()).startsWith("Wait with it until day\u00a014 at least");
    }

    @Test
    void whatTheBacteriaNeverFollowIsNotAdded() {
        made.calm = all(POSITIVE_INFINITY);
        made.calmToday = 0;
        assertThat(lead()).startsWith("Do not add it as things are").contains("Fewer or smaller ones at a time");
    }

    @Test
    void waterThatIsNotCalmByItselfTakesNothing() {
        made.restless = 0.6;
        assertThat(lead()).startsWith("Add nothing yet").contains("60\u00a0% of the draws");
        made.restless = 0.2;
        assertThat(lead()).startsWith("Add it today");
        assertThat(remarks()).contains("In 20\u00a0% of the draws ammonia or nitrite is not calm even without it");
    }

    @Test
    void shortOfAirComesBeforeAmmonia() {
        made.saturation = 58;
        assertThat(lead())
                .startsWith("Move more air over the water before you add it")
                .contains("58\u00a0%")
                .contains("91\u00a0%");
        made.saturation = 70;
        assertThat(lead()).startsWith("Add it today");
        assertThat(remarks()).contains("Watch the nights: ");
        made.grownSaturation = 55;
        assertThat(remarks()).contains("More air over the water will be needed as it grows: ");
    }

    @Test
    void nutrientsOutOfTheirRangeComeFirst() {
        made.nitrate = 18;
        assertThat(lead()).startsWith("Take out more nitrate before you add it; ammonia is no hindrance today: ");
        assertThat(remarks())
                .contains(
                        "Take out more nitrate first: after twelve weeks it stands at 7.0\u00a0mg/L\u00a0(7.0–7.0) without it, with it by 11.0\u00a0mg/L");
        // Out of the range without it already, and no test can tell what it does.
        made.nitrate = 8;
        made.grownNitrate = 8.5;
        assertThat(remarks()).contains("Leave nitrate to itself");
        made.grownNitrate = 18;
        assertThat(lead()).startsWith("Add it today");
        assertThat(remarks()).contains("Be ready to take out more nitrate as it grows");
    }

    @Test
    void aTestThatWillShowAmmoniaIsTold() {
        made.ammonia = 0.1;
        assertThat(remarks()).contains("A test will show ammonia: 0.100\u00a0mg/L");
        made.ammonia = 0.099;
        assertThat(remarks()).contains("A test should show no ammonia");
    }

    @Test
    void anOutageIsToldByTheTimeItCosts() {
        made.hours = 7.4;
        assertThat(remarks())
                .contains("In an outage you have less time: oxygen falls to ")
                .contains("where you must act, after 8.0");
        made.hoursWithout = POSITIVE_INFINITY;
        assertThat(remarks()).contains("where you must act, not before it is over without it, after 7.4");
        made.hours = POSITIVE_INFINITY;
        assertThat(remarks()).contains("oxygen does not fall to");
    }

    @Test
    void leftOutDrawsAreTold() {
        made.endedEarly = 2;
        assertThat(remarks()).contains("2 more draws came to a state no law of the twin holds for");
    }

    @Test
    void everyNumberThatWasComputedHasItsSource() {
        Advice advice = advice();
        assertThat(advice.sources()).extracting(source -> source.key()).doesNotHaveDuplicates();
        for (Sentence remark : advice.remarks()) {
            for (Sentence.Part part : remark.parts()) {
                if (part instanceof Sentence.Part.Sounding number) {
                    assertThat(advice.sources())
                            .extracting(source -> source.key())
                            .contains(number.source());
                }
            }
        }
        assertThat(advice.cautions()).anySatisfy(caution -> assertThat(caution).startsWith("Test ammonia and nitrite"));
        assertThat(advice.figures()).hasSize(9);
    }
}
