package org.tidewright.husbandry.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.plan.model.Plan;

/** The 400 L tank of the worked examples of heat; its numbers come from a script of their own. */
class HeaterCheckTest {
    /** In a room of 18 °C at 40 %, beside 40 W of pumps, 1.3 times the need is 291.6 W. */
    @ParameterizedTest
    @CsvSource({"300, HOLDS", "250, CLOSE", "200, FAILS"})
    void heatersAreHeldAgainstTheNeedWorkedByHand(double power, Holding expected) {
        Plan plan = tank("coldest: 18 °C", "humidity: 40 %", power, 40, 0);
        Checked check = Checked.of(plan, "heater_in_coldest_room");
        assertThat(check.margin()).isCloseTo(power - 291.6, within(0.01 * 291.6));
        assertThat(check.holding()).isEqualTo(expected);
    }

    /** 100 W and 60 W of pumps in a room of 23 °C end at 26.55 °C; 150 W, 95 W and 30 W of light in 26 °C at 32.41 °C. */
    @ParameterizedTest
    @CsvSource({"23, 100, 60, 0, 26.55, HOLDS", "26, 150, 95, 30, 32.41, FAILS"})
    void aHeaterStuckOnEndsWhereWorkedByHand(
            double room, double heater, double pumps, double light, double end, Holding expected) {
        Plan plan = tank("warmest: " + room + " °C", "humidity: 50 %", heater, pumps, light);
        Checked check = Checked.of(plan, "heater_stuck_on");
        assertThat(check.margin()).isCloseTo(30 - end, within(0.05));
        assertThat(check.holding()).isEqualTo(expected);
        assertThat(check.sentence()).contains("“heater”");
    }

    @Test
    void aHeaterThatCooksTheTankIsToBeUnplugged() {
        Checked check = Checked.of(tank("warmest: 26 °C", "humidity: 50 %", 150, 95, 30), "heater_stuck_on");
        assertThat(check.sentence()).startsWith("Unplug “heater” for the summer, or give it an independent cut-out");
    }

    @Test
    void withoutHeatersOrRoomsToThinkOfThereIsNothingToCheck() {
        assertThat(Checked.ids(TestPlans.workedTank())).noneMatch(id -> id.startsWith("heater"));
        assertThat(Checked.ids(tank("", "humidity: 50 %", 150, 40, 0))).noneMatch(id -> id.startsWith("heater"));
    }

    private static Plan tank(String room, String humidity, double heater, double pumps, double light) {
        String added = "heaters:\n  - {name: heater, stands_in: display, power: " + heater + " W, setpoint: 25.5 °C}\n"
                + "circulation_pumps:\n  - {name: stream, stands_in: display, power: " + pumps + " W}\n";
        if (light > 0) {
            added += "lights:\n  - {name: light, over: display, power: " + 2 * light
                    + " W, daily: 24 h, heat_to_water: 50 %}\n";
        }
        return TestPlans.workedTank(
                "temperature: 21.0 °C",
                "temperature: 21 °C\n  " + room,
                "humidity: 50 %",
                humidity,
                "stand: {",
                added + "stand: {");
    }
}
