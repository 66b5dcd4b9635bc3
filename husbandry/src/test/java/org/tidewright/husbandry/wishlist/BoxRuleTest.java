package org.tidewright.husbandry.wishlist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Candidates;
import org.tidewright.husbandry.quarantine.BareTankWater;
import org.tidewright.plan.species.Catalogue;

/** What the example's quarantine tank carries: 46.8 L, and 20 g of fish by its plan. */
class BoxRuleTest {
    private static BareTankWater held(double share) {
        BareTankWater.Run run = House.WATER.unchanged();
        BareTankWater.Run other = new BareTankWater.Run(
                run.course(), run.amber(), run.red(), run.peak(), run.peakDay(), run.nitrite(), share);
        return new BareTankWater(House.BOX, House.WATER.volume(), House.WATER.fish(), 3e-4, run, other, other);
    }

    /** 20 g × 0.5 over the share; no more than twice the plan's. */
    @Test
    void halfTheWaterADayIsTheMostThatIsAskedFor() {
        assertThat(BoxRule.capacity(held(0.65))).isCloseTo(0.01538, within(1e-5));
        assertThat(BoxRule.capacity(held(0.4))).isCloseTo(0.025, within(1e-9));
        assertThat(BoxRule.capacity(held(0.1))).isCloseTo(0.040, within(1e-9));
    }

    @Test
    void whatIsCalmAsPlannedCarriesWhatIsPlanned() {
        assertThat(BoxRule.capacity(held(0))).isCloseTo(0.020, within(1e-9));
    }

    /** 0.25 g to a litre. */
    @Test
    void whereTheTwinHasNoAnswerTheWorkedTankHas() {
        assertThat(BoxRule.capacity(held(Double.POSITIVE_INFINITY))).isCloseTo(0.0117, within(1e-4));
        assertThat(BoxRule.isByTwin(held(Double.POSITIVE_INFINITY))).isFalse();
    }

    @Test
    void twoWishesShareFortyLitres() {
        assertThat(BoxRule.wishes(House.WATER)).isEqualTo(2);
    }

    @Test
    void coralsStayAFortnightAndWhatMovesTheTanksDays() {
        assertThat(BoxRule.days(animals("candy cane coral"), 30)).isEqualTo(14);
        assertThat(BoxRule.days(animals("trochus snail"), 30)).isEqualTo(30);
        assertThat(BoxRule.days(animals("yellow assessor"), 30)).isEqualTo(30);
    }

    @Test
    void coralsWeighNothingAndSnailsAGramEach() {
        assertThat(LiveMass.of(animals("candy cane coral"))).isZero();
        assertThat(LiveMass.of(animals("6 trochus snail"))).isCloseTo(0.006, within(1e-12));
    }

    private static Animals animals(String words) {
        return Candidates.read(words, Catalogue.ofProgram());
    }
}
