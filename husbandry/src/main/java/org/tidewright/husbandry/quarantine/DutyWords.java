package org.tidewright.husbandry.quarantine;

import static java.util.stream.Collectors.joining;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Advice.Told;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sentence.Part;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.journal.Event.Appetite;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.plan.source.Basis;

/** Tells what a day in quarantine asks for: the gravest of what was seen, else the look that is due. */
final class DutyWords {
    private final QuarantineStudy study;
    private final Sources sources;

    DutyWords(QuarantineStudy study, Sources sources) {
        this.study = study;
        this.sources = sources;
    }

    Advice advice() {
        Watch watch = study.watch();
        if (watch == null) {
            return new Advice(empty(), unmatched(), List.of(), List.of(), List.of(Caution.TOOLS), sources.all());
        }
        CheckedDay today = watch.days().get(watch.days().size() - 1);
        return new Advice(lead(watch, today), remarks(), figures(watch), List.of(), cautions(watch), sources.all());
    }

    private Sentence empty() {
        Batch batch = study.batch();
        if (batch == null) {
            return Sentence.of(
                    "Nobody is in it yet. When animals come, write it into the log, such as “arrived 2 wrasse"
                            + " of 6 cm”: from that day on their days are counted.");
        }
        LocalDate until = study.dryUntil();
        LocalDate ended = batch.ended();
        if (until != null && ended != null && study.today().isBefore(until)) {
            return Sentence.of(
                    "Wash it, its heater, pipes and hoses, and let all of it stand dry until "
                            + day(until)
                            + ": it has been empty since "
                            + day(ended) + ".",
                    reference(
                            "A tank, its tools and hoses stand dry between two batches",
                            Basis.YOUR_PLAN,
                            "quarantine.dry; eggs of a skin fluke did not hatch after 3 minutes of drying (Ernst et al."
                                    + " 2005)"));
        }
        return Sentence.of("It stands ready for the next animals: empty since " + (ended == null ? "" : day(ended))
                + ". Bring the ripe sponge over on the day they come, not before.");
    }

    private Sentence lead(Watch watch, CheckedDay today) {
        if (today.isUrgent()) {
            return Sentence.of(
                    Sentence.alarm("Act now: " + seen(today) + "."),
                    " See that the air runs, measure ammonia and temperature, then ask a veterinarian, within hours. ",
                    maybe(today.signs()),
                    breaths());
        } else if (today.died() > 0) {
            return Sentence.of(
                    Sentence.alarm(today.died() + " died today."),
                    " Take it out, measure ammonia, look closely at those that live, and ask a veterinarian; keep"
                            + " the dead one cold for that, not frozen.");
        } else if (!today.signs().isEmpty()) {
            return Sentence.of(
                    "Ask a veterinarian, and look again this evening: seen today, " + seen(today) + ". ",
                    maybe(today.signs()));
        } else if (!today.fasting().isEmpty()) {
            return Sentence.of("Offer what it ate where it came from, in small amounts, and take out what is left: "
                    + String.join(", ", today.fasting())
                    + " ate nothing on two days running. Ask a veterinarian if tomorrow is no better.");
        } else if (!today.checked()) {
            return due(watch);
        } else if (watch.isOver(study.today())) {
            return Sentence.of("They may move to " + study.quarantine().serves() + ": "
                    + Days.count(watch.governing().days()) + " without a sign are over since "
                    + day(watch.end()) + ".");
        }
        return Sentence.of("Nothing more today: " + ate(today.appetite()) + " and no sign. Day "
                + watch.dayOf(study.today()) + " of "
                + watch.governing().days() + ".");
    }

    private static String ate(@Nullable Appetite appetite) {
        if (appetite == null) {
            return "not fed";
        }
        return switch (appetite) {
            case ALL -> "all was eaten";
            case SOME -> "some was eaten";
            case NONE -> "nothing was eaten";
            case NOT_FED -> "not fed";
        };
    }

