package org.tidewright.husbandry.quarantine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Advice.Told;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sentence.Part;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.source.Basis;

/** Tells when a batch may go to the display, and what moved that day. */
final class EndWords {
    private final QuarantineStudy study;
    private final Sources sources;

    EndWords(QuarantineStudy study, Sources sources) {
        this.study = study;
        this.sources = sources;
    }

    Advice advice() {
        Watch watch = study.watch();
        if (watch == null) {
            return new Advice(
                    Sentence.of("Nobody is in the tank, so no day is counted."),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of());
        }
        Restart from = watch.governing();
        String where = study.quarantine().serves();
        String act = watch.isOver(study.today())
                ? "They may go to " + where + ": "
                : "Keep them here until " + day(watch.end()) + ", then they may go to " + where + ": ";
        Sentence lead = Sentence.of(
                act,
                Sentence.figure(Days.span(from.days()), practice(from)),
                " from " + day(from.on()) + " (" + from.why() + ").");
        return new Advice(
                lead,
                remarks(watch),
                List.of(new Told("counted from " + day(from.on()), Days.span(from.days()), "")),
                List.of(),
                List.of(Caution.VENOM),
                sources.all());
    }

    private String practice(Restart from) {
        return from.cause() == Restart.Cause.ARRIVAL || from.cause() == Restart.Cause.LATER_ARRIVAL
                ? sources.key(
                        "Days a batch is watched",
                        Basis.YOUR_PLAN,
                        "quarantine.watch; common practice is 30 at least, 45 to 76 where no parasite is to slip through")
                : sources.key(
                        "Days counted anew from a sign",
                        Basis.COMMON_PRACTICE,
                        Watch.AGAIN_AT_LEAST + " to " + Watch.AGAIN + "; no trial stands behind them");
    }

    private List<Sentence> remarks(Watch watch) {
        List<Sentence> remarks = new ArrayList<>();
        Restart from = watch.governing();
        if (from.cause() != Restart.Cause.ARRIVAL && from.cause() != Restart.Cause.LATER_ARRIVAL) {
            remarks.add(Sentence.of("Practice begins the count anew from a sign and gives it " + Watch.AGAIN_AT_LEAST
                    + " to " + Watch.AGAIN + " days; " + Watch.AGAIN_AT_LEAST + " would end on "
                    + day(from.on().plusDays(Watch.AGAIN_AT_LEAST)) + "."));
        }
        if (from.cause() == Restart.Cause.LATER_ARRIVAL) {
            remarks.add(Sentence.of("Who came first waits with who came last: a newcomer may have brought something."));
        }
        if (from.days() < FallowSpan.LAST_TOMONT + FallowSpan.THERONT) {
            remarks.add(Sentence.of(
                    "Cysts of white spot have released swimmers for 28 days: a shorter watch can miss them.",
                    new Part.Reference(sources.key(
                            "Time until the last cysts of white spot release", Basis.PUBLISHED, "Colorni 1985"))));
        }
        remarks.add(Sentence.of(
                "Corals, snails and their rock can carry cysts of fish parasites: 14 days show their own"
                        + " pests, 45 to 76 days without any fish keep those cysts out.",
                new Part.Reference(sources.key("Days for corals and other invertebrates", Basis.COMMON_PRACTICE, ""))));
        return remarks;
    }

    private String day(LocalDate date) {
        return Days.date(date, study.today());
    }
}
