package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.web.page.Typed.page;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.sheet.SheetColumn;
import org.tidewright.husbandry.sheet.SheetSection;
import org.tidewright.husbandry.sheet.WaterInAir;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.seawater.carbonate.BoronRatio;

/**
 * Numbers of PyCO2SYS 1.8.3.4 with the constants of Lueker et al. 2000 and the boron of Uppström 1974, at S 35 and 25 °C:
 * alkalinity 2400 and inorganic carbon 2088 µmol/kg give pH 8.0505 total and 8.1875 NBS, 422.55 ppm of dry air, Ω 3.569;
 * alkalinity 3000 µmol/kg in air of 799.0965 ppm gives pH 8.040103 NBS.
 */
class WaterDeskPageTest {
    /** EOS-80 at S 35 and 25 °C: 1023.3412 kg/m³; one German degree is 20/56.0774 meq/L. */
    private static double degrees(double micromolesPerKilogram) {
        return micromolesPerKilogram * 1.0233412 / 1000 * 56.0774 / 20;
    }

    private static Map<String, String> water(String... more) {
        Map<String, String> query =
                new HashMap<>(Map.of("temperature", "25", "temperature_unit", "°C", "salinity", "35"));
        for (int i = 0; i < more.length; i += 3) {
            query.put(more[i], more[i + 1]);
            query.put(more[i] + "_unit", more[i + 2]);
        }
        return query;
    }

    private static final Map<String, String> REFERENCE =
            water("alkalinity", "2400", "µmol/kg", "carbon", "2088", "µmol/kg");

    private static String head(WaterDeskPage page, String name) {
        return page.heads().heads().stream()
                .filter(head -> head.name().startsWith(name))
                .map(head -> (head.value() + " | " + head.beside()).replaceAll("<[^>]*>", ""))
                .findFirst()
                .orElse("");
    }

    private static WaterDeskPage.Picture picture(WaterDeskPage page) {
        WaterDeskPage.Picture picture = page.picture();
        if (picture == null) {
            throw new AssertionError("no picture");
        }
        return picture;
    }

    @Test
    void twoOfTheFourGiveTheOthers() {
        WaterDeskPage page = page(REFERENCE);
        assertThat(page.refused()).isFalse();
        assertThat(head(page, "pH")).startsWith("8.19").contains("8.05 on the total scale");
        assertThat(head(page, "CO₂")).startsWith("420ppm");
        assertThat(head(page, "Aragonite")).startsWith("3.6");
        assertThat(head(page, "Alkalinity")).startsWith("6.9dKH").contains("2.46\u00a0meq/L", "123\u00a0mg/L");
        assertThat(head(page, "Inorganic")).startsWith("2\u202f088µmol/kg");
        assertThat(page.heads().ranges()).isFalse();
    }

    @Test
    void everyNumberOfTheSheetIsThereOnceWithItsSource() {
        WaterDeskPage page = page(REFERENCE);
        Set<String> expected = new TreeSet<>();
        for (SheetColumn column : SheetColumn.values()) {
            if (column != SheetColumn.WITHIN_LUEKER
                    && !(column.section() == SheetSection.TOTALS
                            && column.source().equals("as given"))) {
                expected.add(column.words() + " " + column.unit());
            }
        }
        Set<String> shown = new TreeSet<>();
        page.sections()
                .forEach(section -> section.lines().forEach(line -> {
                    assertThat(line.source()).isNotBlank();
                    shown.add(line.name() + " " + (line.unit().equals("%") ? "" : line.unit()));
                }));
        assertThat(shown).isEqualTo(expected);
    }

    @Test
    void everyLetterLeadsToOneNote() {
        for (Map<String, String> query : List.of(Map.<String, String>of(), REFERENCE, water(), water("ph", "8", ""))) {
            WaterDeskPage page = page(query);
            Set<String> keys = new HashSet<>();
            for (Source source : page.sources()) {
                assertThat(keys.add(source.key())).isTrue();
            }
            page.heads()
                    .heads()
                    .forEach(head ->
                            assertThat(keys).contains(head.value().html().replaceAll(".*#source-(\\w).*", "$1")));
        }
    }

