package org.tidewright.plan.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;

/**
 * The catalogue's ranges against the loss coefficients that published methods give (fluids 1.0.22, see the head of the
 * table). A range must hold every published value for the piece it names.
 */
class FittingReferenceTest {
    private static final List<Row> TABLE = ReferenceTable.read(
                    FittingReferenceTest.class, "/reference/fitting/fluids_fitting_losses.csv")
            .rows();

    @Test
    void shortElbowsLieInTheirRange() {
        holds(
                Fitting.ELBOW_90.loss(),
                4,
                named("Elbow, 90 deg, Standard (R/D = 1), Screwed", "Elbow, 90 deg, threaded, standard"));
    }

    @Test
    void sweptBendsLieInTheirRange() {
        holds(
                Fitting.BEND_90.loss(),
                6,
                named(
                        "Elbow, 90 deg, Standard (R/D = 1), Flanged",
                        "Elbow, 90 deg, Long",
                        "Elbow, 90 deg, threaded, long"));
    }

    @Test
    void mitresLieInTheirRange() {
        holds(
                Fitting.MITRE_90.loss(),
                5,
                named("Elbow, 90 deg, Mitered", "Elbow, 90 deg, mitered", "bend, mitred")
                        .and(row -> !row.has("angle_deg") || row.number("angle_deg") == 90));
    }

    @Test
    void halfElbowsLieInTheirRange() {
        holds(Fitting.ELBOW_45.loss(), 4, named("Elbow, 45 deg"));
    }

    @Test
    void teesPassedStraightLieInTheirRange() {
        holds(Fitting.TEE_THROUGH.loss(), 4, named("Tee, run-through", "Tee, Run-through"));
    }

    @Test
    void teesTurnedIntoTheBranchLieInTheirRange() {
        holds(
                Fitting.TEE_BRANCH.loss(),
                9,
                named("Tee, used as elbow", "Tee, Through-branch", "tee or wye, diverging, branch")
                        .and(row -> !row.has("angle_deg") || row.number("angle_deg") == 90));
    }

    @Test
    void fullBoreBallValvesLieInTheirRange() {
        holds(Fitting.BALL_VALVE.loss(), 6, named("ball valve, full bore", "Valve, Ball valve, standard"));
    }

    @Test
    void gateValvesLieInTheirRange() {
        holds(Fitting.GATE_VALVE.loss(), 8, named("gate valve", "Valve, Gate"));
    }

    @Test
    void swingCheckValvesLieInTheirRange() {
        holds(
                ReturnLine.CheckValve.SWING.loss(),
                8,
                named("swing check valve", "Valve, Check, Swing", "Valve, Swing check"));
    }

    @Test
    void sharpEntriesLieInTheirRange() {
        holds(Fitting.SHARP_ENTRY.loss(), 4, named("entrance, sharp edged"));
    }

    @Test
    void wellRoundedEntriesLieInTheirRange() {
        holds(Fitting.ROUNDED_ENTRY.loss(), 4, named("entrance, rounded").and(row -> row.number("ratio") >= 0.1));
    }

    @Test
    void projectingEntriesLieInTheirRange() {
        holds(Fitting.PROJECTING_ENTRY.loss(), 3, named("entrance, projecting pipe"));
    }

    @ParameterizedTest
    @EnumSource
    void theUsualLossLiesInItsRange(Fitting fitting) {
        assertThat(fitting.loss().usual())
                .isBetween(fitting.loss().least(), fitting.loss().most());
    }

    @ParameterizedTest
    @EnumSource
    void theUsualLossOfACheckValveLiesInItsRange(ReturnLine.CheckValve valve) {
        assertThat(valve.loss().usual())
                .isBetween(valve.loss().least(), valve.loss().most());
    }

    private static void holds(LossCoefficient loss, int count, Predicate<Row> which) {
        assertThat(rows(which))
                .hasSize(count)
                .allSatisfy(row -> assertThat(row.number("loss_coefficient")).isBetween(loss.least(), loss.most()));
    }

    private static List<Row> rows(Predicate<Row> which) {
        return TABLE.stream().filter(which).toList();
    }

    private static Predicate<Row> named(String... starts) {
        return row -> List.of(starts).stream().anyMatch(row.text("fitting")::startsWith);
    }
}
