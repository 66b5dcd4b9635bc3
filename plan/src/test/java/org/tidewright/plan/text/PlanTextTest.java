package org.tidewright.plan.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tidewright.plan.Examples;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.model.Plan;

class PlanTextTest {
    static List<String> examples() {
        return Examples.NAMES;
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleIsSound(String name) {
        assertThat(faults(Examples.text(name))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void writingAndReadingBackGivesTheSamePlan(String name) {
        Plan first = sound(Examples.text(name)).plan();
        Plan again = sound(PlanText.write(first)).plan();
        assertThat(again).isEqualTo(first);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void writingKeepsTheCommentsOfTheTextItCameFrom(String name) {
        PlanDocument document = sound(Examples.text(name));
        String written = document.textWith(document.plan());
        assertThat(sound(written).plan()).isEqualTo(document.plan());
        assertThat(comments(written)).containsExactlyElementsOf(comments(document.text()));
        // And once written, writing again changes nothing.
        PlanDocument second = sound(written);
        assertThat(second.textWith(second.plan())).isEqualTo(written);
    }

    @Test
    void theKeepersOwnUnitsStayInTheFile() {
        assertThat(PlanText.write(sound(Examples.text("fifty-five-gallon")).plan()))
                .contains("length: 47.5 in")
                .contains("flow: 300 gal/h")
                .contains("temperature: 78 °F");
    }

    @Test
    void aMisspeltKeyIsNamedWithItsPlaceAndASuggestion() {
        List<Fault> faults = faults(nano().replace("  height: 36 cm", "  heigth: 36 cm"));
        assertThat(faults).hasSize(2);
        assertThat(faults.get(1).sentence())
                .startsWith("display.heigth: found the unknown key “heigth”; expected one of length, width, height")
                .endsWith("Did you mean “height”?");
        assertThat(faults.get(1).line()).isEqualTo(29);
        assertThat(faults.get(1).column()).isEqualTo(3);
        assertThat(faults.get(0).sentence()).contains("no key “height”");
    }

    @Test
    void anUnknownUnitIsNamedWithTheUnitsThatFit() {
        List<Fault> faults = faults(nano().replace("length: 60 cm", "length: 60 cn"));
        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(27);
            assertThat(fault.sentence())
                    .isEqualTo("display.length: found the unknown unit “cn”; expected a length with its unit, "
                            + "one of: m, cm, mm, in, ft. Did you mean “cm”?");
        });
    }

    @Test
    void aVolumeWhereALengthBelongsIsRefused() {
        assertThat(faults(nano().replace("length: 60 cm", "length: 60 L")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).isEqualTo("“60 L”, which is not a length"));
    }

    @Test
    void aNegativeLengthIsRefusedWithTheBoundsInTheKeepersUnit() {
        assertThat(faults(nano().replace("length: 60 cm", "length: -60 cm")))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.found()).isEqualTo("-60 cm");
                    assertThat(fault.expected()).isEqualTo("10 to 2000 cm");
                });
    }

    @Test
    void aNumberWithoutItsUnitIsRefused() {
        assertThat(faults(nano().replace("length: 60 cm", "length: 60")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).isEqualTo("“60” without a unit"));
    }

    @Test
    void aDecimalCommaIsExplained() {
        assertThat(faults(nano().replace("length: 60 cm", "length: 60,5 cm")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).contains("write the decimals after a point"));
    }

    @Test
    void aBaffleHigherThanItsSumpIsRefused() {
        assertThat(faults(Examples.text("harbour-room").replace("baffle: {over: 25 cm}", "baffle: {over: 45 cm}")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.sentence())
                        .isEqualTo("sump.sections[1].baffle.over: found 45 cm; expected less than the sump's "
                                + "height, 42 cm."));
    }

    @Test
    void aNozzleOutsideTheTankIsRefused() {
        assertThat(faults(Examples.text("harbour-room").replace("lower_edge: 43 cm", "lower_edge: 58 cm")))
                .anySatisfy(fault -> {
                    assertThat(fault.where()).isEqualTo("return_line.outlets[1].lower_edge");
                    assertThat(fault.expected()).startsWith("a mouth inside the vessel");
                });
    }

    @Test
    void aFileThatIsNoPlanForItsSizeIsRefusedUnread(@TempDir Path folder) throws IOException {
        Path large = folder.resolve("large.yaml");
        Files.writeString(large, "# " + "x".repeat(10_000_000));
        PlanReading reading = PlanText.read(large);
        assertThat(reading)
                .isInstanceOfSatisfying(
                        PlanReading.Faulty.class,
                        faulty -> assertThat(faulty.faults().get(0).sentence())
                                .contains("a file of 10000002 bytes")
                                .contains("likely another file"));
    }

    @Test
    void anAliasBombIsRefusedAtItsFirstAlias() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 40; i++) {
            bomb.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
        }
        assertThat(faults(bomb.toString())).singleElement().satisfies(fault -> {
            assertThat(fault.found()).startsWith("a YAML alias");
            assertThat(fault.line()).isEqualTo(2);
        });
    }

    @Test
    void deepNestingIsRefused() {
        assertThat(faults("a: " + "[".repeat(200_000)))
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).contains("levels of nesting"));
    }

    @Test
    void anEmptyFileIsAnsweredWithWhereToStart() {
        for (String empty : List.of("", "\n\n", "# only a comment\n", "---\n")) {
            assertThat(faults(empty))
                    .singleElement()
                    .satisfies(fault -> assertThat(fault.sentence()).contains("tidewright example"));
        }
    }

    @Test
    void brokenYamlIsShownAtItsLine() {
        assertThat(faults("name: Reef\nwater: {salinity: 35\nroom: x\n"))
                .singleElement()
                .satisfies(fault -> assertThat(fault.line()).isBetween(2, 4));
    }

    @Test
    void aKeyGivenTwiceIsRefused() {
        assertThat(faults(nano() + "name: Another\n"))
                .singleElement()
                .satisfies(fault -> assertThat(fault.found()).isEqualTo("the key “name” a second time"));
    }

    @Test
    void aSumpWithoutOverflowIsRefused() {
        String text = Examples.text("harbour-room");
        int from = text.indexOf("overflow:");
        int to = text.indexOf("sump:\n  width");
        assertThat(faults(text.substring(0, from) + text.substring(to)))
                .anySatisfy(fault -> assertThat(fault.found()).isEqualTo("no block “overflow”"));
    }

    @Test
    void aBatteryThatFeedsAnUnknownDeviceIsRefused() {
        assertThat(faults(Examples.text("harbour-room").replace("feeds: [air pump]", "feeds: [air pmup]")))
                .singleElement()
                .satisfies(fault -> assertThat(fault.mend()).isEqualTo("Did you mean “air pump”?"));
    }

    @Test
    void everyFaultIsListedAtOnce() {
        assertThat(faults(nano().replace("length: 60 cm", "length: 60 L")
                        .replace("humidity: 45 %", "humidity: 450 %")
                        .replace("cover: open", "cover: opne")))
                .hasSize(3);
    }

    private static String nano() {
        return Examples.text("window-nano");
    }

    private static PlanDocument sound(String text) {
        PlanReading reading = PlanText.read(text);
        assertThat(reading).as("faults in %s", text).isInstanceOf(PlanReading.Sound.class);
        return ((PlanReading.Sound) reading).document();
    }

    private static List<Fault> faults(String text) {
        return PlanText.read(text) instanceof PlanReading.Faulty faulty ? faulty.faults() : List.of();
    }

    private static List<String> comments(String text) {
        return text.lines()
                .filter(line -> line.contains("#"))
                .map(line -> line.substring(line.indexOf('#')).strip())
                .toList();
    }
}
