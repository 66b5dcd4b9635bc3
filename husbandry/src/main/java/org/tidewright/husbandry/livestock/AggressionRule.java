package org.tidewright.husbandry.livestock;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.Trouble;
import org.tidewright.seawater.unit.Unit;

/**
 * Who fights whom: temperament, kinship, outline, food, size, who was there first and how much room there is. A score of this
 * project's own, with bounds tuned on half a panel of cases.
 */
final class AggressionRule implements Rule {
    private static final double NO = 6;
    private static final double MIND = 3;

    private static final double SAME_GENUS = 1.5;
    private static final double SAME_FAMILY = 1.2;
    private static final double STRANGER = 0.6;
    private static final double LIKE_SHAPE = 1.2;
    private static final double LOOK_ALIKE = 1.6;
    private static final double LIKE_FOOD = 1.2;
    private static final double RESIDENT = 1.3;
    private static final double NEWCOMER = 0.8;
    /** The fiercest rule the most peaceful. */
    private static final double BULLIED = 2;

    private static final int FIERCEST = 5;

    private static final int TIMID = 1;

    /** One that goes for others of this sort, by what is known of it. */
    private static final double KNOWN_FOR_IT = 1.3;

    @Override
    public List<Finding> judge(Situation seen) {
        if (!seen.candidate().isFish()) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        seen.fish().filter(resident -> !resident.isKind(seen.candidate())).forEach(resident -> {
            Finding suffered = suffered(seen, resident);
            Finding done = done(seen, resident);
            if (suffered != null) {
                findings.add(suffered);
            }
            if (done != null) {
                findings.add(done);
            }
        });
        return findings;
    }

    private static @Nullable Finding suffered(Situation seen, Animals resident) {
        double score = score(resident, seen.candidate(), seen.home()) * RESIDENT;
        return score < MIND
                ? null
                : Finding.of(
                        "aggression_from_residents",
                        score >= NO ? Call.NO : Call.MIND,
                        Sentence.of(Facts.capital(resident.words())
                                + (score >= NO ? " will not suffer it." : " may harass it.")),
                        why(seen, resident, seen.candidate()));
    }

    private static @Nullable Finding done(Situation seen, Animals resident) {
        double score = score(seen.candidate(), resident, seen.home()) * NEWCOMER;
        return score < MIND
                ? null
                : Finding.of(
                        "aggression_to_residents",
                        score >= NO ? Call.NO : Call.MIND,
                        Sentence.of("It " + (score >= NO ? "will go for " : "may harass ") + resident.words() + "."),
                        why(seen, seen.candidate(), resident));
    }

    /** How fiercely one goes for another. */
    static @Unit("1") double score(Animals from, Animals to, Home home) {
        FishSpecies one = from.fish();
        FishSpecies other = to.fish();
        double kinship = from.isGenus(to) ? SAME_GENUS : one.family().equals(other.family()) ? SAME_FAMILY : STRANGER;
        double shape = isAlike(one, other)
                ? LOOK_ALIKE
                : one.temper().shape() == other.temper().shape() ? LIKE_SHAPE : 1;
        double food = one.diet() == other.diet() ? LIKE_FOOD : 1;
        double size = clipped(Math.sqrt(Math.max(from.length(), 0.01) / Math.max(to.length(), 0.01)), 0.7, 1.5);
        double needed = Math.max(one.space().tankVolume(), other.space().tankVolume());
        double space = clipped(needed / home.water(), 0.3, 2);
        double known = isKnownForIt(one, other, from, to) ? KNOWN_FOR_IT : 1;
        double bullied =
                one.temper().temperament() == FIERCEST && other.temper().temperament() == TIMID ? BULLIED : 1;
        return one.temper().temperament() * kinship * shape * food * size * space * known * bullied;
    }

    /** Coloured alike in two ways or more: one takes the other for a rival, whatever its family. */
    private static boolean isAlike(FishSpecies one, FishSpecies other) {
        return one.temper().look().stream()
                                .filter(other.temper().look()::contains)
                                .count()
                        >= 2
                && one.temper().troubles().contains(Trouble.LIKE_SHAPE);
    }

    private static boolean isKnownForIt(FishSpecies one, FishSpecies other, Animals from, Animals to) {
        return one.temper().troubles().stream().anyMatch(trouble -> switch (trouble) {
            case ALL -> true;
            case OWN_GENUS -> from.isGenus(to);
            case OWN_FAMILY, OWN_GROUP -> one.family().equals(other.family());
            case LIKE_SHAPE -> false;
            case LIKE_FOOD ->
                one.diet() == other.diet()
                        && one.temper().shape() == other.temper().shape();
            case SMALL_FISH -> to.length() < 0.6 * from.length();
            case SLOW_FISH -> other.temper().shape() == FishSpecies.Shape.SEAHORSE;
            case OWN_KIND, NEWCOMERS, SHRIMP -> false;
        });
    }

    private static Sentence why(Situation seen, Animals from, Animals to) {
        FishSpecies one = from.fish();
        String kin = from.isGenus(to)
                ? "They are of one genus"
                : one.family().equals(to.fish().family()) ? "They are of one family" : "It is of a quarrelsome kind";
        return Sentence.of(
                kin + "; the temper of the " + one.name().common() + " is "
                        + one.temper().temperament() + " of 5"
                        + (one.temper().shape() == to.fish().temper().shape() ? ", and the other has its outline" : "")
                        + ".",
                Facts.source(
                        seen,
                        "Temper of the " + one.name().common(),
                        one.temper().source()));
    }

    private static double clipped(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
