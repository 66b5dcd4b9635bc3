package org.tidewright.husbandry.wishlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.arrival.Arrival;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.arrival.PlanChecker;
import org.tidewright.husbandry.journal.Event.Move;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Call;
import org.tidewright.husbandry.livestock.Candidates;
import org.tidewright.husbandry.livestock.Verdict;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.Species;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.SeededCases;

/** Random wish lists of the whole catalogue, some of them with what happened since. */
class WishPropertyTest {
    private static final List<Species> SPECIES = Catalogue.ofProgram().all();

    @Test
    void everyPlanKeepsEveryRuleAndNobodyIsPlannedWhomTheRulesRefuse() {
        SeededCases.check(60, draw -> {
            WishList list = list(draw);
            House house = new House().calm(0.01 + 0.1 * draw.between(0, 1));
            ArrivalAnswer first = house.plan(list);
            judged(first);
            WishList kept = House.kept(first);
            house.on(House.TODAY.plusDays(5 + draw.whole(0, 39)).toString());
            for (ArrivalAnswer.Coming coming : first.coming()) {
                if (draw.whole(0, 2) == 0) {
                    house.inBox(
                            coming.arrival().in().toString(),
                            House.moved(
                                    coming.animals().count(),
                                    coming.animals().species().name().scientific(),
                                    Move.ARRIVED));
                }
            }
            judged(house.plan(kept));
        });
    }

    private static void judged(ArrivalAnswer answer) {
        assertThat(PlanChecker.faults(answer.study().plan())).isEmpty();
        List<Animals> company = new ArrayList<>(answer.study().community().residents());
        for (ArrivalAnswer.Coming coming : answer.coming()) {
            Arrival arrival = coming.arrival();
            if (arrival.stage() == Stage.PLANNED) {
                Verdict verdict = answer.study()
                        .household()
                        .verdict(coming.animals(), answer.study().household().home(), company);
                assertThat(verdict.call()).isNotEqualTo(Call.NO);
            }
            company.add(coming.animals());
        }
    }

    private static WishList list(Draw draw) {
        List<WishLine> lines = new ArrayList<>();
        for (int i = 1 + draw.whole(0, 8); i > 0; i--) {
            Species species = SPECIES.get(draw.whole(0, SPECIES.size() - 1));
            double length = species instanceof FishSpecies fish ? Candidates.sold(fish) : 0;
            lines.add(new WishLine(
                    new Animals(species, 1 + draw.whole(0, 2), length),
                    (draw.whole(0, 1) == 0) ? null : 100L * draw.whole(0, 79),
                    draw.whole(0, 3) == 0 ? House.TODAY.plusDays(draw.whole(0, 59)) : null,
                    "",
                    null));
        }
        return new WishList(lines, (draw.whole(0, 1) == 0) ? null : 15_000L, null);
    }
}
