package org.tidewright.husbandry.wishlist;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidewright.husbandry.wishlist.House.BOX_NAME;
import static org.tidewright.husbandry.wishlist.House.TODAY;
import static org.tidewright.husbandry.wishlist.House.coming;
import static org.tidewright.husbandry.wishlist.House.lead;
import static org.tidewright.husbandry.wishlist.House.moved;
import static org.tidewright.husbandry.wishlist.House.why;

import java.time.LocalDate;
import java.time.YearMonth;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.arrival.Arrival;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.Move;
import org.tidewright.husbandry.journal.Event.Turn;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.plan.model.UnitSystem;

/** Plans of small wish lists, followed by hand. The tank watches 30 days and stands dry for three. */
class ArrivalStudyTest {
    @Test
    void aFishComesTodayAndGoesInWhenItsWatchIsOver() {
        ArrivalAnswer answer = new House().plan("yellow assessor price 65");
        Arrival arrival = coming(answer, "yellow assessor").arrival();
        assertThat(arrival.in()).isEqualTo(TODAY);
        assertThat(arrival.out()).isEqualTo(TODAY.plusDays(30));
        assertThat(arrival.tank()).isEqualTo(BOX_NAME);
        assertThat(lead(answer))
                .isEqualTo("Buy the yellow assessor first, today, into Quarantine box; it goes into Harbour room on"
                        + " Monday 6 April.");
        assertThat(answer.months()).containsExactly(new ArrivalAnswer.Month(YearMonth.of(2026, 3), 6500, 0));
    }

    @Test
    void whomTheRulesRefuseIsNotPlannedAndToldWhy() {
        ArrivalAnswer answer = new House().plan("yellow tang", "royal gramma");
        assertThat(answer.coming()).isEmpty();
        assertThat(answer.staying()).allMatch(ArrivalAnswer.Staying::refused);
        assertThat(answer.staying().get(0).why().get(0).text(UnitSystem.METRIC))
                .isEqualTo("One of its kind lives here, and it tolerates no second.");
        assertThat(answer.staying().get(1).becomes().get(0).text(UnitSystem.METRIC))
                .startsWith("Lay a net");
        assertThat(lead(answer)).startsWith("Buy nothing from this list");
    }

    @Test
    void fishAndCoralsDoNotShareATank() {
        ArrivalAnswer answer = new House().plan("candy cane coral", "yellow assessor");
        Arrival coral = coming(answer, "candy cane coral").arrival();
        Arrival fish = coming(answer, "yellow assessor").arrival();
        assertThat(coral.in()).isNotEqualTo(fish.in());
        boolean coralLast = coral.in().isAfter(fish.in());
        Arrival second = coralLast ? coral : fish;
        assertThat(second.in()).isEqualTo(TODAY.plusDays(33));
        assertThat(why(coming(answer, coralLast ? "candy cane coral" : "yellow assessor")))
                .contains("is taken by", "until Monday 6 April, then stands dry until Thursday 9 April.");
    }

    /** Nine months are asked for and 2.3 have passed: 6.7 months of 30.44 days are 204 days. */
    @Test
    void aYoungTankIsWaitedFor() {
        ArrivalAnswer answer = new House().plan("mandarin dragonet");
        ArrivalAnswer.Coming mandarin = coming(answer, "mandarin dragonet");
        assertThat(mandarin.arrival().out()).isEqualTo(TODAY.plusDays(204));
        assertThat(mandarin.arrival().in()).isEqualTo(TODAY.plusDays(174));
        assertThat(why(mandarin)).isEqualTo("Not before Sunday 27 September: the tank is too young for it until then.");
    }

    @Test
    void animalsOfNoKnownKindKeepTheTankUntilTheyAreWatchedAndItIsDry() {
        ArrivalAnswer answer = new House()
                .inBox("2026-02-25", moved(4, "wrasse", Move.ARRIVED))
                .plan("yellow assessor");
        assertThat(coming(answer, "yellow assessor").arrival().in()).isEqualTo(LocalDate.parse("2026-03-30"));
        assertThat(why(coming(answer, "yellow assessor")))
                .startsWith("Quarantine box is not free until Monday 30 March");
    }

    @Test
    void knownAnimalsInTheTankThatNobodyWishedForGoInAsWell() {
        ArrivalAnswer answer = new House()
                .inBox("2026-02-25", moved(1, "neon goby", Move.ARRIVED))
                .plan("yellow assessor");
        Arrival goby = coming(answer, "neon goby").arrival();
        assertThat(goby.stage()).isEqualTo(Arrival.Stage.IN_QUARANTINE);
        assertThat(goby.out()).isEqualTo(LocalDate.parse("2026-03-27"));
        assertThat(coming(answer, "yellow assessor").arrival().in()).isEqualTo(LocalDate.parse("2026-03-30"));
    }

    @Test
    void theMoneyOfAMonthIsNotExceeded() {
        WishList rich = House.list("yellow assessor price 65", "2 neon goby price 60");
        ArrivalAnswer together = new House().plan(rich);
        assertThat(together.months()).hasSize(1);
        ArrivalAnswer apart = new House().plan(new WishList(rich.lines(), 10_000L, null));
        assertThat(apart.months()).hasSize(2).allMatch(month -> month.spent() <= 10_000);
    }

    @Test
    void whatCannotBeHadYetSaysSo() {
        ArrivalAnswer answer = new House().plan("yellow assessor from 2026-05-01");
        assertThat(coming(answer, "yellow assessor").arrival().in()).isEqualTo(LocalDate.parse("2026-05-01"));
        assertThat(why(coming(answer, "yellow assessor")))
                .isEqualTo("Not before Friday 1 May: it cannot be had earlier.");
    }

    @Test
    void withoutAQuarantineTankNothingIsBought() {
        ArrivalAnswer answer = new House().withoutBox().plan("yellow assessor");
        assertThat(lead(answer)).startsWith("Set up a quarantine tank first");
        assertThat(answer.coming()).isEmpty();
        assertThat(answer.staying().get(0).why().get(0).text(UnitSystem.METRIC))
                .isEqualTo("No quarantine tank serves Harbour room.");
    }

    @Test
    void aFilterThatIsNotCalmTakesNothing() {
        ArrivalAnswer answer = new House().calm(0).plan("yellow assessor");
        assertThat(lead(answer)).startsWith("Add nothing yet");
        assertThat(answer.coming()).isEmpty();
    }

    /** A foxface of 8 cm weighs about 9 g. */
    @Test
    void whatTheTwinSaysIsTheBoundWhereItIsLessThanPractice() {
        WishList foxface = House.list("foxface rabbitfish 8 cm");
        assertThat(new House().calm(0.02).plan(foxface).coming()).hasSize(1);
        ArrivalAnswer tight = new House().calm(0.003).plan(foxface);
        assertThat(tight.staying().get(0).why().get(0).text(UnitSystem.METRIC))
                .contains("the display takes at most 3\u00a0g at once");
    }

    @Test
    void aDisplayWithoutFishIsNotStockedBeforeItsDay() {
        ArrivalAnswer answer = new House()
                .inDisplay("2026-03-03", new Event.Fallow(Parasite.WHITE_SPOT, Turn.BEGAN))
                .plan("yellow assessor");
        assertThat(coming(answer, "yellow assessor").arrival().out()).isEqualTo(LocalDate.parse("2026-05-18"));
        assertThat(why(coming(answer, "yellow assessor"))).contains("stands without fish because of white spot");
    }

    @Test
    void nobodyIsWishedForIsAskedFor() {
        assertThat(lead(new House().plan(WishList.EMPTY))).startsWith("Write down whom you wish for");
    }
}
