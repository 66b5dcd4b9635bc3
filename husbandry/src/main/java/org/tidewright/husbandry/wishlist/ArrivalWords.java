package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.arrival.Arrival;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.arrival.ArrivalPlan;
import org.tidewright.husbandry.burden.CalmAddition;
import org.tidewright.husbandry.livestock.Call;
import org.tidewright.husbandry.livestock.Finding;

/** Tells a plan of arrivals: what to buy first, each with its days and what it waits for, and who cannot come. */
final class ArrivalWords {
    private final ArrivalStudy study;
    private final ArrivalSources sources;
    private final ReasonWords reasons;
    private final String display;

    ArrivalWords(ArrivalStudy study) {
        this.study = study;
        sources = new ArrivalSources(study);
        reasons = new ReasonWords(study, sources);
        display = study.household().plan().name();
    }

    ArrivalAnswer answer() {
        Sentence lead = lead();
        List<ArrivalAnswer.Coming> coming = new ArrayList<>();
        study.plan().arrivals().forEach(arrival -> coming.add(coming(arrival)));
        List<ArrivalAnswer.Staying> staying = staying();
        List<Sentence> remarks = remarks();
        Advice advice = new Advice(lead, remarks, List.of(), List.of(), ArrivalCautions.of(study), sources.all());
        return new ArrivalAnswer(study, advice, coming, staying, gone(), months());
    }

    private Sentence lead() {
        if (study.list().lines().isEmpty() && study.members().isEmpty()) {
            return Sentence.of(
                    "Write down whom you wish for, before you buy: what comes first, on which days and through"
                            + " which quarantine is worked out from it.");
        }
        if (study.household().boxes().isEmpty()) {
            return Sentence.of("Set up a quarantine tank first: nothing new goes into " + display
                    + " before it was watched elsewhere, and no quarantine tank in this folder serves it.");
        }
        CalmAddition calm = study.household().calm();
        if (calm != null && calm.mass() <= 0) {
            return Sentence.of(
                    "Add nothing yet: by the twin ammonia or nitrite of " + display + " is not calm as it is",
                    sources.pace(),
                    ". Test both, and look again when they are.");
        }
        List<Arrival> planned = arrivals(Stage.PLANNED);
        List<Arrival> waiting = arrivals(Stage.IN_QUARANTINE);
        if (planned.isEmpty()) {
            return waiting.isEmpty()
                    ? Sentence.of("Buy nothing from this list: none of it can come as things stand.")
                    : Sentence.of("Buy nothing now: " + names(waiting.subList(0, 1)) + " goes into " + display + " on "
                            + day(waiting.get(0).out()) + ", if all stay well.");
        }
        LocalDate first =
                planned.stream().map(Arrival::in).min(Comparator.naturalOrder()).orElseThrow();
        List<Arrival> now =
                planned.stream().filter(each -> each.in().equals(first)).toList();
        String when = first.equals(study.household().today()) ? "today" : "on " + day(first);
        Arrival last = planned.get(planned.size() - 1);
        String through = now.get(0).tank() == null ? "" : ", into " + now.get(0).tank();
        String end = planned.size() == now.size()
                ? (now.size() == 1 ? "; it goes into " : "; they go into ") + display + " on " + day(last.out()) + "."
                : "; the last of all, " + name(last) + ", goes into " + display + " on " + day(last.out()) + ".";
        return Sentence.of("Buy " + names(now) + " first, " + when + through, sources.quarantine(), end);
    }

    private List<Arrival> arrivals(Stage stage) {
        return study.plan().arrivals().stream()
                .filter(each -> each.stage() == stage)
                .toList();
    }

    private ArrivalAnswer.Coming coming(Arrival arrival) {
        List<Sentence> why = reasons.of(arrival.id(), arrival.waits());
        ArrivalStudy.Member member = study.member(arrival.id());
        return new ArrivalAnswer.Coming(member.animals(), arrival, why, moved(member.line(), arrival, why));
    }

