package org.tidewright.husbandry.reef;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class FlowFieldTest {
    private static final String POINTS = """
              flow_points:
                - {x: 20 cm, y: 20 cm, height: 15 cm, flow: 8 cm/s ± 0.4 cm/s}
                - {x: 90 cm, y: 25 cm, height: 30 cm, flow: 25 cm/s}
            """;

    private final FlowField field = FlowField.of(ReefPlans.plan("", POINTS, ""));

    @Test
    void atAMeasuredPointTheFlowIsWhatWasMeasured() {
        PointValue flow = field.at(new Place(0.2, 0.2, 0.15)).orElseThrow();
        assertThat(flow.value()).isCloseTo(0.08, Percentage.withPercentage(1));
        assertThat(flow.logError()).isCloseTo(0.05, within(0.001));
    }

    @Test
    void aFlowStatedWithoutDoubtIsAMinutesMeanAmongEddies() {
        assertThat(field.at(new Place(0.9, 0.25, 0.3)).orElseThrow().logError()).isCloseTo(0.15, within(0.01));
    }

    @Test
    void awayFromEveryPointNoFlowIsInvented() {
        assertThat(field.at(new Place(0.55, 0.25, 0.2))).isEmpty();
        assertThat(FlowField.of(ReefPlans.plan("", "", "")).at(new Place(0.2, 0.2, 0.15)))
                .isEmpty();
    }

    @Test
    void theDoubtGrowsWithTheDistanceUntilNothingIsTold() {
        double before = 0;
        for (int centimetres = 0; centimetres <= 14; centimetres += 2) {
            double doubt = field.at(new Place(0.2 + centimetres / 100.0, 0.2, 0.15))
                    .orElseThrow()
                    .logError();
            assertThat(doubt).isGreaterThan(before);
            before = doubt;
        }
        assertThat(field.at(new Place(0.4, 0.2, 0.15))).isEmpty();
    }

    @Test
    void classesOverlapAndRise() {
        FlowClass[] classes = {
            FlowClass.LOW, FlowClass.LOW_MEDIUM, FlowClass.MEDIUM, FlowClass.MEDIUM_HIGH, FlowClass.HIGH
        };
        for (int i = 1; i < classes.length; i++) {
            assertThat(classes[i].least()).isGreaterThan(classes[i - 1].least()).isLessThan(classes[i - 1].most());
            assertThat(classes[i].most()).isGreaterThan(classes[i - 1].most());
        }
        assertThat(FlowClass.ofKey("low_medium")).contains(FlowClass.LOW_MEDIUM);
    }
}
