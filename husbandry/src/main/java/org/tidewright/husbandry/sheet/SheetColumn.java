package org.tidewright.husbandry.sheet;

import static org.tidewright.husbandry.sheet.SheetSection.ALKALINITY;
import static org.tidewright.husbandry.sheet.SheetSection.BODY;
import static org.tidewright.husbandry.sheet.SheetSection.CONSTANTS;
import static org.tidewright.husbandry.sheet.SheetSection.GAS;
import static org.tidewright.husbandry.sheet.SheetSection.SALT;
import static org.tidewright.husbandry.sheet.SheetSection.SPECIES;
import static org.tidewright.husbandry.sheet.SheetSection.TOTALS;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.carbonate.Ammonia;
import org.tidewright.seawater.carbonate.Bisulfate;
import org.tidewright.seawater.carbonate.BoricAcid;
import org.tidewright.seawater.carbonate.CalciumCarbonate;
import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.seawater.carbonate.CarbonicAcid;
import org.tidewright.seawater.carbonate.HydrogenFluoride;
import org.tidewright.seawater.carbonate.PhScale;
import org.tidewright.seawater.carbonate.PhosphoricAcid;
import org.tidewright.seawater.carbonate.SilicicAcid;
import org.tidewright.seawater.carbonate.TotalConcentrations;
import org.tidewright.seawater.carbonate.WaterIonisation;
import org.tidewright.seawater.density.ConservativeTemperature;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.density.PolynomialDensity;
import org.tidewright.seawater.density.Teos10;
import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.seawater.gas.OxygenSolubility;
import org.tidewright.seawater.gas.SchmidtNumber;
import org.tidewright.seawater.heat.FreezingPoint;
import org.tidewright.seawater.heat.LatentHeat;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.heat.VapourPressure;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.seawater.salinity.Conductivity;
import org.tidewright.seawater.salinity.RefractiveIndex;
import org.tidewright.seawater.salinity.SpecificGravity;
import org.tidewright.seawater.transport.ThermalConductivity;
import org.tidewright.seawater.transport.Viscosity;

/**
 * A number that can stand on a water sheet: its name in CSV files, in words, and how it follows from what is known.
 * Names end in their unit; where other tables of seawater values have a customary name, it is that.
 */
public enum SheetColumn {
    TEMPERATURE(SALT, "temperature_c", "Temperature", "°C", "as given", water -> water.temperature()),
    PRACTICAL_SALINITY(
            SALT, "practical_salinity", "Practical salinity", "", "PSS-78", water -> water.practicalSalinity()),
    CONDUCTIVITY(
            SALT,
            "conductivity_ms_cm",
            "Conductivity",
            "mS/cm",
            "Perkin & Lewis 1980 (PSS-78)",
            water((t, s) -> 10 * Conductivity.fromPractical(s, t))),
    ABSOLUTE_SALINITY(
            SALT,
            "absolute_salinity_g_kg",
            "Absolute salinity (parts per thousand by mass)",
            "g/kg",
            "Millero et al. 2008",
            salt(AbsoluteSalinity::fromPractical)),
    SPECIFIC_GRAVITY_25(
            SALT,
            "sg_25c_25c",
            "Specific gravity 25/25 °C",
            "",
            "Millero & Poisson 1981 (EOS-80)",
            salt(s -> SpecificGravity.fromPractical(s, 25, 25))),
    SPECIFIC_GRAVITY_20(
            SALT,
            "sg_20c_20c",
            "Specific gravity 20/20 °C",
            "",
            "Millero & Poisson 1981 (EOS-80)",
            salt(s -> SpecificGravity.fromPractical(s, 20, 20))),
    REFRACTIVE_INDEX(
            SALT,
            "refractive_index_quan_fry",
            "Refractive index at 589.3 nm",
            "",
            "Quan & Fry 1995",
            water((t, s) -> RefractiveIndex.fromPractical(s, t))),

