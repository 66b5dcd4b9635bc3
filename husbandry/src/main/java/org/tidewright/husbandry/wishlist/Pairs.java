package org.tidewright.husbandry.wishlist;

import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.tidewright.husbandry.arrival.PreyFirst;
import org.tidewright.husbandry.arrival.Trouble;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.livestock.Call;
import org.tidewright.husbandry.livestock.Finding;
import org.tidewright.husbandry.livestock.Home;
import org.tidewright.husbandry.livestock.Homes;

/** Who fights or eats whom among those who are to come, by the findings of livestock's own rules, each pair asked both ways. */
final class Pairs {
    private static final String EATEN = "predation_on_it";
    private static final Set<String> EATS = Set.of("predation_by_it", "clean_up_crew", "coral_eater");
    private static final Set<String> FIGHTS =
            Set.of("aggression_from_residents", "aggression_to_residents", "own_kind");

    /** Prey is there a fortnight, time to learn its holes, before who may eat it; common practice names no days. */
    static final int PREY_DAYS = 14;

    private final Map<String, Animals> animals;
    private final Household household;
    private final Set<Trouble> troubles = new HashSet<>();
    private final Set<PreyFirst> preyFirst = new HashSet<>();
    private final Map<String, Set<String>> apart = new HashMap<>();

    /**
     * Asks of all pairs.
     *
     * @param animals by id, in the keeper's order
     * @param household whose smallest quarantine tank is where those who share it fight most
     */
    Pairs(Map<String, Animals> animals, Household household) {
        this.animals = animals;
        this.household = household;
        Home box = household.boxes().stream()
                .map(each -> Homes.of(each.plan(), null, null))
                .min(Comparator.comparingDouble(Home::water))
                .orElse(household.home());
        List<String> ids = List.copyOf(animals.keySet());
        for (String one : ids) {
            for (String other : ids) {
                if (!one.equals(other)) {
                    asked(one, other, box);
                }
            }
        }
    }

    private void asked(String newcomer, String there, Home box) {
        Animals one = animal(newcomer);
        Animals other = animal(there);
        if (one.isFish() != other.isFish()) {
            apart(newcomer, there);
        }
        for (Finding finding : pair(one, other, household.home())) {
            boolean minds = finding.call().compareTo(Call.MIND) >= 0;
            if (minds && FIGHTS.contains(finding.rule())) {
                troubles.add(new Trouble(newcomer, there));
                apart(newcomer, there);
            } else if (minds && EATS.contains(finding.rule()) && isMobile(other)) {
                preyFirst.add(new PreyFirst(newcomer, there, PREY_DAYS));
                apart(newcomer, there);
            } else if (minds && finding.rule().equals(EATEN) && isMobile(one)) {
                preyFirst.add(new PreyFirst(there, newcomer, PREY_DAYS));
                apart(newcomer, there);
            }
        }
        boolean fight = pair(one, other, box).stream()
                .anyMatch(finding -> finding.call() == Call.NO
                        && (FIGHTS.contains(finding.rule())
                                || EATS.contains(finding.rule())
                                || finding.rule().equals(EATEN)));
        if (fight) {
            apart(newcomer, there);
        }
    }

    /** A coral cannot hide, so it need not be first. */
    private static boolean isMobile(Animals prey) {
        return !LiveMass.isFixed(prey);
    }

    private List<Finding> pair(Animals newcomer, Animals there, Home home) {
        return household.verdict(newcomer, home, List.of(there)).findings();
    }

    private Animals animal(String id) {
        return Objects.requireNonNull(animals.get(id));
    }

    private void apart(String one, String other) {
        apart.computeIfAbsent(one, none -> new HashSet<>()).add(other);
    }

    Set<Trouble> troubles() {
        return troubles;
    }

    /** Of two that might eat each other neither is prey: their order is left to the planner. */
    Set<PreyFirst> preyFirst() {
        Set<PreyFirst> oneWay = new HashSet<>(preyFirst);
        oneWay.removeIf(pair ->
                preyFirst.contains(new PreyFirst(/* predator= */ pair.prey(), /* prey= */ pair.predator(), PREY_DAYS)));
        return oneWay;
    }

    Set<String> apart(String id) {
        return apart.getOrDefault(id, Set.of());
    }
}
