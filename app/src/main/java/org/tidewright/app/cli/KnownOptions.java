package org.tidewright.app.cli;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.sheet.KnownField;
import picocli.CommandLine.Option;

/** What is known of a water, as typed; the units are those of {@link KnownField}. */
final class KnownOptions {
    @Option(names = "--temperature", paramLabel = "T", description = "25 (in °C), \"77 °F\"")
    private @Nullable String temperature;

    @Option(
            names = "--salinity",
            paramLabel = "S",
            description = "35, \"53 mS/cm\", \"1.0264 SG 25/25\", \"1.0266 SG 20/20\", \"35.2 g/kg\", \"1023.3 kg/m3\"")
    private @Nullable String salinity;

    @Option(
            names = "--alkalinity",
            paramLabel = "A",
            description = "\"8 dKH\", \"2.9 meq/L\", \"143 ppm CaCO3\", \"2800 umol/kg\"")
    private @Nullable String alkalinity;

    @Option(names = "--carbon", paramLabel = "C", description = "dissolved inorganic carbon: \"2000 umol/kg\"")
    private @Nullable String carbon;

    @Option(
            names = "--ph",
            paramLabel = "PH",
            description = "8.1 (on the total scale), \"8.25 NBS\" (a probe set with trade buffers)")
    private @Nullable String ph;

    @Option(
            names = "--carbon-dioxide",
            paramLabel = "CO2",
            description = "\"420 ppm\" (of dry air in equilibrium with the water), \"400 uatm\"")
    private @Nullable String carbonDioxide;

    @Option(names = "--phosphate", paramLabel = "P", description = "\"0.05 mg/L PO4\", \"15 ppb P\"")
    private @Nullable String phosphate;

    @Option(names = "--silicate", paramLabel = "SI", description = "\"0.5 mg/L SiO2\"")
    private @Nullable String silicate;

    @Option(names = "--ammonia", paramLabel = "N", description = "both forms together: \"0.1 mg/L N\"")
    private @Nullable String ammonia;

    @Option(names = "--calcium", paramLabel = "CA", description = "as measured: \"420 mg/L\"; else the sea's")
    private @Nullable String calcium;

    Map<KnownField, String> typed() {
        Map<KnownField, String> typed = new EnumMap<>(KnownField.class);
        put(typed, KnownField.TEMPERATURE, temperature);
        put(typed, KnownField.SALINITY, salinity);
        put(typed, KnownField.ALKALINITY, alkalinity);
        put(typed, KnownField.CARBON, carbon);
        put(typed, KnownField.PH, ph);
        put(typed, KnownField.CARBON_DIOXIDE, carbonDioxide);
        put(typed, KnownField.PHOSPHATE, phosphate);
        put(typed, KnownField.SILICATE, silicate);
        put(typed, KnownField.AMMONIA, ammonia);
        put(typed, KnownField.CALCIUM, calcium);
        return typed;
    }

    private static void put(Map<KnownField, String> typed, KnownField field, @Nullable String text) {
        if (text != null) {
            typed.put(field, text);
        }
    }
}