    DENSITY_EOS80(
            BODY,
            "density_eos80_kg_m3",
            "Density, EOS-80",
            "kg/m³",
            "Millero & Poisson 1981 (EOS-80)",
            water(Density::ofSeawater)),
    DENSITY_TEOS10(
            BODY,
            "density_teos10_kg_m3",
            "Density, TEOS-10 polynomial",
            "kg/m³",
            "Roquet et al. 2015",
            water(PolynomialDensity::ofSeawater)),
    DENSITY_GIBBS(
            BODY,
            "density_gibbs_kg_m3",
            "Density, TEOS-10 exact",
            "kg/m³",
            "Feistel 2003, 2008 (TEOS-10)",
            water(Teos10::density)),
    CONSERVATIVE_TEMPERATURE(
            BODY,
            "conservative_temperature_c",
            "Conservative temperature",
            "°C",
            "IOC, SCOR & IAPSO 2010 (TEOS-10)",
            water(ConservativeTemperature::fromInSitu)),
    THERMAL_EXPANSION(
            BODY,
            "thermal_expansion_per_k",
            "Thermal expansion",
            "1/K",
            "Feistel 2003, 2008 (TEOS-10)",
            water(Teos10::thermalExpansion)),
    HALINE_CONTRACTION(
            BODY,
            "haline_contraction_kg_g",
            "Haline contraction",
            "kg/g",
            "Feistel 2003, 2008 (TEOS-10)",
            water(Teos10::halineContraction)),
    SPECIFIC_HEAT(
            BODY,
            "specific_heat_j_kg_k",
            "Specific heat",
            "J/(kg K)",
            "Feistel 2003, 2008 (TEOS-10)",
            water(Teos10::specificHeat)),
    FREEZING_POINT(
            BODY,
            "freezing_point_air_saturated_c",
            "Freezing point, saturated with air",
            "°C",
            "IOC, SCOR & IAPSO 2010 (TEOS-10)",
            salt(FreezingPoint::airSaturated)),
    FREEZING_POINT_AIR_FREE(
            BODY,
            "freezing_point_air_free_c",
            "Freezing point, free of air",
            "°C",
            "IOC, SCOR & IAPSO 2010 (TEOS-10)",
            salt(FreezingPoint::airFree)),
    EVAPORATION_HEAT(
            BODY,
            "latent_heat_evaporation_j_kg",
            "Heat of evaporation",
            "J/kg",
            "IOC, SCOR & IAPSO 2010 (TEOS-10)",
            water(LatentHeat::ofEvaporationIntoAir)),
    VAPOUR_PRESSURE(
            BODY,
            "vapour_pressure_seawater_dickson_2007_pa",
            "Vapour pressure",
            "Pa",
            "Dickson, Sabine & Christian 2007",
            water(VapourPressure::ofSeawater)),
    VISCOSITY(
            BODY,
            "viscosity_seawater_sharqawy_printed_pa_s",
            "Viscosity",
            "Pa s",
            "Sharqawy, Lienhard & Zubair 2010",
            water(Viscosity::ofSeawater)),
    THERMAL_CONDUCTIVITY(
            BODY,
            "thermal_conductivity_jamieson_tudhope_w_m_k",
            "Thermal conductivity",
            "W/(m K)",
            "Jamieson & Tudhope 1970",
            water(ThermalConductivity::ofSeawater)),

    OXYGEN_PER_MASS(
            GAS,
            "oxygen_umol_kg",
            "Oxygen at saturation",
            "µmol/kg",
            "Garcia & Gordon 1992",
            water(OxygenSolubility::perMass)),
    OXYGEN_PER_VOLUME(
            GAS,
            "oxygen_mg_l",
            "Oxygen at saturation",
            "mg/L",
            "Garcia & Gordon 1992",
            water(OxygenSolubility::massPerVolume)),
    SCHMIDT_OXYGEN(
            GAS,
            "schmidt_number_oxygen",
            "Schmidt number of oxygen, S 35",
            "",
            "Wanninkhof 2014",
            water((t, s) -> SchmidtNumber.ofOxygen(t))),
    SCHMIDT_CARBON_DIOXIDE(
            GAS,
            "schmidt_number_carbon_dioxide",
            "Schmidt number of CO₂, S 35",
            "",
            "Wanninkhof 2014",
            water((t, s) -> SchmidtNumber.ofCarbonDioxide(t))),
    NH3_SHARE(
            GAS,
            "fraction_nh3",
            "Un-ionised share of ammonia",
            "",
            "Clegg & Whitfield 1995",
            SheetColumn::unionisedShare),

