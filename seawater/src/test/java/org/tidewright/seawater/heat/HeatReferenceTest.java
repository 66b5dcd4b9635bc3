package org.tidewright.seawater.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;
import org.tidewright.testkit.Validation;

class HeatReferenceTest {
    private static final double PASCAL_PER_ATMOSPHERE = 101325;

    private static ReferenceTable table(String name) {
        return ReferenceTable.read(HeatReferenceTest.class, "/reference/heat/" + name);
    }

    /** UNESCO 1983 specific heats; IAPWS R7-97, R6-95 and R13-08 tables; Dickson, Sabine & Christian 2007. */
    @Test
    void meetsThePublishedCheckValues() {
        for (var row : table("published.csv").rows()) {
            validation(row).absolute(row, "printed_value", value(row), row.number("tolerance"));
        }
    }

    private static Validation validation(Row row) {
        return switch (row.text("unit")) {
            case "J/(kg K)" -> Validation.of(SpecificHeat.class, "ofSeawater");
            case "deg C (IPTS-68)" -> Validation.of(FreezingPoint.class, "ofSeawater");
            case "Pa" -> Validation.of(VapourPressure.class, "ofPureWater");
            default -> Validation.of(VapourPressure.class, "ofSeawater");
        };
    }

    private static double value(Row row) {
        double temperature = row.has("temperature_c") ? row.number("temperature_c") : Double.NaN;
        return switch (row.text("unit")) {
            case "J/(kg K)" -> SpecificHeat.ofSeawater(temperature, salinity(row));
            case "deg C (IPTS-68)" -> TemperatureScale.ipts68(FreezingPoint.ofSeawater(salinity(row)));
            case "Pa" -> VapourPressure.ofPureWater(temperature);
            case "atm" -> VapourPressure.ofSeawater(temperature, salinity(row)) / PASCAL_PER_ATMOSPHERE;
            default -> throw new IllegalArgumentException("no law here gives " + row.text("unit"));
        };
    }

    /** IAPWS-08's row gives absolute salinity only: standard seawater, 35.16504 g/kg, is practical salinity 35. */
    private static double salinity(Row row) {
        return row.has("practical_salinity") ? row.number("practical_salinity") : 35;
    }

    /** Millero, Perron & Desnoyers 1973 typed a second time, in Python. */
    @Test
    void specificHeatEqualsAnotherTypingOverTheWholeGrid() {
        for (var row : table("specific_heat_eos80.csv").rows()) {
            double got = SpecificHeat.ofSeawater(row.number("temperature_c"), row.number("practical_salinity"));
            Validation.of(SpecificHeat.class, "ofSeawater").relative(row, "specific_heat_j_kg_k", got, 1e-12);
        }
    }

    /** TEOS-10 by GSW 3.6.16: another law, 4.5 J/(kg K) being the distance between the two. */
    @Test
    void specificHeatLiesAsNearToTeos10AsEos80Does() {
        for (var row : table("teos10.csv").rows()) {
            double got = SpecificHeat.ofSeawater(row.number("temperature_c"), row.number("practical_salinity"));
            Validation.of(SpecificHeat.class, "ofSeawater").absolute(row, "specific_heat_j_kg_k", got, 4.5);
        }
    }

    /** Wagner & Pruss 1993 and Dickson et al. 2007 typed a second time, compared with seacarb and the MIT library. */
    @Test
    void vapourPressureEqualsAnotherTypingOverTheWholeGrid() {
        for (var row : table("vapour.csv").rows()) {
            double temperature = row.number("temperature_c");
            double salinity = row.number("practical_salinity");
            Validation.of(VapourPressure.class, "ofPureWater")
                    .relative(
                            row,
                            "vapour_pressure_water_wagner_pruss_pa",
                            VapourPressure.ofPureWater(temperature),
                            1e-12);
            Validation.of(VapourPressure.class, "ofSeawater")
                    .relative(
                            row,
                            "vapour_pressure_seawater_dickson_2007_pa",
                            VapourPressure.ofSeawater(temperature, salinity),
                            1e-12);
        }
    }

