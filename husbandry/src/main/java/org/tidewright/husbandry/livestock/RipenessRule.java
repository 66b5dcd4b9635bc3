package org.tidewright.husbandry.livestock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.species.InvertebrateSpecies;
import org.tidewright.plan.species.Species;

/** Whether the tank is old and steady enough, and whether easier kinds have thrived in it. */
final class RipenessRule implements Rule {
    /** Age by difficulty 0 to 6, and how far alkalinity may wander for a coral of it; this project's own, after common practice. */
    private static final double[] AGE = {0, 0, 2, 3, 6, 9, 12};

    private static final double[] SPREAD_DKH = {9, 1.0, 0.8, 0.6, 0.4, 0.3, 0.2};
    private static final double DEGREE = 20 / 56.0774;
    private static final double DAYS_A_MONTH = 365.25 / 12;
    private static final int DEMANDING = 4;
    private static final int EXPERTS = 6;

    /** A fish of this hardiness and difficulty hardly ever lives long. */
    private static final int FRAIL = 1;

    @Override
    public List<Finding> judge(Situation seen) {
        List<Finding> findings = new ArrayList<>();
        Species.Care care = seen.candidate().species().care();
        if (care.difficulty() == EXPERTS
                && (care.hardiness() == FRAIL || seen.candidate().isFish())) {
            findings.add(Finding.of(
                    "feeding",
                    Call.NO,
                    Sentence.of("Hardly any live long in a tank."),
                    Sentence.of(seen.candidate().species().notes(), Facts.source(seen, "Care", care.source()))));
        }
        age(seen, care, findings);
        steadiness(seen, care, findings);
        after(seen, care, findings);
        return findings;
    }

    private static void age(Situation seen, Species.Care care, List<Finding> findings) {
        double asked = Math.max(care.tankAge() == null ? 0 : care.tankAge(), AGE[care.difficulty()]);
        Double age = seen.home().age();
        if (asked == 0) {
            return;
        }
        if (age == null) {
            findings.add(Finding.of(
                    "maturity",
                    Call.MIND,
                    Sentence.of("It asks for a tank of " + Facts.months(asked) + "."),
                    Sentence.of("The log does not tell how old yours is.", Facts.source(seen, "Care", care.source()))));
        } else if (age < asked) {
            findings.add(Finding.of(
                            "maturity",
                            Call.NOT_YET,
                            Sentence.of("Your tank is " + Facts.months(age) + " old; it asks for " + Facts.months(asked)
                                    + "."),
                            Sentence.of(
                                    "A young tank has little to graze on, and its water still swings.",
                                    Facts.source(seen, "Care", care.source())))
                    .becomes(Sentence.of("Buy it after " + ripe(seen, asked - age) + ", when the tank is "
                            + Facts.months(asked) + " old.")));
        }
    }

    private static String ripe(Situation seen, double months) {
        LocalDate today = seen.setting().today();
        return Facts.date(today.plusDays((long) Math.ceil(months * DAYS_A_MONTH)), today);
    }

    /** Corals and clams that build lime take swings of alkalinity badly. */
    private static void steadiness(Situation seen, Species.Care care, List<Finding> findings) {
        if (!buildsLime(seen.candidate())) {
            return;
        }
        double allowed = SPREAD_DKH[care.difficulty()] * DEGREE;
        Double spread = seen.home().alkalinitySpread();
        if (spread == null) {
            if (care.difficulty() >= DEMANDING) {
                findings.add(Finding.of(
                                "stability",
                                Call.NOT_YET,
                                Sentence.of("Nobody knows how steady your alkalinity is."),
                                Sentence.of("It builds lime and takes swings badly.", rule(seen)))
                        .becomes(Sentence.of("Test alkalinity twice a week for a month first.")));
            }
        } else if (spread > allowed) {
            findings.add(Finding.of(
                            "stability",
                            Call.NOT_YET,
                            Sentence.of(
                                    "Your alkalinity varied by ",
                                    Figure.exact(Measure.ALKALINITY, spread),
                                    " over 30 days; for this it should be ",
                                    Figure.exact(Measure.ALKALINITY, allowed),
                                    " or less."),
                            Sentence.of("It builds lime and takes swings badly.", rule(seen)))
                    .becomes(Sentence.of("Hold it steady for a month first: the page Water says how.")));
        }
    }

    private static boolean buildsLime(Animals candidate) {
        if (candidate.isFish()) {
            return false;
        }
        InvertebrateSpecies.Group group = candidate.invertebrate().group();
        return switch (group) {
            case SPS, LPS, HYDROCORAL, CLAM -> true;
            default -> false;
        };
    }

    /** Demanding ones come after an easier one that has thrived here. */
    private static void after(Situation seen, Species.Care care, List<Finding> findings) {
        if (care.difficulty() < DEMANDING || care.after().isEmpty()) {
            return;
        }
        Experience experience = seen.setting().experience();
        // A coral grows beside the easier one; easier fish may have been kept in another tank.
        boolean waits = !seen.candidate().isFish();
        if (experience.thriving().stream().noneMatch(each -> isEasier(seen, each, care))) {
            boolean here = seen.residents().stream().anyMatch(each -> isEasier(seen, each, care));
            findings.add(Finding.of(
                            "after",
                            waits ? Call.NOT_YET : Call.MIND,
                            Sentence.of(
                                    here
                                            ? "No easier kind has lived here for half a year yet."
                                            : "No easier kind has lived here yet."),
                            Sentence.of(
                                    "What an easier one shows you costs less to learn.",
                                    Facts.source(seen, "Care", care.source())))
                    .becomes(Sentence.of(
                            here
                                    ? "Let the easier one live half a year here first."
                                    : "Keep " + String.join(" or ", care.after()) + " for half a year first.")));
        }
        experience.died().stream()
                .filter(each -> isEasier(seen, each, care))
                .findFirst()
                .ifPresent(each -> findings.add(Finding.of(
                        "after",
                        Call.MIND,
                        Sentence.of("An easier kind died here within the year: "
                                + each.species().name().common() + "."),
                        Sentence.of(
                                "Find out why before you buy a harder one.",
                                Facts.source(seen, "Care", care.source())))));
    }

    private static boolean isEasier(Situation seen, Animals resident, Species.Care care) {
        boolean named = care.after().stream().anyMatch(name -> isCalled(resident, name));
        boolean alike = seen.candidate().isFish() == resident.isFish()
                && resident.species().care().difficulty() >= Math.min(care.difficulty() - 2, 3)
                && (resident.isFish()
                        ? resident.fish()
                                .family()
                                .equals(seen.candidate().fish().family())
                        : buildsLime(resident) && buildsLime(seen.candidate()));
        return named || alike;
    }

    private static boolean isCalled(Animals resident, String name) {
        boolean family = resident.isFish() && resident.fish().family().equalsIgnoreCase(name);
        boolean group =
                !resident.isFish() && resident.invertebrate().group().name().equalsIgnoreCase(name);
        return family
                || group
                || resident.species().name().is(name)
                || resident.species().name().genus().equalsIgnoreCase(name);
    }

    private static Sentence.Part rule(Situation seen) {
        return Facts.practice(
                seen,
                "How far alkalinity may wander for a coral",
                "1.0 dKH for the easiest to 0.2 dKH for the most demanding; this project's own steps");
    }
}