    TOTAL_ALKALINITY(
            ALKALINITY,
            "total_alkalinity_umol_kg",
            "Alkalinity",
            "µmol/kg",
            "Dickson 1981",
            micro(CarbonateState::alkalinity)),
    ALKALINITY_DKH(
            ALKALINITY,
            "alkalinity_dkh",
            "Alkalinity",
            "dKH",
            "Millero & Poisson 1981 (EOS-80)",
            state(state -> Alkalinity.toGermanDegrees(perVolume(state)))),
    ALKALINITY_MEQ(
            ALKALINITY,
            "alkalinity_meq_l",
            "Alkalinity",
            "meq/L",
            "Millero & Poisson 1981 (EOS-80)",
            state(SheetColumn::perVolume)),
    ALKALINITY_CACO3(
            ALKALINITY,
            "alkalinity_caco3_mg_l",
            "Alkalinity as CaCO₃",
            "mg/L",
            "Millero & Poisson 1981 (EOS-80)",
            state(state -> Alkalinity.toCalciumCarbonate(perVolume(state)))),
    BORATE_SHARE(
            ALKALINITY,
            "borate_share_of_alkalinity",
            "Borate's share of the alkalinity",
            "",
            "Dickson 1990",
            SheetColumn::borateShare),
    INORGANIC_CARBON(
            ALKALINITY,
            "dic_umol_kg",
            "Dissolved inorganic carbon",
            "µmol/kg",
            "Dickson, Sabine & Christian 2007",
            micro(CarbonateState::inorganicCarbon)),
    PH_TOTAL(ALKALINITY, "ph_total", "pH, total scale", "", "Dickson, Sabine & Christian 2007", water -> water.ph()),
    PH_FREE(ALKALINITY, "ph_free", "pH, free scale", "", "Dickson 1990", acidity(PhScale.FREE)),
    PH_SEAWATER(
            ALKALINITY,
            "ph_sws",
            "pH, seawater scale",
            "",
            "Dickson 1990; Dickson & Riley 1979",
            acidity(PhScale.SEAWATER)),
    PH_NBS(
            ALKALINITY,
            "ph_nbs",
            "pH, NBS scale (a probe set with trade buffers)",
            "",
            "Takahashi et al. 1982",
            acidity(PhScale.NBS)),
    PARTIAL_PRESSURE(
            ALKALINITY,
            "pco2_uatm",
            "Partial pressure of CO₂",
            "µatm",
            "Weiss 1974",
            micro(CarbonateState::partialPressure)),
    FUGACITY(ALKALINITY, "fco2_uatm", "Fugacity of CO₂", "µatm", "Weiss 1974", micro(CarbonateState::fugacity)),
    SHARE_OF_DRY_AIR(
            ALKALINITY,
            "xco2_dry_umol_mol",
            "CO₂ of dry air in equilibrium, at 1 atm",
            "ppm",
            "Weiss 1974",
            micro(state -> state.shareOfDryAir(MoistAir.STANDARD_PRESSURE))),
    ARAGONITE(
            ALKALINITY,
            "saturation_aragonite",
            "Saturation of aragonite Ω",
            "",
            "Mucci 1983",
            state(CarbonateState::aragoniteSaturation)),
    CALCITE(
            ALKALINITY,
            "saturation_calcite",
            "Saturation of calcite Ω",
            "",
            "Mucci 1983",
            state(CarbonateState::calciteSaturation)),
    REVELLE(
            ALKALINITY,
            "revelle_factor",
            "Revelle factor",
            "",
            "Egleston, Sabine & Morel 2010",
            state(CarbonateState::revelleFactor)),
    WITHIN_LUEKER(
            ALKALINITY,
            "within_lueker_range",
            "Within the range of K1, K2 (1) or not (0)",
            "",
            "Lueker et al. 2000",
            water((t, s) -> CarbonicAcid.LUEKER_2000.fit().covers(t, s) ? 1 : 0)),

