package org.tidewright.husbandry.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.tidewright.testkit.SeededCases;

class KnownTextTest {
    private static KnownText water(KnownField field, String text) {
        Map<KnownField, String> typed = new EnumMap<>(KnownField.class);
        typed.put(KnownField.TEMPERATURE, "25 °C");
        typed.put(KnownField.SALINITY, "35");
        typed.put(field, text);
        return KnownText.read(typed);
    }

    private static double read(KnownField field, String text) {
        KnownText known = water(field, text);
        assertThat(known.faults()).isEmpty();
        return known.given().getOrDefault(field.column(), Double.NaN);
    }

    /** Seawater of S 35 at 25 °C has 1.023341 kg/L (EOS-80); 8 dKH are 160/56.0774 = 2.85320 meq/L. By hand. */
    @Test
    void alkalinityIsReadInEveryUnitOfTheTrade() {
        assertThat(read(KnownField.ALKALINITY, "8 dKH")).isCloseTo(2788.12, within(0.01));
        assertThat(read(KnownField.ALKALINITY, "2.8532 meq/L")).isCloseTo(2788.12, within(0.01));
        assertThat(read(KnownField.ALKALINITY, "142.784 ppm CaCO3")).isCloseTo(2788.12, within(0.01));
        assertThat(read(KnownField.ALKALINITY, "2788.12 umol/kg")).isCloseTo(2788.12, within(1e-9));
    }

    /** The scales' distances by PyCO2SYS 1.8.3.4 at S 35, 25 °C: NBS lies 0.13698 above total, free 0.10772. */
    @Test
    void aPhIsReadOnItsScale() {
        assertThat(read(KnownField.PH, "8.1")).isEqualTo(8.1);
        assertThat(read(KnownField.PH, "8.1 total")).isEqualTo(8.1);
        assertThat(read(KnownField.PH, "8.23698 NBS")).isCloseTo(8.1, within(1e-5));
        assertThat(read(KnownField.PH, "8.20772 free")).isCloseTo(8.1, within(1e-5));
    }

    /** UNESCO 1983 and the handbook density ratio: 1.02637 at 25/25 °C and 53.07 mS/cm at 25 °C are S = 35. */
    @Test
    void salinityIsReadInEveryUnitOfItsInstruments() {
        assertThat(read(KnownField.SALINITY, "1.026373 SG 25/25")).isCloseTo(35, within(0.001));
        assertThat(read(KnownField.SALINITY, "1.026604 20/20")).isCloseTo(35, within(0.001));
        assertThat(read(KnownField.SALINITY, "35.16504 g/kg")).isCloseTo(35, within(1e-9));
        assertThat(read(KnownField.SALINITY, "1023.3412 kg/m3")).isCloseTo(35, within(0.001));
        assertThat(KnownText.read(Map.of(KnownField.TEMPERATURE, "77 F", KnownField.SALINITY, "53.07 mS/cm"))
                        .given()
                        .get(SheetColumn.PRACTICAL_SALINITY))
                .isCloseTo(35, within(0.01));
    }

    /** By hand: 420 mg/L / 40.078 / 1.023341 = 10.2406 mmol/kg; 0.05 mg/L PO4 / 94.9714 / 1.023341 = 0.51447 µmol/kg. */
    @Test
    void massesPerLitreBecomeAmountsPerKilogram() {
        assertThat(water(KnownField.CALCIUM, "420 mg/L").calcium()).isCloseTo(10.2406e-3, within(1e-7));
        assertThat(read(KnownField.PHOSPHATE, "0.05 mg/L PO4")).isCloseTo(0.51447, within(1e-5));
        assertThat(read(KnownField.AMMONIA, "0.1 mg/L N")).isCloseTo(6.9766, within(1e-3));
    }

    /** By hand: 400 ppm of dry air under vapour of 0.0307 atm. */
    @Test
    void aMetersPpmAreOfDryAir() {
        assertThat(read(KnownField.CARBON_DIOXIDE, "400 ppm")).isCloseTo(400 * (1 - 0.0307), within(0.02));
    }

    @Test
    void aMissingUnitIsAskedForWithTheUnitsThereAre() {
        assertThat(water(KnownField.ALKALINITY, "8").faults()).singleElement().satisfies(fault -> {
            assertThat(fault.field()).isEqualTo(KnownField.ALKALINITY);
            assertThat(fault.words()).contains("“8” without a unit", "dKH, meq/L", "For example 8 dKH");
        });
    }

    @Test
    void whatCannotBeReadIsSaidPlainly() {
        assertThat(fault(KnownField.ALKALINITY, "8 dK")).contains("“dK”, which is no unit of it");
        assertThat(fault(KnownField.ALKALINITY, "8 dHK")).endsWith("Did you mean “dKH”?");
        assertThat(fault(KnownField.PH, "8,1")).contains("8.1");
        assertThat(fault(KnownField.PH, "high")).contains("found “high”");
        assertThat(fault(KnownField.TEMPERATURE, "9".repeat(100))).contains("100 characters");
        assertThat(KnownText.read(Map.of(KnownField.ALKALINITY, "8 dKH"))
                        .faults()
                        .get(0)
                        .words())
                .contains("also needs the temperature");
    }

    /** 77 is no temperature of water in °C: told there, and the numbers that lean on it are not blamed. */
    @Test
    void aNumberThatCannotBeMeantIsToldAtItsOwnFieldAlone() {
        KnownText known = KnownText.read(
                Map.of(KnownField.TEMPERATURE, "77", KnownField.SALINITY, "53 mS/cm", KnownField.ALKALINITY, "8 dKH"));
        assertThat(known.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.field()).isEqualTo(KnownField.TEMPERATURE);
            assertThat(fault.words()).isEqualTo("this would be 77\u00a0°C, outside −10 to 60. Is the unit right?");
        });
        assertThat(fault(KnownField.SALINITY, "0.9 SG 25/25"))
                .isEqualTo("no seawater has “0.9 SG 25/25”. Is the unit right?");
    }

    @Test
    void anyTextGivesAnAnswerOrAFault() {
        SeededCases.check(draw -> {
            KnownField field = draw.oneOf(KnownField.values());
            String text = draw.oneOf("", "1", "1.02 ", "-3e300 ") + draw.text();
            KnownText known = KnownText.read(Map.of(field, text));
            assertThat(known.given().size() + known.faults().size()).isLessThanOrEqualTo(1);
        });
    }

    private static String fault(KnownField field, String text) {
        return water(field, text).faults().get(0).words();
    }
}
