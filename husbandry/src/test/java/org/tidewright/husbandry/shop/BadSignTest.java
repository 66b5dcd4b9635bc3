package org.tidewright.husbandry.shop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.plan.source.Basis;
import org.tidewright.plan.species.Catalogue;

class BadSignTest {
    static Stream<BadSign> all() {
        return Arrays.stream(ShopKind.values()).flatMap(kind -> kind.signs().stream());
    }

    @Test
    void eachHasANameOfItsOwnAndWordsOfItsOwn() {
        List<String> ids = all().map(BadSign::id).toList();
        assertThat(new HashSet<>(ids)).hasSameSizeAs(ids);
        for (ShopKind kind : ShopKind.values()) {
            assertThat(kind.signs())
                    .allMatch(sign -> sign.id().startsWith(kind.key() + "_"))
                    .extracting(BadSign::words)
                    .doesNotHaveDuplicates();
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void fitsItsPlaceOnAPhoneAndInASentence(BadSign sign) {
        assertThat(sign.words()).hasSizeLessThanOrEqualTo(46).doesNotEndWith(".");
        assertThat(sign.clause()).hasSizeLessThanOrEqualTo(40).doesNotEndWith(".");
        assertThat(sign.clause().substring(0, 1)).isLowerCase();
        assertThat(sign.meaning()).hasSizeLessThanOrEqualTo(220).endsWith(".");
    }

    @ParameterizedTest
    @MethodSource("all")
    void saysWhatItStandsOnAndNamesNoDose(BadSign sign) {
        assertThat(sign.basis()).isIn(Basis.PUBLISHED, Basis.COMMON_PRACTICE, Basis.FROM_MEMORY);
        assertThat(sign.detail().isEmpty()).isEqualTo(sign.basis() != Basis.PUBLISHED);
        assertThat(sign.meaning().toLowerCase(Locale.ROOT)).doesNotContain("dose", "mg/l", "ppm", "formalin");
    }

    @ParameterizedTest
    @EnumSource
    void everyKindHasSignsThatDecideAndQuestions(ShopKind kind) {
        assertThat(kind.signs()).extracting(BadSign::weight).contains(BadSign.Weight.LEAVE, BadSign.Weight.ASK);
        assertThat(kind.signs()).anyMatch(sign -> sign.id().endsWith("_sick_neighbours"));
        assertThat(kind.signs()).anyMatch(sign -> sign.id().endsWith("_new"));
    }

    @ParameterizedTest
    @EnumSource
    void theSignsOfOnePartStandTogether(ShopKind kind) {
        Set<String> done = new HashSet<>();
        String part = "";
        for (BadSign sign : kind.signs()) {
            if (!sign.part().equals(part)) {
                part = sign.part();
                assertThat(done.add(part)).as(part).isTrue();
            }
        }
    }

    @Test
    void everySignOfIllnessIsAmongThoseOfAFish() {
        Set<Sign> drawn = EnumSet.noneOf(Sign.class);
        FishSigns.ALL.stream().map(BadSign::drawn).filter(Objects::nonNull).forEach(drawn::add);
        assertThat(drawn).isEqualTo(EnumSet.complementOf(EnumSet.of(Sign.SOMETHING_ELSE)));
        assertThat(FishSigns.ALL)
                .filteredOn(sign -> sign.drawn() != null && sign.drawn().isUrgent())
                .allMatch(sign -> sign.weight() == BadSign.Weight.LEAVE);
    }

    @Test
    void aSpeciesIsLookedAtAsWhatItIs() {
        Catalogue catalogue = Catalogue.ofProgram();
        assertThat(ShopKind.of(catalogue.find("yellow tang").orElseThrow())).isEqualTo(ShopKind.FISH);
        assertThat(ShopKind.of(catalogue.find("Seriatopora hystrix").orElseThrow()))
                .isEqualTo(ShopKind.CORAL);
        assertThat(ShopKind.of(catalogue.find("Anemonia manjano").orElseThrow()))
                .isEqualTo(ShopKind.OTHER);
    }
}
