package org.tidewright.husbandry.quarantine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.Appetite;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Sign;

/**
 * What a day in quarantine showed, all its checks together.
 *
 * @param checked whether anybody looked
 * @param appetite the worst that was seen; null where nobody looked or nothing was fed
 * @param breaths the most that were counted in a minute; null where nobody counted
 * @param fasting who ate nothing on this day and on the fed day before it; “all” for all
 * @param died how many
 * @param treatments what was given
 */
public record CheckedDay(
        LocalDate day,
        boolean checked,
        @Nullable Appetite appetite,
        @Nullable Integer breaths,
        Set<Sign> signs,
        List<String> fasting,
        int died,
        List<String> treatments) {
    /** Breaths a minute from which a small fish is out of breath; 40 to 80 are ordinary. From memory. */
    public static final int ALARMING_BREATHS = 100;

    private static final String ALL = "all";

    public CheckedDay {
        signs = signs.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(signs));
        fasting = List.copyOf(fasting);
        treatments = List.copyOf(treatments);
    }

    /** Whether anything was seen that is not as it should be. */
    public boolean isWell() {
        return signs.isEmpty() && fasting.isEmpty() && died == 0 && !isBreathless();
    }

    public boolean isBreathless() {
        return breaths != null && breaths >= ALARMING_BREATHS;
    }

    /** Whether hours count. */
    public boolean isUrgent() {
        return isBreathless() || signs.stream().anyMatch(Sign::isUrgent);
    }

    /** Every day of a batch, the first one first, up to today or the day it ended. */
    static List<CheckedDay> of(Batch batch, LocalDate today) {
        LocalDate last = batch.ended() == null || batch.ended().isAfter(today) ? today : batch.ended();
        Map<LocalDate, List<Line>> byDay = new HashMap<>();
        for (Line line : batch.lines()) {
            byDay.computeIfAbsent(line.at().toLocalDate(), day -> new ArrayList<>())
                    .add(line);
        }
        List<CheckedDay> days = new ArrayList<>();
        Map<String, Boolean> ateNothing = new HashMap<>();
        for (LocalDate day = batch.began(); !day.isAfter(last); day = day.plusDays(1)) {
            days.add(of(day, byDay.getOrDefault(day, List.of()), ateNothing));
        }
        return days;
    }

    /** @param ateNothing by animal, on the last day it was fed and looked at; brought up to this day */
    private static CheckedDay of(LocalDate day, List<Line> lines, Map<String, Boolean> ateNothing) {
        boolean checked = false;
        Appetite worst = null;
        Integer breaths = null;
        Set<Sign> signs = EnumSet.noneOf(Sign.class);
        Map<String, Boolean> today = new HashMap<>();
        int died = 0;
        List<String> treatments = new ArrayList<>();
        for (Line line : lines) {
            if (line.event() instanceof Event.AnimalsChecked check) {
                checked = true;
                signs.addAll(check.signs());
                if (check.breathsPerMinute() != null) {
                    breaths = Math.max(breaths == null ? 0 : breaths, check.breathsPerMinute());
                }
                if (check.appetite() != Appetite.NOT_FED) {
                    worst = worst == null || check.appetite().compareTo(worst) > 0 ? check.appetite() : worst;
                    // Fed twice, an animal that ate once has eaten.
                    String animal = check.animal() == null ? ALL : check.animal();
                    today.merge(animal, check.appetite() == Appetite.NONE, Boolean::logicalAnd);
                }
            } else if (line.event() instanceof Event.AnimalMoved moved && moved.move() == Event.Move.DIED) {
                died += moved.count();
            } else if (line.event() instanceof Event.Treated treated) {
                treatments.add(treated.what());
            }
        }
        List<String> fasting = today.entrySet().stream()
                .filter(entry -> entry.getValue() && ateNothing.getOrDefault(entry.getKey(), false))
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
        ateNothing.putAll(today);
        return new CheckedDay(day, checked, worst, breaths, signs, fasting, died, treatments);
    }
}
