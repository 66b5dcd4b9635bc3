package org.tidewright.web.page;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.wishlist.Money;
import org.tidewright.husbandry.wishlist.WishLine;
import org.tidewright.husbandry.wishlist.WishList;
import org.tidewright.husbandry.wishlist.WishText;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Catalogue;

/**
 * A wish list as it stands in the form.
 *
 * @param basedOn mark of the file from which the writer began
 * @param list an animal to a line
 * @param listFaults each with its line
 * @param budgetFault empty for none
 * @param startFault likewise
 * @param fault of all of it; empty for none
 */
public record ArrivalsForm(
        String basedOn,
        String list,
        String budget,
        String start,
        List<String> listFaults,
        String budgetFault,
        String startFault,
        String fault) {
    public ArrivalsForm {
        listFaults = List.copyOf(listFaults);
    }

    /** A form that cannot be kept, with what is wrong. */
    public static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;
        private final transient ArrivalsForm form;

        Refused(ArrivalsForm form) {
            super("the form has faults");
            this.form = form;
        }

        public ArrivalsForm form() {
            return form;
        }
    }

    /** Of a list that is kept. */
    static ArrivalsForm of(WishList list, String basedOn, Catalogue catalogue, UnitSystem units) {
        return new ArrivalsForm(
                basedOn,
                WishText.write(list, catalogue, units),
                list.budget() == null ? "" : Money.text(list.budget()),
                list.nothingBefore() == null ? "" : list.nothingBefore().toString(),
                List.of(),
                "",
                "",
                "");
    }

    /** What was sent; a field that is missing is empty. */
    public static ArrivalsForm read(UnaryOperator<@Nullable String> fields) {
        return new ArrivalsForm(
                text(fields, "based_on"),
                text(fields, "list").replace("\r\n", "\n"),
                text(fields, "budget").strip(),
                text(fields, "start").strip(),
                List.of(),
                "",
                "",
                "");
    }

    private static String text(UnaryOperator<@Nullable String> fields, String name) {
        String text = fields.apply(name);
        return text == null ? "" : text;
    }

    /** The same with what is wrong with all of it. */
    public ArrivalsForm refused(String why) {
        return new ArrivalsForm(basedOn, list, budget, start, listFaults, budgetFault, startFault, why);
    }

    /** The same, begun from another state of the file. */
    public ArrivalsForm basedOn(String mark) {
        return new ArrivalsForm(mark, list, budget, start, listFaults, budgetFault, startFault, fault);
    }

    /** The list it says. */
    public WishList wishes(Catalogue catalogue) throws Refused {
        WishText.Reading reading = WishText.read(list, catalogue);
        List<WishLine> lines = new ArrayList<>(reading.lines());
        OptionalLong money = budget.isEmpty() ? OptionalLong.empty() : Money.read(budget);
        LocalDate day = day();
        String noMoney = budget.isEmpty() || money.isPresent()
                ? ""
                : "Found “" + Entry.shortened(budget) + "”; expected an amount such as 45 or 45.50, at most "
                        + Money.MOST + ".";
        String noDay = start.isEmpty() || day != null
                ? ""
                : "Found “" + Entry.shortened(start) + "”; expected a date such as 2026-12-20.";
        if (!reading.faults().isEmpty() || !noMoney.isEmpty() || !noDay.isEmpty()) {
            throw new Refused(new ArrivalsForm(
                    basedOn,
                    list,
                    budget,
                    start,
                    reading.faults(),
                    noMoney,
                    noDay,
                    "Not kept: something below cannot be read."));
        }
        return new WishList(lines, money.isPresent() ? money.getAsLong() : null, day);
    }

    private @Nullable LocalDate day() {
        try {
            LocalDate day = start.length() == 10 ? LocalDate.parse(start) : null;
            return day == null || day.getYear() < 2000 || day.getYear() > 2199 ? null : day;
        } catch (DateTimeParseException noDay) {
            return null;
        }
    }
}
