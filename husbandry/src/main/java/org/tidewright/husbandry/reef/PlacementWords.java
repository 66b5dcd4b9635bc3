package org.tidewright.husbandry.reef;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;

/** Tells how corals stand, and which to move where. */
public final class PlacementWords {
    private static final double STEP = 0.005;
    private static final double MICRO = 1e6;

    private final ReefSite site;
    private final ReefSources sources;

    public PlacementWords(ReefSite site) {
        this(site, new ReefSources());
    }

    PlacementWords(ReefSite site, ReefSources sources) {
        this.site = site;
        this.sources = sources;
    }

    /**
     * One coral in words.
     *
     * @param verdict in a word or two
     */
    public record Told(Placement placement, String verdict, Sentence light, Sentence flow, Sentence neighbours) {}

    /** What to do about the corals that are there, the worst first. */
    public Advice ofAll() {
        List<Placement> troubled = site.placed().stream()
                .map(site::placement)
                .filter(placement -> !placement.isGood())
                .sorted(Comparator.comparingInt(Placement::trouble).reversed())
                .toList();
        List<Sentence> acts = new ArrayList<>();
        List<Colony> spoken = new ArrayList<>();
        for (Placement placement : troubled) {
            boolean byNeighbourAlone =
                    placement.suitsLight().mayStay() && placement.suitsFlow().mayStay();
            boolean saidOfTheOther = byNeighbourAlone
                    && placement
                            .nearest()
                            .filter(nearest -> spoken.contains(nearest.other()))
                            .isPresent();
            if (!saidOfTheOther) {
                acts.add(act(placement, spoken));
            }
        }
        Sentence lead = acts.isEmpty() ? nothingToDo() : acts.get(0);
        List<Sentence> remarks = new ArrayList<>(acts.subList(Math.min(1, acts.size()), acts.size()));
        if (acts.size() > 1) {
            remarks.add(Sentence.of(
                    "Each is told with all others where they stand: move one, write its new place into the plan,"
                            + " and look again."));
        }
        unplaced().ifPresent(remarks::add);
        return new Advice(
                lead,
                remarks,
                List.of(),
                List.of(),
                acts.isEmpty() ? List.of() : CoralCautions.handling(site.colonies()),
                sources.all().all());
    }

    private Sentence nothingToDo() {
        int placed = site.placed().size();
        if (placed == 0) {
            return Sentence.of(
                    site.colonies().isEmpty()
                            ? "Try a place below before you buy: the plan has no corals yet."
                            : "Say where your corals stand: give each row of corals in the plan its place, at: {x, y, height}.");
        }
        return Sentence.of(
                "Leave the corals where they stand: nothing that is known of light, flow and neighbours speaks against"
                        + (placed == 1 ? " the one whose place" : " the " + placed + " whose place")
                        + " the plan tells.");
    }

    private Optional<Sentence> unplaced() {
        List<String> names = site.colonies().stream()
                .filter(colony -> colony.place() == null)
                .map(Colony::name)
                .toList();
        return names.isEmpty() || site.placed().isEmpty()
                ? Optional.empty()
                : Optional.of(Sentence.of("Nothing is said of " + String.join(", ", names)
                        + ": the plan has no place for " + (names.size() == 1 ? "it" : "them") + "."));
    }

    // ── acts ──

    private Sentence act(Placement placement, List<Colony> spoken) {
        Neighbours.Standing standing = placement.standing();
        if (standing != Neighbours.Standing.APART
                && placement.suitsLight().mayStay()
                && placement.suitsFlow().mayStay()) {
            return apart(placement, spoken);
        }
        spoken.add(placement.colony());
        boolean sure = placement.suitsLight().isWrong()
                || placement.suitsFlow().isWrong()
                || standing != Neighbours.Standing.APART;
        Sentence why = placement.suitsLight().mayStay() ? flowWrong(placement) : lightWrong(placement);
        if (!sure) {
            return Sentence.of("Measure at ", the(placement.colony()), " before you move it: ", why);
        }
        Optional<Placement> better = Sites.nearest(site, placement.colony(), placement.place());
        return better.map(found -> Sentence.of(move(placement, found), ": ", why))
                .orElseGet(() -> Sentence.of(
                        "Look for another tank for ", the(placement.colony()), ", no free place here suits it: ", why));
    }

    /** Of two that stand too close, the one with the shorter way moves. */
    private Sentence apart(Placement placement, List<Colony> spoken) {
        Neighbours pair = placement.nearest().orElseThrow();
        spoken.add(pair.one());
        spoken.add(pair.other());
        Placement others = site.placement(pair.other());
        Optional<Placement> mine = Sites.nearest(site, placement.colony(), placement.place());
        Optional<Placement> theirs = Sites.nearest(site, pair.other(), others.place());
        boolean otherMoves =
                theirs.isPresent() && (mine.isEmpty() || moved(others, theirs.get()) < moved(placement, mine.get()));
        Sentence why = tooClose(pair);
        if (otherMoves) {
            return Sentence.of(move(others, theirs.get()), ": ", why);
        }
        return mine.map(found -> Sentence.of(move(placement, found), ": ", why))
                .orElseGet(() -> Sentence.of(
                        "Cut back ",
                        the(placement.colony()),
                        " or ",
                        the(pair.other()),
                        ", or give one away: no free place here suits either. ",
                        why));
    }

