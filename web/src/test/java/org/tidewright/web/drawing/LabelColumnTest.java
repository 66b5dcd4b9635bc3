package org.tidewright.web.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LabelColumnTest {
    @Test
    void labelsStandAtTheirThingsWhereThereIsRoom() {
        LabelColumn column = new LabelColumn().add(0, 100, "low").add(0, 400, "high");
        assertThat(column.heights(500, 16)).containsExactly(400.0, 100.0);
    }

    @Test
    void labelsCloserThanALineMoveDownOneAfterTheOther() {
        LabelColumn column = new LabelColumn().add(0, 100, "a").add(0, 98, "b").add(0, 97, "c");
        assertThat(column.heights(500, 16)).containsExactly(100.0, 84.0, 68.0);
    }

    @Test
    void neverCloserThanALineWhateverTheHeights() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            LabelColumn column = new LabelColumn();
            for (int i = 0; i < 8; i++) {
                column.add(0, random.nextDouble() * 300, "label");
            }
            List<Double> heights = column.heights(300, 16);
            for (int i = 1; i < heights.size(); i++) {
                assertThat(heights.get(i - 1) - heights.get(i))
                        .as("seed %d", seed)
                        .isGreaterThanOrEqualTo(16 - 1e-9);
            }
        }
    }
}
