package org.tidewright.web.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.page.AmountField.Asked;
import org.tidewright.web.page.AmountField.Known;

class AmountFieldTest {
    private static final Asked VOLUME = Asked.of("volume", "How much", Measure.VOLUME, UnitSystem.METRIC, 1e-5, 1);
    private static final Asked GALLONS = Asked.of("volume", "How much", Measure.VOLUME, UnitSystem.US, 1e-5, 1);

    private static AmountField read(Asked asked, String... query) {
        return AmountField.read(query.length == 0 ? name -> null : map(query)::get, asked, null, "wanted");
    }

    private static Map<String, String> map(String... query) {
        return query.length == 2 ? Map.of(query[0], query[1]) : Map.of(query[0], query[1], query[2], query[3]);
    }

    @Test
    void aNumberIsReadInTheUnitThatIsChosen() {
        assertThat(read(VOLUME, "volume", "2").value()).isCloseTo(2e-3, within(1e-15));
        assertThat(read(VOLUME, "volume", "2", "volume_unit", "gal").value()).isCloseTo(7.570823568e-3, within(1e-12));
        assertThat(read(GALLONS, "volume", "2").value()).isCloseTo(7.570823568e-3, within(1e-12));
        assertThat(read(GALLONS, "volume", "2", "volume_unit", "l").value()).isCloseTo(2e-3, within(1e-15));
    }

    @Test
    void aUnitTypedBehindTheNumberCounts() {
        AmountField field = read(VOLUME, "volume", "0.5 gal");
        assertThat(field.value()).isCloseTo(1.892705892e-3, within(1e-12));
        assertThat(field.text()).isEqualTo("0.5");
        assertThat(field.units().get(1).chosen()).isTrue();
    }

    @Test
    void aDecimalCommaIsAPoint() {
        assertThat(read(VOLUME, "volume", "1,5").value()).isCloseTo(1.5e-3, within(1e-15));
        assertThat(read(VOLUME, "volume", "1,500").faulty()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"much", "2 barrels", "1e", "--2", "2 2", "<b>"})
    void whatIsNoNumberIsSaidWithWhatIsExpected(String typed) {
        AmountField field = read(VOLUME, "volume", typed);
        assertThat(field.value()).isNaN();
        assertThat(field.fault()).startsWith("Found “" + typed + "”; expected a number in L or gal.");
        assertThat(field.text()).isEqualTo(typed);
    }

    @Test
    void whatCannotBeMeantIsToldWithItsBounds() {
        AmountField field = read(VOLUME, "volume", "5000");
        assertThat(field.value()).isNaN();
        assertThat(field.fault().replace('\u00a0', ' '))
                .isEqualTo("Found 5000 L; expected from 0.01 L to 1000 L. Is the unit right?");
        assertThat(read(VOLUME, "volume", "1e999").faulty()).isTrue();
    }

    /** Twice through the form it is still the plan's, and to its last digit. */
    @Test
    void aKnownValueStandsUntilSomethingElseIsTyped() {
        Known known = new Known(1.23456789e-3, "", "from the plan");
        AmountField first = AmountField.read(name -> null, VOLUME, known, "");
        assertThat(first.text()).isEqualTo("1.23");
        assertThat(first.note()).isEqualTo("from the plan");
        AmountField again = AmountField.read(Map.of("volume", "1.23", "volume_unit", "l")::get, VOLUME, known, "");
        assertThat(again.value()).isEqualTo(1.23456789e-3);
        assertThat(again.known()).isEqualTo(known);
        AmountField typed = AmountField.read(Map.of("volume", "1.24")::get, VOLUME, known, "");
        assertThat(typed.known()).isNull();
        assertThat(typed.note()).isEmpty();
        AmountField otherUnit =
                AmountField.read(Map.of("volume", "1.23", "volume_unit", "gal")::get, VOLUME, known, "");
        assertThat(otherUnit.known()).isNull();
    }

    /** 1.23456789 L are 0.326138 gal. */
    @Test
    void aKnownValueFollowsWhoeverChangesUnits() {
        Known known = new Known(1.23456789e-3, "", "from the plan");
        AmountField switched = AmountField.read(Map.of("volume", "1.23", "volume_unit", "l")::get, GALLONS, known, "");
        assertThat(switched.known()).isEqualTo(known);
        assertThat(switched.text()).isEqualTo("0.326");
        assertThat(switched.units().get(0).chosen()).isTrue();
        AmountField typed = AmountField.read(Map.of("volume", "3", "volume_unit", "l")::get, GALLONS, known, "");
        assertThat(typed.text()).isEqualTo("3");
        assertThat(typed.value()).isCloseTo(3e-3, within(1e-15));
    }

