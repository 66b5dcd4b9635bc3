package org.tidewright.twin.law.hydraulic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.twin.law.hydraulic.ReferenceRows.has;
import static org.tidewright.twin.law.hydraulic.ReferenceRows.number;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/**
 * The catalogue's ranges against the loss coefficients that published methods give (fluids 1.0.22, see the head of the
 * table). A range must hold every published value for the piece it names.
 */
class FittingReferenceTest {
    private static final List<NamedCsvRecord> TABLE = ReferenceRows.of("fluids_fitting_losses.csv");

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
                        .and(row -> !has(row, "angle_deg") || number(row, "angle_deg") == 90));
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
                        .and(row -> !has(row, "angle_deg") || number(row, "angle_deg") == 90));
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
        holds(Fitting.ROUNDED_ENTRY, 4, named("entrance, rounded").and(row -> number(row, "ratio") >= 0.1));
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
                .allSatisfy(row -> assertThat(Fitting.stepLoss(number(row, "ratio"), 1))
                        .isCloseTo(number(row, "loss_coefficient"), within(1e-12)));
    }

    @Test
    void aSharpNarrowingLosesUpToAnEighthLessThanRennelsAndHudsonSay() {
        assertThat(rows(named("contraction, sharp")))
                .hasSize(4)
                .allSatisfy(row -> assertThat(
                                number(row, "loss_coefficient") - Fitting.stepLoss(1, number(row, "ratio")))
                        .isBetween(-0.005, 0.125));
    }

    private static void holds(Fitting fitting, int count, Predicate<NamedCsvRecord> which) {
        assertThat(rows(which))
                .hasSize(count)
                .allSatisfy(row ->
                        assertThat(number(row, "loss_coefficient")).isBetween(fitting.leastLoss(), fitting.mostLoss()));
    }

    private static List<NamedCsvRecord> rows(Predicate<NamedCsvRecord> which) {
        return TABLE.stream().filter(which).toList();
    }

    private static Predicate<NamedCsvRecord> named(String... starts) {
        return row -> List.of(starts).stream().anyMatch(row.getField("fitting")::startsWith);
    }
}
