package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.ph.AiredWater;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.web.desk.HandMadeDesk;
import org.tidewright.web.desk.SystemView;

/**
 * The worked examples of docs/science/ph.md, typed on the page: 8 dKH at 25.5 °C and salinity 35 in a room of 900 ppm; 0.7 of
 * the exchange through air of 50 ppm brings 305 ppm, pH 8.20 in place of 7.82; 1 dKH more 0.04 to 0.05; 420 ppm of dry air
 * are 407 µatm over water of 25 °C.
 */
class PhPageTest {
    private static final HandMadeDesk DESK = new HandMadeDesk();
    private static final double AT_REST = AiredWater.of(25.5, 35).phAtRest(Alkalinity.fromGermanDegrees(8), 900e-6);

    private static PhPage page(String system, UnitSystem units, Map<String, String> typed) {
        SystemView view = DESK.system(system).orElseThrow();
        return PhPage.of(typed::get, view, DESK.water(view), DESK.clock().getZone(), units);
    }

    private static Map<String, String> query(String... more) {
        Map<String, String> query = new HashMap<>(Map.of(
                "alkalinity",
                "8",
                "salinity",
                "35",
                "temperature",
                "25.5",
                "temperature_unit",
                "c",
                "ph",
                String.format(Locale.ROOT, "%.3f", AT_REST),
                "room",
                "900"));
        for (int i = 0; i < more.length; i += 2) {
            query.put(more[i], more[i + 1]);
        }
        return query;
    }

    private static String text(@Nullable Markup markup) {
        return markup == null
                ? ""
                : markup.html()
                        .replaceAll("<a class=\"src\".*?</a>", "")
                        .replaceAll("<span class=\"u\">", " ")
                        .replaceAll("<[^>]*>", "")
                        .replace('\u00a0', ' ')
                        .replace("\u202f", "");
    }

    private static PhPage.Told told(PhPage page) {
        PhPage.Told told = page.told();
        if (told == null) {
            throw new AssertionError("nothing was worked out: " + text(page.lead()));
        }
        return told;
    }

    private static String lever(PhPage page, String begins) {
        return told(page).levers().stream()
                .map(line -> text(line.sentence()))
                .filter(sentence -> sentence.startsWith(begins))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no lever begins with " + begins));
    }

    private static double gain(String sentence) {
        Matcher matcher = Pattern.compile("reading to [\\d.]+, ([\\d.]+)").matcher(sentence);
        assertThat(matcher.find()).as(sentence).isTrue();
        return Double.parseDouble(matcher.group(1));
    }

    /** 8.20 in place of 7.82 on the total scale; on an electrode's the same difference within 0.02. */
    @Test
    void anAbsorberLiftsThePhAsTheWorkedExampleSays() {
        PhPage page = page("harbour-room", UnitSystem.METRIC, query("skimmer_part", "70", "absorbed", "50"));
        assertThat(gain(lever(page, "An absorber before the skimmer"))).isCloseTo(0.38, within(0.02));
    }

    @Test
    void theSameWaterInUsUnitsTellsTheSame() {
        Map<String, String> us = query("skimmer_part", "70", "temperature", "77.9", "temperature_unit", "f");
        PhPage page = page("harbour-room", UnitSystem.US, us);
        assertThat(gain(lever(page, "An absorber before the skimmer"))).isCloseTo(0.38, within(0.02));
        assertThat(text(told(page).working().get(0))).contains("77.9 ± ", "°F");
        assertThat(lever(page, "Saturated limewater")).contains("gal a day");
        assertThat(lever(page, "Algae lit at night")).contains(" oz ");
    }

    @Test
    void oneMoreDegreeIsToldForWhatItIs() {
        String chasing =
                text(told(page("harbour-room", UnitSystem.METRIC, query())).chasing());
        assertThat(chasing)
                .startsWith("Do not chase pH with buffers")
                .containsPattern("a rise of 1 dKH lifts the reading by only 0\\.0[45]");
    }

    @Test
    void theAirOverTheWaterIsMoistAsTheWorkedExampleSays() {
        PhPage page = page("harbour-room", UnitSystem.METRIC, query("temperature", "25"));
        assertThat(text(told(page).working().get(1))).contains("420 ppm are 407 µatm");
    }