    private static double moved(Placement from, Placement to) {
        return Sites.moved(from.place(), to.place());
    }

    private static String the(Colony colony) {
        return "the " + colony.name();
    }

    private Sentence move(Placement from, Placement to) {
        return Sentence.of("Move ", the(from.colony()), " ", way(from.place(), to.place()));
    }

    /** {@code 8 cm to the left and 4 cm up}. */
    static Sentence way(Place from, Place to) {
        List<Sentence> parts = new ArrayList<>();
        add(parts, to.x() - from.x(), " to the right", " to the left");
        add(parts, to.y() - from.y(), " to the back", " to the front");
        add(parts, to.height() - from.height(), " up", " down");
        List<Object> pieces = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (i > 0) {
                pieces.add(i == parts.size() - 1 ? " and " : ", ");
            }
            pieces.add(parts.get(i));
        }
        return Sentence.of(pieces.toArray());
    }

    private static void add(List<Sentence> parts, double by, String onward, String backward) {
        if (Math.abs(by) >= STEP) {
            parts.add(Sentence.of(length(Math.abs(by)), by > 0 ? onward : backward));
        }
    }

    // ── reasons ──

    private static Figure length(double metres) {
        return Figure.exact(Measure.LENGTH, Math.rint(metres * 100) / 100);
    }

    private Sentence tooClose(Neighbours pair) {
        String one = the(pair.one());
        String other = the(pair.other());
        double reach = pair.reach();
        return switch (pair.standing()) {
            case TOUCHING -> Sentence.of(one + " and " + other + " stand in each other, and are not known to bear it.");
            case IN_REACH ->
                Sentence.of(
                        stinger(pair) + " reaches ",
                        Sentence.figure(length(reach), sources.gap()),
                        " beyond its edge, and there are ",
                        length(pair.gap()),
                        " between " + one + " and " + other + ".");
            case CLOSE, GROWING_CLOSE ->
                Sentence.of(
                        "there are ",
                        length(pair.gap()),
                        " between " + one + " and " + other + " where ",
                        Sentence.figure(length(pair.needed()), sources.gap()),
                        " would do for a year of growth; they come within reach in about " + months(pair.untilInReach())
                                + ".");
            case APART -> Sentence.of(one + " and " + other + " are far enough apart.");
        };
    }

    private String stinger(Neighbours pair) {
        return pair.one().traits().reach() >= pair.other().traits().reach() ? the(pair.one()) : the(pair.other());
    }

    static String months(double years) {
        long months = Math.max(1, Math.round(12 * years));
        return months > 24 ? Math.round(years) + " years" : months == 1 ? "a month" : months + " months";
    }

    private Sentence lightWrong(Placement placement) {
        Ranged need = requireNonNull(placement.colony().traits().light());
        return Sentence.of(
                "the light there, ",
                Sentence.figure(requireNonNull(placement.light()).figure(Measure.LIGHT), sources.light(site)),
                switch (placement.suitsLight()) {
                    case TOO_LITTLE -> ", is less than the ";
                    case TOO_MUCH -> ", is more than the ";
                    case PERHAPS_TOO_LITTLE -> ", may be less than the ";
                    default -> ", may be more than the ";
                },
                span(need, sources.needs(placement.colony().traits())),
                " it needs.");
    }

    private Sentence flowWrong(Placement placement) {
        FlowClass need = placement.colony().traits().flow();
        return Sentence.of(
                "the flow there, ",
                Sentence.figure(requireNonNull(placement.flow()).figure(Measure.SPEED), sources.flow()),
                switch (placement.suitsFlow()) {
                    case TOO_LITTLE -> ", is less than ";
                    case TOO_MUCH -> ", is more than ";
                    case PERHAPS_TOO_LITTLE -> ", may be less than ";
                    default -> ", may be more than ";
                },
                need.words() + ", which it likes.",
                reference(sources.needs(placement.colony().traits())));
    }

    private static Sentence span(Ranged need, String source) {
        return Sentence.of(
                Figure.exact(Measure.NUMBER, MICRO * need.low()),
                " to ",
                Sentence.figure(Figure.exact(Measure.LIGHT, need.high()), source));
    }

    private static Sentence.Part reference(String source) {
        return new Sentence.Part.Reference(source);
    }

    // ── one coral ──

    /** A coral that is there, or would be, need by need. */
    public Told of(Placement placement) {
        return new Told(placement, verdict(placement), light(placement), flow(placement), neighbours(placement));
    }

    private static String verdict(Placement placement) {
        int trouble = placement.trouble();
        return trouble >= 4 ? "move it" : trouble == 3 ? "measure there" : trouble > 0 ? "watch it" : "stays";
    }

    private Sentence light(Placement placement) {
        Ranged need = placement.colony().traits().light();
        if (placement.light() == null) {
            return Sentence.of("not known: the plan has neither lights over the display nor measured points");
        }
        Sentence.Part there = Sentence.figure(placement.light().figure(Measure.LIGHT), sources.light(site));
        if (need == null) {
            return Sentence.of(there, ", what it needs is not known");
        }
        return Sentence.of(
                there,
                said(placement.suitsLight()),
                span(need, sources.needs(placement.colony().traits())));
    }

    private Sentence flow(Placement placement) {
        FlowClass need = placement.colony().traits().flow();
        if (placement.flow() == null) {
            return Sentence.of("not known there; likes " + need.words());
        }
        return Sentence.of(
                Sentence.figure(placement.flow().figure(Measure.SPEED), sources.flow()),
                said(placement.suitsFlow()),
                need.words());
    }

    private static String said(Suits suits) {
        return switch (suits) {
            case YES -> ", suits ";
            case TOO_LITTLE -> ", too little for ";
            case TOO_MUCH -> ", too much for ";
            case PERHAPS_TOO_LITTLE -> ", perhaps too little for ";
            case PERHAPS_TOO_MUCH -> ", perhaps too much for ";
            case NOT_KNOWN -> ", against ";
        };
    }

    private Sentence neighbours(Placement placement) {
        if (placement.nearest().isEmpty()) {
            return Sentence.of("no other coral’s place is known");
        }
        Neighbours nearest = placement.nearest().get();
        if (nearest.mayTouch()) {
            return Sentence.of("no coral near that it stings or that stings it");
        }
        Sentence gap = nearest.gap() <= 0
                ? Sentence.of("stands in the " + nearest.other().name())
                : Sentence.of(
                        length(nearest.gap()), " to the " + nearest.other().name());
        return Sentence.of(
                gap,
                nearest.standing() == Neighbours.Standing.APART ? ", enough where it needs " : ", needs ",
                Sentence.figure(length(nearest.needed()), sources.gap()));
    }

    /** Whether a candidate should stand at a place: the verdict first, then what would be better. */
    public Advice candidate(Placement placement, List<Placement> suggested) {
        Told told = of(placement);
        Sentence lead;
        if (placement.isGood()) {
            boolean known = placement.suitsLight() == Suits.YES && placement.suitsFlow() == Suits.YES;
            lead = known
                    ? Sentence.of("Put it there: light, flow and neighbours suit ", the(placement.colony()), ".")
                    : Sentence.of(
                            "Put it there if you can see that ",
                            placement.suitsLight() == Suits.YES ? "the flow suits it" : "light and flow suit it",
                            ": nothing that is known speaks against it.");
        } else if (placement.trouble() <= 3) {
            lead = Sentence.of("Do not put it there yet: ", reason(placement));
        } else {
            lead = Sentence.of("Do not put it there: ", reason(placement));
        }
        if (!placement.isGood() && suggested.isEmpty()) {
            lead = lead.then(Sentence.of("No free place here is known to suit it."));
        }
        List<Sentence> remarks = suggested.stream().map(this::suggestion).toList();
        List<Advice.Told> figures = new ArrayList<>();
        if (placement.light() != null) {
            figures.add(new Advice.Told("Light there", placement.light().figure(Measure.LIGHT), sources.light(site)));
        }
        if (placement.flow() != null) {
            figures.add(new Advice.Told("Flow there", placement.flow().figure(Measure.SPEED), sources.flow()));
        }
        return new Advice(
                lead,
                remarks,
                figures,
                List.of(told.light(), told.flow(), told.neighbours()),
                CoralCautions.handling(List.of(placement.colony())),
                sources.all().all());
    }

    /** Where a candidate could stand, the best first. */
    public Advice anywhere(Colony candidate, List<Placement> suggested) {
        Sentence lead = suggested.isEmpty()
                ? Sentence.of(
                        "Do not buy it for this tank yet: no free place here is known to suit ",
                        the(candidate),
                        " and to keep it apart from the others.")
                : Sentence.of(
                        "Look whether rock or sand is there, and put ",
                        the(candidate),
                        suggested.size() == 1 ? " at this place:" : " at the first of these places that has it:");
        return new Advice(
                lead,
                suggested.stream().map(this::suggestion).toList(),
                List.of(),
                List.of(),
                CoralCautions.handling(List.of(candidate)),
                sources.all().all());
    }

    private Sentence suggestion(Placement each) {
        Place at = each.place();
        return Sentence.of(
                length(at.x()),
                " from the left, ",
                length(at.y()),
                " from the front, ",
                length(at.height()),
                " up: light ",
                light(each),
                "; flow ",
                flow(each),
                "; ",
                neighbours(each),
                ".");
    }

    private Sentence reason(Placement placement) {
        if (placement.standing() != Neighbours.Standing.APART
                && (placement.trouble() >= 5
                        || (placement.suitsLight().mayStay()
                                && placement.suitsFlow().mayStay()))) {
            return tooClose(placement.nearest().orElseThrow());
        }
        return placement.suitsLight().mayStay() ? flowWrong(placement) : lightWrong(placement);
    }
}
