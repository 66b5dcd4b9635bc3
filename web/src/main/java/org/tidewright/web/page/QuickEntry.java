package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.limit.TargetRange;
import org.tidewright.husbandry.quantity.QuantityCourse;
import org.tidewright.husbandry.quantity.QuantityStudy;
import org.tidewright.husbandry.quantity.Told;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.method.QuantityUnit;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;

/**
 * The next reading, set to what is expected so that two taps put it into the log.
 *
 * @param id of the line to come
 * @param step one tap of less or more
 * @param expected what the estimate expects, in words
 * @param fault why what was typed is no reading; empty for nothing
 */
public record QuickEntry(
        String id,
        String quantity,
        String title,
        List<Tab> tabs,
        String value,
        String step,
        String unit,
        List<Choosable> units,
        List<Choosable> methods,
        String expected,
        String fault) {

    /** Quantities that are entered often, the due one first. */
    public record Tab(String words, String href, boolean current) {}

    /** A unit or a method. */
    public record Choosable(String value, String words, boolean chosen) {}

    static QuickEntry of(
            WaterStudy study,
            Plan plan,
            @Nullable WaterQuantity entering,
            @Nullable LogForm typed,
            String href,
            UnitSystem system) {
        WaterQuantity quantity = entering != null ? entering : due(study);
        QuantityStudy known = study.of(quantity).orElse(null);
        QuantityUnit unit = quantity.usualUnit(system);
        double expected = known == null ? start(plan, quantity) : known.now().value();
        double step = step(quantity);
        String method = known == null ? "" : lastMethod(known);
        return new QuickEntry(
                typed == null ? UUID.randomUUID().toString() : typed.id(),
                quantity.key(),
                quantity.words(),
                tabs(study, quantity, href),
                number(Math.rint(unit.fromHeld(expected) / step) * step, step),
                number(step, step),
                unit.symbol(),
                quantity.units().stream()
                        .map(each -> new Choosable(
                                each.symbol(), each.symbol().isEmpty() ? "–" : each.symbol(), each.equals(unit)))
                        .toList(),
                methods(quantity, method, expected, unit),
                known == null ? "" : expected(known, system),
                typed == null ? "" : typed.fault());
    }

    /** What calls for a test first: what is overdue, else what is tested next. */
    private static WaterQuantity due(WaterStudy study) {
        return study.quantities().stream()
                .min((a, b) -> a.nextTest().equals(b.nextTest())
                        ? Boolean.compare(
                                b.quantity() == WaterQuantity.ALKALINITY, a.quantity() == WaterQuantity.ALKALINITY)
                        : a.nextTest().compareTo(b.nextTest()))
                .map(QuantityStudy::quantity)
                .orElse(WaterQuantity.ALKALINITY);
    }

    private static List<Tab> tabs(WaterStudy study, WaterQuantity current, String href) {
        List<WaterQuantity> shown = new ArrayList<>(study.quantities().stream()
                .sorted(Comparator.comparing(QuantityStudy::nextTest))
                .map(QuantityStudy::quantity)
                .toList());
        Arrays.stream(WaterQuantity.values())
                .filter(each -> !shown.contains(each))
                .forEach(shown::add);
        return shown.stream()
                .map(each -> new Tab(each.words(), href + "/today?enter=" + each.key() + "#next-line", each == current))
                .toList();
    }

    private static List<Choosable> methods(WaterQuantity quantity, String last, double expected, QuantityUnit unit) {
        List<Choosable> methods = new ArrayList<>();
        for (TestMethod method : TestMethods.of(quantity)) {
            double error = unit.errorFromHeld(expected, method.standardError(expected));
            int decimals = (int) Math.max(0, Math.min(4, -Math.floor(Math.log10(error))));
            methods.add(new Choosable(
                    method.key(),
                    method.name() + ", ±\u00a0" + FigureText.number(error, decimals),
                    method.key().equals(last)));
        }
        return methods;
    }

    private static String lastMethod(QuantityStudy known) {
        List<QuantityCourse.Dot> readings = known.course().readings();
        return readings.isEmpty()
                ? ""
                : readings.get(readings.size() - 1).method().key();
    }

    private static String expected(QuantityStudy known, UnitSystem system) {
        Figure figure = Told.level(known.quantity(), known.now());
        return FigureText.of(figure, system).line() + " is expected.";
    }

    /** Where nothing was read yet: what the plan says of its water, or what is usual. */
    private static double start(Plan plan, WaterQuantity quantity) {
        return TargetRange.of(plan, quantity).map(range -> range.aim(plan)).orElse(quantity.least());
    }

    /** One tap, in the usual unit. */
    private static double step(WaterQuantity quantity) {
        return switch (quantity) {
            case ALKALINITY, SALINITY, TEMPERATURE, OXYGEN -> 0.1;
            case CALCIUM -> 5;
            case MAGNESIUM -> 10;
            case NITRATE -> 0.5;
            case PH, PHOSPHATE, NITRITE, AMMONIA -> 0.01;
        };
    }

    private static String number(double value, double step) {
        int decimals = step >= 1 ? 0 : step >= 0.1 ? 1 : 2;
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
