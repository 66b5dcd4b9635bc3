package org.tidewright.web.page;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Check;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Holding;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Report;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.husbandry.rehearsal.WaterReport;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.drawing.SectionDrawing;
import org.tidewright.web.drawing.WaterScript;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** A system drawn to scale, and its checks. */
public record BuildPage(
        String href,
        String note,
        String title,
        Markup lead,
        List<State> states,
        SectionDrawing drawing,
        Markup section,
        Markup keys,
        Account account,
        @Nullable Markup waterJson,
        @Nullable Markup statesJson,
        List<CheckLine> checks,
        List<String> cautions,
        List<Source> sources) {

    /** A choice of what the drawing shows. */
    public record State(String value, String words, boolean chosen) {}

    /** A check as a line of the table. */
    public record CheckLine(
            String title, boolean fails, String disc, String holding, Markup shown, Markup margin, Markup sentence) {}

    /** The water at rest in one state. */
    private record Rest(
            String value,
            String words,
            WaterMovement movement,
            int sample,
            @Nullable Figure room) {}

    static BuildPage of(Desk desk, SystemView view, String show, Reader reader) {
        Plan plan = view.plan();
        UnitSystem units = reader.units(view.entry());
        List<Rest> rests = rests(desk, plan);
        Rest chosen = rests.stream()
                .filter(rest -> rest.value().equals(show))
                .findFirst()
                .orElse(rests.get(0));
        WaterMovement states = merged(rests);
        int sample = rests.indexOf(chosen);
        Report report = desk.checks(plan);
        SectionDrawing drawing = SectionDrawing.of(plan, states, sample, units, label(plan, chosen));
        boolean moves = rests.size() > 1;
        return new BuildPage(
                Reader.href(view.entry()),
                reader.facts(view.entry()),
                plan.name(),
                SentenceMarkup.of(report.lead(), units),
                rests.stream()
                        .map(rest -> new State(rest.value(), rest.words(), rest.equals(chosen)))
                        .toList(),
                drawing,
                new Markup(drawing.svg()),
                Keys.of(plan, states, sample, units),
                Account.of(plan, states, sample, moves, chosen.room(), units),
                moves ? Markup.json(WaterScript.of(plan, states, units)) : null,
                moves ? Markup.json(statesJson(plan, rests, units)) : null,
                report.checks().stream().map(check -> line(check, units)).toList(),
                report.cautions(),
                report.sources());
    }

    private static List<Rest> rests(Desk desk, Plan plan) {
        OutageOrder order = withAirHoles(desk.usualOrder(plan), true);
        WaterReport cut = desk.waterAfter(plan, order);
        WaterMovement movement = cut.movement();
        if (movement == null) {
            return List.of(new Rest("running", "running", desk.running(plan), 0, null));
        }
        int last = movement.time().length - 1;
        List<Rest> rests = new ArrayList<>();
        Figure room = cut.roomLeft().length == 0 ? null : Figure.exact(Measure.VOLUME, cut.roomLeft()[0]);
        rests.add(new Rest("running", "running", movement, 0, room));
        rests.add(new Rest("cut", "after a power cut", movement, last, cut.room()));
        if (hasAirHole(plan)) {
            WaterReport blocked = desk.waterAfter(plan, withAirHoles(order, false));
            WaterMovement worse = blocked.movement();
            if (worse != null) {
                rests.add(new Rest("blocked", "cut, air hole blocked", worse, worse.time().length - 1, blocked.room()));
            }
        }
        return rests;
    }

    private static OutageOrder withAirHoles(OutageOrder order, boolean clear) {
        return new OutageOrder(order.hours(), order.outdoors(), clear, order.backupUsed());
    }

    static boolean hasAirHole(Plan plan) {
        return plan.returnLine() != null
                && plan.returnLine().outlets().stream().anyMatch(outlet -> outlet.airHole() != null);
    }

    /** The states as the samples of one movement, so that one script shows them all. */
    private static WaterMovement merged(List<Rest> rests) {
        WaterMovement first = rests.get(0).movement();
        int n = rests.size();
        double[] time = new double[n];
        List<WaterMovement.Vessel> vessels = new ArrayList<>();
        for (WaterMovement.Vessel vessel : first.vessels()) {
            double[] level = new double[n];
            double[] volume = new double[n];
            for (int i = 0; i < n; i++) {
                WaterMovement.Vessel same = rests.get(i).movement().vessel(vessel.name());
                level[i] = same.level()[rests.get(i).sample()];
                volume[i] = same.volume()[rests.get(i).sample()];
            }
            vessels.add(new WaterMovement.Vessel(vessel.name(), vessel.place(), level, volume));
        }
        List<WaterMovement.Stream> streams = new ArrayList<>();
        for (int s = 0; s < first.streams().size(); s++) {
            double[] flow = new double[n];
            for (int i = 0; i < n; i++) {
                // Only the running state has anything moving: the others are at rest.
                flow[i] = rests.get(i).sample() == 0 ? first.streams().get(s).flow()[0] : 0;
            }
            WaterMovement.Stream stream = first.streams().get(s);
            streams.add(new WaterMovement.Stream(stream.kind(), stream.from(), stream.to(), flow));
        }
        for (int i = 0; i < n; i++) {
            time[i] = i;
        }
        return new WaterMovement(time, vessels, streams);
    }

    private static String label(Plan plan, Rest rest) {
        return "Section of " + plan.name() + " to scale, " + rest.words();
    }

    private static String statesJson(Plan plan, List<Rest> rests, UnitSystem units) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartArray();
            for (Rest rest : rests) {
                json.writeStartObject();
                json.writeStringProperty("value", rest.value());
                Account told = Account.of(plan, rest.movement(), rest.sample(), true, rest.room(), units);
                Markup room = told.room();
                if (room != null) {
                    json.writeStringProperty("head", told.roomHead());
                    json.writeStringProperty("room", room.html());
                    json.writeStringProperty("note", told.roomNote());
                }
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        return text.toString();
    }

    private static CheckLine line(Check check, UnitSystem units) {
        Figure margin = check.margin();
        return new CheckLine(
                check.title(),
                check.holding() == Holding.FAILS,
                disc(check.holding()),
                check.holding().words(),
                SentenceMarkup.of(check.shown(), units),
                margin == null ? Markup.words("–") : SentenceMarkup.of(margin, units),
                SentenceMarkup.of(check.sentence(), check.sources(), units));
    }

    private static String disc(Holding holding) {
        return switch (holding) {
            case HOLDS -> "holds";
            case CLOSE -> "close";
            case FAILS -> "fails";
            case ASK -> "ask";
        };
    }
}
