package org.tidewright.web.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import org.junit.jupiter.api.Test;

class TimeAxisTest {
    @Test
    void theFirstTwoMinutesTakeTheSpaceBeforeTheBreak() {
        TimeAxis axis = new TimeAxis(24, true);
        assertThat(axis.position(0)).isZero();
        assertThat(axis.position(120)).isEqualTo(axis.breakAt());
        assertThat(axis.position(60)).isCloseTo(axis.breakAt() / 2, offset(1e-12));
        assertThat(axis.position(120.001)).isGreaterThanOrEqualTo(axis.breakAt() + axis.breakWidth());
        assertThat(axis.position(86400)).isCloseTo(1, offset(1e-12));
    }

    @Test
    void withoutMovingWaterThereIsOneSpeed() {
        TimeAxis axis = new TimeAxis(10, false);
        assertThat(axis.position(3600)).isCloseTo(0.1, offset(1e-12));
        assertThat(axis.position(18000)).isCloseTo(0.5, offset(1e-12));
    }

    @Test
    void barsTileTheAxisFromOneEndToTheOtherForEveryLength() {
        for (double hours : List.of(1.0, 2.5, 6.0, 24.0, 48.0, 100.0, 168.0)) {
            TimeAxis axis = new TimeAxis(hours, true);
            List<TimeAxis.Bar> bars = axis.bars();
            double at = 0;
            for (TimeAxis.Bar bar : bars) {
                double gap = bar.from() - at;
                assertThat(Math.min(gap, Math.abs(gap - axis.breakWidth())))
                        .as("%s h", hours)
                        .isCloseTo(0, offset(1e-9));
                at = bar.to();
            }
            assertThat(at).isCloseTo(1, offset(1e-9));
            assertThat(bars.size()).isLessThan(12 + 36);
        }
    }

    @Test
    void numbersOnTheScaleRiseAndEndWithTheLength() {
        for (double hours : List.of(1.0, 2.5, 6.0, 24.0, 48.0, 168.0)) {
            List<TimeAxis.Label> labels = new TimeAxis(hours, true).labels();
            for (int i = 1; i < labels.size(); i++) {
                assertThat(labels.get(i).at())
                        .as("%s h", hours)
                        .isGreaterThan(labels.get(i - 1).at());
            }
            assertThat(labels.get(labels.size() - 1).at()).isEqualTo(1);
        }
    }
}
