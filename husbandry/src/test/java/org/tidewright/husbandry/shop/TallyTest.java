package org.tidewright.husbandry.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TallyTest {
    private static String of(String... ids) {
        List<BadSign> seen = BadSignTest.all()
                .filter(sign -> List.of(ids).contains(sign.id()))
                .toList();
        assertThat(seen).hasSize(ids.length);
        return Tally.sentence(seen);
    }

    @Test
    void whatDecidesIsSaidInOneSentence() {
        assertThat(of("fish_refuses")).isEqualTo("Leave it: it does not eat.");
        assertThat(of("fish_refuses", "fish_breathes_fast")).isEqualTo("Leave it: it breathes fast and does not eat.");
        assertThat(of("fish_refuses", "fish_sick_neighbours", "fish_white_grains"))
                .isEqualTo("Leave it: it has white grains, does not eat and sick animals share its water.");
    }

    @Test
    void aQuestionWaitsWhereSomethingDecides() {
        assertThat(of("fish_new", "fish_only_live"))
                .isEqualTo("Ask before you buy: it takes only live food and came less than a week ago.");
        assertThat(of("fish_new", "fish_refuses")).isEqualTo("Leave it: it does not eat.");
    }

    @Test
    void manyAreCounted() {
        assertThat(Tally.sentence(FishSigns.ALL))
                .isEqualTo("Leave it: it breathes fast, breathes on one side, hangs at the surface and "
                        + (FishSigns.ALL.stream()
                                        .filter(sign -> sign.weight() == BadSign.Weight.LEAVE)
                                        .count()
                                - 3)
                        + " more.");
    }

    @Test
    void nothingTickedIsNoPraise() {
        assertThat(Tally.sentence(List.of())).startsWith("No bad sign ticked: look for each");
    }

    @Test
    void oneMoreSignNeverMakesItBetter() {
        for (ShopKind kind : ShopKind.values()) {
            for (BadSign first : kind.signs()) {
                for (BadSign second : kind.signs()) {
                    String both =
                            Tally.sentence(Stream.of(first, second).distinct().toList());
                    boolean leave = Stream.of(first, second).anyMatch(sign -> sign.weight() == BadSign.Weight.LEAVE);
                    assertThat(both).startsWith(leave ? "Leave it: " : "Ask before you buy: ");
                }
            }
        }
    }
}
