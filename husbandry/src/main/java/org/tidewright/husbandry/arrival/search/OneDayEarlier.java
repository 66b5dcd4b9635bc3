package org.tidewright.husbandry.arrival.search;

import static org.tidewright.husbandry.arrival.search.Broken.NOBODY;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.tidewright.husbandry.arrival.search.Broken.Rule;
import org.tidewright.husbandry.arrival.search.Puzzle.Month;

/** What keeps a batch from going into the display a day earlier, with those that share its stay, the others as they are. */
public final class OneDayEarlier {
    /** A day earlier its quarantine would be too short, or would have begun before the first day: it waits for nothing. */
    private static final Set<Rule> ITS_OWN = Set.of(Rule.START, Rule.QUARANTINE, Rule.HAPPENED);

    /** It would have to come earlier than it can: then it counts how long those stay who share its stay. */
    private static final Set<Rule> COMING =
            Set.of(Rule.START, Rule.SHOP, Rule.FREE, Rule.TAKEN, Rule.DRY, Rule.BUDGET, Rule.QUARANTINE, Rule.HAPPENED);

    /** Rules that say a day of their own; one that is past by the first day holds nobody up. */
    private static final Set<Rule> DATED = Set.of(Rule.SHOP, Rule.DISPLAY, Rule.FREE, Rule.GAP);

    private OneDayEarlier() {}

    /** The rules that would be broken; none if nothing but its quarantine takes the time. */
    public static List<Broken> broken(Puzzle puzzle, Schedule schedule, int batch) {
        List<Integer> stay = schedule.stay(batch);
        int tank = schedule.tank().get(batch);
        int out = schedule.out().get(batch) - 1;
        List<Broken> broken = comings(puzzle, schedule, stay, out).stream()
                .map(in -> broken(puzzle, schedule.with(stay, tank, in, out), stay))
                .min(Comparator.comparingInt(List::size))
                .orElseThrow();
        List<Broken> told = new ArrayList<>();
        int longest = longest(puzzle, schedule, stay);
        boolean longer = tank >= 0 && puzzle.need(longest, tank) > puzzle.need(batch, tank);
        if (longer && broken.stream().anyMatch(each -> COMING.contains(each.rule()))) {
            told.add(new Broken(Rule.QUARANTINE, batch, longest, schedule.out().get(longest)));
        }
        boolean bound = broken.stream().anyMatch(each -> !isCompany(each, out + 1));
        broken.stream()
                .filter(each -> !ITS_OWN.contains(each.rule()))
                .filter(each -> !(each.other() == NOBODY && DATED.contains(each.rule()) && each.day() <= 0))
                .filter(each -> !(bound && isCompany(each, out + 1)))
                .forEach(told::add);
        return told;
    }

    /** Those of another tank with which it goes in hold it up only if nothing else does. */
    private static boolean isCompany(Broken broken, int day) {
        return broken.rule() == Rule.GAP && broken.other() != NOBODY && broken.day() == day;
    }

    /** Who has to stay longest. */
    private static int longest(Puzzle puzzle, Schedule schedule, List<Integer> stay) {
        int tank = schedule.tank().get(stay.get(0));
        return stay.stream()
                .max(Comparator.comparingInt(each -> tank < 0 ? 0 : puzzle.need(each, tank)))
                .orElseThrow();
    }

    /** Days on which the stay might begin: as late as it can, or on the last day of a month before, for its money. */
    private static List<Integer> comings(Puzzle puzzle, Schedule schedule, List<Integer> stay, int out) {
        int first = stay.get(0);
        if (stay.stream().anyMatch(each -> puzzle.batches().get(each).stay() != null)) {
            return List.of(schedule.in().get(first));
        }
        if (puzzle.batches().get(first).straight()) {
            return List.of(out);
        }
        int tank = schedule.tank().get(first);
        int latest = out - puzzle.need(longest(puzzle, schedule, stay), tank);
        List<Integer> comings = new ArrayList<>(List.of(latest));
        for (Month month : puzzle.months()) {
            if (month.from() > 0 && month.from() <= latest) {
                comings.add(1, month.from() - 1);
            }
        }
        return comings;
    }

    private static List<Broken> broken(Puzzle puzzle, Schedule moved, List<Integer> stay) {
        return Rulebook.broken(puzzle, moved).stream()
                .filter(each -> stay.contains(each.batch()))
                .toList();
    }
}
