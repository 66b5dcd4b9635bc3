package org.tidewright.twin.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.testkit.ChangedText;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.WorkedTank;
import org.tidewright.twin.TestPlans;

/**
 * The heat a running tank loses, from a plan, against the worked examples of a 400 L tank: panes by Churchill and Chu
 * 1975 and radiation, surface by Carrier's equation at Fa 0.7 and Bowen 1926.
 */
class RunningHeatTest {
    private static final ReferenceTable WORKED =
            ReferenceTable.read(RunningHeatTest.class, "/reference/heat/worked_examples.csv");

    private static final RunningHeat HEAT = RunningHeat.of(TestPlans.workedTank(21, 12, 40, "open"));

    private static void check(String id, double got) {
        Close.relative(WORKED.row("id", id), "value", got, 1e-2);
    }

    @Test
    void aTankInARoomLosesTheHeatWorkedOut() {
        check("E5.13", HEAT.loss(25.5, 21, 0.5));
        check("E5.28", HEAT.loss(25.5, 23, 0.5));
        check("E5.17", 1.3 * (HEAT.loss(25.5, 18, 0.4) - 40));
    }

    @Test
    void aHeatEndsAtTheTemperatureWorkedOut() {
        check("E5.29a", HEAT.settlesAt(100 + 60, 23, 0.5));
        check("E5.29c", HEAT.settlesAt(200 + 60, 23, 0.5));
        check("E5.45b", HEAT.settlesAt(150 + 125, 26, 0.5));
        check("E5.45c", HEAT.settlesAt(125, 26, 0.5));
    }

    /** The example leaves the shape of its 60 L open: a surface of 0.60 × 0.35 m and panes of 6 mm are ours. */
    @Test
    void aLidOnASmallTankKeepsTheHeatWorkedOut() {
        Close.absolute(WORKED.row("id", "E5.43a"), "value", smallTank("lid").settlesAt(30, 25, 0.5), 0.1);
        Close.absolute(WORKED.row("id", "E5.43b"), "value", smallTank("open").settlesAt(30, 25, 0.5), 0.1);
    }

    private static RunningHeat smallTank(String cover) {
        return RunningHeat.of(TestPlans.read(ChangedText.of(
                WorkedTank.text(25, 12, 40, cover),
                "length: 0.8216 m",
                "length: 0.60 m",
                "width: 0.8216 m",
                "width: 0.35 m",
                "panes: 12 mm, bottom: 12 mm",
                "panes: 6 mm, bottom: 6 mm",
                "rock: {dry_mass: 40 kg, displaces: 0.2 L/kg}\n",
                "\n",
                "height: 0.65 m",
                "height: 0.35 m",
                "water_level: 0.6045 m",
                "water_level: 0.286 m")));
    }

    /** The system's own sump, 0.888 × 0.45 m inside its walls: baffles part water from water and lose nothing. */
    @Test
    void aBaffleBetweenSectionsLosesNoHeat() {
        String baffles = "{name: second, length: 0.20 m, baffle: {over: 0.25 m}}";
        String more = "{name: second, length: 0.10 m, baffle: {over: 0.30 m}}\n"
                + "    - {name: half, length: 0.10 m, baffle: {over: 0.25 m}}";
        double few = RunningHeat.of(TestPlans.workedExample()).loss(25.5, 21, 0.5);
        double many = RunningHeat.of(TestPlans.workedExample(baffles, more)).loss(25.5, 21, 0.5);
        // What differs is only the level of a tenth of the sump, by 5 cm.
        assertThat(many).isCloseTo(few, within(0.01 * few));
    }
}