    FREE_HYDROGEN(SPECIES, "hydrogen_free_umol_kg", "H⁺, free", micro(CarbonateState::freeHydrogen)),
    HYDROXIDE(SPECIES, "hydroxide_umol_kg", "OH⁻", micro(CarbonateState::hydroxide)),
    CARBON_DIOXIDE(SPECIES, "co2_aq_umol_kg", "CO₂, dissolved", micro(CarbonateState::carbonDioxide)),
    BICARBONATE(SPECIES, "bicarbonate_umol_kg", "HCO₃⁻", micro(CarbonateState::bicarbonate)),
    CARBONATE(SPECIES, "carbonate_umol_kg", "CO₃²⁻", micro(CarbonateState::carbonate)),
    BORATE(SPECIES, "borate_umol_kg", "B(OH)₄⁻", micro(CarbonateState::borate)),
    BORIC_ACID(SPECIES, "boric_acid_umol_kg", "B(OH)₃", micro(CarbonateState::boricAcid)),
    H3PO4(SPECIES, "h3po4_umol_kg", "H₃PO₄", micro(CarbonateState::phosphoricAcid)),
    H2PO4(SPECIES, "h2po4_umol_kg", "H₂PO₄⁻", micro(CarbonateState::dihydrogenPhosphate)),
    HPO4(SPECIES, "hpo4_umol_kg", "HPO₄²⁻", micro(CarbonateState::hydrogenPhosphate)),
    PO4(SPECIES, "po4_umol_kg", "PO₄³⁻", micro(CarbonateState::phosphateIon)),
    H3SIO4(SPECIES, "h3sio4_umol_kg", "SiO(OH)₃⁻", micro(CarbonateState::silicateIon)),
    NH3(SPECIES, "nh3_umol_kg", "NH₃, the poisonous form", micro(CarbonateState::unionisedAmmonia)),
    NH4(SPECIES, "nh4_umol_kg", "NH₄⁺", micro(CarbonateState::ammonium)),
    HSO4(SPECIES, "hso4_umol_kg", "HSO₄⁻", micro(CarbonateState::bisulfate)),
    HF(SPECIES, "hf_umol_kg", "HF", micro(CarbonateState::hydrogenFluoride)),

    TOTAL_BORATE(
            TOTALS,
            "total_borate_umol_kg",
            "Borate, all forms",
            "µmol/kg",
            "Uppström 1974 or Lee et al. 2010, as chosen",
            micro(CarbonateState::totalBorate)),
    TOTAL_CALCIUM(
            TOTALS,
            "total_calcium_umol_kg",
            "Calcium",
            "µmol/kg",
            "as given, else Riley & Tongudai 1967",
            micro(CarbonateState::calcium)),
    TOTAL_SULFATE(
            TOTALS,
            "total_sulfate_umol_kg",
            "Sulfate, all forms",
            "µmol/kg",
            "Morris & Riley 1966",
            salt(s -> 1e6 * TotalConcentrations.sulfate(s))),
    TOTAL_FLUORIDE(
            TOTALS,
            "total_fluoride_umol_kg",
            "Fluoride, all forms",
            "µmol/kg",
            "Riley 1965",
            salt(s -> 1e6 * TotalConcentrations.fluoride(s))),
    TOTAL_PHOSPHATE(TOTALS, "total_phosphate_umol_kg", "Phosphate, all forms", "µmol/kg", "as given", water -> null),
    TOTAL_SILICATE(TOTALS, "total_silicate_umol_kg", "Silicate, all forms", "µmol/kg", "as given", water -> null),
    TOTAL_AMMONIA(TOTALS, "total_ammonia_umol_kg", "Ammonia, both forms", "µmol/kg", "as given", water -> null),

