package org.tidewright.husbandry.wishlist;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Call;
import org.tidewright.husbandry.livestock.Home;
import org.tidewright.husbandry.livestock.Verdict;
import org.tidewright.seawater.unit.Unit;

/**
 * Whether waiting alone makes a display ready for an animal, and until when. No rule is known here: the rules are asked again for an
 * older tank, and with one more companion.
 *
 * @param verdict today's; where {@code refused}, the one that no waiting helps
 * @param day from which the tank is old enough; null for today
 * @param after a wish that has to have thrived here first; null for none
 */
record Readiness(
        Verdict verdict,
        boolean refused,
        @Nullable LocalDate day,
        @Nullable String after) {
    /** The rule that waits for an easier animal asks for half a year. */
    static final int THRIVED = 182;

    private static final String AFTER = "after";
    private static final String AGE = "maturity";
    private static final int OLDEST = 36;
    private static final double DAYS_A_MONTH = 365.25 / 12;

    /** A wish that may come, with what lives in it. */
    record Companion(String id, Animals animals) {}

    /**
     * Asks for one animal.
     *
     * @param company who lives there or is in quarantine
     * @param chosen wishes that may come; they are companions, but have not thrived here yet
     */
    static Readiness of(Animals animals, Household household, List<Animals> company, List<Companion> chosen) {
        List<Animals> all = new ArrayList<>(company);
        chosen.forEach(each -> all.add(each.animals()));
        Home home = household.home();
        Verdict today = household.verdict(animals, home, all);
        Verdict verdict = today;
        LocalDate day = null;
        Double age = home.age();
        if (says(today, AGE) && age != null) {
            double ripe = ripe(animals, household, all, age);
            home = aged(home, ripe);
            day = household.today().plusDays((long) Math.ceil((ripe - age) * DAYS_A_MONTH));
            verdict = household.verdict(animals, home, all);
        }
        String after = null;
        if (says(household.verdict(animals, home, company), AFTER)) {
            for (Companion each : chosen) {
                if (after == null && !says(household.verdict(animals, home, with(company, each.animals())), AFTER)) {
                    after = each.id();
                }
            }
        }
        boolean refused = verdict.call().compareTo(Call.NOT_YET) >= 0;
        return new Readiness(refused ? verdict : today, refused, day, after);
    }

    private static boolean says(Verdict verdict, String rule) {
        return verdict.findings().stream()
                .anyMatch(finding -> finding.rule().equals(rule) && finding.call() == Call.NOT_YET);
    }

    /** The first whole month of age, or today's, at which the rule on it is content. */
    private static @Unit("month") double ripe(Animals animals, Household household, List<Animals> company, double age) {
        for (int months = (int) Math.ceil(age); months <= OLDEST; months++) {
            if (!says(household.verdict(animals, aged(household.home(), months), company), AGE)) {
                return months;
            }
        }
        return OLDEST;
    }

    private static Home aged(Home home, double months) {
        return new Home(
                home.length(),
                home.width(),
                home.height(),
                home.water(),
                home.cover(),
                home.sand(),
                home.rock(),
                home.coolest(),
                home.warmest(),
                months,
                home.alkalinitySpread(),
                home.foods(),
                home.meals());
    }

    private static List<Animals> with(List<Animals> company, Animals one) {
        List<Animals> all = new ArrayList<>(company);
        all.add(one);
        return all;
    }
}