    /** IAPWS-95 and TEOS-10 by iapws 1.5.3; tolerances are the distances between those and the laws used here. */
    @Test
    void vapourPressureLiesNearTheFundamentalEquations() {
        for (var row : table("vapour.csv").rows()) {
            double temperature = row.number("temperature_c");
            double salinity = row.number("practical_salinity");
            Validation.of(VapourPressure.class, "ofPureWater")
                    .relative(row, "vapour_pressure_water_iapws95_pa", VapourPressure.ofPureWater(temperature), 2.3e-4);
            Validation.of(VapourPressure.class, "ofSeawater")
                    .relative(
                            row,
                            "vapour_pressure_seawater_teos10_pa",
                            VapourPressure.ofSeawater(temperature, salinity),
                            3.1e-4);
        }
    }

    /** Sharqawy et al. 2010 typed a second time; the reference is per kg of seawater, hence the factor (1 - S). */
    @Test
    void latentHeatEqualsAnotherTypingOverTheWholeGrid() {
        for (var row : table("vapour.csv").rows()) {
            double water = 1 - row.number("absolute_salinity_g_kg") / 1000;
            double got = LatentHeat.ofEvaporation(row.number("temperature_c")) * water;
            Validation.of(LatentHeat.class, "ofEvaporation")
                    .relative(row, "latent_heat_evaporation_sharqawy_2010_j_kg", got, 1e-12);
        }
    }

    /**
     * TEOS-10 by GSW 3.6.16 counts evaporation into moist air at one atmosphere and the salt of the water, the law used
     * here saturated vapour alone over pure water; the two definitions lie 0.08 to 0.14 % apart, always in this sense.
     */
    @Test
    void latentHeatLiesJustAboveThatIntoAir() {
        for (var row : table("teos10.csv").rows()) {
            double got = LatentHeat.ofEvaporation(row.number("temperature_c"));
            Close.relative(row, "latent_heat_evaporation_j_kg", got / 1.0011, 3.2e-4);
        }
    }

    /** TEOS-10 by GSW 3.6.16, and its printed check value. */
    @Test
    void latentHeatIntoAirEqualsAnotherTypingOverTheWholeGrid() {
        for (var row : table("latent_heat_into_air.csv").rows()) {
            double got = LatentHeat.ofEvaporationIntoAir(row.number("temperature_c"), row.number("practical_salinity"));
            Validation.of(LatentHeat.class, "ofEvaporationIntoAir")
                    .relative(row, "latent_heat_evaporation_j_kg", got, 1e-12);
        }
        double standard = LatentHeat.ofEvaporationIntoAir(28.7856, 34.7118 * 35 / 35.16504);
        assertThat(standard).isCloseTo(2429882.982734836, within(2.4e-3));
    }

    /** UNESCO 1983 typed a second time, in Python; TEOS-10 by GSW 3.6.16 is another law, 3.3 mK off at most. */
    @Test
    void freezingPointEqualsAnotherTypingAndLiesNearTeos10() {
        for (var row : table("freezing.csv").rows()) {
            double salinity = row.number("practical_salinity");
            double got = FreezingPoint.ofSeawater(salinity);
            if (row.has("freezing_point_ipts68_c")) {
                Validation.of(FreezingPoint.class, "ofSeawater")
                        .absolute(row, "freezing_point_ipts68_c", TemperatureScale.ipts68(got), 1e-12);
            } else if (FreezingPoint.FIT.covers(-1, salinity)) {
                Validation.of(FreezingPoint.class, "ofSeawater")
                        .absolute(row, "freezing_point_air_saturated_c", got, 3.3e-3);
            }
        }
    }

    /** TEOS-10 by GSW 3.6.16, whose ice and seawater are the same, solved by other steps. */
    @Test
    void freezingPointByTeos10EqualsAnotherSolution() {
        for (var row : table("freezing.csv").rows()) {
            if (row.has("freezing_point_air_free_c")) {
                double salinity = row.number("practical_salinity");
                Validation.of(FreezingPoint.class, "airFree")
                        .absolute(row, "freezing_point_air_free_c", FreezingPoint.airFree(salinity), 1e-9);
                Validation.of(FreezingPoint.class, "airSaturated")
                        .absolute(row, "freezing_point_air_saturated_c", FreezingPoint.airSaturated(salinity), 1e-9);
            }
        }
    }

    /** The ice point is defined as that of air-saturated water: 0 degC, which TEOS-10 meets to 0.12 mK. */
    @Test
    void airSaturatedFreshWaterFreezesAtTheIcePoint() {
        assertThat(FreezingPoint.airSaturated(0)).isCloseTo(0, within(1.2e-4));
    }
}
