package org.tidewright.web.page;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.ph.GasExchange;
import org.tidewright.husbandry.ph.GasExchange.Surface;
import org.tidewright.husbandry.ph.Lever;
import org.tidewright.husbandry.ph.OwnSurface;
import org.tidewright.husbandry.ph.PhCase;
import org.tidewright.husbandry.ph.PhReading;
import org.tidewright.husbandry.ph.RoomAir;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.source.Basis;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.AmountField.Asked;
import org.tidewright.web.page.AmountField.Known;

/**
 * The form of the page about pH, and the case it makes.
 *
 * @param needed what is needed of the water
 * @param cups pH of tank, cup outdoors and cup in the room
 * @param solved null where something is wanting or wrong
 * @param levers what could be done about it
 */
record PhForm(
        QuestionForm form,
        List<AmountField> needed,
        List<AmountField> cups,
        @Nullable PhCase solved,
        List<Lever> levers) {
    private static final double PPM = 1e6;

    static PhForm read(Levers.Query query, SystemView view, WaterStudy study, ZoneId zone, UnitSystem units) {
        Plan plan = view.plan();
        PhWater water = new PhWater(query, plan, study, zone, units);
        PhLevers levers = new PhLevers(query, plan, view.entry().water(), study, units);
        RoomAir ownAir = RoomAir.of(plan.room());
        AmountField room = AmountField.read(
                query,
                Asked.of("room", "CO₂ of the room’s air", Measure.SHARE_OF_AIR, units, 200e-6, 0.02),
                new Known(
                        Math.rint(ownAir.share() * PPM) / PPM,
                        "ppm",
                        (ownAir.basis() == Basis.YOUR_PLAN ? "from the plan: " : "usual: ") + ownAir.detail()),
                "");
        AmountField area = AmountField.read(
                query,
                new Asked("area", "Open water", FieldUnits.AREA, units, 1e-3, 1e4),
                new Known(OwnSurface.area(plan), "", "from the plan: display, sump and refugium"),
                "");
        AmountField volume = AmountField.read(
                query,
                Asked.of("water", "Water of the system", Measure.VOLUME, units, 1e-3, 1000),
                new Known(view.entry().water(), "", "from the plan: all in circulation"),
                "");
        Select moved = moved(query, plan);
        QuestionForm form = new QuestionForm(List.of(
                new QuestionForm.Part("The water", false, List.of(), List.of(), water.levels()),
                QuestionForm.Part.of("The air", room),
                QuestionForm.Part.folded("How sure these are", water.errors()),
                new QuestionForm.Part("Surface and water", true, List.of(moved), List.of(), List.of(area, volume)),
                new QuestionForm.Part("What could be done", true, List.of(), levers.choices(), levers.fields())));
        List<AmountField> cups = List.of(
                cup(query, "cup_tank", "Tank", units),
                cup(query, "cup_outdoors", "Cup aired outdoors", units),
                cup(query, "cup_room", "Cup aired in the room", units));
        boolean wrong = form.faults() > 0
                || cups.stream().anyMatch(AmountField::faulty)
                || !form.wanted(water.levels()).isEmpty();
        if (wrong) {
            return new PhForm(form, water.levels(), cups, null, List.of());
        }
        PhReading reading = water.reading();
        PhCase solved = new PhCase(
                reading,
                room.known() != null ? ownAir : RoomAir.measured(room.value()),
                Optional.of(GasExchange.of(area.value(), surface(moved), reading.temperature())),
                OptionalDouble.of(volume.value()));
        return new PhForm(form, water.levels(), cups, solved, levers.levers());
    }

    private static AmountField cup(Levers.Query query, String name, String label, UnitSystem units) {
        return AmountField.read(query, Asked.of(name, label, Measure.PH, units, 6, 10), null, "");
    }

    private static Select moved(Levers.Query query, Plan plan) {
        Surface own = OwnSurface.moved(plan);
        Surface chosen = own;
        String asked = query.get("moved");
        boolean unknown = asked != null && !asked.isBlank();
        List<String> keys = new ArrayList<>();
        for (Surface each : Surface.values()) {
            keys.add(key(each));
            if (key(each).equals(asked)) {
                chosen = each;
                unknown = false;
            }
        }
        List<Choice.Option> options = new ArrayList<>();
        for (Surface each : Surface.values()) {
            options.add(new Choice.Option(
                    key(each), words(each) + (each == own ? " (from the plan)" : ""), each == chosen));
        }
        return Select.of("moved", "The surface is", options, unknown && asked != null ? Select.none(asked, keys) : "");
    }

    private static Surface surface(Select moved) {
        for (Choice.Option option : moved.groups().get(0).options()) {
            if (option.chosen()) {
                return Surface.valueOf(option.value().toUpperCase(Locale.ROOT));
            }
        }
        return Surface.AGITATED;
    }

    private static String key(Surface surface) {
        return surface.name().toLowerCase(Locale.ROOT);
    }

    private static String words(Surface surface) {
        return switch (surface) {
            case STILL -> "still";
            case RIPPLED -> "rippled";
            case AGITATED -> "strongly moved";
            case AGITATED_WITH_SKIMMER -> "strongly moved, with a skimmer";
        };
    }
}
