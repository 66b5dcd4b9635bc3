package org.tidewright.husbandry.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.WaterQuantity;

/** What headers and numbers are taken for. */
class MeasuredGuessTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Alk                       | 8.1 7.9 8.3      | alkalinity dkh            | sure
            Alk                       | 2.9 3.0 3.1      | alkalinity meq_per_l      | sure
            Alk                       | 140 150 160      | alkalinity mg_per_l_caco3 | sure
            KH                        | 8                | alkalinity dkh            | sure
            dKH                       | 8                | alkalinity dkh            | sure
            alkalinity_meq_per_l      | 2.9              | alkalinity meq_per_l      | sure
            Alkalinity (ppm)          | 150              | alkalinity mg_per_l_caco3 | sure
            Alkalinity, mg/L as CaCO3 | 150              | alkalinity mg_per_l_caco3 | sure
            Alk (dKH)                 | 150 160 155      | alkalinity dkh            | ask
            TA umol/kg                | 2300             |                           |
            Temp                      | 77.5 78 79       | temperature f             | sure
            Temp                      | 25.1 25.4        | temperature c             | sure
            Temperature °F            | 78               | temperature f             | sure
            temp_surface_c            | 12.1             | temperature c             | sure
            Temp (º C)                | 25               | temperature c             | sure
            Room temp                 | 22               |                           |
            Salinity                  | 35 34.5          | salinity pss              | sure
            Salinity                  | 1.025 1.026      | salinity sg_25c_25c       | ask
            SG                        | 1.026            | salinity sg_25c_25c       | ask
            SG 20/20                  | 1.026            | salinity sg_20c_20c       | sure
            sg_25c_25c                | 1.026            | salinity sg_25c_25c       | sure
            Sal ppt                   | 35               | salinity pss              | sure
            Conductivity mS/cm        | 53               | salinity ms_per_cm_at_25c | sure
            Cond                      | 53               | salinity ms_per_cm_at_25c | ask
            Ca                        | 420 430          | calcium mg_per_l          | sure
            Ca++ ppm                  | 420              | calcium mg_per_l          | sure
            Calcium mmol/L            | 10.3             | calcium mmol_per_l        | sure
            Mg                        | 1350             | magnesium mg_per_l        | sure
            Mg (mg/L)                 | 1350             | magnesium mg_per_l        | sure
            pH                        | 8.1 8.2          | ph nbs                    | sure
            pH (total scale)          | 8.0              | ph total                  | sure
            p_h1                      | 7.9              |                           |
            NO3                       | 5 10             | nitrate no3_mg_per_l      | ask
            NO₃ (ppm)                 | 5 10             | nitrate no3_mg_per_l      | sure
            Nitrate-N mg/L            | 1.2              | nitrate n_mg_per_l        | sure
            NO2 ppm                   | 0.02             | nitrite no2_mg_per_l      | sure
            NH3/NH4 ppm               | 0.1              | ammonia n_mg_per_l        | ask
            Ammonia (mg/L N)          | 0.1              | ammonia n_mg_per_l        | sure
            NH3-N mg/L                | 0.1              | ammonia n_mg_per_l        | sure
            PO4                       | 0.04 0.06        | phosphate po4_mg_per_l    | ask
            PO4                       | 10 60 300        | phosphate po4_ug_per_l    | ask
            PO4 ppm                   | 0.04             | phosphate po4_mg_per_l    | sure
            PO4 ppb                   | 40               | phosphate po4_ug_per_l    | ask
            Phosphorus (ppb)          | 14               | phosphate p_ug_per_l      | sure
            DO (mg/L)                 | 6.9              | oxygen mg_per_l           | sure
            do_perc                   | 95               |                           |
            Alk dose (ml)             | 12               |                           |
            Ca reactor pH             | 6.6              |                           |
            Alk target                | 8.5              |                           |
            Ca/Mg                     | 0.31             |                           |
            Volume                    | 20               |                           |
            alk                       | 0.0018 0.0019    |                           |
            Value                     | 78 79            | temperature f             | ask
            Value                     | 8.1 8.3          | ph nbs                    | ask
            Value                     | 420              | calcium mg_per_l          | ask
            Value                     | 123456           |                           |
            """)
    void aColumnIsTakenForWhatItsHeaderAndItsNumbersSay(String header, String numbers, String expected, String surely)
            throws BadCell {
        Guess<Optional<Measured>> guess = guess(header, numbers);
        assertThat(guess.value()
                        .map(found ->
                                found.quantity().key() + " " + found.unit().key()))
                .as(guess.reason())
                .isEqualTo(Optional.ofNullable(expected));
        assertThat(guess.reason()).isNotEmpty();
        if (expected != null) {
            assertThat(guess.sure()).as(guess.reason()).isEqualTo(surely.equals("sure"));
        }
    }

    @Test
    void wordsThatAreLeftNameThePlaceAndAMethodIsKnownByItsWord() throws BadCell {
        Measured surface = guess("temp_surface_c", "25").value().orElseThrow();
        assertThat(surface.place()).isEqualTo("surface");
        assertThat(surface.method()).isNull();
        Measured probe = guess("pH probe", "8.1").value().orElseThrow();
        assertThat(probe.method()).isEqualTo("probe");
        assertThat(guess("Ca ICP", "420").value().orElseThrow().method()).isEqualTo("laboratory");
    }

    private static Guess<Optional<Measured>> guess(String header, String numbers) throws BadCell {
        List<CellNumber> read = new ArrayList<>();
        for (String number : numbers.split(" ", -1)) {
            read.add(CellNumber.read(number, DecimalSign.POINT));
        }
        return MeasuredGuess.of(header, read);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            alkalinity  | dkh          | 840   | Did you mean 8.40?
            alkalinity  | dkh          | 81    | Did you mean 8.1? Or is it in mg/L CaCO3?
            alkalinity  | dkh          | 160   | Is it in mg/L CaCO3?
            temperature | c            | 78.2  | Is it in °F?
            calcium     | mg_per_l     | 4200  | Did you mean 420.0?
            magnesium   | mg_per_l     | 13500 | Did you mean 1350.0?
            salinity    | pss          | 350   | Did you mean 35.0?
            salinity    | sg_25c_25c   | 35    | Is it in pss?
            ph          | nbs          | 81    | Did you mean 8.1?
            ph          | nbs          | 0.81  | Did you mean 8.1?
            phosphate   | po4_mg_per_l | 600   | Did you mean 0.600? Or is it in µg/L PO4?
            oxygen      | mg_per_l     | 95    | Did you mean 9.5?
            temperature | c            | -40   |
            """)
    void whatWasProbablyMeantIsSaid(String quantityKey, String unitKey, String digits, String expected) {
        WaterQuantity quantity = WaterQuantity.ofKey(quantityKey).orElseThrow();
        QuantityUnit unit = quantity.unitOfKey(unitKey).orElseThrow();
        assertThat(ProbableCause.of(quantity, unit, digits)).isEqualTo(expected == null ? "" : expected);
    }

    /** The laws behind the units are asked for numbers nobody measured. */
    @Test
    void noNumberInAnyUnitIsAnsweredOtherwiseThanByAReadingOrARefusal() {
        double[] numbers = {0, -0.0, 1, -1, 1e-300, -1e300, 1e300, Double.MAX_VALUE, 1.5, 2, 80, 1e6};
        for (WaterQuantity quantity : WaterQuantity.values()) {
            for (QuantityUnit unit : quantity.units()) {
                for (double number : numbers) {
                    try {
                        double held = new Event.Reading(quantity, number, unit, null).value();
                        assertThat(held >= quantity.least() && held <= quantity.most())
                                .isTrue();
                    } catch (IllegalArgumentException refused) {
                        assertThat(refused).message().isNotBlank();
                    }
                }
            }
        }
    }
}
