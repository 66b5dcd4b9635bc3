package org.tidewright.plan.text;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.plan.Examples;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Rock;

/** The keys that say how a system is run: read, written back, and refused with their place. */
class RegimeTextTest {
    /** As https://yaml.org/type/int.html gives YAML 1.1's whole numbers to the base sixty. */
    private static final Pattern SEXAGESIMAL = Pattern.compile("[-+]?[1-9][0-9_]*(:[0-5]?[0-9])+");

    private static final String COOLED = """
            chillers:
              - {name: chiller, stands_in: return section, power: 150 W, cooling: 400 W, setpoint: 27 °C, band: 0.5 K}
            fans:
              - {name: fan, over: display, air_speed: 2 m/s, setpoint: 26.5 °C, band: 0.3 K, power: 6 W}
            """;

    private static final String REACTOR = """
              - name: calcium reactor
                stands_in: skimmer section
                reactor: {effluent: 30 mL/min, chamber_ph: 6.5, media_mass: 4 kg}
              - name: carbon
                stands_in: inlet
                media: {kind: activated_carbon, mass: 150 g, water_flow: 80 L/h}
            """;

    @Test
    void aTimeIsReadWithAndWithoutItsQuotes() {
        for (String time : List.of("20:30", "\"20:30\"", "'20:30'")) {
            Plan plan = sound(nano().replace("\"12:00\"", time));
            assertThat(plan.lights().get(0).starts()).isEqualTo(LocalTime.of(20, 30));
        }
        assertThat(sound(nano().replace("\"12:00\"", "8:05")).lights().get(0).starts())
                .isEqualTo(LocalTime.of(8, 5));
    }

    @Test
    void noTimeIsWrittenSoThatAnOlderReaderTakesItForANumber() {
        String written = PlanText.write(sound(harbour()));
        assertThat(written).contains("times: [\"08:30\", \"18:30\"]").contains("from: \"22:00\"");
        String withoutQuoted = written.replaceAll("\"[^\"]*\"", "");
        assertThat(SEXAGESIMAL.matcher("20:30").matches()).isTrue();
        assertThat(SEXAGESIMAL.matcher(withoutQuoted).find()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"24:00", "12:60", "noon", "8 pm", "08:00:00", "8", "-08:00", "08.30"})
    void whatIsNoTimeOfDayIsRefused(String text) {
        assertThat(faults(nano().replace("\"12:00\"", text)))
                .singleElement()
                .satisfies(fault -> assertThat(fault.sentence())
                        .isEqualTo("lights[1].starts: found “" + text
                                + "”; expected a time of day from 00:00 to 23:59, such as 08:00 or 20:30."));
    }

    @Test
    void aRegimeReadsBackAsItWasWritten() {
        Plan plan = sound(everything());
        assertThat(plan.chillers()).hasSize(1);
        assertThat(plan.gear()).hasSize(5);
        assertThat(sound(PlanText.write(plan))).isEqualTo(plan);
    }

    @Test
    void theKeepersUnitsAndDoubtsStay() {
        assertThat(PlanText.write(sound(harbour())))
                .contains("alkalinity: 8 dKH ± 0.3 dKH")
                .contains("per_day: 100 mL/d")
                .contains("carbon_dioxide_outdoors: 425 ppm")
                .contains("alkalinity_use: 1 dKH/d ± 0.2 dKH/d");
    }

    @Test
    void aPlanWithoutARegimeStaysSound() {
        Plan plan = sound(nano().replaceAll("(?ms)^(new_water|feeding|water_changes):.*?(?=^\\S|\\z)", "")
                .replaceAll("(?m)^  (alkalinity|calcium|magnesium|nitrate|phosphate): .*\n", ""));
        assertThat(plan.feeding()).isEmpty();
        assertThat(plan.waterChanges()).isEmpty();
        assertThat(plan.newWater()).isNull();
        assertThat(plan.water().alkalinity()).isNull();
    }

    @Test
    void whatIsLeftOutHasItsDefault() {
        Plan plan = sound(harbour().replace(", air: room", "").replace(", state: live", ""));
        assertThat(requireNonNull(plan.gear().get(0).skims()).airOrRoom()).isEqualTo(Gear.Air.ROOM);
        assertThat(requireNonNull(plan.display().rock()).stateOrLive()).isEqualTo(Rock.State.LIVE);
        assertThat(requireNonNull(plan.inhabitants()).fish().get(1).stageOrAdult())
                .isEqualTo(Inhabitants.GrowthStage.ADULT);
    }

    @Test
    void chillersAndFansAreDevicesABatteryCanFeed() {
        String fed = everything().replace("feeds: [air pump]", "feeds: [air pump, fan]");
        assertThat(Names.devices(sound(fed))).contains("chiller", "fan");
    }

