package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.solution.Mix;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.HandMadeDesk;
import org.tidewright.web.desk.SystemView;

/**
 * The worked examples of docs/science/solutions.md, typed on the page: hand-worked with the molar masses that chemistry
 * texts print, NaHCO3 84.007, Na2CO3 105.988, CaCl2 2H2O 147.014, MgCl2 6H2O 203.301, MgSO4 7H2O 246.474, NaOH 39.997, Ca
 * 40.078, Mg 24.305 g/mol; one German degree is 0.35665 meq/L.
 */
class SolutionsPageTest {
    private static final HandMadeDesk DESK = new HandMadeDesk();

    private static SolutionsPage page(String system, UnitSystem units, String... query) {
        SystemView view = DESK.system(system).orElseThrow();
        Map<String, String> typed = new HashMap<>();
        for (int i = 0; i < query.length; i += 2) {
            typed.put(query[i], query[i + 1]);
        }
        return SolutionsPage.of(typed::get, view, DESK.water(view), units);
    }

    private static SolutionsPage page(String... query) {
        return page("window-nano", UnitSystem.METRIC, query);
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

    private static String text(List<Markup> all) {
        return all.stream().map(SolutionsPageTest::text).collect(Collectors.joining("\n"));
    }

    private static String remarks(SolutionsPage page) {
        return page.parts().stream().map(part -> text(part.remarks())).collect(Collectors.joining("\n"));
    }

    private static String figure(SolutionsPage page, String name) {
        return page.parts().stream()
                .flatMap(part -> part.figures().stream())
                .filter(line -> line.name().equals(name))
                .map(line -> text(line.value()))
                .collect(Collectors.joining(" | "));
    }

    private static AmountField field(SolutionsPage page, String name) {
        return page.form().parts().stream()
                .flatMap(part -> part.fields().stream())
                .filter(field -> field.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no field " + name));
    }

    /** 80/84.007 = 0.9523 meq/mL; a millilitre of it in 200 L brings 0.9523/200/0.35665 = 0.01335 dKH. */
    @Test
    void bicarbonateIsWeighedAsTheWorkedExampleSays() {
        SolutionsPage page = page(
                "for",
                "bicarbonate",
                "bicarbonate_strength",
                "80",
                "bicarbonate_strength_unit",
                "g_per_l",
                "volume",
                "1",
                "water",
                "200",
                "coldest",
                "19",
                "purity_sodium_bicarbonate",
                "100");
        assertThat(text(page.leads())).startsWith("Weigh 80 g of sodium bicarbonate and fill up to 1000 mL");
        assertThat(figure(page, "Alkalinity in the bottle")).startsWith("0.95 ");
        assertThat(figure(page, "Alkalinity from a millilitre")).startsWith("0.0134 ");
        assertThat(remarks(page)).contains("below about 10 ± 1 °C crystals fall");
    }

    /** The same litre, 0.26417 gal, is 80 g or 2.82 oz; 200 L are 52.83 gal, 19 °C 66.2 °F, and 9.9 °C are 49.8 °F. */
    @Test
    void theSameIsToldInUsUnits() {
        SolutionsPage page = page(
                "fifty-five-gallon",
                UnitSystem.US,
                "for",
                "bicarbonate",
                "bicarbonate_strength",
                "80",
                "bicarbonate_strength_unit",
                "g_per_l",
                "volume",
                "0.264172",
                "water",
                "52.8344",
                "coldest",
                "66.2",
                "purity_sodium_bicarbonate",
                "100");
        assertThat(text(page.leads())).startsWith("Weigh 2.82 oz of sodium bicarbonate and fill up to 1000 mL");
        assertThat(figure(page, "Alkalinity from a millilitre")).startsWith("0.0134 ");
        assertThat(remarks(page)).contains("below about 50 ± 2 °F crystals fall");
        assertThat(field(page, "volume").units().get(0).value()).isEqualTo("gal");
    }

    /** 2 150/105.988 = 2.8305 meq/mL, matched by 2.8305/2 147.014 = 208.1 g/L and 56.72 mg/mL of Ca; crystals at 13.9 °C. */
    @Test
    void carbonateAndItsCalciumMatchAsTheWorkedExampleSays() {
        SolutionsPage page = page(
                "for",
                "carbonate_pair",
                "carbonate_pair_strength",
                "2.8305",
                "carbonate_pair_strength_unit",
                "meq_per_ml",
                "volume",
                "1",
                "coldest",
                "19",
                "magnesium_share",
                "0",
                "purity_sodium_carbonate",
                "100",
                "purity_calcium_chloride",
                "75.4898");
        assertThat(text(page.leads()))
                .contains("Weigh 150 g of sodium carbonate (anhydrous)")
                .contains("Weigh 208 g of calcium chloride dihydrate")
                .contains("56.7 ± ");
        assertThat(remarks(page))
                .contains("below about 14 ± 1 °C crystals fall")
                .contains("Dose as much of it as of the alkaline bottle");
        assertThat(text(page.urgent())).startsWith("Wear goggles and gloves");
    }

    /** 10 g of Mg: 75.8 g of MgCl2 6H2O and 9.5 g of MgSO4 7H2O. */
    @Test
    void magnesiumKeepsTheSeasSulfateAsTheWorkedExampleSays() {
        SolutionsPage page = page(
                "for",
                "magnesium",
                "magnesium_strength",
                "10",
                "magnesium_strength_unit",
                "mg_per_ml",
                "volume",
                "1",
                "purity_magnesium_chloride",
                "100",
                "purity_magnesium_sulfate",
                "100");
        assertThat(text(page.leads())).contains("75.8 g of magnesium chloride", "9.5 g of magnesium sulfate");
    }

    /** 20.3 mmol/L at 25 °C are 1.504 g/L of pure Ca(OH)2, 40.6 meq/L and 814 mg/L of Ca: Bates, Bower and Smith 1956. */
    @Test
    void limewaterIsAsStrongAsItsPublicationSays() {
        SolutionsPage page = page("for", "limewater", "volume", "10", "room", "25", "purity_calcium_hydroxide", "100");
        assertThat(text(page.leads())).contains("Weigh 15 g of calcium hydroxide", "0.041 ± ", "0.81 ± ");
    }

    /** 0.1 dKH in 100 L from a millilitre are 3.5665 meq/mL; 299.6 g/L of bicarbonate, which no water holds. */
    @Test
    void aStrengthMayBeToldByWhatItDoesAndIsRefusedWhereNoWaterHoldsIt() {
        SolutionsPage page = page(
                "for",
                "bicarbonate",
                "bicarbonate_strength",
                "0.1",
                "bicarbonate_strength_unit",
                "dkh_in_100_l",
                "purity_sodium_bicarbonate",
                "100");
        assertThat(text(page.leads())).startsWith("Make it weaker").contains("asks for 300 g/L");
        assertThat(page.refused()).isFalse();
        assertThat(page.parts().get(0).steps()).isEmpty();
    }

    @Test
    void theColdestPlaceOfThePlanIsAsked() {
        SolutionsPage cold = page("for", "carbonate", "carbonate_strength", "150", "coldest", "8");
        assertThat(remarks(cold)).contains("Keep it warm or make it weaker: where it stands it may get 8 °C");
    }

    /** 7.4 to 8.2 dKH ± 0.15 each, 150 L ± 5 %, 40 mL ± 2.5 %: 1.070 ± 0.290 meq/mL. */
    @Test
    void aRiseOfOnesOwnTellsTheBottleAsTheWorkedExampleSays() {
        SolutionsPage page = page(
                "ask",
                "bottle",
                "how",
                "test",
                "of",
                "alkalinity",
                "before",
                "7.4",
                "after",
                "8.2",
                "dose",
                "40",
                "water",
                "150",
                "reading_error",
                "0.15",
                "water_error",
                "5",
                "dose_error",
                "2.5");
        assertThat(text(page.leads())).startsWith("Count on 1.1 ± 0.3 meq/mL of alkalinity in this bottle");
        assertThat(text(page.parts().get(0).cautions())).contains("Do not open or thin down a bottle");
    }

    /** 0.1 dKH in 100 L: 3.5665 ± 0.178 meq/mL; 10 mL raise 100 L by 5 mg/L of Ca: 50 ± 2.5 mg/mL. */
    @Test
    void aLabelIsReadAsTheWorkedExamplesSay() {
        SolutionsPage alkaline = page("ask", "bottle", "how", "label", "dose", "1", "of_water", "100", "rise", "0.1");
        assertThat(text(alkaline.leads())).startsWith("Count on 3.6 ± 0.2 meq/mL");
        SolutionsPage calcium = page(
                "ask",
                "bottle",
                "how",
                "label",
                "of",
                "calcium",
                "dose",
                "10",
                "of_water",
                "26.4172",
                "of_water_unit",
                "gal",
                "rise",
                "5");
        assertThat(text(calcium.leads())).startsWith("Count on 50 ± 2 mg/mL");
    }

    @Test
    void anEmptyBottlePageSaysWhatToDo() {
        SolutionsPage page = page("ask", "bottle");
        assertThat(page.refused()).isFalse();
        assertThat(text(page.leads())).startsWith("Dose once, test before and, mixed in");
        SolutionsPage fallen = page("ask", "bottle", "before", "8.2", "after", "7.4", "dose", "40");
        assertThat(fallen.refused()).isTrue();
        assertThat(field(fallen, "after").fault()).startsWith("Found no rise");
        assertThat(field(fallen, "after").text()).isEqualTo("7.4");
    }

    /** 0.8 dKH a day in 200 L, a tenth changed weekly: 1.167 g/L and 1.14 of salinity in the end; 118.9 mL a day. */
    @Test
    void aYearOfTwoPartsLeavesWhatTheWorkedExampleSays() {
        SolutionsPage page = page(
                "ask",
                "year",
                "doses",
                "pair",
                "use",
                "0.8",
                "water",
                "200",
                "change",
                "20",
                "every",
                "7",
                "salinity",
                "35",
                "temperature",
                "25",
                "magnesium_share",
                "0");
        assertThat(text(page.leads())).contains("1.2 g/L of salt", "stands 1.14 higher");
        assertThat(remarks(page)).contains("3.3 g a day", "119 mL of tank water", "change 22.7 L every 7 days");
        SolutionsPage.Table table = page.table();
        assertThat(table).isNotNull();
        if (table != null) {
            assertThat(table.rows())
                    .filteredOn(SolutionsPage.Row::current)
                    .singleElement()
                    .satisfies(row -> assertThat(row.figures()).startsWith("+5.92", "+1.14"));
        }
        assertThat(page.parts().get(0).steps()).isEmpty();
    }

    /** 1 dKH a day without changes: 7.61 g/L in a year, 7.40 of salinity, told in US units as in metric. */
    @Test
    void withoutChangesAYearGathersWhatTheWorkedExampleSays() {
        SolutionsPage page = page(
                "fifty-five-gallon",
                UnitSystem.US,
                "ask",
                "year",
                "doses",
                "pair",
                "use",
                "1",
                "water",
                "52.8344",
                "change",
                "0",
                "salinity",
                "35",
                "temperature",
                "77",
                "magnesium_share",
                "0");
        assertThat(text(page.leads())).contains("7.6 g/L", "rise by 7.4");
    }

    @Test
    void thePlanAndTheLogFillTheFieldsAndSaySo() {
        SolutionsPage harbour = page("harbour-room", UnitSystem.METRIC);
        assertThat(field(harbour, "bicarbonate_strength").text()).isEqualTo("80");
        assertThat(field(harbour, "bicarbonate_strength").note()).isEqualTo("from the plan: bicarbonate");
        assertThat(field(harbour, "volume").text()).isEqualTo("2");
        assertThat(field(harbour, "volume").note()).isEqualTo("from the plan: its container");
        assertThat(field(harbour, "coldest").text()).isEqualTo("19");
        assertThat(remarks(harbour)).contains("It lasts 20 days at the plan’s 100 mL a day");
        SolutionsPage logged = page("fifty-five-gallon", UnitSystem.METRIC, "ask", "year", "doses", "pair");
        assertThat(field(logged, "use").note()).startsWith("from your log");
        SolutionsPage stated = page("harbour-room", UnitSystem.METRIC, "ask", "year", "doses", "pair");
        assertThat(field(stated, "use").text()).isEqualTo("1");
        assertThat(field(stated, "use").note()).startsWith("from the plan");
        SolutionsPage planned = page("harbour-room", UnitSystem.METRIC, "ask", "year");
        assertThat(remarks(planned)).contains("100 mL/d of bicarbonate at 80 g/L", "for it is eaten: vinegar");
    }

    /** What was typed for one mix is not taken for another's. */
    @Test
    void aStrengthStaysWithItsMix() {
        SolutionsPage page = page("for", "lye", "bicarbonate_strength", "80", "bicarbonate_strength_unit", "g_per_l");
        assertThat(field(page, "lye_strength").text()).isEqualTo("40");
        assertThat(field(page, "lye_strength").note()).isEqualTo("usual, common practice");
    }

    @Test
    void whatCannotBeIsRefusedBesideItsFieldAndNothingIsWorkedOut() {
        SolutionsPage page = page("volume", "much", "coldest", "-40");
        assertThat(page.refused()).isTrue();
        assertThat(text(page.leads())).startsWith("Mend the 2 marked fields");
        assertThat(field(page, "volume").fault()).startsWith("Found “much”; expected a number");
        assertThat(field(page, "coldest").text()).isEqualTo("-40");
        assertThat(page.parts()).isEmpty();
        assertThat(page("for", "gold").refused()).isTrue();
        assertThat(page("ask", "year", "doses", "gold").refused()).isTrue();
        assertThat(page("ask", "bottle", "how", "rumour").refused()).isTrue();
        assertThat(page("ask", "year", "change", "500").refused()).isTrue();
    }

    @ParameterizedTest
    @EnumSource
    void everyMixIsToldWithItsCautionsAndEveryLetterHasItsSource(Mix mix) {
        for (UnitSystem units : UnitSystem.values()) {
            SolutionsPage page = page("harbour-room", units, "for", SolutionsPage.key(mix));
            assertThat(page.refused()).isFalse();
            assertThat(text(page.leads())).startsWith("Weigh ");
            assertThat(page.urgent()).isNotNull();
            String cautions =
                    page.parts().stream().map(part -> text(part.cautions())).collect(Collectors.joining());
            assertThat(cautions + text(page.urgent())).contains("comes before this page");
            List<String> keys = page.sources().stream().map(Source::key).toList();
            TreeSet<String> letters = new TreeSet<>();
            String all = page.leads() + "" + page.parts();
            Matcher matcher = Pattern.compile("#source-(\\w+)").matcher(all);
            while (matcher.find()) {
                letters.add(matcher.group(1));
            }
            assertThat(keys).doesNotHaveDuplicates().containsAll(letters);
        }
    }
}
