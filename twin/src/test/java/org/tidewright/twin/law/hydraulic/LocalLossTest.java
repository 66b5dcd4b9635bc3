package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;

/** Steps and exit against fluids 1.0.22, see the head of the table. */
class LocalLossTest {
    private static final ReferenceTable TABLE =
            ReferenceTable.read(LocalLossTest.class, "/reference/hydraulic/fluids_step_losses.csv");

    @Test
    void aNozzleOfHalfTheBoreLosesSixteenVelocityHeads() {
        assertThat(LocalLoss.nozzle(0.025, 0.0125)).isCloseTo(16, within(1e-12));
        assertThat(LocalLoss.nozzle(0.025, 0.025)).isEqualTo(1);
    }

    @Test
    void anElbowIsWorthItsEquivalentLength() {
        // By hand: 0.9 x 25 mm / 0.02115 = 1.0638 m.
        assertThat(LocalLoss.equivalentLength(0.9, 0.025, 0.02115)).isCloseTo(1.0638, within(1e-4));
    }

    @Test
    void theExitLosesItsVelocityHead() {
        Row row = TABLE.row("fitting", "exit into a large body");
        Close.absolute(row, "loss_coefficient", LocalLoss.EXIT, 0);
    }

    @Test
    void aSuddenWideningIsBordasAndCarnots() {
        assertThat(rows("expansion, sudden"))
                .hasSize(4)
                .allSatisfy(
                        row -> Close.absolute(row, "loss_coefficient", LocalLoss.step(row.number("ratio"), 1), 1e-12));
    }

    @Test
    void aSharpNarrowingLosesUpToAnEighthLessThanRennelsAndHudsonSay() {
        assertThat(rows("contraction, sharp"))
                .hasSize(4)
                .allSatisfy(row -> assertThat(row.number("loss_coefficient") - LocalLoss.step(1, row.number("ratio")))
                        .isBetween(-0.005, 0.125));
    }

    private static List<Row> rows(String fitting) {
        return TABLE.rows().stream()
                .filter(row -> row.text("fitting").startsWith(fitting))
                .toList();
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> LocalLoss.nozzle(0.025, 0.030)).hasMessageContaining("bore of the nozzle");
        assertThatThrownBy(() -> LocalLoss.nozzle(0.025, 0)).hasMessageContaining("bore of the nozzle");
        assertThatThrownBy(() -> LocalLoss.step(0, 0.02)).hasMessageContaining("first bore");
        assertThatThrownBy(() -> LocalLoss.equivalentLength(1, 0.025, 0)).hasMessageContaining("friction factor");
    }
}
