package org.tidewright.web.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ContoursTest {
    @Test
    void aPlaneHasStraightLinesWhereItShould() {
        Contours contours = new Contours(4, 2, 8, 5, (x, y) -> 10 * x + y);
        List<Contours.Piece> pieces = contours.at(21);
        assertThat(pieces).isNotEmpty().allSatisfy(piece -> {
            assertThat(10 * piece.x1() + piece.y1()).isCloseTo(21, within(1e-9));
            assertThat(10 * piece.x2() + piece.y2()).isCloseTo(21, within(1e-9));
        });
        assertThat(length(pieces)).isCloseTo(Math.hypot(0.2, 2), within(1e-9));
        assertThat(contours.least()).isZero();
        assertThat(contours.most()).isEqualTo(42);
    }

    /** Half of a circle of radius 1 about the middle of one side: pi, and short of it only by the grid. */
    @Test
    void aHillHasRoundLines() {
        Contours contours = new Contours(4, 2, 80, 40, (x, y) -> -Math.hypot(x - 2, y));
        List<Contours.Piece> pieces = contours.at(-1);
        assertThat(length(pieces)).isCloseTo(Math.PI, within(0.01));
        assertThat(pieces)
                .allSatisfy(piece -> assertThat(Math.hypot(piece.middleX() - 2, piece.middleY()))
                        .isCloseTo(1, within(0.005)));
    }

    @Test
    void beyondItsValuesThereIsNoLine() {
        assertThat(new Contours(1, 1, 4, 4, (x, y) -> x).at(2)).isEmpty();
    }

    private static double length(List<Contours.Piece> pieces) {
        return pieces.stream()
                .mapToDouble(piece -> Math.hypot(piece.x2() - piece.x1(), piece.y2() - piece.y1()))
                .sum();
    }
}
