package org.tidewright.seawater.ions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.BoronRatio;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.carbonate.TotalConcentrations;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;
import org.tidewright.testkit.Validation;

class WaterParcelReferenceTest {
    private static final double MICRO = 1e6;

    private static ReferenceTable table(String name) {
        return ReferenceTable.read(WaterParcelReferenceTest.class, "/reference/" + name);
    }

    /** TEOS-10, which has the heat of mixing that is neglected here. */
    @Test
    void temperatureOfAMixtureIsNearThatOfEqualEnthalpy() {
        for (var row : table("ions/mixing_temperature.csv").rows()) {
            double mixed = water(row, "a").mixedWith(water(row, "b")).temperature();
            Validation.of(WaterParcel.class, "mixedWith").absolute(row, "temperature_mixed_c", mixed, 0.0103);
        }
    }

    /** Independent Python on the constants PyCO2SYS gives; not the mean of the two pH, by up to 0.08. */
    @Test
    void phOfAMixtureFollowsFromItsCarbon() {
        double furthest = 0;
        for (var row : table("ions/mixing_ph.csv").rows()) {
            double share = row.number("mass_share_of_a");
            WaterParcel mixed = ofPh(row, "ph_a")
                    .withMass(share)
                    .mixedWith(ofPh(row, "ph_b").withMass(1 - share));
            Validation.of(WaterParcel.class, "mixedWith")
                    .absolute(row, "ph_mixed", mixed.state().ph(), 1e-9);
            double mean = share * row.number("ph_a") + (1 - share) * row.number("ph_b");
            furthest = Math.max(furthest, Math.abs(row.number("ph_mixed") - mean));
        }
        assertThat(furthest).isCloseTo(0.083, within(0.001));
    }

    /** PyCO2SYS 1.8.3.4: two waters about a row, one with more alkalinity and carbon and one with less. */
    @Test
    void watersAboutAStateMixToTheWholeStateAnotherCodeFinds() {
        for (var row : table("carbonate/speciation_uppstrom.csv").rows()) {
            double s = row.number("practical_salinity");
            double alkalinity = row.number("total_alkalinity_umol_kg") / MICRO;
            double carbon = row.number("dic_umol_kg") / MICRO;
            var totals = TotalConcentrations.ofSeawater(s, BoronRatio.UPPSTROM_1974)
                    .withNutrients(
                            row.number("total_phosphate_umol_kg") / MICRO,
                            row.number("total_silicate_umol_kg") / MICRO,
                            row.number("total_ammonia_umol_kg") / MICRO);
            WaterParcel middle = new WaterParcel(1, row.number("temperature_c"), s, alkalinity, carbon, totals, 0.05);
            WaterParcel more = with(middle, 30, 1.1 * alkalinity, 1.2 * carbon);
            WaterParcel less = with(middle, 10, 0.7 * alkalinity, 0.4 * carbon);
            var state = more.mixedWith(less).state();
            Close.absolute(row, "ph_total", state.ph(), 1e-9);
            Close.relative(row, "pco2_uatm", MICRO * state.partialPressure(), 1e-7);
            Close.relative(row, "carbonate_umol_kg", MICRO * state.carbonate(), 1e-7);
            Close.relative(row, "saturation_aragonite", state.aragoniteSaturation(), 1e-7);
        }
    }

    private static WaterParcel water(Row row, String which) {
        return WaterParcel.seawater(
                row.number("mass_" + which + "_kg"),
                row.number("temperature_" + which + "_c"),
                row.number("practical_salinity_" + which),
                2.3e-3,
                2e-3);
    }

    private static WaterParcel ofPh(Row row, String column) {
        double t = row.number("temperature_c");
        double s = row.number("practical_salinity");
        double alkalinity = row.number("alkalinity_mol_kg");
        double carbon = CarbonateSystem.at(t, s)
                .fromAlkalinityAndPh(alkalinity, row.number(column))
                .inorganicCarbon();
        return WaterParcel.seawater(1, t, s, alkalinity, carbon);
    }

    private static WaterParcel with(WaterParcel like, double mass, double alkalinity, double carbon) {
        return new WaterParcel(
                mass,
                like.temperature(),
                like.practicalSalinity(),
                alkalinity,
                carbon,
                like.totals(),
                like.magnesium());
    }
}
