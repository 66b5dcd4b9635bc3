package org.tidewright.web.page;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.tidewright.husbandry.quarantine.CheckedDay;
import org.tidewright.husbandry.quarantine.FallowState;
import org.tidewright.husbandry.quarantine.QuarantineStudy;
import org.tidewright.husbandry.quarantine.Watch;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.TodayPage.Counted;
import org.tidewright.web.page.TodayPage.Letter;

/** What Today says of quarantine and fallow: of a quarantine tank itself, and of those that serve a display. */
final class QuarantineNotes {
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    private QuarantineNotes() {}

    /** Quarantine tanks a system has to do with: itself, or those that serve it. */
    private static List<Boxes.Box> boxes(Desk desk, SystemView view) {
        return view.plan().quarantine() == null
                ? Boxes.serving(desk, view)
                : List.of(new Boxes.Box(view, Boxes.study(desk, view)));
    }

    static List<Counted> counted(Desk desk, SystemView view) {
        List<Counted> counted = new ArrayList<>();
        LocalDate today = Boxes.today(desk);
        for (Boxes.Box box : boxes(desk, view)) {
            Watch watch = box.study().watch();
            if (watch != null) {
                int day = watch.dayOf(today);
                int days = watch.governing().days();
                counted.add(new Counted(
                        box.view().entry().name() + ": "
                                + FallowPage.who(box.study().batch()),
                        "until " + SHORT.format(watch.end()),
                        FallowPage.share(day, days),
                        "day " + Math.min(day, days) + " of " + days,
                        Reader.href(box.view().entry()) + "/quarantine"));
            }
        }
        for (FallowState fallow : Boxes.fallows(desk, view)) {
            int day = fallow.dayOf(today);
            int days = (int) fallow.span().customary();
            counted.add(new Counted(
                    "Without fish, " + fallow.parasite().words(),
                    "until " + SHORT.format(fallow.restock()),
                    FallowPage.share(day, days),
                    "day " + Math.min(day, days) + " of " + days,
                    Reader.href(view.entry()) + "/quarantine"));
        }
        return counted;
    }

    /** What wants hands or a decision. */
    static List<Letter> letters(Desk desk, SystemView view, UnitSystem units) {
        List<Letter> letters = new ArrayList<>();
        for (Boxes.Box box : boxes(desk, view)) {
            if (!box.study().isCalm()) {
                letters.add(new Letter(
                        "Quarantine",
                        act(box.study(), box.view().entry().name()),
                        SentenceMarkup.of(box.study().duty().lead().withoutSources(), units),
                        Reader.href(box.view().entry()) + "/quarantine",
                        "Write the look down",
                        null,
                        List.of(),
                        false));
            }
        }
        for (FallowState fallow : Boxes.fallows(desk, view)) {
            if (fallow.isOver(Boxes.today(desk))) {
                letters.add(new Letter(
                        "Decide",
                        "Fish may come back to " + view.entry().name(),
                        Markup.words(
                                "The days without fish for " + fallow.parasite().words() + " are over since "
                                        + SHORT.format(fallow.restock()) + "."),
                        Reader.href(view.entry()) + "/quarantine",
                        "See how sure that is",
                        null,
                        List.of(),
                        false));
            }
        }
        return letters;
    }

    private static String act(QuarantineStudy study, String box) {
        Watch watch = study.watch();
        CheckedDay day = watch == null ? null : watch.days().get(watch.days().size() - 1);
        if (day != null && day.isUrgent()) {
            return "Act now in " + box;
        } else if (day != null && !day.isWell()) {
            return "Not all is well in " + box;
        } else if (day != null && !day.checked()) {
            return "Look at the animals in " + box;
        }
        return "The animals in " + box + " may move";
    }
}