    @Test
    void nothingTypedAndNothingKnownIsWanted() {
        AmountField field = read(VOLUME);
        assertThat(field.value()).isNaN();
        assertThat(field.faulty()).isFalse();
        assertThat(field.note()).isEqualTo("wanted");
    }

    @Test
    void whatWasReadStandsWithAPointAndWhatIsRefusedAsItWasTyped() {
        assertThat(read(VOLUME, "volume", "1,5").text()).isEqualTo("1.5");
        assertThat(read(VOLUME, "volume", "\u22121,5").text()).isEqualTo("\u22121,5");
        assertThat(read(VOLUME, "volume", "\u22121,5").fault()).startsWith("Found -1.5\u00a0L; expected from 0.01");
    }

    /** As a list shows it, as it is spelt at large, and as names in files end. */
    @ParameterizedTest
    @ValueSource(strings = {"gal", "GAL", "gallons"})
    void aUnitHasSeveralSpellings(String unit) {
        assertThat(read(VOLUME, "volume", "2 " + unit).value()).isCloseTo(7.570823568e-3, within(1e-12));
        assertThat(read(VOLUME, "volume", "2", "volume_unit", unit).value()).isCloseTo(7.570823568e-3, within(1e-12));
    }

    /** No water is 35 times as dense as pure water; one of 1.03 at 25 °C has a salinity over 39. */
    @Test
    void aSpecificGravityIsNeverTakenForTheSalinityThatWasFilledIn() {
        Asked salinity = Asked.of("salinity", "Salinity", WaterQuantity.SALINITY, UnitSystem.METRIC, 5, 45);
        Known known = new Known(35, "", "from the plan");
        AmountField typed =
                AmountField.read(Map.of("salinity", "1.03", "salinity_unit", "SG 25/25")::get, salinity, known, "");
        assertThat(typed.known()).isNull();
        assertThat(typed.value()).isGreaterThan(39);
        AmountField slip =
                AmountField.read(Map.of("salinity", "36", "salinity_unit", "SG 25/25")::get, salinity, known, "");
        assertThat(slip.fault()).startsWith("Found 36\u00a0SG 25/25; expected from ");
    }

    @Test
    void whatIsFilledInInAnotherUnitIsStillFromThePlan() {
        Asked salinity = Asked.of("salinity", "Salinity", WaterQuantity.SALINITY, UnitSystem.METRIC, 5, 45);
        Known known = new Known(35, "", "from the plan");
        AmountField emptied =
                AmountField.read(Map.of("salinity", "", "salinity_unit", "SG 25/25")::get, salinity, known, "");
        assertThat(emptied.text()).startsWith("1.026").hasSize(6);
        AmountField sent = AmountField.read(
                Map.of("salinity", emptied.text(), "salinity_unit", "SG 25/25")::get, salinity, known, "");
        assertThat(sent.known()).isEqualTo(known);
        assertThat(sent.value()).isEqualTo(35);
    }

    /** Every measure has one unit, or two, and none twice. */
    @ParameterizedTest
    @EnumSource(Measure.class)
    void theReadersUnitIsFirstAndChosen(Measure measure) {
        for (UnitSystem reader : UnitSystem.values()) {
            AmountField field = read(Asked.of("of", "Of", measure, reader, 0, 1));
            assertThat(field.units()).extracting(Choice.Option::value).doesNotHaveDuplicates();
            assertThat(field.units().get(0).value())
                    .isEqualTo(measure.unit(reader).symbol());
            assertThat(field.units())
                    .filteredOn(Choice.Option::chosen)
                    .containsExactly(field.units().get(0));
        }
    }

    /** 35 by PSS-78 is a specific gravity of 1.0264 at 25 °C. */
    @Test
    void aReadingMayBeInAnyUnitOfItsQuantity() {
        Asked salinity = Asked.of("salinity", "Salinity", WaterQuantity.SALINITY, UnitSystem.METRIC, 5, 45);
        assertThat(read(salinity, "salinity", "1.0264", "salinity_unit", "sg_25c_25c")
                        .value())
                .isCloseTo(35, within(0.1));
        Asked temperature = Asked.of("temperature", "Temperature", WaterQuantity.TEMPERATURE, UnitSystem.US, 5, 40);
        assertThat(read(temperature, "temperature", "77").value()).isCloseTo(25, within(1e-9));
    }

    @Test
    void aUnitThatNobodyKnowsIsToldAndNotGuessed() {
        AmountField field = read(VOLUME, "volume", "2", "volume_unit", "hogsheads");
        assertThat(field.fault()).isEqualTo("Found “2 hogsheads”; expected a number in L or gal.");
        assertThat(field.isGiven()).isFalse();
    }
}
