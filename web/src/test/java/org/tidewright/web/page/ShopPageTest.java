package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.HandMadeDesk;

class ShopPageTest {
    private static final HandMadeDesk DESK = new HandMadeDesk();

    private static ShopPage page(Map<String, String> query, String... seen) {
        return ShopPage.of(
                DESK,
                DESK.system("harbour-room").orElseThrow(),
                query::get,
                List.of(seen),
                List.of("/assets/x/page.js"),
                UnitSystem.METRIC);
    }

    @Test
    void opensWithAllSignsAndNothingFound() {
        ShopPage page = page(Map.of());
        assertThat(page.refused()).isFalse();
        assertThat(page.found()).isEmpty();
        assertThat(page.note()).isEmpty();
        assertThat(page.kind().chosen()).isEqualTo("fish");
        assertThat(page.kinds()).extracting(ShopPage.KindPart::key).containsExactly("fish", "coral", "other");
        assertThat(page.kinds()).allSatisfy(kind -> assertThat(kind.parts()).hasSizeGreaterThan(2));
        assertThat(page.household()).startsWith("Judged for Harbour room, beside the ");
        assertThat(page.tally()).startsWith("No bad sign ticked");
    }

    @Test
    void oneThatIsFoundAloneStandsOpenWithItsReasonsBesidesTheLead() {
        ShopPage page = page(Map.of("look", "acanthurus achilles"));
        ShopPage.Found only = page.found().get(0);
        assertThat(only.open()).isTrue();
        assertThat(only.word()).isEqualTo("No");
        assertThat(only.mark()).isEqualTo("fails");
        assertThat(only.reasons()).hasSizeLessThanOrEqualTo(5);
        assertThat(only.reasons())
                .extracting(ShopPage.Reason::sentence)
                .doesNotContain(only.animal().reasons().get(0).sentence());
        assertThat(only.href()).isEqualTo("/systems/harbour-room/life?consider=Acanthurus+achilles");
    }

    @Test
    void saysWhatWasNotFoundAndWhatHasItsBeginning() {
        assertThat(page(Map.of("look", "qqqqqq")).note()).isEqualTo("No species that is known has “qqqqqq” in a name.");
        ShopPage slip = page(Map.of("look", "clownfihs"));
        assertThat(slip.note()).startsWith("No name has “clownfihs” in it; these have “clownfi”.");
        assertThat(slip.found()).isNotEmpty();
    }

    @Test
    void aSignIsDrawnWhereTheQuarantineDrawsIt() {
        List<ShopPage.Box> boxes = page(Map.of(), "fish_white_grains").kinds().get(0).parts().stream()
                .flatMap(part -> part.boxes().stream())
                .toList();
        ShopPage.Box grains = boxes.stream()
                .filter(box -> box.sign().id().equals("fish_white_grains"))
                .findFirst()
                .orElseThrow();
        assertThat(grains.ticked()).isTrue();
        assertThat(grains.weight()).isEqualTo("leave");
        assertThat(grains.drawing().html()).startsWith("<svg");
        assertThat(grains.ground()).startsWith("published: ");
        assertThat(boxes).filteredOn(ShopPage.Box::ticked).containsExactly(grains);
    }
}
