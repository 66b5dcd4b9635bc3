package org.tidewright.plan.method;

import static org.tidewright.plan.method.QuantityUnit.curved;
import static org.tidewright.plan.method.QuantityUnit.times;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.carbonate.PhScale;
import org.tidewright.seawater.salinity.Conductivity;
import org.tidewright.seawater.salinity.SpecificGravity;
import org.tidewright.seawater.unit.Unit;

/**
 * What a keeper measures in the water: the coherent unit it is held in and the units it may be written in, the usual one
 * first. Molar masses are from the IUPAC standard atomic weights. Nitrogen and phosphorus are held as the mass the trade
 * tells: NO3, NO2, PO4, and N of ammonia and ammonium together.
 */
public enum WaterQuantity {
    TEMPERATURE(
            "temperature",
            List.of("temp"),
            "degC",
            -2,
            45,
            times(1, "°C", "c", "C", "degC", "celsius"),
            curved("°F", "f", f -> (f - 32) / 1.8, c -> c * 1.8 + 32, "F", "degF", "fahrenheit")),
    /** Practical salinity, PSS-78. */
    SALINITY(
            "salinity",
            List.of("sal", "sg", "specific gravity"),
            "1",
            0,
            50,
            times(1, "", "pss", "PSU", "ppt", "‰", "PSS"),
            gravity(25, "SG 25/25", "sg_25c_25c", "SG", "sg 25/25 °C", "25/25"),
            gravity(20, "SG 20/20", "sg_20c_20c", "sg 20/20 °C", "20/20"),
            curved(
                    "mS/cm",
                    "ms_per_cm_at_25c",
                    at25 -> Conductivity.toPractical(at25 / 10, 25),
                    salinity -> 10 * Conductivity.fromPractical(salinity, 25),
                    "mS/cm at 25 °C",
                    "mS")),
    ALKALINITY(
            "alkalinity",
            List.of("alk", "kh", "dkh", "ta"),
            "mol/m^3",
            0,
            20,
            times(Alkalinity.GERMAN_DEGREE, "dKH", "dkh", "KH", "°dKH", "°dH", "°KH"),
            times(1, "meq/L", "meq_per_l", "meq", "mmol/L", "mval/L"),
            times(
                    1 / Alkalinity.CALCIUM_CARBONATE_EQUIVALENT,
                    "mg/L CaCO3",
                    "mg_per_l_caco3",
                    "ppm CaCO3",
                    "ppm",
                    "mg/L")),
    CALCIUM(
            "calcium",
            List.of("ca"),
            "kg/m^3",
            0,
            2,
            perLitre(1, "mg/L", "mg_per_l", "ppm"),
            perLitre(40.078, "mmol/L", "mmol_per_l")),
    MAGNESIUM(
            "magnesium",
            List.of("mg"),
            "kg/m^3",
            0,
            5,
            perLitre(1, "mg/L", "mg_per_l", "ppm"),
            perLitre(24.305, "mmol/L", "mmol_per_l")),
    /** As a glass electrode shows it that was set with buffers on the NBS scale. */
    PH(
            "pH",
            List.of(),
            "1",
            4,
            11,
            times(1, "", "nbs", "NBS", "NIST"),
            curved("total", "total", WaterQuantity::ofTotalScale, WaterQuantity::toTotalScale)),
    NITRATE(
            "nitrate",
            List.of("no3"),
            "kg/m^3",
            0,
            1,
            perLitre(1, "mg/L NO3", "no3_mg_per_l", "mg/L", "ppm", "ppm NO3"),
            perLitre(62.0049 / 14.0067, "mg/L N", "n_mg_per_l", "ppm N", "mg/L NO3-N", "ppm NO3-N")),
    NITRITE(
            "nitrite",
            List.of("no2"),
            "kg/m^3",
            0,
            0.1,
            perLitre(1, "mg/L NO2", "no2_mg_per_l", "mg/L", "ppm", "ppm NO2"),
            perLitre(46.0055 / 14.0067, "mg/L N", "n_mg_per_l", "ppm N", "mg/L NO2-N", "ppm NO2-N")),
    AMMONIA(
            "ammonia",
            List.of("nh3", "nh4", "nh3/nh4", "ammonium", "tan"),
            "kg/m^3",
            0,
            0.1,
            perLitre(1, "mg/L N", "n_mg_per_l", "ppm N", "mg/L NH3-N", "mg/L TAN"),
            perLitre(14.0067 / 17.0305, "mg/L NH3", "nh3_mg_per_l", "ppm NH3"),
            perLitre(14.0067 / 18.0385, "mg/L NH4", "nh4_mg_per_l", "ppm NH4", "mg/L", "ppm")),
    PHOSPHATE(
            "phosphate",
            List.of("po4", "phosphorus"),
            "kg/m^3",
            0,
            0.1,
            perLitre(1, "mg/L PO4", "po4_mg_per_l", "mg/L", "ppm", "ppm PO4"),
            perLitre(1e-3, "µg/L PO4", "po4_ug_per_l", "ug/L PO4", "ppb PO4"),
            perLitre(94.9714 / 30.97376, "mg/L P", "p_mg_per_l", "ppm P"),
            perLitre(94.9714e-3 / 30.97376, "µg/L P", "p_ug_per_l", "ug/L P", "ppb P", "ppb")),
    OXYGEN(
            "oxygen",
            List.of("o2", "dissolved oxygen", "do"),
            "kg/m^3",
            0,
            0.04,
            perLitre(1, "mg/L", "mg_per_l", "ppm"));

