package org.tidewright.web.page;

import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.ph.Electrode;
import org.tidewright.husbandry.ph.PhReading;
import org.tidewright.husbandry.quantity.QuantityCourse;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.web.page.AmountField.Asked;
import org.tidewright.web.page.AmountField.Known;

/** The readings that tell a pH, each from the log with its date, from the plan, or typed, and how sure each is. */
final class PhWater {
    private static final double DAY = 86_400;

    /** An electrode that nobody says when it was set. */
    private static final double MONTH = 30 * DAY;

    private final Levers.Query query;
    private final WaterStudy study;
    private final ZoneId zone;
    private final UnitSystem units;
    private final AmountField alkalinity;
    private final AmountField ph;
    private final AmountField salinity;
    private final AmountField temperature;
    private final AmountField electrode;
    private final AmountField alkalinityError;
    private final AmountField salinityError;
    private final AmountField temperatureError;

    PhWater(Levers.Query query, Plan plan, WaterStudy study, ZoneId zone, UnitSystem units) {
        this.query = query;
        this.study = study;
        this.zone = zone;
        this.units = units;
        alkalinity = level(WaterQuantity.ALKALINITY, "Alkalinity", plan.water().alkalinity(), 0.1, 20);
        ph = level(WaterQuantity.PH, "pH", null, 6, 10);
        salinity = level(WaterQuantity.SALINITY, "Salinity", plan.water().salinity(), 5, 45);
        temperature =
                level(WaterQuantity.TEMPERATURE, "Temperature", plan.water().temperature(), 5, 40);
        electrode = AmountField.read(
                query,
                new Asked(
                        "electrode_days",
                        "Electrode set with buffers, days ago",
                        FieldUnits.DAYS,
                        units,
                        0,
                        3000 * DAY),
                new Known(MONTH, "d", "not told: a month is taken"),
                "");
        alkalinityError =
                error(alkalinity, WaterQuantity.ALKALINITY, "syringe_titration", FieldUnits.of(Measure.ALKALINITY), 5);
        salinityError =
                error(salinity, WaterQuantity.SALINITY, "refractometer_seawater", FieldUnits.of(Measure.SALINITY), 9);
        temperatureError = error(temperature, WaterQuantity.TEMPERATURE, "digital_thermometer", FieldUnits.WARMTH, 9);
    }

    /** What is needed. */
    List<AmountField> levels() {
        return List.of(alkalinity, ph, salinity, temperature);
    }

    /** How sure each is. */
    List<AmountField> errors() {
        return List.of(electrode, alkalinityError, salinityError, temperatureError);
    }

    /** The reading, once every field has its value. */
    PhReading reading() {
        return new PhReading(
                alkalinity.value(),
                alkalinityError.value(),
                salinity.value(),
                salinityError.value(),
                temperature.value(),
                temperatureError.value(),
                ph.value(),
                phError());
    }

    private QuantityCourse.@Nullable Dot last(WaterQuantity quantity) {
        List<QuantityCourse.Dot> dots =
                study.of(quantity).map(each -> each.course().readings()).orElse(List.of());
        for (int i = dots.size() - 1; i >= 0; i--) {
            if (!dots.get(i).setAside()) {
                return dots.get(i);
            }
        }
        return null;
    }

    /** Of the log's last reading that stands, else as the plan keeps its water. */
    private AmountField level(
            WaterQuantity quantity, String label, @Nullable Amount planned, double least, double most) {
        QuantityCourse.Dot dot = last(quantity);
        Known known = null;
        if (dot != null) {
            known = new Known(
                    dot.value(),
                    "",
                    "from your log: " + QuantityChart.time(dot.at(), zone) + ", "
                            + dot.method().name());
        } else if (planned != null) {
            known = new Known(planned.in(quantity.held()), "", "from the plan: as the water is kept");
        }
        return AmountField.read(
                query,
                Asked.of(quantity.key(), label, quantity, units, least, most),
                known,
                "as your meter or kit shows it");
    }

    /** Of the log's method where its reading stands; else of a usual one. */
    private AmountField error(AmountField of, WaterQuantity quantity, String usual, FieldUnits in, double most) {
        QuantityCourse.Dot dot = of.known() == null ? null : last(quantity);
        TestMethod method =
                dot != null ? dot.method() : TestMethods.find(quantity, usual).orElseThrow();
        double error = dot != null ? dot.error() : method.standardError(of.isGiven() ? of.value() : 0);
        return AmountField.read(
                query,
                new Asked(quantity.key() + "_error", of.label() + ", ±", in, units, 0, most),
                new Known(error, "", (dot != null ? "of your log’s " : "usual of a ") + method.name()),
                "");
    }

    /** Of an electrode by its age; of colours, where the log has it by them. */
    private double phError() {
        QuantityCourse.Dot dot = ph.known() == null ? null : last(WaterQuantity.PH);
        return dot != null && dot.method().key().equals("colour")
                ? dot.error()
                : new Electrode(electrode.value()).standardError(ph.value());
    }
}
