package org.tidewright.husbandry.wishlist;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.tidewright.husbandry.wishlist.House.BOX_NAME;
import static org.tidewright.husbandry.wishlist.House.TODAY;
import static org.tidewright.husbandry.wishlist.House.coming;
import static org.tidewright.husbandry.wishlist.House.kept;
import static org.tidewright.husbandry.wishlist.House.moved;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.arrival.Arrival;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.Appetite;
import org.tidewright.husbandry.journal.Event.Move;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.plan.model.UnitSystem;

/** A list whose days were kept on 7 March, some time later. The assessor comes on 7 March, the coral on 9 April. */
class PlannedAnewTest {
    private static final String ASSESSOR = "yellow assessor";
    private static final String CORAL = "candy cane coral";
    private static final WishList KEPT = kept(new House().plan(ASSESSOR, CORAL + " from 2026-04-01"));

    private static String told(ArrivalAnswer answer, String who) {
        return requireNonNull(coming(answer, who).moved()).text(UnitSystem.METRIC);
    }

    @Test
    void nothingMovesWhereNothingHappened() {
        ArrivalAnswer again = new House().plan(KEPT);
        assertThat(again.coming()).hasSize(2).allMatch(each -> each.moved() == null);
        assertThat(coming(again, CORAL).arrival().in()).isEqualTo(LocalDate.parse("2026-04-09"));
    }

    @Test
    void whoArrivedIsInQuarantineByTheLog() {
        ArrivalAnswer later = new House()
                .on("2026-03-20")
                .inBox("2026-03-07", moved(1, ASSESSOR, Move.ARRIVED))
                .plan(KEPT);
        Arrival assessor = coming(later, ASSESSOR).arrival();
        assertThat(assessor.stage()).isEqualTo(Stage.IN_QUARANTINE);
        assertThat(assessor.out()).isEqualTo(TODAY.plusDays(30));
        assertThat(later.coming()).allMatch(each -> each.moved() == null);
    }

    @Test
    void aSignOfIllnessMovesWhoeverWaitsForTheTank() {
        Event sign = new Event.AnimalsChecked(null, Appetite.ALL, 60, Set.of(Sign.CLOUDY_EYE));
        ArrivalAnswer later = new House()
                .on("2026-03-20")
                .inBox("2026-03-07", moved(1, ASSESSOR, Move.ARRIVED))
                .inBox("2026-03-19", sign)
                .plan(KEPT);
        assertThat(coming(later, ASSESSOR).arrival().out()).isEqualTo(LocalDate.parse("2026-04-18"));
        assertThat(told(later, ASSESSOR))
                .isEqualTo("It was to go in Monday 6 April, now Saturday 18 April: by the log its watch ends then.");
        assertThat(told(later, CORAL))
                .startsWith("It was to come Thursday 9 April, now Tuesday 21 April")
                .contains("Quarantine box is taken by the yellow assessor until Saturday 18 April");
    }

    @Test
    void whoDiedIsNotBoughtAgainByItself() {
        ArrivalAnswer later = new House()
                .on("2026-03-20")
                .inBox("2026-03-07", moved(1, ASSESSOR, Move.ARRIVED))
                .inBox("2026-03-15", moved(1, ASSESSOR, Move.DIED))
                .plan(KEPT);
        assertThat(later.coming())
                .extracting(each -> each.animals().species().name().common())
                .containsExactly(CORAL);
        assertThat(later.gone().get(0).text(UnitSystem.METRIC))
                .startsWith("The yellow assessor died, by the log, on Sunday 15 March.")
                .contains("write its line anew");
        assertThat(later.study().done()).containsExactly("assessor-flavissimus");
    }

    @Test
    void whoMovedIsInTheDisplayAndTheNextAdditionWaits() {
        ArrivalAnswer later = new House()
                .on("2026-04-07")
                .inBox("2026-03-07", moved(1, ASSESSOR, Move.ARRIVED))
                .inBox("2026-04-06", moved(1, ASSESSOR, Move.LEFT))
                .inDisplay("2026-04-06", moved(1, ASSESSOR, Move.ARRIVED))
                .plan(KEPT);
        Arrival assessor = coming(later, ASSESSOR).arrival();
        assertThat(assessor.stage()).isEqualTo(Stage.IN_DISPLAY);
        assertThat(assessor.tank()).isEqualTo(BOX_NAME);
        assertThat(coming(later, CORAL).arrival().in()).isEqualTo(LocalDate.parse("2026-04-09"));
    }

    @Test
    void aDayTheKeeperDelaysIsToldWithItsReason() {
        WishLine coral = KEPT.lines().get(1);
        WishLine delayed = new WishLine(coral.animals(), null, LocalDate.parse("2026-05-02"), "", coral.kept());
        ArrivalAnswer later = new House().plan(new WishList(List.of(KEPT.lines().get(0), delayed), null, null));
        assertThat(told(later, CORAL))
                .isEqualTo("It was to come Thursday 9 April, now Saturday 2 May; to go in Saturday 9 May, now Monday 1"
                        + " June. Not before Saturday 2 May: it cannot be had earlier.");
    }

    @Test
    void anArrivalBeforeTheDaysWereKeptIsNoneOfThem() {
        ArrivalAnswer later = new House()
                .inBox("2026-03-01", moved(1, ASSESSOR, Move.ARRIVED))
                .plan(KEPT);
        assertThat(later.coming())
                .filteredOn(each -> each.animals().species().name().is(ASSESSOR))
                .extracting(each -> each.arrival().stage())
                .contains(Stage.IN_QUARANTINE);
        assertThat(later.study().members()).containsKey("in quarantine 1");
    }

    @Test
    void typedAnewTheSameWishKeepsItsDays() {
        WishList typed = House.list(CORAL + " price 80", "2 neon goby").keepingDaysOf(KEPT);
        assertThat(typed.lines().get(0).kept()).isEqualTo(KEPT.lines().get(1).kept());
        assertThat(typed.lines().get(1).kept()).isNull();
    }
}