    private final String words;
    private final List<String> otherNames;
    private final String held;
    private final double least;
    private final double most;
    private final List<QuantityUnit> units;

    WaterQuantity(
            String words, List<String> otherNames, String held, double least, double most, QuantityUnit... units) {
        this.words = words;
        this.otherNames = otherNames;
        this.held = held;
        this.least = least;
        this.most = most;
        this.units = List.of(units);
    }

    /** As a sentence says it. */
    public String words() {
        return words;
    }

    /** Name in files: {@code alkalinity}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The coherent unit its numbers are held in, as in {@link Unit}. */
    public String held() {
        return held;
    }

    /** Least number that can be meant at all, in the coherent unit. */
    public @Unit("*") double least() {
        return least;
    }

    /** Greatest number that can be meant at all, in the coherent unit. */
    public @Unit("*") double most() {
        return most;
    }

    /** The units it may be written in, the usual one first. */
    public List<QuantityUnit> units() {
        return units;
    }

    /** The unit a keeper of this system of units reads. */
    public QuantityUnit usualUnit(UnitSystem system) {
        return this == TEMPERATURE && system == UnitSystem.US ? units.get(1) : units.get(0);
    }

    /** The unit that is written so. */
    public Optional<QuantityUnit> unitSpelt(String text) {
        String trimmed = text.strip();
        return units.stream().filter(unit -> unit.isSpelt(trimmed)).findFirst();
    }

    /** The unit whose columns end so. */
    public Optional<QuantityUnit> unitOfKey(String key) {
        return units.stream().filter(unit -> unit.key().equals(key)).findFirst();
    }

    /** The quantity with this name in files. */
    public static Optional<WaterQuantity> ofKey(String key) {
        return Arrays.stream(values())
                .filter(quantity -> quantity.key().equals(key))
                .findFirst();
    }

    /** The quantity that is called so, in words or by the symbol of the trade, case apart. */
    public static Optional<WaterQuantity> named(String name) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(quantity -> quantity.names().contains(wanted))
                .findFirst();
    }

    /** All it may be called, in small letters, its words first. */
    public List<String> names() {
        return Stream.concat(Stream.of(words.toLowerCase(Locale.ROOT)), otherNames.stream())
                .toList();
    }

    /** Milligrams per litre of what is held, for each of the unit. */
    private static QuantityUnit perLitre(double milligrams, String symbol, String key, String... others) {
        return times(milligrams * 1e-3, symbol, key, others);
    }

    /** Specific gravity, seawater and pure water both at this temperature. */
    private static QuantityUnit gravity(double at, String symbol, String key, String... others) {
        return curved(
                symbol,
                key,
                gravity -> SpecificGravity.toPractical(gravity, at, at),
                salinity -> SpecificGravity.fromPractical(salinity, at, at),
                others);
    }

    /** At 25 °C and a salinity of 35: the offset of the scales moves by less than 0.01 between 20 and 30 °C. */
    private static double ofTotalScale(double ph) {
        return PhScale.TOTAL.convert(ph, PhScale.NBS, 25, 35);
    }

    private static double toTotalScale(double ph) {
        return PhScale.NBS.convert(ph, PhScale.TOTAL, 25, 35);
    }
}
