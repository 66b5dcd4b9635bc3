package org.tidewright.husbandry.sheet;

import static org.tidewright.husbandry.sheet.SpeltUnit.Needs.NOTHING;
import static org.tidewright.husbandry.sheet.SpeltUnit.Needs.TEMPERATURE_AND_SALINITY;
import static org.tidewright.husbandry.sheet.SpeltUnit.spelt;
import static org.tidewright.husbandry.sheet.SpeltUnit.times;

import java.util.List;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.carbonate.PhScale;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.gas.CarbonDioxide;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.seawater.salinity.Conductivity;
import org.tidewright.seawater.salinity.SpecificGravity;

/**
 * A number about a water as a keeper knows it, and the units it may be written in. Molar masses are from the IUPAC
 * standard atomic weights.
 */
public enum KnownField {
    TEMPERATURE(
            "temperature",
            SheetColumn.TEMPERATURE,
            "25 °C",
            -10,
            60,
            times(1, "°C", "C", "degC", ""),
            spelt(NOTHING, (f, t, s) -> (f - 32) / 1.8, "°F", "F", "degF")),
    SALINITY(
            "salinity",
            SheetColumn.PRACTICAL_SALINITY,
            "35",
            0,
            120,
            times(1, "", "PSU", "ppt", "‰"),
            spelt(
                    SpeltUnit.Needs.TEMPERATURE,
                    (conductivity, t, s) -> Conductivity.toPractical(conductivity / 10, t),
                    "mS/cm"),
            gravity(25, "SG 25/25", "25/25"),
            gravity(20, "SG 20/20", "20/20"),
            gravity(28 / 1.8, "SG 60/60", "SG 60/60 °F", "60/60"),
            spelt(NOTHING, (salt, t, s) -> AbsoluteSalinity.toPractical(salt), "g/kg"),
            spelt(
                    SpeltUnit.Needs.TEMPERATURE,
                    (density, t, s) -> SpecificGravity.ofDensity(density, t),
                    "kg/m³",
                    "kg/m3")),
    ALKALINITY(
            "alkalinity",
            SheetColumn.TOTAL_ALKALINITY,
            "8 dKH",
            1e-3,
            1e6,
            perLitre(Alkalinity.GERMAN_DEGREE * 1000, "dKH"),
            perLitre(1000, "meq/L"),
            perLitre(1000 / Alkalinity.CALCIUM_CARBONATE_EQUIVALENT, "mg/L CaCO3", "ppm CaCO3"),
            times(1, "µmol/kg", "umol/kg"),
            times(1000, "mmol/kg", "meq/kg")),
    CARBON(
            "inorganic carbon",
            SheetColumn.INORGANIC_CARBON,
            "2000 µmol/kg",
            1e-3,
            1e6,
            times(1, "µmol/kg", "umol/kg"),
            times(1000, "mmol/kg"),
            perLitre(1000, "mmol/L"),
            perLitre(1000 / 12.0107, "mg/L C")),
    PH(
            "pH",
            SheetColumn.PH_TOTAL,
            "8.1 or 8.2 NBS",
            0,
            14,
            times(1, "", "total"),
            scale(PhScale.NBS, "NBS", "NIST"),
            scale(PhScale.FREE, "free"),
            scale(PhScale.SEAWATER, "seawater", "SWS")),
    CARBON_DIOXIDE(
            "carbon dioxide",
            SheetColumn.PARTIAL_PRESSURE,
            "420 ppm",
            1e-3,
            1e6,
            spelt(
                    TEMPERATURE_AND_SALINITY,
                    (ppm, t, s) -> 1e6 * CarbonDioxide.partialPressure(ppm * 1e-6, t, s, MoistAir.STANDARD_PRESSURE),
                    "ppm"),
            times(1, "µatm", "uatm")),
    PHOSPHATE(
            "phosphate",
            SheetColumn.TOTAL_PHOSPHATE,
            "0.05 mg/L PO4",
            0,
            1e5,
            perLitre(1000 / 94.9714, "mg/L PO4", "ppm PO4"),
            perLitre(1000 / 30.97376, "mg/L P", "ppm P"),
            perLitre(1 / 30.97376, "µg/L P", "ug/L P", "ppb P"),
            times(1, "µmol/kg", "umol/kg")),
    SILICATE(
            "silicate",
            SheetColumn.TOTAL_SILICATE,
            "0.5 mg/L SiO2",
            0,
            1e5,
            perLitre(1000 / 60.084, "mg/L SiO2", "ppm SiO2"),
            perLitre(1000 / 28.0855, "mg/L Si", "ppm Si"),
            times(1, "µmol/kg", "umol/kg")),
    AMMONIA(
            "ammonia",
            SheetColumn.TOTAL_AMMONIA,
            "0.1 mg/L N",
            0,
            1e5,
            perLitre(1000 / 14.0067, "mg/L N", "ppm N"),
            perLitre(1000 / 18.0385, "mg/L NH4", "ppm NH4"),
            perLitre(1000 / 17.0305, "mg/L NH3", "ppm NH3"),
            times(1, "µmol/kg", "umol/kg")),
    CALCIUM(
            "calcium",
            SheetColumn.TOTAL_CALCIUM,
            "420 mg/L",
            1e-3,
            1e6,
            perLitre(1000 / 40.078, "mg/L", "ppm"),
            times(1000, "mmol/kg"),
            times(1, "µmol/kg", "umol/kg"));

    private final String words;
    private final SheetColumn column;
    private final String example;
    private final double least;
    private final double most;
    private final List<SpeltUnit> units;

    KnownField(String words, SheetColumn column, String example, double least, double most, SpeltUnit... units) {
        this.words = words;
        this.column = column;
        this.example = example;
        this.least = least;
        this.most = most;
        this.units = List.of(units);
    }

    /** What it is, within a sentence. */
    public String words() {
        return words;
    }

    /** The column it fills. */
    public SheetColumn column() {
        return column;
    }

    /** How it may be written. */
    public String example() {
        return example;
    }

    /** Whether a number can be meant at all, in the unit of the column. */
    boolean canBeMeant(double value) {
        return value >= least && value <= most;
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }

    List<SpeltUnit> units() {
        return units;
    }

    /** The usual spelling of every unit it may be written in; empty for none. */
    public List<String> unitNames() {
        return units.stream().map(SpeltUnit::usual).toList();
    }

    /** Specific gravity, seawater and pure water both at this temperature. */
    private static SpeltUnit gravity(double at, String... spellings) {
        return spelt(NOTHING, (gravity, t, s) -> SpecificGravity.toPractical(gravity, at, at), spellings);
    }

    /** A unit of µmol/L times a factor, told in µmol/kg. */
    private static SpeltUnit perLitre(double micromolesPerLitre, String... spellings) {
        return spelt(
                TEMPERATURE_AND_SALINITY,
                (value, t, s) -> value * micromolesPerLitre * 1000 / Density.ofSeawater(t, s),
                spellings);
    }

    private static SpeltUnit scale(PhScale from, String... spellings) {
        return spelt(TEMPERATURE_AND_SALINITY, (ph, t, s) -> from.convert(ph, PhScale.TOTAL, t, s), spellings);
    }
}
