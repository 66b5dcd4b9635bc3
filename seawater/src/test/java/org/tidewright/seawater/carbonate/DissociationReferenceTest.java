package org.tidewright.seawater.carbonate;

import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.testkit.Close;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.Validation;

class DissociationReferenceTest {
    private static final double MICRO = 1e6;

    private static ReferenceTable table(String name) {
        return ReferenceTable.read(DissociationReferenceTest.class, "/reference/carbonate/" + name);
    }

    /** PyCO2SYS 1.8.3.4 over salinities 5 to 42 and 0 to 40 degC. */
    @Test
    void everyConstantEqualsAnotherTypingOfItsLaw() {
        meets("k0_mol_kg_atm", Validation.of(CarbonDioxide.class, "solubility"), CarbonDioxide::solubility);
        meets("k1_total", Validation.of(CarbonicAcid.LUEKER_2000, "first"), CarbonicAcid.LUEKER_2000::first);
        meets("k2_total", Validation.of(CarbonicAcid.LUEKER_2000, "second"), CarbonicAcid.LUEKER_2000::second);
        meets("kb_total", Validation.of(BoricAcid.class, "dissociation"), BoricAcid::dissociation);
        meets("kw_total", Validation.of(WaterIonisation.class, "product"), WaterIonisation::product);
        meets("ks_free", Validation.of(Bisulfate.class, "dissociation"), Bisulfate::dissociation);
        meets(
                "kf_free_dickson_riley",
                Validation.of(HydrogenFluoride.class, "dissociation"),
                HydrogenFluoride::dissociation);
        meets(
                "kf_total_perez_fraga",
                Validation.of(HydrogenFluoride.class, "dissociationPerezFraga"),
                HydrogenFluoride::dissociationPerezFraga);
        meets("kp1_total", Validation.of(PhosphoricAcid.class, "first"), PhosphoricAcid::first);
        meets("kp2_total", Validation.of(PhosphoricAcid.class, "second"), PhosphoricAcid::second);
        meets("kp3_total", Validation.of(PhosphoricAcid.class, "third"), PhosphoricAcid::third);
        meets("ksi_total", Validation.of(SilicicAcid.class, "dissociation"), SilicicAcid::dissociation);
        meets("knh4_total", Validation.of(Ammonia.class, "dissociation"), Ammonia::dissociation);
        meets("ksp_aragonite", Validation.of(CalciumCarbonate.class, "aragonite"), CalciumCarbonate::aragonite);
        meets("ksp_calcite", Validation.of(CalciumCarbonate.class, "calcite"), CalciumCarbonate::calcite);
        meets(
                "fugacity_factor",
                Validation.of(CarbonDioxide.class, "fugacityFactor"),
                (t, s) -> CarbonDioxide.fugacityFactor(t));
    }

    /** Roy et al. 1993 and Millero 2010 typed a second time, in Python; the latter on its own seawater scale. */
    @Test
    void theOtherSetsForCarbonicAcidEqualAnotherTyping() {
        for (var row : table("other_k1_k2.csv").rows()) {
            double t = row.number("temperature_c");
            double s = row.number("practical_salinity");
            Validation.of(CarbonicAcid.ROY_1993, "first")
                    .relative(row, "k1_roy_total", CarbonicAcid.ROY_1993.first(t, s), 1e-10);
            Validation.of(CarbonicAcid.ROY_1993, "second")
                    .relative(row, "k2_roy_total", CarbonicAcid.ROY_1993.second(t, s), 1e-10);
            double toTotal = PhScale.SEAWATER.toTotal(Conditions.at(t, s));
            Validation.of(CarbonicAcid.MILLERO_2010, "first")
                    .relative(row, "k1_millero_sws", CarbonicAcid.MILLERO_2010.first(t, s) / toTotal, 1e-10);
            Validation.of(CarbonicAcid.MILLERO_2010, "second")
                    .relative(row, "k2_millero_sws", CarbonicAcid.MILLERO_2010.second(t, s) / toTotal, 1e-10);
        }
    }

    /** The handbook lowers seawater-scale fits by 0.015 where the exact step grows with salinity and warmth to 0.0262. */
    @Test
    void theHandbooksShortStepBetweenScalesIsNearTheExactOne() {
        for (var row : table("constants.csv").rows()) {
            double t = row.number("temperature_c");
            double s = row.number("practical_salinity");
            Validation.of(WaterIonisation.class, "product")
                    .relative(row, "kw_total_handbook", WaterIonisation.product(t, s), 0.0113);
            Validation.of(PhosphoricAcid.class, "first")
                    .relative(row, "kp1_total_handbook", PhosphoricAcid.first(t, s), 0.0113);
            Validation.of(PhosphoricAcid.class, "second")
                    .relative(row, "kp2_total_handbook", PhosphoricAcid.second(t, s), 0.0113);
            Validation.of(PhosphoricAcid.class, "third")
                    .relative(row, "kp3_total_handbook", PhosphoricAcid.third(t, s), 0.0113);
            Validation.of(SilicicAcid.class, "dissociation")
                    .relative(row, "ksi_total_handbook", SilicicAcid.dissociation(t, s), 0.0113);
        }
    }