    /** Of what was kept and is other now. */
    private @Nullable Sentence moved(@Nullable WishLine line, Arrival now, List<Sentence> why) {
        WishLine.Kept kept = line == null ? null : line.kept();
        if (kept == null || now.stage() == Stage.IN_DISPLAY) {
            return null;
        }
        List<String> told = new ArrayList<>();
        if (now.stage() == Stage.PLANNED && !kept.comes().equals(now.in())) {
            told.add("to come " + day(kept.comes()) + ", now " + day(now.in()));
        }
        if (!kept.enters().equals(now.out())) {
            told.add("to go in " + day(kept.enters()) + ", now " + day(now.out()));
        }
        if (told.isEmpty()) {
            return null;
        }
        String was = "It was " + String.join("; ", told);
        if (now.stage() == Stage.IN_QUARANTINE) {
            return Sentence.of(was + ": by the log its watch ends then.");
        }
        return why.isEmpty()
                ? Sentence.of(was + ": nothing else stands in its way.")
                : Sentence.of(was + ". ", why.get(0));
    }

    private List<ArrivalAnswer.Staying> staying() {
        List<ArrivalAnswer.Staying> staying = new ArrayList<>();
        for (ArrivalStudy.Refused refused : study.refused()) {
            List<Sentence> why = refused.verdict().findings().stream()
                    .filter(finding -> finding.call().compareTo(Call.NOT_YET) >= 0)
                    .map(Finding::what)
                    .map(Sentence::withoutSources)
                    .toList();
            List<Sentence> becomes = refused.verdict().becomes().stream()
                    .map(Sentence::withoutSources)
                    .toList();
            staying.add(new ArrivalAnswer.Staying(refused.id(), refused.line().animals(), true, why, becomes));
        }
        for (ArrivalPlan.NotPlaced none : study.plan().notPlaced()) {
            List<Sentence> why = reasons.of(none.id(), none.reasons());
            staying.add(
                    new ArrivalAnswer.Staying(none.id(), study.member(none.id()).animals(), false, why, List.of()));
        }
        return staying;
    }

    private List<Sentence> gone() {
        return study.gone().stream()
                .map(
                        gone -> Sentence.of(
                                ReasonWords.capital(gone.line().animals().words())
                                        + (gone.died() ? " died, by the log, on " : " left, by the log, on ")
                                        + day(gone.day())
                                        + ". Nothing comes in its place by itself: write its line anew if you wish for it again."))
                .toList();
    }

    private List<Sentence> remarks() {
        List<Sentence> remarks = new ArrayList<>();
        int moved = 0;
        for (Arrival arrival : study.plan().arrivals()) {
            moved += moved(study.member(arrival.id()).line(), arrival, List.of()) == null ? 0 : 1;
        }
        if (moved > 0) {
            remarks.add(Sentence.of((moved == 1 ? "One of the kept days" : moved + " of the kept days")
                    + " moved: what the log says has happened, the rest was planned anew from today."));
        }
        if (!study.plan().arrivals().isEmpty()) {
            remarks.add(Sentence.of(
                    "At most ",
                    Figure.exact(
                            Measure.SMALL_MASS,
                            PaceRule.room(study.plan().request().pace())),
                    " of animals may go in at once today",
                    sources.pace(),
                    ", and " + PaceRule.DAYS_BETWEEN + " days lie between two additions",
                    sources.gap(),
                    "."));
        }
        if (!study.plan().provenBest()) {
            remarks.add(
                    Sentence.of("Every rule is kept, but not all orders were tried: one some days quicker may exist."));
        }
        if (!study.community().unknown().isEmpty()) {
            remarks.add(Sentence.of("Not counted, because no species goes by that name: "
                    + String.join(", ", study.community().unknown()) + "."));
        }
        return remarks;
    }

    private List<ArrivalAnswer.Month> months() {
        Map<YearMonth, ArrivalAnswer.Month> months = new TreeMap<>();
        for (Arrival arrival : study.plan().arrivals()) {
            WishLine line = study.member(arrival.id()).line();
            if (line != null) {
                YearMonth month = YearMonth.from(arrival.in());
                Long price = line.price();
                months.merge(
                        month,
                        new ArrivalAnswer.Month(month, price == null ? 0 : price, price == null ? 1 : 0),
                        (a, b) -> new ArrivalAnswer.Month(month, a.spent() + b.spent(), a.unpriced() + b.unpriced()));
            }
        }
        return List.copyOf(months.values());
    }

    private String name(Arrival arrival) {
        return study.member(arrival.id()).animals().words();
    }

    private String names(List<Arrival> arrivals) {
        List<String> names = arrivals.stream().map(this::name).toList();
        return names.size() == 1
                ? names.get(0)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.get(names.size() - 1);
    }

    private String day(LocalDate date) {
        return DayWords.of(date, study.household().today());
    }
}
