package org.tidewright.husbandry.livestock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.plan.species.Catalogue;

class CandidatesTest {
    private static Animals read(String text) {
        return Candidates.read(text, Catalogue.ofProgram());
    }

    @Test
    void numberNameAndLengthAreReadInMetricAndUsUnits() {
        Animals five = read("5 Chromis viridis 4 cm");
        assertThat(five.count()).isEqualTo(5);
        assertThat(five.species().name().scientific()).isEqualTo("Chromis viridis");
        assertThat(five.length()).isCloseTo(0.04, within(1e-12));
        assertThat(read("yellow tang 3 in").length()).isCloseTo(0.0762, within(1e-12));
        assertThat(read("2x Yellow Tang, 7,5 cm").length()).isCloseTo(0.075, within(1e-12));
        assertThat(read("torch coral").isFish()).isFalse();
    }

    @Test
    void withoutALengthAFishIsTakenAsShopsSellIt() {
        Animals tang = read("yellow tang");
        assertThat(tang.length()).isGreaterThan(0.03).isLessThan(tang.grown());
    }

    @Test
    void whatCannotBeReadSaysWhatWasFoundAndWhatWasProbablyMeant() {
        assertThatThrownBy(() -> read("yelow tang"))
                .hasMessageContaining("found “yelow tang”")
                .hasMessageContaining("“yellow tang”");
        assertThatThrownBy(() -> read("")).hasMessageContaining("expected a name");
        assertThatThrownBy(() -> read("0 yellow tang")).hasMessageContaining("at least one");
        assertThatThrownBy(() -> read("yellow tang 90 cm")).hasMessageContaining("greatest known length");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"\u0000", "9999999999 yellow tang", "yellow tang 1e9 cm", "-1 yellow tang", "× cm", "1 1 1 cm cm"
            })
    void nonsenseIsRefusedAndNeverACrash(String text) {
        assertThatThrownBy(() -> read(text)).isInstanceOf(Candidates.Unreadable.class);
    }
}
