package org.tidewright.husbandry.quarantine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Advice.Told;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sentence.Part;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.plan.source.Basis;

/** Tells how long a display stays without fish, how sure that is, and what begins the count anew. */
public final class FallowWords {
    private final FallowState state;
    private final String display;
    private final LocalDate today;
    private final Sources sources;

    private FallowWords(FallowState state, String display, LocalDate today, Sources sources) {
        this.state = state;
        this.display = display;
        this.today = today;
        this.sources = sources;
    }

    /**
     * The advice on a fallow.
     *
     * @param display name of the system
     */
    public static Advice of(FallowState state, String display, LocalDate today) {
        return of(state, display, today, new Sources());
    }

    /** The same, its letters among those of other advice. */
    public static Advice of(FallowState state, String display, LocalDate today, Sources sources) {
        return new FallowWords(state, display, today, sources).advice();
    }

    private Advice advice() {
        FallowSpan span = state.span();
        Figure days = span.longest() > span.shortest()
                ? Days.span(span.customary(), span.shortest(), span.longest())
                : Days.span(span.customary());
        String customary = customary();
        Sentence lead = state.isOver(today)
                ? Sentence.of(
                        "Fish may come back to " + display + ", out of quarantine: ",
                        Sentence.figure(Days.span(span.customary()), customary),
                        " from " + day(state.countedFrom()) + " were over on " + day(state.restock())
                                + ". Write “fallow " + state.parasite().words() + " ended” into the log.")
                : Sentence.of(
                        "Leave " + display + " without any fish until " + day(state.restock()) + ": ",
                        Sentence.figure(Days.span(span.customary()), customary),
                        " from " + day(state.countedFrom()) + ", what careful keepers wait for "
                                + (state.parasite() == Parasite.UNKNOWN
                                        ? "white spot, the longest known"
                                        : state.parasite().words())
                                + ".");
        return new Advice(
                lead,
                remarks(),
                List.of(
                        new Told("day without fish", Figure.exact(Measure.NUMBER, state.dayOf(today)), ""),
                        new Told("days to wait", days, customary)),
                List.of(),
                List.of(Caution.TOOLS, Caution.MEDICINE),
                sources.all());
    }

    private List<Sentence> remarks() {
        List<Sentence> remarks = new ArrayList<>();
        if (!state.breaks().isEmpty()) {
            FallowState.Break last = state.breaks().get(state.breaks().size() - 1);
            remarks.add(Sentence.of("Counted anew from " + day(last.on()) + ": " + last.why() + ". It began on "
                    + day(state.began()) + "."));
        }
        remarks.add(doubt());
        remarks.add(Sentence.of(
                "It begins anew with anything wet from a tank with fish: a net, a stone, a shell, a coral, the water of a"
                        + " bag. Write “fallow " + state.parasite().words() + " broken” with the reason as a remark.",
                new Part.Reference(sources.key(
                        "Any wet transfer begins the count anew", Basis.COMMON_PRACTICE, "careful; no trial"))));
        remarks.add(Sentence.of(
                "No count covers a fish that hides in the rock, or cysts in pockets where oxygen is short:"
                        + " there they rest, and go on when it comes back.",
                new Part.Reference(sources.key(
                        "Tomonts at 24 % of the oxygen of air rested 2 and 4 weeks and released 10 to 11 days after it was"
                                + " back; without any they died",
                        Basis.PUBLISHED, "Yoshinaga 2001, Fish Pathol. 36, 231"))));
        remarks.add(warmth());
        return remarks;
    }

    private Sentence doubt() {
        FallowSpan span = state.span();
        LocalDate longest = state.countedFrom().plusDays((long) span.longest());
        String published = published();
        Sentence shortest = Sentence.of(
                "What is published of its life alone would be over on " + day(state.earliest()) + ", after ",
                Sentence.figure(Days.span(span.shortest()), published),
                span.longest() > span.customary()
                        ? "; cysts that rested without oxygen at the start could last until "
                        : ".");
        return span.longest() > span.customary()
                ? Sentence.of(shortest, day(longest) + ", ", Days.span(span.longest()), ".")
                : shortest;
    }

    private String published() {
        return switch (state.parasite()) {
            case WHITE_SPOT, UNKNOWN ->
                sources.key(
                        "White spot: the last cyst releases after 28 days, swimmers live 2; a quarter more for safety",
                        Basis.PUBLISHED,
                        "Colorni 1985, Dis. Aquat. Org. 1, 19");
            case VELVET ->
                sources.key(
                        "Velvet: a cycle of 7 to 20 days, spores that infect for about 15",
                        Basis.PUBLISHED,
                        "Virginia Cooperative Extension 600-200; the spores after reviews");
            case BROOKLYNELLA ->
                sources.key(
                        "Brooklynella: divides on the fish, no cyst is known; four weeks",
                        Basis.COMMON_PRACTICE,
                        "nothing published on how long it lives without a fish");
            case FLUKES ->
                sources.key(
                        "Flukes: eggs hatch from day 5 at 28 °C, from day 16 at 14 °C; four weeks where it is warm",
                        Basis.COMMON_PRACTICE,
                        "hatching: Ernst et al. 2005, J. Fish Dis. 28, 157; N. girellae from egg to egg 15 to 17 days at"
                                + " 25 °C (Fish Pathol. 1995)");
        };
    }

    private String customary() {
        return sources.key(
                switch (state.parasite()) {
                    case WHITE_SPOT, UNKNOWN -> "76 days for white spot: 72 claimed of cysts, and the swimmers";
                    case VELVET -> "Six weeks for velvet";
                    case BROOKLYNELLA -> "Six weeks for brooklynella, four at least";
                    case FLUKES -> "Six weeks for flukes, four at least, at 24 to 28 °C";
                },
                Basis.COMMON_PRACTICE,
                "among careful keepers; no trial in an aquarium stands behind it");
    }

    private Sentence warmth() {
        FallowSpan span = state.span();
        Figure kept = Figure.exact(Measure.TEMPERATURE, span.temperature());
        if (!span.isKnownThere()) {
            return Sentence.of(
                    "Reckoned for ",
                    kept,
                    " as the plan keeps it, which is outside ",
                    Figure.exact(Measure.TEMPERATURE, FallowSpan.COLDEST),
                    " to ",
                    Figure.exact(Measure.TEMPERATURE, FallowSpan.WARMEST),
                    ": nobody has counted there.");
        }
        String cool = switch (state.parasite()) {
            case BROOKLYNELLA -> "; how warmth changes it is not known.";
            case FLUKES -> ", with longer spans where it is cooler, as eggs hatch later.";
            default -> ", with half as much again below 22 °C. Warmer water is no cure.";
        };
        return Sentence.of("Reckoned for ", kept, " as the plan keeps it" + cool);
    }

    private String day(LocalDate date) {
        return Days.date(date, today);
    }
}