    K0(CONSTANTS, "k0_mol_kg_atm", "K0", "mol/(kg atm)", "Weiss 1974", water(CarbonDioxide::solubility)),
    K1(CONSTANTS, "k1_total", "K1", "mol/kg", "Lueker et al. 2000", water(CarbonicAcid.LUEKER_2000::first)),
    K2(CONSTANTS, "k2_total", "K2", "mol/kg", "Lueker et al. 2000", water(CarbonicAcid.LUEKER_2000::second)),
    KB(CONSTANTS, "kb_total", "KB", "mol/kg", "Dickson 1990", water(BoricAcid::dissociation)),
    KW(CONSTANTS, "kw_total", "KW", "(mol/kg)²", "Millero 1995", water(WaterIonisation::product)),
    KS(CONSTANTS, "ks_free", "KS, free scale", "mol/kg", "Dickson 1990", water(Bisulfate::dissociation)),
    KF(
            CONSTANTS,
            "kf_free_dickson_riley",
            "KF, free scale",
            "mol/kg",
            "Dickson & Riley 1979",
            water(HydrogenFluoride::dissociation)),
    KP1(CONSTANTS, "kp1_total", "KP1", "mol/kg", "Yao & Millero 1995", water(PhosphoricAcid::first)),
    KP2(CONSTANTS, "kp2_total", "KP2", "mol/kg", "Yao & Millero 1995", water(PhosphoricAcid::second)),
    KP3(CONSTANTS, "kp3_total", "KP3", "mol/kg", "Yao & Millero 1995", water(PhosphoricAcid::third)),
    KSI(CONSTANTS, "ksi_total", "KSi", "mol/kg", "Yao & Millero 1995", water(SilicicAcid::dissociation)),
    KNH4(CONSTANTS, "knh4_total", "KNH4", "mol/kg", "Clegg & Whitfield 1995", water(Ammonia::dissociation)),
    KSP_ARAGONITE(
            CONSTANTS,
            "ksp_aragonite",
            "Ksp of aragonite",
            "(mol/kg)²",
            "Mucci 1983",
            water(CalciumCarbonate::aragonite)),
    KSP_CALCITE(
            CONSTANTS, "ksp_calcite", "Ksp of calcite", "(mol/kg)²", "Mucci 1983", water(CalciumCarbonate::calcite)),
    FUGACITY_FACTOR(
            CONSTANTS,
            "fugacity_factor",
            "Fugacity of CO₂ over its partial pressure",
            "",
            "Weiss 1974",
            water((t, s) -> CarbonDioxide.fugacityFactor(t)));

    /** Computes a number where enough is known for it. */
    private interface Rule {
        @Nullable
        Double of(SolvedWater water);
    }

    private final SheetSection section;
    private final String key;
    private final String words;
    private final String unit;
    private final String source;
    private final Rule rule;

    SheetColumn(SheetSection section, String key, String words, String unit, String source, Rule rule) {
        this.section = section;
        this.key = key;
        this.words = words;
        this.unit = unit;
        this.source = source;
        this.rule = rule;
    }

    /** A species: they all come out of the one solution. */
    SheetColumn(SheetSection section, String key, String words, Rule rule) {
        this(section, key, words, "µmol/kg", "the constants below", rule);
    }

    public SheetSection section() {
        return section;
    }

    /** Name of the column, ending in its unit. */
    public String key() {
        return key;
    }

    /** What it is. */
    public String words() {
        return words;
    }

    /** The unit as told to people; empty for a number without one. */
    public String unit() {
        return unit;
    }

    /** The publication. */
    public String source() {
        return source;
    }

    @Nullable
    Double of(SolvedWater water) {
        return rule.of(water);
    }

    private static Rule water(DoubleBinaryOperator ofTemperatureAndSalinity) {
        return water -> {
            Double t = water.temperature();
            Double s = water.practicalSalinity();
            return t == null || s == null ? null : ofTemperatureAndSalinity.applyAsDouble(t, s);
        };
    }

    private static Rule salt(DoubleUnaryOperator ofSalinity) {
        return water -> {
            Double s = water.practicalSalinity();
            return s == null ? null : ofSalinity.applyAsDouble(s);
        };
    }

    private static Rule state(ToDoubleFunction<CarbonateState> ofState) {
        return water -> {
            CarbonateState state = water.state();
            return state == null ? null : ofState.applyAsDouble(state);
        };
    }

    private static Rule micro(ToDoubleFunction<CarbonateState> ofState) {
        return state(state -> 1e6 * ofState.applyAsDouble(state));
    }

    private static Rule acidity(PhScale scale) {
        return water -> {
            Double t = water.temperature();
            Double s = water.practicalSalinity();
            Double ph = water.ph();
            return t == null || s == null || ph == null ? null : PhScale.TOTAL.convert(ph, scale, t, s);
        };
    }

    private static @Nullable Double unionisedShare(SolvedWater water) {
        Double t = water.temperature();
        Double s = water.practicalSalinity();
        Double ph = water.ph();
        return t == null || s == null || ph == null ? null : Ammonia.unionisedShare(t, s, ph);
    }

    private static @Nullable Double borateShare(SolvedWater water) {
        CarbonateState state = water.state();
        return state == null || state.alkalinity() <= 0 ? null : state.borateShareOfAlkalinity();
    }

    private static double perVolume(CarbonateState state) {
        return Alkalinity.perVolume(state.alkalinity(), state.temperature(), state.practicalSalinity());
    }
}
