package org.tidewright.testkit;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable.Row;

class CloseTest {
    private static final Row FIRST =
            ReferenceTable.read(CloseTest.class, "/reference/plain.csv").row("name", "first");

    @Test
    void passesAtTheToleranceAndFailsBeyondIt() {
        Close.absolute(FIRST, "depth_m", 1.75, 0.25);
        Close.relative(FIRST, "depth_m", 1.125, 0.25);
        assertThatThrownBy(() -> Close.absolute(FIRST, "depth_m", 1.75, 0.125)).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> Close.relative(FIRST, "depth_m", 1.125, 0.125)).isInstanceOf(AssertionError.class);
    }

    @Test
    void saysFileLineColumnExpectedGotErrorAndTolerance() {
        assertThatThrownBy(() -> Close.absolute(FIRST, "depth_m", 2.0, 0.25))
                .hasMessageContaining("/reference/plain.csv, line 4, column depth_m: expected 1.5, got 2.0, "
                        + "absolute error 0.5 exceeds 0.25");
    }

    @Test
    void notANumberIsNeverClose() {
        assertThatThrownBy(() -> Close.absolute(FIRST, "depth_m", Double.NaN, 1e9))
                .isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> Close.relative(FIRST, "depth_m", Double.NaN, 1e9))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void aToleranceThatLetsEverythingPassIsRefused() {
        assertThatThrownBy(() -> Close.relative(FIRST, "depth_m", 1.5, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
