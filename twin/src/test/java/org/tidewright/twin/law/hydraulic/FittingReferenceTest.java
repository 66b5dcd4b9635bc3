package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;

/**
 * The catalogue's ranges against the loss coefficients that published methods give (fluids 1.0.22, see the head of the
 * table). A range must hold every published value for the piece it names.
 */
class FittingReferenceTest {
    private static final List<Row> TABLE = ReferenceTable.read(
                    FittingReferenceTest.class, "/reference/hydraulic/fluids_fitting_losses.csv")
            .rows();

    @Test
    void shortElbowsLieInTheirRange() {
        holds(
                Fitting.ELBOW_90,
                4,
                named("Elbow, 90 deg, Standard (R/D = 1), Screwed", "Elbow, 90 deg, threaded, standard"));
    }

    @Test
    void sweptBendsLieInTheirRange() {
        holds(
                Fitting.BEND_90,
                6,
                named(
                        "Elbow, 90 deg, Standard (R/D = 1), Flanged",
                        "Elbow, 90 deg, Long",
                        "Elbow, 90 deg, threaded, long"));
    }

    @Test
    void mitresLieInTheirRange() {
        holds(
                Fitting.MITRE_90,
                5,
                named("Elbow, 90 deg, Mitered", "Elbow, 90 deg, mitered", "bend, mitred")
                        .and(row -> !row.has("angle_deg") || row.number("angle_deg") == 90));
    }

    @Test
    void halfElbowsLieInTheirRange() {
        holds(Fitting.ELBOW_45, 4, named("Elbow, 45 deg"));
    }

    @Test
    void teesPassedStraightLieInTheirRange() {
        holds(Fitting.TEE_THROUGH, 4, named("Tee, run-through", "Tee, Run-through"));
    }

    @Test
    void teesTurnedIntoTheBranchLieInTheirRange() {
        holds(
                Fitting.TEE_BRANCH,
                9,
                named("Tee, used as elbow", "Tee, Through-branch", "tee or wye, diverging, branch")
                        .and(row -> !row.has("angle_deg") || row.number("angle_deg") == 90));
    }

    @Test
    void fullBoreBallValvesLieInTheirRange() {
        holds(Fitting.BALL_VALVE, 6, named("ball valve, full bore", "Valve, Ball valve, standard"));
    }

    @Test
    void gateValvesLieInTheirRange() {
        holds(Fitting.GATE_VALVE, 8, named("gate valve", "Valve, Gate"));
    }

    @Test
    void swingCheckValvesLieInTheirRange() {
        holds(Fitting.SWING_CHECK_VALVE, 8, named("swing check valve", "Valve, Check, Swing", "Valve, Swing check"));
    }

    @Test
    void sharpEntriesLieInTheirRange() {
        holds(Fitting.SHARP_ENTRY, 4, named("entrance, sharp edged"));
    }

    @Test
    void wellRoundedEntriesLieInTheirRange() {
        holds(Fitting.ROUNDED_ENTRY, 4, named("entrance, rounded").and(row -> row.number("ratio") >= 0.1));
    }

    @Test
    void projectingEntriesLieInTheirRange() {
        holds(Fitting.PROJECTING_ENTRY, 3, named("entrance, projecting pipe"));
    }

    @Test
    void theExitLosesItsVelocityHead() {
        holds(Fitting.EXIT, 1, named("exit into a large body"));
    }

    @Test
    void aSuddenWideningIsBordasAndCarnots() {
        assertThat(rows(named("expansion, sudden")))
                .hasSize(4)
                .allSatisfy(row -> assertThat(Fitting.stepLoss(row.number("ratio"), 1))
                        .isCloseTo(row.number("loss_coefficient"), within(1e-12)));
    }

    @Test
    void aSharpNarrowingLosesUpToAnEighthLessThanRennelsAndHudsonSay() {
        assertThat(rows(named("contraction, sharp")))
                .hasSize(4)
                .allSatisfy(row -> assertThat(row.number("loss_coefficient") - Fitting.stepLoss(1, row.number("ratio")))
                        .isBetween(-0.005, 0.125));
    }

    private static void holds(Fitting fitting, int count, Predicate<Row> which) {
        assertThat(rows(which))
                .hasSize(count)
                .allSatisfy(row ->
                        assertThat(row.number("loss_coefficient")).isBetween(fitting.leastLoss(), fitting.mostLoss()));
    }

    private static List<Row> rows(Predicate<Row> which) {
        return TABLE.stream().filter(which).toList();
    }

    private static Predicate<Row> named(String... starts) {
        return row -> List.of(starts).stream().anyMatch(row.text("fitting")::startsWith);
    }
}