    /**
     * The other code takes the air's vapour pressure from another law, 1.3e-4 of the ppm apart: at most 1.3e-4 x lg e =
     * 5.6e-5 of pH.
     */
    @Test
    void theCurvesStandWhereOthersComputeThem() {
        WaterInAir air = new WaterInAir(
                Map.of(SheetColumn.TEMPERATURE, 25.0, SheetColumn.PRACTICAL_SALINITY, 35.0),
                BoronRatio.UPPSTROM_1974,
                25,
                35);
        assertThat(air.ph(degrees(3000), 799.0965442639517)).isCloseTo(8.040102569852802, within(5.6e-5));
        assertThat(air.ph(degrees(2400), 422.5538838551663)).isCloseTo(8.187486188235635, within(5.6e-5));
    }

    @Test
    void aPhThatMayBeOffGivesRanges() {
        WaterDeskPage page = page(water("alkalinity", "8", "dKH", "ph", "8.0", "NBS"));
        assertThat(page.heads().ranges()).isTrue();
        assertThat(head(page, "CO₂")).matches("\\d+ppm \\(\\d+–\\d+\\).*");
        assertThat(head(page, "pH")).doesNotContain("–");
    }

    @Test
    void oneOfTheFourShowsTheCurvesWithoutAPointAndSaysWhatIsWanting() {
        WaterDeskPage page = page(water("alkalinity", "8", "dKH"));
        assertThat(page.lead()).startsWith("Type one more of").contains("Alkalinity alone");
        assertThat(picture(page).curves().own()).isNull();
        assertThat(page.remark()).isEmpty();
        assertThat(page(water("ph", "8", "NBS")).lead()).contains("pH alone");
        assertThat(head(page(water("ph", "8", "NBS")), "Ammonia")).contains("%");
    }

    @Test
    void withoutTemperatureOrSalinityThereIsNoPicture() {
        WaterDeskPage page = page(Map.of("salinity", "35"));
        assertThat(page.picture()).isNull();
        assertThat(page.lead()).startsWith("Type temperature and salinity first");
        assertThat(page(Map.of("ph", "")).sections()).isEmpty();
    }

    @Test
    void whatWasNotLookedAtIsSaid() {
        WaterDeskPage page = page(water("alkalinity", "8", "dKH", "ph", "8.0", "NBS", "carbon_dioxide", "420", "ppm"));
        assertThat(page.remark()).startsWith("Not looked at: carbon dioxide. Two settle the rest");
    }

    @Test
    void aPairNoSeawaterHasBecomesOneSentence() {
        WaterDeskPage page = page(water("alkalinity", "8", "dKH", "ph", "13", "NBS"));
        assertThat(page.refused()).isTrue();
        assertThat(page.lead())
                .isEqualTo("Read again what you typed: no seawater has alkalinity of 8\u00a0dKH and a pH of"
                        + " 13\u00a0NBS at once.");
        assertThat(page.sections()).isEmpty();
        assertThat(page.picture()).isNull();
    }

    @Test
    void aFaultComputesNothing() {
        WaterDeskPage page = page(water("alkalinity", "8", "dKH", "ph", "x", "NBS"));
        assertThat(page.refused()).isTrue();
        assertThat(page.lead()).startsWith("Mend the marked field");
        assertThat(page.heads().heads()).isEmpty();
        assertThat(page.sections()).isEmpty();
    }

    /** The constants of Lueker et al. 2000 were measured from 2 to 35 °C and S 19 to 43. */
    @Test
    void outsideTheRangeOfTheConstantsACautionStands() {
        assertThat(page(REFERENCE).cautions()).isEmpty();
        Map<String, String> brackish = new HashMap<>(REFERENCE);
        brackish.put("salinity", "10");
        assertThat(page(brackish).cautions())
                .singleElement()
                .asString()
                .contains("2\u00a0°C to 35\u00a0°C", "19 to 43");
        assertThat(WaterDeskPage.of(Typed.form(brackish, UnitSystem.US), UnitSystem.US)
                        .cautions())
                .singleElement()
                .asString()
                .contains("35.6\u00a0°F to 95\u00a0°F");
    }

    @Test
    void aWaterFarFromAnyTanksIsNotDrawn() {
        WaterDeskPage page = page(water("alkalinity", "60", "dKH", "ph", "8.0", "NBS"));
        assertThat(picture(page).curves().own()).isNull();
        assertThat(picture(page).caption()).endsWith("outside the picture.");
    }
}