    private Sentence due(Watch watch) {
        LocalDate last = watch.days().stream()
                .filter(CheckedDay::checked)
                .map(CheckedDay::day)
                .reduce((a, b) -> b)
                .orElse(null);
        long since = last == null ? 0 : ChronoUnit.DAYS.between(last, study.today());
        String missing = last == null
                ? " Nobody has looked since they came."
                : since > 1 ? " The last look was " + Days.count((int) since) + " ago, and velvet kills in fewer." : "";
        String over = watch.isOver(study.today())
                ? " If all is well they may move to " + study.quarantine().serves() + "."
                : "";
        return Sentence.of("Look at them today while they eat: appetite, breathing, skin, fins, eyes, droppings."
                + missing + over);
    }

    private static String seen(CheckedDay day) {
        List<String> seen = new ArrayList<>();
        if (day.isBreathless()) {
            seen.add(day.breaths() + " breaths a minute");
        }
        day.signs().stream().sorted().forEach(sign -> seen.add(sign.words()));
        return String.join(", ", seen);
    }

    private Sentence maybe(Set<Sign> signs) {
        if (signs.isEmpty()) {
            return Sentence.of("");
        }
        String each = signs.stream()
                .sorted()
                .map(sign -> sign.words() + " may be " + sign.mayBe())
                .collect(joining("; "));
        return Sentence.of(
                Character.toUpperCase(each.charAt(0)) + each.substring(1) + ". A sign is no diagnosis.",
                reference(
                        "What a sign may stand for",
                        Basis.FROM_MEMORY,
                        "handbooks of fish disease; white spot: University of Florida FA164; velvet: Virginia Cooperative"
                                + " Extension 600-200"));
    }

    private Part breaths() {
        return reference(
                "Breaths a minute: 40 to 80 are ordinary in small fish, " + CheckedDay.ALARMING_BREATHS + " alarm",
                Basis.FROM_MEMORY,
                "they differ by species and size: count yours while they are well");
    }

    private List<Sentence> remarks() {
        List<Sentence> remarks = new ArrayList<>(unmatched());
        Batch batch = study.batch();
        if (batch != null && batch.heads() != study.planned()) {
            remarks.add(Sentence.of("The log has " + batch.heads() + " in the tank, the plan counts " + study.planned()
                    + ": put them and their food into the plan, since its ammonia is reckoned from there."));
        }
        return remarks;
    }

    private List<Sentence> unmatched() {
        Batch batch = study.batch();
        return batch == null
                ? List.of()
                : batch.unmatched().stream()
                        .map(line -> Sentence.of(line + ": correct one of the lines in the log."))
                        .toList();
    }

    private List<Told> figures(Watch watch) {
        return List.of(
                new Told("day of the watch", number(watch.dayOf(study.today())), ""),
                new Told("days to watch", number(watch.governing().days()), ""),
                new Told(
                        "animals in the tank",
                        number(study.batch() == null ? 0 : study.batch().heads()),
                        ""));
    }

    private static Figure number(int count) {
        return Figure.exact(Measure.NUMBER, count);
    }

    private static List<String> cautions(Watch watch) {
        List<String> cautions = new ArrayList<>(List.of(Caution.HANDS, Caution.TOOLS));
        CheckedDay today = watch.days().get(watch.days().size() - 1);
        boolean treated =
                watch.days().stream().anyMatch(day -> !day.treatments().isEmpty());
        if (!today.isWell() || treated) {
            cautions.add(0, Caution.MEDICINE);
        }
        if (treated) {
            cautions.add(1, Caution.COPPER);
            cautions.add(2, Caution.BINDER);
        }
        return cautions;
    }

    private String day(LocalDate date) {
        return Days.date(date, study.today());
    }

    private Part reference(String what, Basis basis, String detail) {
        return new Part.Reference(sources.key(what, basis, detail));
    }
}
