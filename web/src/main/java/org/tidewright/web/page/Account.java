package org.tidewright.web.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.rehearsal.WaterMovement.Vessel;
import org.tidewright.twin.tank.Place;
import org.tidewright.web.drawing.WaterKeys;

/**
 * The account of the water beside a drawing: amounts that must add up.
 *
 * @param room the room left in the sump; null where there is none
 * @param unitHead head of the column of names, with the unit
 * @param moves whether the water has moved, so that there are two columns
 */
public record Account(
        @Nullable Markup room,
        String roomHead,
        String roomNote,
        String unitHead,
        boolean moves,
        List<Line> lines,
        String total) {

    /**
     * One place or several of a kind.
     *
     * @param keys the vessels' keys in the drawing's samples, parted by spaces
     * @param wet whether it is the floor and water stands on it
     */
    public record Line(String keys, String name, String running, String now, boolean wet) {}

    private static final List<String> COUNTS =
            List.of("", "one part", "two parts", "three parts", "four parts", "five parts", "six parts");

    static Account of(
            Plan plan, WaterMovement movement, int sample, boolean moves, @Nullable Figure room, UnitSystem units) {
        Map<Place, List<Vessel>> places = new LinkedHashMap<>();
        for (Place place : List.of(
                Place.DISPLAY,
                Place.OVERFLOW_BOX,
                Place.SUMP_SECTION,
                Place.REFUGIUM,
                Place.RESERVOIR,
                Place.HELD_BACK,
                Place.FLOOR)) {
            movement.vessels().stream()
                    .filter(vessel -> vessel.place() == place)
                    .forEach(vessel -> places.computeIfAbsent(place, p -> new ArrayList<>())
                            .add(vessel));
        }
        Measure.Unit unit = Measure.VOLUME.unit(units);
        List<Line> lines = new ArrayList<>();
        places.forEach((place, vessels) -> lines.add(new Line(
                String.join(
                        " ",
                        vessels.stream()
                                .map(vessel -> WaterKeys.of(vessel, plan))
                                .toList()),
                name(place, plan),
                told(vessels, 0, unit),
                told(vessels, sample, unit),
                place == Place.FLOOR && vessels.get(0).volume()[sample] > 0.05e-3)));
        Markup roomMarkup = null;
        String head = "Room left in the sump";
        String note = "";
        if (room != null) {
            boolean wet = room.value() < 0;
            Figure shown = wet ? new Figure(room.measure(), -room.value(), room.doubt()) : room;
            head = wet ? "On the floor" : head;
            roomMarkup = room(shown, wet, units);
            note = note(plan, movement, sample, wet, units);
        }
        return new Account(
                roomMarkup,
                head,
                note,
                units == UnitSystem.US ? "Gallons in" : "Litres in",
                moves,
                lines,
                FigureText.number(unit.shown(movement.total(0)), 1));
    }

    private static String name(Place place, Plan plan) {
        return switch (place) {
            case DISPLAY -> "Display";
            case OVERFLOW_BOX -> "Overflow box";
            case SUMP_SECTION -> {
                int parts = Names.sections(plan).size();
                yield "Sump, " + (parts < COUNTS.size() ? COUNTS.get(parts) : parts + " parts");
            }
            case REFUGIUM ->
                plan.refugium() == null ? "Refugium" : capital(plan.refugium().name());
            case RESERVOIR -> "Top-off reservoir";
            case HELD_BACK -> "Pipes and gear";
            case FLOOR -> "Floor";
        };
    }

    private static String capital(String name) {
        int first = name.codePointAt(0);
        return new StringBuilder()
                .appendCodePoint(Character.toTitleCase(first))
                .append(name.substring(Character.charCount(first)))
                .toString();
    }

    private static String told(List<Vessel> vessels, int sample, Measure.Unit unit) {
        double sum =
                vessels.stream().mapToDouble(vessel -> vessel.volume()[sample]).sum();
        return FigureText.number(unit.shown(sum), 1);
    }

    private static Markup room(Figure room, boolean wet, UnitSystem units) {
        Markup told = SentenceMarkup.of(room, units);
        return wet ? new Markup("<span class=\"alarm\">" + told.html() + "</span>") : told;
    }

    private static String note(Plan plan, WaterMovement movement, int sample, boolean wet, UnitSystem units) {
        if (wet) {
            return "The sump stands at its rim.";
        }
        double highest = movement.vessels().stream()
                .filter(vessel -> vessel.place() == Place.SUMP_SECTION)
                .mapToDouble(vessel -> vessel.level()[sample])
                .max()
                .orElse(0);
        double rim = plan.sump() == null ? 0 : plan.sump().height().in("m");
        String below =
                FigureText.of(Figure.exact(Measure.LEVEL, rim - highest), units).line();
        return below + " below the rim at its highest part";
    }
}
