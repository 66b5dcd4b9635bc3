package org.tidewright.husbandry.burden;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.burden.Lately.Arrival;

/** What may be asked about, and what of the past counts. */
class AdditionTest {
    @Test
    void refusesWhatIsNoAnimalAndSaysWhatItNeeds() {
        assertThatThrownBy(() -> Addition.today(0, 1, 0.1)).hasMessageContaining("more than 0");
        assertThatThrownBy(() -> Addition.today(0.02, 1, 0.01)).hasMessageContaining("grown no less than now");
        assertThatThrownBy(() -> Addition.today(0.01, 0, 0.1)).hasMessageContaining("1 to 100");
        assertThatThrownBy(() -> Addition.today(0.01, 1, 0.1).on(57)).hasMessageContaining("0 to 56");
        assertThatThrownBy(() -> new Addition(0.01, 1, 0.1, -1.0, 0)).hasMessageContaining("0 to 1 kg");
        assertThatThrownBy(() -> new Arrival(-1, 0.01)).hasMessageContaining("not negative");
        assertThatThrownBy(() -> new Lately(List.of(), 6)).hasMessageContaining("0 to 5");
    }

    @Test
    void growsWhenItIsMuchSmallerThanGrown() {
        assertThat(Addition.today(0.010, 1, 0.100).isGrowing()).isTrue();
        assertThat(Addition.today(0.095, 1, 0.100).isGrowing()).isFalse();
    }

    @Test
    void arrivalsOfEightWeeksCountAndNoOlderOnes() {
        Lately lately =
                new Lately(List.of(new Arrival(57, 1), new Arrival(56, 2), new Arrival(3, 4), new Arrival(3, 8)), 0);
        assertThat(lately.came()).isEqualTo(14);
        assertThat(lately.since()).isEqualTo(56);
        assertThat(lately.cameOn(3)).isEqualTo(12);
    }

    /** A plan of 7 kg to which 14 came lately: all seven are new, in the same proportion of the days. */
    @Test
    void ofAPlanThatCountsFewerThanCameAllAreNew() {
        Lately within = new Lately(List.of(new Arrival(56, 2), new Arrival(3, 12)), 1).within(7);
        assertThat(within.came()).isCloseTo(7, within(1e-12));
        assertThat(within.cameOn(56)).isCloseTo(1, within(1e-12));
        assertThat(within.cleared()).isEqualTo(1);
        assertThat(within.within(0).arrivals()).isEmpty();
    }
}