    /** The check values of the best-practice handbook and others, as printed. */
    @Test
    void meetsThePrintedCheckValues() {
        Conditions c = Conditions.at(25, 35);
        printed("p057", Math.log(CarbonDioxide.solubility(25, 35)));
        printed("p058", Math.log10(CarbonicAcid.LUEKER_2000.first(25, 35)));
        printed("p059", Math.log10(CarbonicAcid.LUEKER_2000.second(25, 35)));
        printed("p060", Math.log(BoricAcid.dissociation(25, 35)));
        printed("p061", WaterIonisation.lnKSeawaterScale(c) - 0.015);
        printed("p062", Math.log(Bisulfate.dissociation(25, 35)));
        printed("p063", Math.log(HydrogenFluoride.dissociationPerezFraga(25, 35)));
        printed("p064", PhosphoricAcid.lnK1SeawaterScale(c) - 0.015);
        printed("p065", PhosphoricAcid.lnK2SeawaterScale(c) - 0.015);
        printed("p066", PhosphoricAcid.lnK3SeawaterScale(c) - 0.015);
        printed("p067", SilicicAcid.lnKSeawaterScalePerWater(c) + Math.log(c.waterShare) - 0.015);
        printed("p068", TotalConcentrations.sulfate(35));
        printed(
                "p069",
                TotalConcentrations.ofSeawater(35, BoronRatio.UPPSTROM_1974).borate());
        printed("p070", Math.log10(CalciumCarbonate.aragonite(25, 35)));
        printed("p071", Math.log10(CalciumCarbonate.calcite(25, 35)));
        printed("roy1", Math.log(CarbonicAcid.ROY_1993.first(25, 35)));
        printed("roy2", Math.log(CarbonicAcid.ROY_1993.second(25, 35)));
        printed("mill1", Math.log10(CarbonicAcid.MILLERO_2010.first(25, 0)));
        printed("mill2", Math.log10(CarbonicAcid.MILLERO_2010.second(25, 0)));
    }

    /** PyCO2SYS 1.8.3.4 from the ratios of Uppstrom, Lee, Morris & Riley, Riley, Riley & Tongudai. */
    @Test
    void totalsThatComeWithTheSaltEqualAnotherTyping() {
        for (var row : table("constants.csv").rows()) {
            double s = row.number("practical_salinity");
            var uppstrom = TotalConcentrations.ofSeawater(s, BoronRatio.UPPSTROM_1974);
            var lee = TotalConcentrations.ofSeawater(s, BoronRatio.LEE_2010);
            Validation.of(TotalConcentrations.class, "ofSeawater")
                    .relative(row, "total_borate_uppstrom_umol_kg", MICRO * uppstrom.borate(), 1e-10);
            Validation.of(TotalConcentrations.class, "ofSeawater")
                    .relative(row, "total_borate_lee_umol_kg", MICRO * lee.borate(), 1e-10);
            Validation.of(TotalConcentrations.class, "ofSeawater")
                    .relative(row, "total_calcium_umol_kg", MICRO * uppstrom.calcium(), 1e-10);
            Validation.of(TotalConcentrations.class, "sulfate")
                    .relative(row, "total_sulfate_umol_kg", MICRO * TotalConcentrations.sulfate(s), 1e-10);
            Validation.of(TotalConcentrations.class, "fluoride")
                    .relative(row, "total_fluoride_umol_kg", MICRO * TotalConcentrations.fluoride(s), 1e-10);
        }
    }

    /** PyCO2SYS 1.8.3.4. */
    @Test
    void stepsBetweenScalesEqualAnotherTyping() {
        for (var row : table("constants.csv").rows()) {
            double t = row.number("temperature_c");
            double s = row.number("practical_salinity");
            Validation.of(PhScale.FREE, "convert")
                    .absolute(row, "ph_free_minus_total", 8 - PhScale.FREE.convert(8, PhScale.TOTAL, t, s), 1e-10);
            Validation.of(PhScale.FREE, "convert")
                    .absolute(row, "ph_free_minus_sws", 8 - PhScale.FREE.convert(8, PhScale.SEAWATER, t, s), 1e-10);
            Validation.of(PhScale.FREE, "convert")
                    .absolute(row, "ph_free_minus_nbs", 8 - PhScale.FREE.convert(8, PhScale.NBS, t, s), 1e-10);
        }
    }

    private static void meets(String column, Validation validation, DoubleBinaryOperator constant) {
        for (var row : table("constants.csv").rows()) {
            double got = constant.applyAsDouble(row.number("temperature_c"), row.number("practical_salinity"));
            validation.relative(row, column, got, 1e-10);
        }
    }

    private static void printed(String id, double got) {
        var row = table("published.csv").row("id", id);
        Close.absolute(row, "printed_value", got, row.number("tolerance"));
    }
}