    /** The water is at rest with its room: the page tells no difference between them. */
    @Test
    void waterAtRestWithItsRoomHoldsTheRoomsCarbonDioxide() {
        PhPage page = page("harbour-room", UnitSystem.METRIC, query());
        assertThat(text(page.lead())).contains("900 ppm");
        ToldLine atRest = told(page).figures().get(2);
        assertThat(atRest.name()).isEqualTo("pH at rest with the room's air");
        assertThat(Double.parseDouble(text(atRest.value()))).isCloseTo(AT_REST, within(0.005));
    }

    @Test
    void everyLeverHasItsSentenceItsDoubtAndItsCaution() {
        PhPage.Told told = told(page("harbour-room", UnitSystem.METRIC, query()));
        assertThat(told.levers()).hasSize(5);
        String cautions =
                told.levers().stream().flatMap(line -> line.cautions().stream()).collect(Collectors.joining("\n"));
        assertThat(cautions).contains("frost", "Absorbent is caustic", "Limewater is caustic", "goggles");
        assertThat(told.levers())
                .allSatisfy(
                        line -> assertThat(text(line.sentence())).containsPattern("\\([\\d.]+–[\\d.]+\\)|no probe"));
        assertThat(told(page("window-nano", UnitSystem.METRIC, query())).levers())
                .as("no skimmer, no air to lead to it, and no plan's limewater")
                .hasSizeBetween(2, 3);
    }

    @Test
    void everyLetterHasItsSource() {
        PhPage page = page("harbour-room", UnitSystem.METRIC, query());
        List<String> keys = page.sources().stream().map(Source::key).toList();
        Matcher letters = Pattern.compile("#source-(\\w+)").matcher(page.lead() + "" + page.told());
        assertThat(keys).doesNotHaveDuplicates();
        while (letters.find()) {
            assertThat(keys).contains(letters.group(1));
        }
    }

    @Test
    void theLatestReadingsOfTheLogFillTheFieldsWithTheirDates() {
        PhPage page = page("fifty-five-gallon", UnitSystem.METRIC, Map.of());
        AmountField alkalinity = page.form().parts().get(0).fields().get(0);
        assertThat(alkalinity.text()).isEqualTo("8.2");
        assertThat(alkalinity.note()).isEqualTo("from your log: Sat 7 Mar 2026, 20:40, pocket photometer");
        AmountField salinity = page.form().parts().get(0).fields().get(2);
        assertThat(salinity.note()).isEqualTo("from the plan: as the water is kept");
    }

    @Test
    void withoutAPhItIsAskedForAndNothingIsTold() {
        PhPage page = page("fifty-five-gallon", UnitSystem.METRIC, Map.of());
        assertThat(page.refused()).isFalse();
        assertThat(page.told()).isNull();
        assertThat(text(page.lead())).startsWith("Type the pH: with alkalinity");
    }

    @Test
    void whatCannotBeIsRefusedBesideItsField() {
        PhPage page = page("harbour-room", UnitSystem.METRIC, query("ph", "15"));
        assertThat(page.refused()).isTrue();
        assertThat(page.told()).isNull();
        assertThat(text(page.lead())).startsWith("Mend the marked field");
        AmountField ph = page.form().parts().get(0).fields().get(1);
        assertThat(ph.text()).isEqualTo("15");
        assertThat(ph.fault()).startsWith("Found 15");
        assertThat(page("harbour-room", UnitSystem.METRIC, query("cup_tank", "red"))
                        .refused())
                .isTrue();
        assertThat(page("harbour-room", UnitSystem.METRIC, query("moved", "boiling"))
                        .refused())
                .isTrue();
    }

    @Test
    void twoCupsTellRoomFromTank() {
        PhPage room = page(
                "harbour-room",
                UnitSystem.METRIC,
                query("cup_tank", "8.00", "cup_outdoors", "8.20", "cup_room", "8.03"));
        assertThat(text(room.cupsTold())).startsWith("Air the room").contains("rose by 0.2");
        assertThat(page("harbour-room", UnitSystem.METRIC, query("cup_tank", "8.00"))
                        .cupsTold())
                .isNull();
    }
}
