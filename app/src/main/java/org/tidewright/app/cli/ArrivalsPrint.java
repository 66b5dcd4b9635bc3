package org.tidewright.app.cli;

import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.arrival.Arrival;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.wishlist.ArrivalAnswer;
import org.tidewright.husbandry.wishlist.Money;
import org.tidewright.plan.model.UnitSystem;

/** A plan of arrivals on a terminal. */
final class ArrivalsPrint {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private static final String INDENT = "    ";

    private ArrivalsPrint() {}

    static void answer(Prose prose, ArrivalAnswer answer, UnitSystem units) {
        prose.line(answer.study().household().plan().name());
        prose.paragraph(answer.advice().lead().text(units));
        prose.blank();
        for (ArrivalAnswer.Coming coming : answer.coming()) {
            prose.paragraph("  ", INDENT, days(coming));
            if (coming.moved() != null) {
                prose.paragraph(INDENT, INDENT, coming.moved().text(units));
            } else {
                coming.why().forEach(why -> prose.paragraph(INDENT, INDENT, why.text(units)));
            }
        }
        for (ArrivalAnswer.Staying staying : answer.staying()) {
            prose.paragraph(
                    staying.becomes().isEmpty() ? "○ no       " : "◐ not yet  ", INDENT, name(staying.animals()));
            for (Sentence why : staying.why()) {
                prose.paragraph(INDENT, INDENT, why.text(units));
            }
            for (Sentence change : staying.becomes()) {
                prose.paragraph(INDENT + "It becomes yes: ", INDENT, change.text(units));
            }
        }
        answer.gone().forEach(gone -> prose.paragraph("  ", INDENT, gone.text(units)));
        prose.blank();
        for (ArrivalAnswer.Month month : answer.months()) {
            prose.line("  " + month.month() + "  " + Money.text(month.spent())
                    + (month.unpriced() == 0 ? "" : ", and " + month.unpriced() + " without a price"));
        }
        answer.advice().remarks().forEach(remark -> prose.paragraph("– ", "  ", remark.text(units)));
        prose.blank();
        Listing.cautions(prose, answer.advice().cautions());
        Listing.sources(prose, answer.advice().sources());
    }

    private static String days(ArrivalAnswer.Coming coming) {
        Arrival arrival = coming.arrival();
        String who = name(coming.animals());
        String in = DAY.format(arrival.in());
        String out = DAY.format(arrival.out());
        if (arrival.stage() == Stage.IN_DISPLAY) {
            return who + ": in the display since " + out;
        }
        String where = arrival.tank() == null ? "" : " in " + arrival.tank();
        return arrival.stage() == Stage.IN_QUARANTINE
                ? who + ":" + where + " since " + in + ", into the display " + out
                : who + ": comes " + in + (where.isEmpty() ? "" : "," + where) + ", into the display " + out;
    }

    private static String name(Animals animals) {
        return (animals.count() == 1 ? "" : animals.count() + " × ")
                + animals.species().name().common();
    }
}
