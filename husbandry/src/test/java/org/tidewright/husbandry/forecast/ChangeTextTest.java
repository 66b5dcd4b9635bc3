package org.tidewright.husbandry.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.testkit.SeededCases;
import org.tidewright.twin.forecast.Change;
import org.tidewright.twin.system.Lever;
import org.tidewright.twin.system.Levers;
import org.tidewright.twin.system.SystemTwin;

/** Changes as keepers write them. */
class ChangeTextTest {
    private static final double DAY = 86_400;
    private static final Levers LEVERS =
            SystemTwin.of(TestPlans.example("harbour-room")).levers();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    feed +50 %                                | feed              | 1.5
                    feed -30%                                 | feed              | 0.7
                    feed 150 %                                | feed              | 1.5
                    feed 0                                    | feed              | 0
                    Feed +50 %                                | feed              | 1.5
                    light bar hours 7 h                       | light bar hours   | 25200
                    light bar hours -50 %                     | light bar hours   | 16200
                    light bar off                             | light bar         | 0
                    return pump off                           | return pump       | 0
                    top-off stuck on                          | top-off           | 2
                    room temperature 31 °C                    | room temperature  | 31
                    room temperature 88 °F                    | room temperature  | 31.1111
                    air changes 6 /h                          | air changes       | 0.00166667
                    dying fish 95 g                           | dying fish        | 0.095
                    """)
    void aLeverIsMovedToWhatIsWritten(String text, String lever, double value) throws Exception {
        Change change = ChangeText.read(text, LEVERS);
        assertThat(change.lever().name()).isEqualTo(lever);
        assertThat(change.value()).isCloseTo(value, within(1e-4 * Math.max(1e-2, value)));
        assertThat(change.from()).isZero();
        assertThat(change.lasts()).isInfinite();
    }

    @Test
    void startAndDurationFollowTheValue() throws Exception {
        Change change = ChangeText.read("return pump off from day 3 02:30 for 8 h", LEVERS);
        assertThat(change.from()).isEqualTo(3 * DAY + 2.5 * 3600);
        assertThat(change.lasts()).isEqualTo(8 * 3600);
        assertThat(ChangeText.read("feed +50 % from day 10", LEVERS).from()).isEqualTo(10 * DAY);
        assertThat(ChangeText.read("feed +50 % for 3 d", LEVERS).lasts()).isEqualTo(3 * DAY);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    fead +50 %                    | Did you mean “feed”?
                    feed                          | nothing after the lever
                    feed much                     | “much”
                    feed -130 %                   | at most -100 %
                    return pump half              | on or off
                    return pump stuck on          | on or off
                    top-off half                  | stuck on
                    light bar hours 7 kg          | a time
                    light bar hours               | expected
                    feed +50 % from day 3 25:00   | a time of day
                    feed +50 % for 0 h            | a duration
                    feed 99999999999 %            | 0 to 10 000 %
                    air changes 1e300 /h          | 0 to 100 /h
                    room temperature -300 °C      | 0 to 45 °C
                    room temperature +20 %        | a temperature
                    light bar hours 30 h          | 0 to 24 h
                    added fish +20 %              | an amount with its unit
                    """)
    void whatIsNoChangeIsRefusedWithWhatWasFoundAndExpected(String text, String said) {
        assertThatThrownBy(() -> ChangeText.read(text, LEVERS))
                .isInstanceOf(ChangeText.Unreadable.class)
                .hasMessageContaining(said)
                .hasMessageContaining("expected");
    }

    @Test
    void everyLeverOfEveryExampleTakesWhatThePlanHas() throws Exception {
        Map<String, String> units =
                Map.of("degC", "°C", "s", "h", "1/s", "/h", "m^3/s", "L/h", "m^2", "cm²", "kg", "g", "1", "");
        Map<String, Double> scales = Map.of(
                "degC", 1.0, "s", 3600.0, "1/s", 1 / 3600.0, "m^3/s", 1e-3 / 3600, "m^2", 1e-4, "kg", 1e-3, "1", 1.0);
        for (String example : List.of("harbour-room", "fifty-five-gallon", "window-nano")) {
            Levers levers = SystemTwin.of(TestPlans.example(example)).levers();
            for (Lever lever : levers.all()) {
                if (lever.kind() == Lever.Kind.AMOUNT) {
                    double initial = lever.setting().initial();
                    String amount = BigDecimal.valueOf(initial / scales.getOrDefault(lever.unit(), Double.NaN))
                            .toPlainString();
                    String text = lever.name() + " " + amount + " " + units.get(lever.unit());
                    assertThat(ChangeText.read(text, levers).value())
                            .as(text)
                            .isCloseTo(initial, within(1e-9 * (1 + initial)));
                }
            }
        }
    }

    @Test
    void anyTextIsAChangeOrARefusalAndNothingElse() {
        String[] words = {
            "feed",
            "light bar",
            "hours",
            "off",
            "on",
            "from",
            "day",
            "for",
            "+50",
            "%",
            "3",
            "-",
            "h",
            "02:00",
            "stuck",
            "\u2212",
            "°C",
            "1e999",
            "return pump",
            "🐟",
            "9".repeat(60),
            "\t",
            "room temperature",
            "kg"
        };
        SeededCases.check(4000, draw -> {
            StringBuilder text = new StringBuilder();
            int count = draw.whole(0, 9);
            for (int i = 0; i < count; i++) {
                text.append(words[draw.whole(0, words.length - 1)]).append(draw.oneOf(" ", "", "  "));
            }
            try {
                Change change = ChangeText.read(text.toString(), LEVERS);
                assertThat(change.value()).isFinite();
            } catch (ChangeText.Unreadable refused) {
                assertThat(refused).hasMessageContaining("expected");
            }
        });
    }
}
