package org.tidewright.web.page;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemEntry;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.drawing.SectionDrawing;

/** The first page: every system. */
public record HomePage(String count, List<Listed> systems) {
    /** A system with its small drawing. */
    public record Listed(
            String name,
            String href,
            String facts,
            @Nullable String about,
            SectionDrawing drawing,
            Markup markup) {}

    static HomePage of(Desk desk, List<SystemEntry> entries, Reader reader) {
        List<Listed> listed = entries.stream()
                .map(entry -> desk.system(entry.id()))
                .flatMap(Optional::stream)
                .map(view -> listed(desk, view, reader))
                .toList();
        String count = listed.size() == 1 ? "One system" : listed.size() + " systems, each drawn to its own scale";
        return new HomePage(count, listed);
    }

    private static Listed listed(Desk desk, SystemView view, Reader reader) {
        UnitSystem units = reader.units(view.entry());
        WaterMovement running = desk.running(view.plan());
        SectionDrawing drawing = SectionDrawing.of(
                view.plan(), running, 0, units, "Section of " + view.plan().name());
        return new Listed(
                view.entry().name(),
                Reader.href(view.entry()),
                reader.facts(view.entry()),
                view.plan().about(),
                drawing,
                new Markup(drawing.svg()));
    }
}
