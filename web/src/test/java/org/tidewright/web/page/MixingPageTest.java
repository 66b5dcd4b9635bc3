package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.time.Instant;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.mixing.KnownSystem;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

/** The worked examples of docs/science/mixing.md typed into the page by hand; the same as in the library's own tests. */
class MixingPageTest {
    private static final Map<String, KnownSystem> KNOWN = new ConcurrentHashMap<>();

    /** An example's plan, and a log in which nothing was read. */
    private static KnownSystem known(String example) {
        Plan plan = ((PlanReading.Sound) PlanText.read(Examples.text(example))).plan();
        ZoneId zone = ZoneId.of("UTC");
        WaterStudy study = WaterStudy.of(plan, List.of(), Instant.parse("2026-03-07T12:00:00Z"), zone);
        return KnownSystem.of(plan, study, 0.5157, zone);
    }

    private static MixingPage page(String example, MixingTask task, Map<String, String> typed, UnitSystem units) {
        KnownSystem known = KNOWN.computeIfAbsent(example, MixingPageTest::known);
        return MixingPage.of("/systems/" + example, task, typed::get, known, units);
    }

    private static MixingPage page(MixingTask task, Map<String, String> typed) {
        return page("harbour-room", task, typed, UnitSystem.METRIC);
    }

    private static String text(Object markup) {
        return markup.toString()
                .replaceAll("<a class=\"src\".*?</a>", "")
                .replaceAll("<span class=\"u\">", " ")
                .replaceAll("<[^>]*>", "")
                .replace('\u00a0', ' ')
                .replace("\u202f", "");
    }

    private static String figure(MixingPage page, String name) {
        return page.figures().stream()
                .filter(line -> line.name().equals(name))
                .map(line -> text(line.value()))
                .findFirst()
                .orElseThrow();
    }

