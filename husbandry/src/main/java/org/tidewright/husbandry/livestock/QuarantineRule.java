package org.tidewright.husbandry.livestock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.livestock.Isolation.Room;
import org.tidewright.husbandry.quarantine.FallowState;
import org.tidewright.plan.source.Basis;

/** Whether there is room in quarantine, and no fish comes into a display that waits for a parasite to die. */
final class QuarantineRule implements Rule {
    @Override
    public List<Finding> judge(Situation seen) {
        Isolation isolation = seen.setting().isolation();
        if (isolation == null || !seen.candidate().isFish()) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        isolation.fallows().stream()
                .filter(fallow -> !fallow.isOver(seen.setting().today()))
                .max(Comparator.comparing(FallowState::restock))
                .ifPresent(fallow -> findings.add(fallow(seen, fallow)));
        findings.add(room(seen, isolation.rooms()));
        return findings;
    }

    private static Finding fallow(Situation seen, FallowState fallow) {
        LocalDate today = seen.setting().today();
        String date = Facts.date(fallow.restock(), today);
        String words = "Your display stands without fish until " + date + " for "
                + fallow.parasite().words() + ".";
        return Finding.of(
                        "fallow",
                        Call.NOT_YET,
                        Sentence.of(words),
                        Sentence.of(
                                "A fish that comes earlier feeds what the days without fish are to starve.", log(seen)))
                .becomes(Sentence.of("Let it in after " + date + "; it may wait in quarantine."));
    }

    private static Finding room(Situation seen, List<Room> rooms) {
        LocalDate today = seen.setting().today();
        if (rooms.isEmpty()) {
            return Finding.of(
                    "quarantine",
                    Call.MIND,
                    Sentence.of("Watch it in a tank of its own for a month first."),
                    Sentence.of(
                            "No quarantine tank of yours serves this display, and what it carries would come in with it.",
                            Facts.practice(
                                    seen,
                                    "Quarantine of fish",
                                    "30 days or more without a sign of disease; the page Quarantine says why")));
        }
        for (Room room : rooms) {
            if (room.freeFrom() == null && !room.taken()) {
                return Finding.of(
                        "quarantine",
                        Call.YES,
                        Sentence.of("There is room in quarantine."),
                        Sentence.of(
                                room.name() + " is empty and dry; watch it there for " + room.watchDays() + " days.",
                                log(seen)));
            }
        }
        Room first = rooms.stream()
                .filter(room -> room.freeFrom() != null)
                .min(Comparator.comparing(room -> Objects.requireNonNull(room.freeFrom())))
                .orElse(rooms.get(0));
        String date = first.freeFrom() == null ? "" : Facts.date(first.freeFrom(), today);
        return Finding.of(
                        "quarantine",
                        Call.NOT_YET,
                        Sentence.of("There is no room in quarantine."),
                        Sentence.of(
                                first.name()
                                        + (first.taken()
                                                ? " is taken: who comes now begins the watch anew for all."
                                                : " has to stand dry first."),
                                log(seen)))
                .becomes(Sentence.of(
                        date.isEmpty()
                                ? "Buy it once " + first.name() + " is empty and has been dry."
                                : "Buy it after " + date + ", when " + first.name() + " is empty and dry."));
    }

    private static Sentence.Part log(Situation seen) {
        return new Sentence.Part.Reference(
                seen.sources().key("Quarantine and days without fish", Basis.YOUR_LOG, "animals that came and went"));
    }
}
