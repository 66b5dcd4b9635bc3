package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.tidewright.web.page.Typed.field;
import static org.tidewright.web.page.Typed.form;
import static org.tidewright.web.page.Typed.unit;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.sheet.KnownField;
import org.tidewright.husbandry.sheet.SheetColumn;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.seawater.carbonate.BoronRatio;

class WaterFormTest {
    private static double read(WaterForm form, SheetColumn column) {
        assertThat(form.faults()).isZero();
        return form.known().given().getOrDefault(column, Double.NaN);
    }

    @Test
    void anExampleStandsInTheFieldsWhereNothingIsAsked() {
        WaterForm form = form(Map.of());
        assertThat(form.example()).isTrue();
        assertThat(read(form, SheetColumn.TEMPERATURE)).isEqualTo(25);
        assertThat(read(form, SheetColumn.PRACTICAL_SALINITY)).isEqualTo(35);
        assertThat(field(form, "alkalinity").text()).isEqualTo("8");
        assertThat(unit(form, "ph")).isEqualTo("NBS");
        assertThat(form.moreOpen()).isFalse();
        assertThat(form(Map.of("ph", "")).example()).isFalse();
    }

    /** 77 °F are 25 °C. */
    @Test
    void usReadersHaveFahrenheitAndEverythingElseAsTheTradeHasIt() {
        WaterForm form = form(Map.of(), UnitSystem.US);
        assertThat(field(form, "temperature").text()).isEqualTo("77");
        assertThat(unit(form, "temperature")).isEqualTo("°F");
        assertThat(read(form, SheetColumn.TEMPERATURE)).isCloseTo(25, within(1e-12));
        assertThat(unit(form, "alkalinity")).isEqualTo("dKH");
    }

    @Test
    void aBookmarkedNumberKeepsItsUnitWhoeverReadsIt() {
        Map<String, String> query = Map.of("temperature", "25", "temperature_unit", "°C", "salinity", "35");
        assertThat(read(form(query, UnitSystem.US), SheetColumn.TEMPERATURE)).isEqualTo(25);
        assertThat(unit(form(query, UnitSystem.US), "temperature")).isEqualTo("°C");
    }

    @Test
    void everyFieldOffersTheUnitsItCanBeReadIn() {
        WaterForm form = form(Map.of());
        for (KnownField field : KnownField.values()) {
            assertThat(field(form, WaterForm.name(field)).units().stream()
                            .map(WaterForm.Unit::name)
                            .toList())
                    .isEqualTo(field.unitNames());
        }
    }

    @Test
    void aUnitTypedBehindTheNumberCountsAndMovesToItsPlace() {
        WaterForm form = form(Map.of(
                "temperature",
                "77 F",
                "temperature_unit",
                "°C",
                "salinity",
                "35",
                "alkalinity",
                "2300 umol/kg",
                "alkalinity_unit",
                "dKH"));
        assertThat(read(form, SheetColumn.TEMPERATURE)).isCloseTo(25, within(1e-12));
        assertThat(read(form, SheetColumn.TOTAL_ALKALINITY)).isEqualTo(2300);
        assertThat(field(form, "alkalinity").text()).isEqualTo("2300");
        assertThat(unit(form, "alkalinity")).isEqualTo("µmol/kg");
        assertThat(field(form, "temperature").text()).isEqualTo("77 F");
    }

    @Test
    void aDecimalCommaIsReadUnlessItMayPartThousands() {
        Map<String, String> query = Map.of("temperature", "25,5", "temperature_unit", "°C", "salinity", "35");
        assertThat(read(form(query), SheetColumn.TEMPERATURE)).isEqualTo(25.5);
        assertThat(field(form(query), "temperature").text()).isEqualTo("25,5");
        WaterForm thousands = form(Map.of(
                "temperature", "25", "temperature_unit", "°C", "salinity", "1,026", "salinity_unit", "SG 25/25"));
        assertThat(field(thousands, "salinity").fault()).contains("comma", "1.026");
    }

    @Test
    void aTextThatIsNoNumberIsToldAtItsFieldAndStays() {
        WaterForm form = form(
                Map.of("temperature", "25", "temperature_unit", "°C", "salinity", "35", "alkalinity", "<b>much</b>"));
        assertThat(form.faults()).isEqualTo(1);
        assertThat(field(form, "alkalinity").text()).isEqualTo("<b>much</b>");
        assertThat(field(form, "alkalinity").fault())
                .startsWith("Found “<b>much</b>”")
                .contains("dKH, meq/L");
    }

    @Test
    void aMissingTemperatureIsToldAtTheTemperatureAndNowhereElse() {
        WaterForm form = form(Map.of("salinity", "35", "alkalinity", "8", "alkalinity_unit", "dKH"));
        assertThat(form.faults()).isEqualTo(1);
        assertThat(field(form, "temperature").fault()).startsWith("Needed too");
    }

    @Test
    void salinityAloneIsNoFault() {
        assertThat(form(Map.of("salinity", "35")).faults()).isZero();
    }

    @Test
    void aFahrenheitTakenForCelsiusIsToldAtTheTemperatureAlone() {
        WaterForm form = form(Map.of(
                "temperature",
                "77",
                "temperature_unit",
                "°C",
                "salinity",
                "53",
                "salinity_unit",
                "mS/cm",
                "alkalinity",
                "8",
                "alkalinity_unit",
                "dKH"));
        assertThat(form.faults()).isEqualTo(1);
        assertThat(field(form, "temperature").fault())
                .isEqualTo("This would be 77\u00a0°C, outside −10 to 60. Is the unit right?");
    }

    @Test
    void aNumberNoSeawaterHasIsToldAtItsField() {
        WaterForm form = form(Map.of(
                "temperature",
                "25",
                "temperature_unit",
                "°C",
                "salinity",
                "0.9",
                "salinity_unit",
                "SG 25/25",
                "ph",
                "84",
                "ph_unit",
                "NBS",
                "phosphate",
                "-1",
                "phosphate_unit",
                "mg/L PO4",
                "carbon_dioxide",
                "2e6",
                "carbon_dioxide_unit",
                "ppm"));
        assertThat(field(form, "salinity").fault()).isEqualTo("No seawater has “0.9 SG 25/25”. Is the unit right?");
        assertThat(field(form, "ph").fault()).contains("84 NBS");
        assertThat(field(form, "phosphate").fault()).contains("outside 0 to");
        assertThat(field(form, "carbon_dioxide").fault()).contains("2e6 ppm");
        assertThat(form.faults()).isEqualTo(4);
        assertThat(form.moreOpen()).isTrue();
    }

    @Test
    void aUnitThatIsNoneIsNotTakenForAnother() {
        WaterForm form = form(Map.of(
                "temperature",
                "25",
                "temperature_unit",
                "°C",
                "salinity",
                "35",
                "alkalinity",
                "8",
                "alkalinity_unit",
                "furlongs"));
        assertThat(field(form, "alkalinity").fault()).contains("“furlongs”");
    }

    @Test
    void boronIsUppstromsUnlessLeesIsChosen() {
        assertThat(form(Map.of()).boron()).isEqualTo(BoronRatio.UPPSTROM_1974);
        assertThat(form(Map.of("boron", "lee")).boron()).isEqualTo(BoronRatio.LEE_2010);
    }
}