    private static MixingItem.Cell cell(MixingPage page, String name) {
        return page.groups().stream()
                .flatMap(group -> group.items().stream())
                .filter(MixingItem.Row.class::isInstance)
                .flatMap(item -> ((MixingItem.Row) item).cells().stream())
                .filter(cell -> cell.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** Pairs of name and value over nothing known of the new water but these. */
    private static Map<String, String> typed(String... pairs) {
        Map<String, String> typed = new HashMap<>();
        for (String quantity : List.of("alkalinity", "calcium", "magnesium", "nitrate", "phosphate")) {
            typed.put("system_" + quantity, "");
            typed.put("new_" + quantity, "");
        }
        for (int i = 0; i < pairs.length; i += 2) {
            typed.put(pairs[i], pairs[i + 1]);
        }
        return typed;
    }

    /** “Why not by litres”: 10 L of pure water in 90 L of 35 come to 31.58 by mass, to 31.50 by litres. */
    @Test
    void tenLitresOfPureWaterInNinetyComeToTheSalinityOfTheirMasses() {
        MixingPage page = page(
                MixingTask.CHANGE,
                typed(
                        "volume",
                        "10",
                        "system",
                        "100",
                        "system_salinity",
                        "35",
                        "new_salinity",
                        "0",
                        "system_temperature",
                        "25",
                        "new_temperature",
                        "25",
                        "keeping",
                        "fish"));
        assertThat(figure(page, "Salinity after the change")).isEqualTo("31.6");
        assertThat(text(page.lead())).startsWith("Split it into 2 parts of 5 L, a day apart");
        assertThat(text(page.remarks().get(page.remarks().size() - 1)))
                .isEqualTo(
                        "Not known of both waters and so not of the mixture: alkalinity, calcium, magnesium, nitrate,"
                                + " phosphate.");
    }

    /** Half of 200 L at 10.2 dKH on 6.2: 2 dKH, seven parts at 0.3 a day. */
    @Test
    void aShockIsSplitIntoTheDocumentedParts() {
        MixingPage page = page(
                MixingTask.CHANGE,
                typed(
                        "volume",
                        "100",
                        "system",
                        "200",
                        "system_salinity",
                        "35",
                        "new_salinity",
                        "35",
                        "system_temperature",
                        "25",
                        "new_temperature",
                        "25",
                        "system_alkalinity",
                        "6.2",
                        "new_alkalinity",
                        "10.2",
                        "keeping",
                        "small_polyps"));
        assertThat(text(page.lead()))
                .startsWith(
                        "Split it into 7 parts of 14.3 L, a day apart: in one go it would raise the alkalinity by 2 dKH,"
                                + " and 0.3 dKH a day is comfortable for stony corals of small polyps, 1 dKH the ceiling.");
        assertThat(figure(page, "Alkalinity after the change")).isEqualTo("8.2 dKH");
        assertThat(page.cautions()).anySatisfy(caution -> assertThat(caution).contains("residual-current"));
    }

    /** 50 mg/L by fifths of clean water: ln 5 / ln 1.25 = 7.2, so eight; 50 × 0.8⁸ = 8.39. */
    @Test
    void eightFifthsBringFiftyUnderTen() {
        MixingPage page = page(
                MixingTask.SERIES,
                Map.of(
                        "system_nitrate",
                        "50",
                        "new_nitrate",
                        "0",
                        "target",
                        "10",
                        "rise",
                        "0",
                        "volume",
                        "40",
                        "system",
                        "200",
                        "every",
                        "7"));
        assertThat(text(page.lead())).startsWith("Make 8 changes of 40 L, 7 days apart");
        assertThat(figure(page, "After the last change")).isEqualTo("8.39 mg/L");
    }

    /** The worked quarantine tank makes 0.2166 mg/L a day: 65.6 % a day keep the peak before the change at 0.33. */
    @Test
    void theQuarantineTankComesToItsWorkedPlateau() {
        MixingPage page = page(
                MixingTask.SERIES,
                Map.of(
                        "system_nitrate",
                        "1",
                        "new_nitrate",
                        "0",
                        "target",
                        "0.2",
                        "rise",
                        "0.2166",
                        "volume",
                        "65.6",
                        "system",
                        "100",
                        "every",
                        "1"));
        assertThat(figure(page, "Before each change, in the long run")).isEqualTo("0.33 mg/L");
    }

    /** 39.98 g a litre, 0.9863 L of pure water: for 100 L, with the usual 0.90 ± 0.03. */
    @Test
    void theSaltOfAHundredLitresIsTheWorkedOne() {
        MixingPage page = page(MixingTask.SALT, Map.of("salinity", "35", "volume", "100", "temperature", "25"));
        assertThat(text(page.lead())).startsWith("Weigh 3998 ± 133 g of dry mix for 98.6 L of pure water");
        assertThat(figure(page, "To stir in first")).isEqualTo("3600 g");
        assertThat(cell(page, "yield").note()).startsWith("Usual, from memory");
        assertThat(page.cautions()).anySatisfy(caution -> assertThat(caution).contains("never water onto salt"));
    }

    /** 1000 g in 25 L of pure water that came to 35 at 25 °C show a yield of 0.9117: 100 L then take 3598/0.9117 g. */
    @Test
    void aMeasuredBatchTeachesTheWorkedYield() {
        Map<String, String> typed = Map.of(
                "salinity",
                "35",
                "volume",
                "100",
                "temperature",
                "25",
                "made_mass",
                "1",
                "made_mass_unit",
                "kg",
                "made_volume",
                "25",
                "made_filled",
                "pure",
                "made_temperature",
                "25",
                "made_salinity",
                "35");
        MixingPage page = page(MixingTask.SALT, typed);
        assertThat(text(page.lead())).startsWith("Weigh 3947 ± ");
        // √(0.59² of a hand refractometer / 35², 2 %, 1 %) = 2.8 %.
        assertThat(figure(page, "Yield of the mix")).isEqualTo("91 ± 3 %");
        assertThat(page.groups().get(1).open()).isTrue();
        Map<String, String> half = new HashMap<>(typed);
        half.put("made_salinity", "");
        assertThat(cell(page(MixingTask.SALT, half), "made_salinity").fault()).startsWith("Needed too");
        Map<String, String> grams = new HashMap<>(typed);
        grams.put("made_mass_unit", "g");
        assertThat(cell(page(MixingTask.SALT, grams), "made_mass").fault()).contains("Are the units right?");
    }

    private static Map<String, String> salinity(String now, String target, String strong) {
        return Map.of(
                "now",
                now,
                "target",
                target,
                "strong",
                strong,
                "system",
                "400",
                "temperature",
                "25.5",
                "evaporation",
                "4",
                "keeping",
                "soft_corals");
    }

    /** Salt kept by mass: 400 L that lose 4 L a day take 5.55 days from 35 to 37, not the 5.41 of the litres. */
    @Test
    void withoutTopOffItTakesTheDaysOfTheMass() {
        MixingPage page = page(MixingTask.SALINITY, salinity("35", "37", "37"));
        assertThat(page.remarks())
                .anySatisfy(remark ->
                        assertThat(text(remark)).startsWith("With no salt at all: stop the top-off for 5.5 days"));
    }

    /** 838 g lack in 400 L at 33, a litre of 35 brings 35.8 g; 37.5 is lowered by three days of a little over 9 L. */
    @Test
    void salinityIsRaisedAndLoweredByTheWorkedVolumes() {
        MixingPage raised = page(MixingTask.SALINITY, salinity("33", "35", "35"));
        assertThat(text(raised.lead())).startsWith("Top up with salt water of 35 in place of pure water until 23.4 L");
        MixingPage lowered = page(MixingTask.SALINITY, salinity("37.5", "35", "36"));
        assertThat(text(lowered.lead())).startsWith("Take 9.1 L out and put pure water in, and so each day for 3 days");
        assertThat(raised.sources())
                .anySatisfy(source -> assertThat(source.detail()).isEqualTo("as you gave it"));
    }

    /** A tenth of the water may be ten times the limit off. */
    @Test
    void newWaterIsMatchedAsWorked() {
        Map<String, String> typed = Map.of(
                "volume",
                "20",
                "system",
                "200",
                "temperature",
                "25",
                "limit",
                "0.5",
                "system_salinity",
                "35",
                "new_salinity",
                "35");
        assertThat(text(page(MixingTask.TEMPERATURE, typed).lead()))
                .startsWith("Bring the new water to between 20 °C and 30 °C");
        Map<String, String> us = Map.of(
                "volume",
                "5.283",
                "system",
                "52.83",
                "temperature",
                "77",
                "limit",
                "0.9",
                "system_salinity",
                "35",
                "new_salinity",
                "35");
        assertThat(text(page("harbour-room", MixingTask.TEMPERATURE, us, UnitSystem.US)
                        .lead()))
                .startsWith("Bring the new water to between 68 °F and 86 °F: 5.3 gal of it");
    }

    /** 102.4 kg × 3.996 kJ/(kg K) × 7 K over 300 W are 2.65 h, and 3.3 h with the 55.7 W a covered drum loses at the end. */
    @Test
    void aHeaterTakesTheWorkedHours() {
        MixingPage page = page(
                MixingTask.HEATING,
                Map.of(
                        "volume",
                        "100",
                        "salinity",
                        "35",
                        "from",
                        "18",
                        "to",
                        "25",
                        "power",
                        "300",
                        "room",
                        "18",
                        "humidity",
                        "50",
                        "lid",
                        "on"));
        assertThat(text(page.lead())).startsWith("Switch the heater on 3.3 h before you want the water");
        assertThat(text(page.working().get(0))).endsWith("the vessel loses up to 56 W.");
        assertThat(page.cautions().get(0)).contains("residual-current");
    }

    private static Map<String, String> reserve(String... litres) {
        return Map.of(
                "days",
                "14",
                "share",
                "25",
                "evaporation",
                litres[0],
                "reservoir",
                litres[1],
                "system",
                litres[2],
                "salinity",
                "35",
                "temperature",
                litres[3]);
    }

    /** 14 days of 4 L and a quarter of 400 L: 156 L in all, and 3.998 kg of mix. In gallons and ounces the same. */
    @Test
    void theReserveIsTheWorkedOne() {
        MixingPage page = page(MixingTask.RESERVE, reserve("4", "10", "400", "25"));
        assertThat(text(page.lead())).startsWith("Keep 56 L of pure water and 100 L of salt water ready");
        assertThat(figure(page, "Dry mix for one change")).isEqualTo("3998 ± 133 g");
        MixingPage us =
                page("harbour-room", MixingTask.RESERVE, reserve("1.05669", "2.64172", "105.669", "77"), UnitSystem.US);
        assertThat(text(us.lead())).startsWith("Keep 14.8 gal of pure water and 26.4 gal of salt water ready");
        assertThat(figure(us, "Dry mix for one change")).isEqualTo("141 ± 5 oz");
    }

    /** Drawn from seed 7; a failure names its query. */
    @Test
    void nothingTypedAndAnyRubbishIsAnsweredWithAPage() {
        List<String> words =
                List.of("", "0", "-1", "1e9", "35", "1.026", "25,5", "1,026", "x", "12 gal", "77 F", "NaN", "1e-300");
        List<String> units = List.of("", "L", "gal", "%", "°F", "SG 25/25", "mS/cm", "dKH", "d", "nonsense");
        Random random = new Random(7);
        int answered = 0;
        for (int i = 0; i < 1000; i++) {
            MixingTask task = any(List.of(MixingTask.values()), random);
            UnitSystem system = any(List.of(UnitSystem.values()), random);
            String example = any(Examples.NAMES, random);
            MixingPage plain = page(example, task, Map.of(), system);
            assertThat(plain.refused()).as("%s of %s", task, example).isFalse();
            Map<String, String> typed = new HashMap<>();
            for (MixingItem.Group group : plain.groups()) {
                for (MixingItem item : group.items()) {
                    if (item instanceof MixingItem.Row row) {
                        for (MixingItem.Cell cell : row.cells()) {
                            typed.put(cell.name(), random.nextInt(10) < 8 ? cell.text() : any(words, random));
                        }
                        if (random.nextInt(5) == 0) {
                            String fits = any(row.units(), random).name();
                            typed.put(row.unitName(), random.nextInt(3) > 0 ? fits : any(units, random));
                        }
                    }
                }
            }
            assertThatCode(() -> page(example, task, typed, system))
                    .as("%s of %s with %s", task, example, typed)
                    .doesNotThrowAnyException();
            answered += page(example, task, typed, system).figures().isEmpty() ? 0 : 1;
        }
        assertThat(answered).as("enough of them are sound").isGreaterThan(100);
    }

    private static <T> T any(List<T> several, Random random) {
        return several.get(random.nextInt(several.size()));
    }
}
