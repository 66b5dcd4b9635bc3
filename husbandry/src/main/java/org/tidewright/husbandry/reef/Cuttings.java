package org.tidewright.husbandry.reef;

import java.time.OffsetDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;

/**
 * Pieces of corals that left the system, as the journal tells them: a piece that was cut is an animal of its own, and when it
 * goes it is an animal that left, {@code left 3 frags of the left staghorn of 5 cm}, with where to in the remark. What stays
 * in the tank is told in the plan, in a row of its own.
 */
public final class Cuttings {
    private static final List<String> WORDS = List.of("frag", "cutting", "colony", "colonies", "coral");

    private Cuttings() {}

    /**
     * Pieces that left at one time.
     *
     * @param what in the keeper's words
     * @param of the plan's coral they were cut from, where its name stands in the words
     * @param size of one across; null where it was not measured
     * @param remark where they went, in the keeper's words
     */
    public record Cutting(
            OffsetDateTime at,
            String what,
            int count,
            @Nullable String of,
            @Nullable @Unit("m") Double size,
            String remark) {}

    /** Of a journal, the latest first. */
    public static List<Cutting> of(Plan plan, List<Line> lines) {
        return lines.stream()
                .filter(line -> !line.struck())
                .filter(line -> line.event() instanceof Event.AnimalMoved moved
                        && moved.move() == Event.Move.LEFT
                        && (named(plan, moved.animal()) != null || tellsOfCorals(moved.animal())))
                .sorted(Comparator.comparing(Line::at).reversed())
                .map(line -> {
                    Event.AnimalMoved moved = (Event.AnimalMoved) line.event();
                    return new Cutting(
                            line.at(),
                            moved.animal(),
                            moved.count(),
                            named(plan, moved.animal()),
                            moved.length(),
                            line.remark());
                })
                .toList();
    }

    private static @Nullable String named(Plan plan, String words) {
        if (plan.inhabitants() == null) {
            return null;
        }
        String told = words.toLowerCase(Locale.ROOT);
        return plan.inhabitants().corals().stream()
                .map(coral -> coral.name())
                .filter(name -> told.contains(name.toLowerCase(Locale.ROOT)))
                .max(Comparator.comparingInt(String::length))
                .orElse(null);
    }

    private static boolean tellsOfCorals(String words) {
        String told = words.toLowerCase(Locale.ROOT);
        return WORDS.stream().anyMatch(told::contains);
    }
}
