package org.tidewright.web.page;

import java.util.Arrays;
import java.util.List;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.quantity.QuantityCourse;
import org.tidewright.husbandry.quantity.QuantityStudy;
import org.tidewright.husbandry.solution.SolutionReport;
import org.tidewright.husbandry.solution.Strength;
import org.tidewright.husbandry.solution.Strength.Measured;
import org.tidewright.husbandry.solution.Supply;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.TestMethods;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.page.AmountField.Asked;
import org.tidewright.web.page.AmountField.Known;

/** What is in a bottle that is already there. */
final class BottleQuestion {
    /** Standard error of the water of a system, as a share; common practice. */
    private static final double OF_WATER = 0.05;

    /** Standard error of a dose by cup or syringe, as a share; common practice. */
    private static final double OF_DOSE = 0.025;

    private static final List<WaterQuantity> OFFERED = Arrays.stream(WaterQuantity.values())
            .filter(quantity -> Supply.of(quantity).isPresent())
            .toList();

    private BottleQuestion() {}

    static SolutionsPage answered(Levers.Query query, SolutionsPage.Around around) {
        WaterQuantity of = WaterQuantity.ALKALINITY;
        String asked = query.get("of");
        boolean unknown = asked != null && !asked.isBlank();
        for (WaterQuantity each : OFFERED) {
            if (each.key().equals(asked)) {
                of = each;
                unknown = false;
            }
        }
        WaterQuantity quantity = of;
        Select what = Select.of(
                "of",
                "It brings",
                OFFERED.stream()
                        .map(each -> new Choice.Option(each.key(), each.words(), each == quantity))
                        .toList(),
                unknown && asked != null
                        ? Select.none(
                                asked, OFFERED.stream().map(WaterQuantity::key).toList())
                        : "");
        Choice how = Choice.read(
                query, "how", "Known from", "test", List.of("test", "a test of my own", "label", "its label"));
        return Choice.is(how, "label")
                ? ofLabel(query, around, quantity, what, how)
                : ofTest(query, around, quantity, what, how);
    }

    private static SolutionsPage ofTest(
            Levers.Query query, SolutionsPage.Around around, WaterQuantity quantity, Select what, Choice how) {
        AmountField before =
                AmountField.read(query, level("before", "Read before", quantity, around.units()), null, "");
        AmountField after =
                AmountField.read(query, level("after", "Read after, mixed in", quantity, around.units()), null, "");
        AmountField dose = AmountField.read(query, dose(around.units()), null, "");
        AmountField water = AmountField.read(
                query,
                Asked.of("water", "Water it went into", Measure.VOLUME, around.units(), 1e-4, 1000),
                new Known(around.view().entry().water(), "", "from the plan: all in circulation"),
                "");
        AmountField doubt = AmountField.read(
                query,
                level("reading_error", "Each reading is off by, ±", quantity, around.units()),
                method(around, quantity),
                "");
        AmountField waterDoubt = AmountField.read(
                query,
                Asked.of("water_error", "The water is off by, ±", Measure.SHARE, around.units(), 0, 0.5),
                new Known(OF_WATER, "%", "usual, common practice"),
                "");
        AmountField doseDoubt = AmountField.read(
                query,
                Asked.of("dose_error", "The dose is off by, ±", Measure.SHARE, around.units(), 0, 0.5),
                new Known(OF_DOSE, "%", "usual of cup or syringe, common practice"),
                "");
        if (before.isGiven() && after.isGiven() && after.value() <= before.value()) {
            after = after.refused("Found no rise over what was read before; expected more. Was it mixed in, or read the"
                    + " other way round?");
        }
        QuestionForm form = new QuestionForm(List.of(
                new QuestionForm.Part(
                        "The bottle", false, List.of(what), List.of(how), List.of(before, after, dose, water)),
                QuestionForm.Part.folded("How sure these are", List.of(doubt, waterDoubt, doseDoubt))));
        List<String> wanted = form.wanted(List.of(before, after, dose));
        String inTheWay = form.inTheWay();
        if (inTheWay != null) {
            return SolutionsPage.unanswered(around, "bottle", form, inTheWay, true);
        } else if (!wanted.isEmpty()) {
            return SolutionsPage.unanswered(
                    around,
                    "bottle",
                    form,
                    "Dose once, test before and, mixed in, an hour or two after; then type the two readings and the dose:"
                            + " the rise tells how strong the bottle is.",
                    false);
        }
        Supply supply = Supply.of(quantity).orElseThrow();
        double rise = supply.amount(after.value() - before.value());
        double error = supply.amount(doubt.value());
        Strength strength = Strength.fromRise(
                supply,
                new Measured(rise, Math.sqrt(2) * error),
                new Measured(water.value(), waterDoubt.value() * water.value()),
                new Measured(dose.value(), doseDoubt.value() * dose.value()));
        return told(around, form, strength, true);
    }

    private static SolutionsPage ofLabel(
            Levers.Query query, SolutionsPage.Around around, WaterQuantity quantity, Select what, Choice how) {
        AmountField dose = AmountField.read(query, dose(around.units()), null, "as the label says");
        AmountField water = AmountField.read(
                query,
                Asked.of("of_water", "in water of", Measure.VOLUME, around.units(), 1e-4, 1000),
                null,
                "as the label says, not your own");
        AmountField rise =
                AmountField.read(query, level("rise", "brings a rise of", quantity, around.units()), null, "");
        QuestionForm form = new QuestionForm(List.of(
                new QuestionForm.Part("The bottle", false, List.of(what), List.of(how), List.of(dose, water, rise))));
        String inTheWay = form.inTheWay();
        if (inTheWay != null) {
            return SolutionsPage.unanswered(around, "bottle", form, inTheWay, true);
        } else if (!form.wanted(List.of(dose, water, rise)).isEmpty()) {
            return SolutionsPage.unanswered(
                    around,
                    "bottle",
                    form,
                    "Type what the label says: so many millilitres raise so much water by so much.",
                    false);
        }
        Supply supply = Supply.of(quantity).orElseThrow();
        Strength strength = Strength.fromLabel(supply, supply.amount(rise.value()), water.value(), dose.value());
        return told(around, form, strength, false);
    }

    private static SolutionsPage told(
            SolutionsPage.Around around, QuestionForm form, Strength strength, boolean tested) {
        double water = around.view().entry().water();
        return SolutionsPage.answered(
                around,
                "bottle",
                form,
                List.of(SolutionReport.of(strength, tested, water)),
                List.of(""),
                List.of(),
                null);
    }

    /** Of the kit the log's last reading was made with; else of a usual kit. */
    private static Known method(SolutionsPage.Around around, WaterQuantity quantity) {
        QuantityStudy study = around.study().of(quantity).orElse(null);
        List<QuantityCourse.Dot> readings =
                study == null ? List.of() : study.course().readings();
        boolean logged = !readings.isEmpty();
        TestMethod method = logged
                ? readings.get(readings.size() - 1).method()
                : TestMethods.of(quantity).get(0);
        double level = logged ? readings.get(readings.size() - 1).value() : 0;
        return new Known(method.repeatability(level), "", (logged ? "from your log: " : "usual of a ") + method.name());
    }

    private static Asked dose(UnitSystem system) {
        return Asked.of("dose", "Dose", Measure.DOSE, system, 1e-8, 0.1);
    }

    private static Asked level(String name, String label, WaterQuantity quantity, UnitSystem system) {
        return Asked.of(name, label, quantity, system, 0, quantity.most());
    }
}
