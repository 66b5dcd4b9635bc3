package org.tidewright.seawater.carbonate;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.ReferenceTable.Row;
import org.tidewright.testkit.Validation;

/** PyCO2SYS 1.8.3.4 over salinities 5 to 42 and 0 to 40 degC, with and without nutrients. */
class CarbonateStateReferenceTest {
    private static final double MICRO = 1e6;

    @ParameterizedTest
    @EnumSource(KnownPair.class)
    void everyPairGivesTheWholeStateAnotherCodeFinds(KnownPair pair) {
        for (var row : table(BoronRatio.UPPSTROM_1974).rows()) {
            meets(row, solve(row, BoronRatio.UPPSTROM_1974, pair));
        }
    }

    @ParameterizedTest
    @EnumSource(KnownPair.class)
    void andWithTheOtherRatioOfBoronToo(KnownPair pair) {
        for (var row : table(BoronRatio.LEE_2010).rows()) {
            meets(row, solve(row, BoronRatio.LEE_2010, pair));
        }
    }

    /** The vapour pressure behind the other code's dry air is another law, 0.17 % apart where it is 3 % of the air. */
    @Test
    void shareOfDryAirIsNearAnotherCodes() {
        for (var row : table(BoronRatio.UPPSTROM_1974).rows()) {
            CarbonateState state = solve(row, BoronRatio.UPPSTROM_1974, KnownPair.ALKALINITY_CARBON);
            double ppm = MICRO * state.shareOfDryAir(MoistAir.STANDARD_PRESSURE);
            Validation.of(CarbonateState.class, "shareOfDryAir").relative(row, "xco2_dry_umol_mol", ppm, 1.3e-4);
        }
    }

    private static ReferenceTable table(BoronRatio boron) {
        String name = boron == BoronRatio.LEE_2010 ? "speciation_lee.csv" : "speciation_uppstrom.csv";
        return ReferenceTable.read(CarbonateStateReferenceTest.class, "/reference/carbonate/" + name);
    }

    private static CarbonateState solve(Row row, BoronRatio boron, KnownPair pair) {
        double t = row.number("temperature_c");
        double s = row.number("practical_salinity");
        var totals = TotalConcentrations.ofSeawater(s, boron)
                .withNutrients(
                        row.number("total_phosphate_umol_kg") / MICRO,
                        row.number("total_silicate_umol_kg") / MICRO,
                        row.number("total_ammonia_umol_kg") / MICRO);
        double alkalinity = row.number("total_alkalinity_umol_kg") / MICRO;
        double carbon = row.number("dic_umol_kg") / MICRO;
        double ph = row.number("ph_total");
        double pressure = row.number("pco2_uatm") / MICRO;
        double carbonate = row.number("carbonate_umol_kg") / MICRO;
        CarbonateSystem water = CarbonateSystem.at(t, s, totals);
        return switch (pair) {
            case ALKALINITY_CARBON -> water.fromAlkalinityAndCarbon(alkalinity, carbon);
            case ALKALINITY_PH -> water.fromAlkalinityAndPh(alkalinity, ph);
            case ALKALINITY_FUGACITY -> water.fromAlkalinityAndPartialPressure(alkalinity, pressure);
            case ALKALINITY_CARBONATE -> water.fromAlkalinityAndCarbonate(alkalinity, carbonate);
            case CARBON_PH -> water.fromCarbonAndPh(carbon, ph);
            case CARBON_FUGACITY -> water.fromCarbonAndPartialPressure(carbon, pressure);
            case CARBON_CARBONATE -> water.fromCarbonAndCarbonate(carbon, carbonate);
            case PH_FUGACITY -> water.fromPhAndPartialPressure(ph, pressure);
            case PH_CARBONATE -> water.fromPhAndCarbonate(ph, carbonate);
            case FUGACITY_CARBONATE -> water.solve(pair, pressure * CarbonDioxide.fugacityFactor(t), carbonate);
        };
    }

    private static void meets(Row row, CarbonateState state) {
        Validation.of(CarbonateState.class, "ph").absolute(row, "ph_total", state.ph(), 1e-9);
        Validation.of(CarbonateState.class, "ph").absolute(row, "ph_free", state.ph(PhScale.FREE), 1e-9);
        Validation.of(CarbonateState.class, "ph").absolute(row, "ph_sws", state.ph(PhScale.SEAWATER), 1e-9);
        Validation.of(CarbonateState.class, "ph").absolute(row, "ph_nbs", state.ph(PhScale.NBS), 1e-9);
        amount(row, "total_alkalinity_umol_kg", "alkalinity", state.alkalinity());
        amount(row, "dic_umol_kg", "inorganicCarbon", state.inorganicCarbon());
        amount(row, "pco2_uatm", "partialPressure", state.partialPressure());
        amount(row, "fco2_uatm", "fugacity", state.fugacity());
        amount(row, "hydrogen_free_umol_kg", "freeHydrogen", state.freeHydrogen());
        amount(row, "hydroxide_umol_kg", "hydroxide", state.hydroxide());
        amount(row, "co2_aq_umol_kg", "carbonDioxide", state.carbonDioxide());
        amount(row, "bicarbonate_umol_kg", "bicarbonate", state.bicarbonate());
        amount(row, "carbonate_umol_kg", "carbonate", state.carbonate());
        amount(row, "borate_umol_kg", "borate", state.borate());
        amount(row, "boric_acid_umol_kg", "boricAcid", state.boricAcid());
        amount(row, "h3po4_umol_kg", "phosphoricAcid", state.phosphoricAcid());
        amount(row, "h2po4_umol_kg", "dihydrogenPhosphate", state.dihydrogenPhosphate());
        amount(row, "hpo4_umol_kg", "hydrogenPhosphate", state.hydrogenPhosphate());
        amount(row, "po4_umol_kg", "phosphateIon", state.phosphateIon());
        amount(row, "h3sio4_umol_kg", "silicateIon", state.silicateIon());
        amount(row, "nh3_umol_kg", "unionisedAmmonia", state.unionisedAmmonia());
        amount(row, "nh4_umol_kg", "ammonium", state.ammonium());
        amount(row, "hso4_umol_kg", "bisulfate", state.bisulfate());
        amount(row, "hf_umol_kg", "hydrogenFluoride", state.hydrogenFluoride());
        amount(row, "total_borate_umol_kg", "totalBorate", state.totalBorate());
        amount(row, "total_sulfate_umol_kg", "totalSulfate", state.totalSulfate());
        amount(row, "total_fluoride_umol_kg", "totalFluoride", state.totalFluoride());
        amount(row, "total_calcium_umol_kg", "calcium", state.calcium());
        Validation.of(CarbonateState.class, "calciteSaturation")
                .relative(row, "saturation_calcite", state.calciteSaturation(), 1e-7);
        Validation.of(CarbonateState.class, "aragoniteSaturation")
                .relative(row, "saturation_aragonite", state.aragoniteSaturation(), 1e-7);
        Validation.of(CarbonateState.class, "revelleFactor")
                .relative(row, "revelle_factor", state.revelleFactor(), 1e-5);
    }

    private static void amount(Row row, String column, String method, double amount) {
        Validation.of(CarbonateState.class, method).relative(row, column, MICRO * amount, 1e-7);
    }
}
