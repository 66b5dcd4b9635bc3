package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.burden.Burden;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.HandMadeDesk;
import org.tidewright.web.desk.WaterSoon;

class LifePageTest {
    /** A desk whose twin is never ready. */
    private static final class SlowDesk extends HandMadeDesk {
        @Override
        public WaterSoon waterWith(Plan plan, Community community) {
            return new WaterSoon() {
                private boolean late;

                @Override
                public Optional<Burden> with(Animals candidate, List<Animals> coming) {
                    late = true;
                    return Optional.empty();
                }

                @Override
                public boolean isLate() {
                    return late;
                }
            };
        }
    }

    private static LifePage page(String consider) {
        SlowDesk desk = new SlowDesk();
        return LifePage.of(desk, desk.system("harbour-room").orElseThrow(), consider, UnitSystem.METRIC);
    }

    @Test
    void whatTheTwinHasNotWorkedOutYetIsSaidBesideTheOtherReasons() {
        LifePage page = page("royal gramma");
        assertThat(page.late()).isTrue();
        assertThat(page.verdicts())
                .singleElement()
                .satisfies(verdict -> assertThat(verdict.reasons()).isNotEmpty());
    }

    @Test
    void whatMayNotComeAnywayWaitsForNoTwin() {
        assertThat(page("Naso vlamingii").late()).isFalse();
    }
}
