package org.tidewright.web.page;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.husbandry.quarantine.Batch;
import org.tidewright.husbandry.quarantine.FallowState;
import org.tidewright.husbandry.quarantine.FallowWords;
import org.tidewright.husbandry.quarantine.Watch;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/**
 * A display: how long it stands without fish, and which quarantine tanks serve it.
 *
 * @param echo what became of what was just sent; null for nothing
 * @param lead where no fallow runs; null where one does
 */
public record FallowPage(
        String href,
        String token,
        @Nullable String echo,
        @Nullable String lead,
        List<Running> fallows,
        List<BoxLine> boxes,
        FallowForm form,
        List<FallowForm.Option> parasites,
        List<Source> sources) {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

    /**
     * A fallow that is not over by the log.
     *
     * @param share of its days that have passed, as a width
     */
    public record Running(
            String title, QuarantinePage.Told told, List<ToldLine> figures, String day, String share, String until) {}

    /** A quarantine tank that serves this display. */
    public record BoxLine(String name, String href, String who, String until, String duty) {}

    static FallowPage of(
            Desk desk,
            SystemView view,
            String token,
            @Nullable FallowForm typed,
            @Nullable String echo,
            UnitSystem units) {
        Sources sources = new Sources();
        LocalDate today = Boxes.today(desk);
        List<FallowState> states = Boxes.fallows(desk, view);
        List<Running> fallows = new ArrayList<>();
        for (FallowState state : states) {
            fallows.add(running(state, view.entry().name(), today, sources, units));
        }
        List<BoxLine> boxes =
                Boxes.serving(desk, view).stream().map(box -> line(box, units)).toList();
        FallowForm form = typed == null ? FallowForm.empty(states) : typed;
        return new FallowPage(
                Reader.href(view.entry()),
                token,
                echo,
                fallows.isEmpty() ? lead(boxes, view.entry().name()) : null,
                fallows,
                boxes,
                form,
                form.parasites(),
                sources.all());
    }

    private static String lead(List<BoxLine> boxes, String name) {
        if (boxes.isEmpty()) {
            return "Nothing new to " + name
                    + " before it was watched elsewhere: no quarantine tank in this folder serves"
                    + " it, and it stands with its fish.";
        }
        return "Nothing new to " + name
                + " but through quarantine. It stands with its fish; no parasite is waited for.";
    }

    private static Running running(
            FallowState state, String display, LocalDate today, Sources sources, UnitSystem units) {
        var advice = FallowWords.of(state, display, today, sources);
        int day = state.dayOf(today);
        int days = (int) state.span().customary();
        return new Running(
                "Without fish: " + state.parasite().words(),
                QuarantinePage.Told.of(advice, units),
                advice.figures().stream()
                        .map(told -> ToldLine.of(told.name(), told.figure(), told.source(), units))
                        .toList(),
                "day " + Math.min(day, days) + " of " + days,
                share(day, days),
                DATE.format(state.restock()));
    }

    static String share(int day, int days) {
        return Math.round(100.0 * Math.max(0, Math.min(day, days)) / Math.max(1, days)) + "%";
    }

    private static BoxLine line(Boxes.Box box, UnitSystem units) {
        Watch watch = box.study().watch();
        return new BoxLine(
                box.view().entry().name(),
                Reader.href(box.view().entry()) + "/quarantine",
                who(box.study().batch()),
                watch == null ? "" : "until " + DATE.format(watch.end()),
                box.study().duty().lead().withoutSources().text(units));
    }

    /** {@code 4 wrasse, 1 goby}, or that it is empty. */
    static String who(@Nullable Batch batch) {
        if (batch == null || batch.present().isEmpty()) {
            return "empty";
        }
        return String.join(
                ", ",
                batch.present().stream()
                        .map(animals -> animals.count() + " " + animals.name())
                        .toList());
    }

    /** For a form's list. */
    static List<Parasite> offered() {
        return List.of(Parasite.values());
    }
}
