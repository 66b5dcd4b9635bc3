package org.tidewright.web.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import org.jspecify.annotations.NullUnmarked;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Sump;
import org.tidewright.web.desk.HandMadeDesk;

/** Over hundreds of plans drawn from seeds; a failure names its seed. */
@NullUnmarked // A plan without what is read here fails the test.
class SectionLayoutPropertyTest {
    private static final int SEEDS = 500;

    private static final Map<Long, Plan> PLANS = new TreeMap<>();

    @BeforeAll
    static void drawPlans() {
        for (long seed = 0; seed < SEEDS; seed++) {
            Plan plan = RandomPlans.of(seed);
            if (plan != null) {
                PLANS.put(seed, plan);
            }
        }
        // Were nearly all plans refused, the tests would say nothing.
        assertThat(PLANS).hasSizeGreaterThan(SEEDS / 2);
    }

    private static void forEachPlan(BiConsumer<Long, Plan> test) {
        PLANS.forEach(test);
    }

    @Test
    void noVesselOverlapsAnother() {
        forEachPlan((seed, plan) -> {
            List<Area> vessels = SectionLayout.of(plan).vessels();
            for (int i = 0; i < vessels.size(); i++) {
                for (int j = i + 1; j < vessels.size(); j++) {
                    assertThat(vessels.get(i).overlaps(vessels.get(j)))
                            .as("seed %d: %s and %s", seed, vessels.get(i), vessels.get(j))
                            .isFalse();
                }
            }
        });
    }

    @Test
    void everyHeightIsThePlansAndTheSectionsFillTheSump() {
        forEachPlan((seed, plan) -> {
            SectionLayout layout = SectionLayout.of(plan);
            assertThat(layout.display().inside().bottom())
                    .isEqualTo(1000 * plan.display().bottomHeight().in("m"));
            if (layout.sump() == null) {
                return;
            }
            Area inside = layout.sump().tank().inside();
            assertThat(inside.bottom())
                    .isEqualTo(1000 * plan.sump().bottomHeight().in("m"));
            double length = 0;
            double right = inside.right();
            for (Sump.Section section : plan.sump().sections()) {
                Area place = layout.sump().section(section.name()).inside();
                assertThat(place.right()).as("seed %d", seed).isCloseTo(right, offset(1e-6));
                assertThat(place.width()).isCloseTo(1000 * section.length().in("m"), offset(1e-6));
                right = place.left() - 6;
                length += place.width() + 6;
            }
            assertThat(length - 6).as("seed %d", seed).isCloseTo(inside.width(), offset(1e-6));
        });
    }

    @Test
    void everyPlanIsDrawnAndNothingInTheSumpStandsInAnotherSection() {
        HandMadeDesk desk = new HandMadeDesk();
        forEachPlan((seed, plan) -> {
            String svg = SectionDrawing.of(plan, desk.running(plan), 0, plan.units(), "seed " + seed)
                    .svg();
            Xml.parse(svg);
            SectionLayout layout = SectionLayout.of(plan);
            SectionSlots slots = SectionSlots.of(layout, 2.5);
            if (layout.sump() != null) {
                Area last = layout.sump().last().inside();
                SectionSlots.Slot pump = slots.of(SectionSlots.Kind.PUMP, "");
                assertThat(pump.middle() - pump.width() / 2).as("seed %d", seed).isGreaterThanOrEqualTo(last.left());
                assertThat(pump.middle() + pump.width() / 2).as("seed %d", seed).isLessThanOrEqualTo(last.right());
            }
        });
    }
}
