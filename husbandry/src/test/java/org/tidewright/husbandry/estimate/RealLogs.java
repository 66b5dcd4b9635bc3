package org.tidewright.husbandry.estimate;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.source.Basis;
import org.tidewright.testkit.ReferenceTable;

/** Logs that others kept, each a list of readings of one quantity in one water; nothing was tuned on them. */
final class RealLogs {
    private static final double DAY = 86_400;

    private RealLogs() {}

    /** Readings of one quantity in one water. */
    record Log(String name, List<Inputs.Reading> readings) {}

    /** Outdoor tanks with eelgrass, tested by hand on most working days of a summer. */
    static List<Log> eelgrassTanks() {
        Map<WaterQuantity, String> columns = new EnumMap<>(Map.of(
                WaterQuantity.TEMPERATURE, "temperature_c",
                WaterQuantity.SALINITY, "salinity",
                WaterQuantity.PH, "ph_nbs",
                WaterQuantity.OXYGEN, "oxygen_mg_per_l"));
        Map<WaterQuantity, TestMethod> methods = new EnumMap<>(Map.of(
                WaterQuantity.TEMPERATURE, method(WaterQuantity.TEMPERATURE, "digital_thermometer"),
                WaterQuantity.SALINITY, method(WaterQuantity.SALINITY, "conductivity_meter"),
                WaterQuantity.PH, method(WaterQuantity.PH, "electrode"),
                WaterQuantity.OXYGEN, method(WaterQuantity.OXYGEN, "optical_probe")));
        Map<String, Log> logs = new LinkedHashMap<>();
        double noon = 12;
        for (ReferenceTable.Row row : table("seagrass_tanks.csv").rows()) {
            double hour = row.has("hour_h") ? row.number("hour_h") : noon;
            double time = days(LocalDate.parse(row.text("date")).atStartOfDay()) + hour / 24;
            columns.forEach((quantity, column) -> {
                if (row.has(column)) {
                    String name = quantity.key() + " of tank " + row.text("tank");
                    add(logs, name, time, quantity.units().get(0), row.number(column), method(methods, quantity));
                }
            });
        }
        return List.copyOf(logs.values());
    }

    /** The air of an office, every seventh hour for ten months, with faults; it stands for a water that a room holds. */
    static List<Log> office() {
        Map<String, Log> logs = new LinkedHashMap<>();
        TestMethod method = method(WaterQuantity.TEMPERATURE, "digital_thermometer");
        QuantityUnit fahrenheit = WaterQuantity.TEMPERATURE.unitSpelt("°F").orElseThrow();
        for (ReferenceTable.Row row : table("office_temperature.csv").rows()) {
            double time = days(LocalDateTime.parse(row.text("time")));
            add(logs, "temperature", time, fahrenheit, row.number("temperature_f"), method);
        }
        return List.copyOf(logs.values());
    }

    /** Water in which jellyfish were kept for eight hours, by flow analysis. */
    static List<Log> jellyfish() {
        Map<WaterQuantity, String> columns = new EnumMap<>(Map.of(
                WaterQuantity.AMMONIA, "ammonium",
                WaterQuantity.PHOSPHATE, "phosphate",
                WaterQuantity.NITRATE, "nitrate"));
        // kg/m³ of what the quantity is held in, for each µmol/L.
        Map<WaterQuantity, Double> perMicromole = new EnumMap<>(Map.of(
                WaterQuantity.AMMONIA, 14.0067e-6,
                WaterQuantity.PHOSPHATE, 94.9714e-6,
                WaterQuantity.NITRATE, 62.0049e-6));
        Map<String, Log> logs = new LinkedHashMap<>();
        for (ReferenceTable.Row row : table("jellyfish.csv").rows()) {
            double time = row.number("time_min") / 1440;
            columns.forEach((quantity, column) -> {
                if (row.has(column)) {
                    double one = perMicromole.getOrDefault(quantity, 0.0);
                    double value = row.number(column) * one;
                    Log log = logs.computeIfAbsent(
                            quantity.key() + " of " + row.text("id"), name -> new Log(name, new ArrayList<>()));
                    log.readings().add(reading(log, time, value, flowAnalysis(quantity, one)));
                }
            });
        }
        return List.copyOf(logs.values());
    }

    /** Scatter of 0.05 µmol/L and 2 %, usual of an autoanalyser; from memory. */
    private static TestMethod flowAnalysis(WaterQuantity quantity, double micromole) {
        return new TestMethod(
                "flow_analysis",
                quantity,
                "flow analysis",
                0.05 * micromole,
                0.02,
                0.01 * micromole,
                0,
                0.03,
                false,
                Basis.FROM_MEMORY,
                "usual of an autoanalyser");
    }

    /** What is known of a log's first readings. */
    static Inputs inputs(List<Inputs.Reading> readings) {
        return new Inputs(
                Instant.EPOCH,
                readings.get(readings.size() - 1).time(),
                readings,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                DayShape.EVEN,
                Map.of(),
                0,
                0,
                List.of());
    }

    private static void add(
            Map<String, Log> logs, String name, double time, QuantityUnit unit, double written, TestMethod method) {
        Log log = logs.computeIfAbsent(name, key -> new Log(key, new ArrayList<>()));
        log.readings().add(reading(log, time, unit.toHeld(written), method));
    }

    private static Inputs.Reading reading(Log log, double time, double value, TestMethod method) {
        return new Inputs.Reading(new UUID(0, log.readings().size()), time, value, method);
    }

    private static double days(LocalDateTime at) {
        return at.toEpochSecond(ZoneOffset.UTC) / DAY;
    }

    private static TestMethod method(WaterQuantity quantity, String key) {
        return TestMethods.find(quantity, key).orElseThrow();
    }

    private static TestMethod method(Map<WaterQuantity, TestMethod> methods, WaterQuantity quantity) {
        TestMethod method = methods.get(quantity);
        if (method == null) {
            throw new IllegalStateException(quantity.words());
        }
        return method;
    }

    private static ReferenceTable table(String file) {
        return ReferenceTable.read(RealLogs.class, "/reference/logs/" + file);
    }
}