    /** One change to a sound plan, the fault it must bring: where, and how the expectation starts. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "times: [\"13:00\"] | times: [\"13:00\", \"09:00\"] | feeding[3].times[2] | a time later than the one before",
                "times: [\"13:00\"] | times: [\"13:00\", \"13:00\"] | feeding[3].times[2] | a time later than the one before",
                "times: [\"13:00\"] | times: [] | feeding[3].times | 1 to 24 items",
                "every: 2 d | every: 36 h | feeding[3].every | a whole number of days",
                "every: 7 d | every: 7.5 d | water_changes[1].every | a whole number of days",
                "volume: 45 L | volume: 600 L | water_changes[1].volume | no more than the display holds",
                "name: mysids | name: pellets | feeding | a name of its own",
                "name: calcium | name: bicarbonate | dosing | a name of its own",
                "strength: 70 g/L | # none | dosing[2] | mass of the salt",
                "strength: 70 g/L | saturation: 50 % | dosing[2].saturation | none: only limewater",
                "saturation: 90 % | # none | dosing[3] | for limewater one of them",
                "saturation: 90 % | {saturation: 90 %, strength: 1 g/L} | dosing[3] | for limewater one of them",
                "daily: 9 h\\n    container: 10 L | container: 10 L | dosing[3] | from and daily together",
                "from: \"22:00\" | times: [\"22:00\"] | dosing[3] | times (pulses), or from and daily",
                "kind: iron_oxide, mass: 200 g, water_flow: 120 L/h | kind: iron_oxide, mass: 200 g, water_flow: 0 L/h "
                        + "| gear[2].media.water_flow | 0.1 to 36000 L/h",
                "ramp: 1 h | ramp: 5 h | lights[1].ramp | at most half of its hours a day",
                ", left_standing: 180 g |  | refugium.algae | harvested_every and left_standing together",
                "over: display, air_speed: 2 m/s, setpoint: 26.5 °C | over: display, air_speed: 2 m/s "
                        + "| fans[1].band | both or none",
                "over: display, air_speed | over: displya, air_speed | fans[1].over | the name of a vessel or section",
                "stands_in: return section, power: 150 W | stands_in: chiller cupboard, power: 150 W "
                        + "| chillers[1].stands_in | the name of a vessel or section",
                "{effluent: 30 mL/min, chamber_ph: 6.5, media_mass: 4 kg} | {effluent: 30 mL/min, chamber_ph: 65} "
                        + "| gear[4].reactor.chamber_ph | 5.5 to 8",
                "chamber_ph: 6.5, media_mass: 4 kg | chamber_ph: 6.5 | gear[4].reactor.media_mass | mass of media in it",
                "carbon_dioxide_outdoors: 425 ppm | carbon_dioxide: 700 ppm | room.carbon_dioxide | none where people",
                "form: soft | form: sotf | inhabitants.corals[8].form | one of branching_acropora",
                "from: \"22:30\", daily: 8 h, speed: 30 % | from: \"17:00\", daily: 9 h, speed: 30 % "
                        + "| circulation_pumps[2].programme[2] | hours apart from those of part 1, from 12:00 for 6 h",
                "from: \"22:30\", daily: 8 h, speed: 30 % | from: \"22:30\", daily: 15 h, speed: 30 % "
                        + "| circulation_pumps[2].programme[2] | hours apart from those of part 1, from 12:00 for 6 h",
                "daily: 8 h, speed: 40 % | daily: 8 h, speed: 140 % | circulation_pumps[1].programme[1].speed | 0 to 100 %",
                "speed: 90 %, running: 50 % | speed: 90 %, running: 0 % "
                        + "| circulation_pumps[2].programme[1].running | 1 to 100 %",
                "daily: 8 h, speed: 40 % | daily: 8 h | circulation_pumps[1].programme[1].speed | speed as a share",
                "share: 60 %, changed_every | share: 160 %, changed_every | gear[3].strains.share | 0 to 100 %",
                "changed_every: 2 d | changed_every: 36 h | gear[3].strains.changed_every | a whole number of days",
                ", changed_every: 2 d | | gear[3].strains.changed_every | time after which it is changed or washed",
                "siphoned: 40 % | siphoned: 40 L | water_changes[1].siphoned | a number such as 35 or 50 %",
                "nitrate: 8 mg/L ± 2 mg/L | nitrate: 8 dKH | water.nitrate | a concentration with its unit",
            })
    void whatDoesNotFitIsRefusedAtItsPlace(String sound, String broken, String where, String expected) {
        String to = broken == null ? "" : broken.startsWith("{sat") ? "saturation: 90 %\n    strength: 1 g/L" : broken;
        String from = sound.replace("\\n", "\n");
        String text = everything();
        assertThat(text).contains(from);
        assertThat(faults(text.replace(from, to))).anySatisfy(fault -> {
            assertThat(fault.where()).isEqualTo(where);
            assertThat(fault.expected()).startsWith(expected);
            assertThat(fault.line()).isGreaterThan(1);
        });
    }

    @Test
    void aDoseIntoNowhereIsRefusedWithASuggestion() {
        String text = harbour()
                .replace("per_day: 2 L/d\n    into: return section", "per_day: 2 L/d\n    into: retrun section");
        assertThat(faults(text)).singleElement().satisfies(fault -> {
            assertThat(fault.where()).isEqualTo("dosing[3].into");
            assertThat(fault.mend()).isEqualTo("Did you mean “return section”?");
        });
    }

    @Test
    void aDeviceThatSkimsAndHoldsMediaIsRefused() {
        String text = harbour()
                .replace("    media: {kind", "    skims: {water_flow: 90 L/h, air_flow: 60 L/h}\n    media: {kind");
        assertThat(faults(text))
                .singleElement()
                .satisfies(fault -> assertThat(fault.expected()).isEqualTo("at most one of them"));
    }

    private static String everything() {
        return harbour().replace("\nheaters:", REACTOR + "\nheaters:") + COOLED;
    }

    private static String harbour() {
        return Examples.text("harbour-room");
    }

    private static String nano() {
        return Examples.text("window-nano");
    }

    private static Plan sound(String text) {
        PlanReading reading = PlanText.read(text);
        assertThat(reading).as("faults in %s", text).isInstanceOf(PlanReading.Sound.class);
        return ((PlanReading.Sound) reading).plan();
    }

    private static List<Fault> faults(String text) {
        return PlanText.read(text) instanceof PlanReading.Faulty faulty ? faulty.faults() : List.of();
    }
}
