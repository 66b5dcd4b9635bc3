package org.tidewright.web.page;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.livestock.Isolation;
import org.tidewright.husbandry.quarantine.FallowState;
import org.tidewright.husbandry.quarantine.QuarantineStudy;
import org.tidewright.plan.model.Quarantine;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/** Quarantine tanks and the systems they serve, among those of a desk. */
public final class Boxes {
    private static final EnumSet<Kind> TOLD_BY =
            EnumSet.of(Kind.ANIMAL, Kind.ANIMAL_CHECK, Kind.TREATMENT, Kind.FALLOW);

    private Boxes() {}

    /** A quarantine tank and what is known of it. */
    public record Box(SystemView view, QuarantineStudy study) {}

    /** Those that serve a system. */
    static List<Box> serving(Desk desk, SystemView display) {
        return desk.systems().stream()
                .flatMap(entry -> desk.system(entry.id()).stream())
                .filter(view ->
                        view.plan().quarantine() != null && isMeant(view.plan().quarantine(), display))
                .map(view -> new Box(view, study(desk, view)))
                .toList();
    }

    /** The system a quarantine tank serves; empty where none goes by that name. */
    public static Optional<SystemView> served(Desk desk, Quarantine quarantine) {
        return desk.systems().stream()
                .flatMap(entry -> desk.system(entry.id()).stream())
                .filter(view -> isMeant(quarantine, view))
                .findFirst();
    }

    /** Where the animals of a quarantine tank go to live; empty of any other system, and where none goes by that name. */
    public static Optional<SystemView> displayOf(Desk desk, SystemView box) {
        return Optional.ofNullable(box.plan().quarantine()).flatMap(quarantine -> served(desk, quarantine));
    }

    private static boolean isMeant(Quarantine quarantine, SystemView view) {
        return quarantine.isFor(view.entry().name(), view.entry().id());
    }

    /** What the rules for new animals know of quarantine. */
    static Isolation isolation(Desk desk, SystemView display) {
        return Isolation.of(serving(desk, display).stream().map(Box::study).toList(), fallows(desk, display));
    }

    /** What is known of a quarantine tank. */
    public static QuarantineStudy study(Desk desk, SystemView box) {
        return QuarantineStudy.of(box.plan(), lines(desk, box), today(desk));
    }

    /** The fallows of a system that are not over by its log. */
    public static List<FallowState> fallows(Desk desk, SystemView display) {
        return FallowState.running(
                lines(desk, display), display.plan().water().temperature().in("degC"), today(desk));
    }

    static List<Line> lines(Desk desk, SystemView view) {
        return desk.journal().lines(view.entry().id(), Span.EVER, TOLD_BY);
    }

    static LocalDate today(Desk desk) {
        return LocalDate.now(desk.clock());
    }
}
