package org.tidewright.husbandry.nutrient;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.run.Account;

/**
 * Where an element comes from and where it goes, averaged over some days. What only goes round between places, such as
 * waste that settles and rots again, is left out, so that every flow leads from a source to an end.
 *
 * @param days averaged over
 * @param nodes sources first, then places, then ends
 * @param flows largest first
 */
public record FlowPicture(Element element, double days, List<Node> nodes, List<Flow> flows) {
    private static final double DAY = 86_400;

    /** What a node is. */
    public enum Kind {
        /** Brings it in, or had it. */
        SOURCE,
        /** Passes it on. */
        PLACE,
        /** Where it leaves the system. */
        OUT,
        /** Where it stays. */
        STAYS
    }

    /** A source, a place or an end. */
    public record Node(String id, String words, Kind kind) {}

    /**
     * From one node to another.
     *
     * @param rate kg/s of the element, positive
     */
    public record Flow(Node from, Node to, double rate) {}

    /**
     * Of an account.
     *
     * @param waters bodies that hold the system's water
     */
    public static FlowPicture of(Element element, Account account, Collection<Body> waters) {
        Drawing drawing = new Drawing(element, account, waters);
        double seconds = account.to() - account.from();
        return drawing.picture(seconds / DAY, element.molarMass() / seconds);
    }

    /** All that comes in or was there, kg/s. */
    public double total() {
        return flows.stream()
                .filter(flow -> flow.from().kind() == Kind.SOURCE)
                .mapToDouble(Flow::rate)
                .sum();
    }

    /** What flows into a node, kg/s. */
    public double into(Node node) {
        return flows.stream()
                .filter(flow -> flow.to().equals(node))
                .mapToDouble(Flow::rate)
                .sum();
    }

    /** What flows out of a node, kg/s. */
    public double outOf(Node node) {
        return flows.stream()
                .filter(flow -> flow.from().equals(node))
                .mapToDouble(Flow::rate)
                .sum();
    }

    /** The rate between two nodes, zero where there is none, kg/s. */
    public double rate(String from, String to) {
        return flows.stream()
                .filter(flow -> flow.from().id().equals(from) && flow.to().id().equals(to))
                .mapToDouble(Flow::rate)
                .sum();
    }

    /** Streams of an account gathered into flows. */
    private static final class Drawing {
        private final Element element;
        private final Collection<Body> waters;
        private final NetFlows<Node> flows = new NetFlows<>();
        private final Map<Node, FlowPlace> places = new LinkedHashMap<>();

        Drawing(Element element, Account account, Collection<Body> waters) {
            this.element = element;
            this.waters = waters;
            account.streams(element.balance()).forEach(this::add);
        }

        private void add(Account.Stream stream) {
            boolean comes = stream.from().isOutside();
            boolean goes = stream.to().isOutside();
            Node from = comes ? source(stream) : place(stream.from());
            Node to = goes ? out(stream) : place(stream.to());
            FlowPlace giver = places.get(from);
            if (goes && giver != null && giver.keeps()) {
                // A spent medium thrown away: what it took up was told as it took it.
                return;
            }
            if (comes && goes) {
                // New water that leaves with the old: it was in the water between.
                Node water = node(FlowPlace.WATER);
                flows.add(new Node(from.id(), "new water", Kind.SOURCE), water, stream.amount());
                flows.add(water, to, stream.amount());
            } else if (!from.equals(to)) {
                flows.add(from, to, stream.amount());
            }
        }

        private Node source(Account.Stream stream) {
            // A routine that brings and takes at once, such as a water change, is a source and an end by one name.
            return new Node("in " + stream.cause(), stream.cause(), Kind.SOURCE);
        }

        private Node out(Account.Stream stream) {
            String cause = stream.cause();
            boolean gas = cause.startsWith("denitrification");
            return gas ? new Node("out gas", "nitrogen gas", Kind.OUT) : new Node("out " + cause, cause, Kind.OUT);
        }

        private Node place(Body body) {
            return node(FlowPlace.of(body, waters));
        }

        private Node node(FlowPlace place) {
            Node node = new Node(place.id(), place.words(), Kind.PLACE);
            places.put(node, place);
            return node;
        }

        FlowPicture picture(double days, double perAmount) {
            flows.cancelRounds();
            places.forEach(this::pile);
            List<Flow> told = new ArrayList<>();
            flows.each((from, to, amount) -> told.add(new Flow(asTold(from), asTold(to), amount * perAmount)));
            told.sort(Comparator.comparingDouble((Flow flow) -> -flow.rate()));
            List<Node> nodes = new ArrayList<>();
            for (Kind kind : Kind.values()) {
                for (Flow flow : told) {
                    for (Node end : List.of(flow.from(), flow.to())) {
                        if (end.kind() == kind && !nodes.contains(end)) {
                            nodes.add(end);
                        }
                    }
                }
            }
            return new FlowPicture(element, days, nodes, told);
        }

        /** What stays in a place or is drawn from what it held. */
        private void pile(Node node, FlowPlace place) {
            if (place.keeps()) {
                return;
            }
            double piled = flows.net(node);
            if (piled > 0) {
                flows.add(node, new Node("stays " + place.id(), place.piling(), Kind.STAYS), piled);
            } else if (piled < 0) {
                flows.add(new Node("from " + place.id(), place.giving(), Kind.SOURCE), node, -piled);
            }
        }

        /** A place that keeps is an end, or a source where it gives; names of sources and ends tell which is which. */
        private Node asTold(Node node) {
            FlowPlace place = places.get(node);
            if (place != null && place.keeps()) {
                return flows.net(node) >= 0
                        ? new Node(node.id(), "into " + words(place), Kind.STAYS)
                        : new Node(node.id(), "out of " + words(place), Kind.SOURCE);
            }
            return node;
        }

        private static String words(FlowPlace place) {
            return place.id().startsWith("medium") ? "the " + place.words() : place.words();
        }
    }
}
