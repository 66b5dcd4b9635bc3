package org.tidewright.husbandry.quarantine;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Event.AnimalMoved;
import org.tidewright.husbandry.journal.Line;

/**
 * Animals that are in quarantine together. A batch begins with the first arrival in an empty tank and ends when the last of
 * it has left or died.
 *
 * @param began day of the first arrival
 * @param present who is in it now, in the order of their coming
 * @param ended day the last one went; null while there are any
 * @param unmatched lines about animals of which none had come, in words
 * @param lines of the log since the first arrival, that line first
 */
public record Batch(
        LocalDate began,
        List<Animals> present,
        int came,
        int died,
        int left,
        @Nullable LocalDate ended,
        List<String> unmatched,
        List<Line> lines) {

    /** Animals of one name. */
    public record Animals(String name, int count) {}

    public Batch {
        present = List.copyOf(present);
        unmatched = List.copyOf(unmatched);
        lines = List.copyOf(lines);
    }

    /** How many are in the tank. */
    public int heads() {
        return present.stream().mapToInt(Animals::count).sum();
    }

    /**
     * The newest batch; empty where no animal has ever come.
     *
     * @param log lines that stand, of all kinds, in the order of time
     */
    public static Optional<Batch> newest(List<Line> log) {
        Tally tally = null;
        for (int i = 0; i < log.size(); i++) {
            Line line = log.get(i);
            if (line.event() instanceof AnimalMoved moved) {
                if (moved.move() == Event.Move.ARRIVED && (tally == null || tally.ended != null)) {
                    tally = new Tally(i);
                }
                if (tally != null) {
                    tally.move(moved, line.at().toLocalDate());
                }
            }
        }
        return tally == null ? Optional.empty() : Optional.of(tally.batch(log));
    }

    /** Counts who is there. */
    private static final class Tally {
        private final int first;
        private final Map<String, Animals> present = new LinkedHashMap<>();
        private final List<String> unmatched = new ArrayList<>();
        private int came;
        private int died;
        private int left;
        private @Nullable LocalDate ended;

        Tally(int first) {
            this.first = first;
        }

        void move(AnimalMoved moved, LocalDate day) {
            String key = key(moved.animal());
            Animals there = present.getOrDefault(key, new Animals(moved.animal(), 0));
            if (moved.move() == Event.Move.ARRIVED) {
                present.put(key, new Animals(there.name(), there.count() + moved.count()));
                came += moved.count();
                return;
            }
            if (there.count() < moved.count()) {
                unmatched.add(moved.count() + " " + moved.animal()
                        + (moved.move() == Event.Move.DIED ? " died, but " : " left, but ")
                        + (there.count() == 0 ? "none" : "only " + there.count()) + " had come by that name");
            }
            int went = Math.min(there.count(), moved.count());
            if (moved.move() == Event.Move.DIED) {
                died += went;
            } else {
                left += went;
            }
            present.put(key, new Animals(there.name(), there.count() - went));
            present.values().removeIf(animals -> animals.count() == 0);
            ended = present.isEmpty() ? day : null;
        }

        Batch batch(List<Line> log) {
            return new Batch(
                    log.get(first).at().toLocalDate(),
                    List.copyOf(present.values()),
                    came,
                    died,
                    left,
                    ended,
                    unmatched,
                    log.subList(first, log.size()));
        }
    }

    /** A clownfish is one of the clownfishes; “2 wrasses” and “1 wrasse” are the same animals. */
    static String key(String animal) {
        return animal.strip().toLowerCase(Locale.ROOT).replaceAll("s$", "");
    }
}
