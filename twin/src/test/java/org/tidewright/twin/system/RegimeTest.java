package org.tidewright.twin.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.plan.Examples;
import org.tidewright.testkit.ChangedText;
import org.tidewright.twin.TestPlans;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Forecast;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Run;

/** Who is in the room at an hour of the first two days, by the plan's own words. */
class RegimeTest {
    private static final double HOUR = 3600;

    @ParameterizedTest
    @CsvSource({
        // from, hours, present at 01:00, 06:00 and 23:30 of both days
        "22:00, 9 h, 3, 3, 3", // sleeps here
        "20:00, 4 h, 0, 0, 3", // leaves at midnight
        "00:00, 5 h, 3, 0, 0", // comes at midnight
        "10:00, 24 h, 3, 3, 3",
        "00:00, 24 h, 3, 3, 3",
        "12:00, 3 h, 0, 0, 0",
    })
    void aStayOverMidnightHoldsInTheFirstNightToo(String from, String daily, int atOne, int atSix, int late) {
        SystemTwin twin = SystemTwin.of(TestPlans.read(ChangedText.of(
                Examples.text("harbour-room"),
                "{count: 2, from: \"07:00\", daily: 1.5 h}",
                "{count: 3, from: \"" + from + "\", daily: " + daily + "}",
                "    - {count: 3, from: \"17:30\", daily: 5 h}\n",
                "")));
        double[] parameters = twin.network().usualParameters();
        Run run = new Run(twin.network(), parameters, twin.start(parameters), Accuracy.OF_A_YEAR);
        Setting present = twin.levers().get("people in the room").setting();
        for (int day = 0; day < 2; day++) {
            run.until((24 * day + 1) * HOUR);
            assertThat(run.now().value(present)).isEqualTo(atOne);
            run.until((24 * day + 6) * HOUR);
            assertThat(run.now().value(present)).isEqualTo(atSix);
            run.until((24 * day + 23.5) * HOUR);
            assertThat(run.now().value(present)).isEqualTo(late);
        }
    }

    @ParameterizedTest
    @CsvSource({
        // what the plan says, ppm on the mean of the day, least and most fall of pH from outdoor air
        "'', 600, 0.03, 0.09",
        "carbon_dioxide: 1000 ppm, 1000, 0.1, 0.25",
        "carbon_dioxide: 423 ppm, 423, -0.001, 0.001",
    })
    void aRoomOfWhichNobodyIsToldHasTheAirOfALivedInOneOrWhatIsStated(
            String stated, double expected, double least, double most) {
        Course course = nano(stated);
        // A meter tells the share of dry air; of the room's 101.3 kPa, 0.45 of 2.64 kPa are vapour (22 °C, handbook).
        // What the
        // tank itself breathes adds a part in a thousand.
        double pressure = expected * (1 - 0.45 * 2.64 / 101.325);
        assertThat(course.meanOfLastDay(Quantity.CARBON_DIOXIDE_OF_ROOM)).isCloseTo(pressure, withinPercentage(0.5));
        // pH falls by the logarithm of the water's carbon dioxide, 1000 µatm or so, which rises as the room's does.
        assertThat(nano("carbon_dioxide: 423 ppm").meanOfLastDay(Quantity.PH) - course.meanOfLastDay(Quantity.PH))
                .isBetween(least, most);
    }

    private static Course nano(String stated) {
        return Forecast.of(TestPlans.read(ChangedText.of(
                        Examples.text("window-nano"), "  humidity: 45 %\n", "  humidity: 45 %\n  " + stated + "\n")))
                .course(3, 13, Set.of(Quantity.PH, Quantity.CARBON_DIOXIDE_OF_ROOM));
    }
}
