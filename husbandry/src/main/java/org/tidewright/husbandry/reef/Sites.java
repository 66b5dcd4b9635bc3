package org.tidewright.husbandry.reef;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.tidewright.seawater.unit.Unit;

/**
 * Looks for free places. A plan does not tell the shape of its rock: every place between sand and the rock's top counts, and
 * whether rock is there the keeper sees.
 */
public final class Sites {
    private static final double FINE = 0.02;
    private static final double COARSE = 0.05;

    /** Suggestions nearer to each other than this are one suggestion. */
    private static final double ALIKE = 0.15;

    /** Between a colony and the pane, so that a magnet passes. */
    private static final double TO_PANE = 0.02;

    /** Where a coral bears darkness, the middle of its light is reckoned from here. */
    private static final double DIM = 10e-6; // mol/(m^2 s)

    private Sites() {}

    /** The place at which nothing known speaks against a colony that is reached with least moving along, across and up. */
    public static Optional<Placement> nearest(ReefSite site, Colony colony, Place from) {
        List<Place> places = new ArrayList<>();
        for (double x : about(from.x(), colony.radius(), site.length())) {
            for (double y : about(from.y(), colony.radius(), site.width())) {
                for (double height : heightsAbout(from.height(), site)) {
                    places.add(new Place(x, y, height));
                }
            }
        }
        places.sort(Comparator.comparingDouble(place -> moved(from, place)));
        return places.stream()
                .filter(place -> keepsApart(site, colony, place))
                .map(place -> site.at(colony, place))
                .filter(Placement::isGood)
                .findFirst();
    }

    /** Along, across and up together: a way to one side is told and done more easily than a slanting one. */
    static @Unit("m") double moved(Place from, Place to) {
        return Math.abs(to.x() - from.x()) + Math.abs(to.y() - from.y()) + Math.abs(to.height() - from.height());
    }

    /** Some good places for a candidate, the best first, none near another. */
    public static List<Placement> suggested(ReefSite site, Colony candidate, int most) {
        List<Placement> good = new ArrayList<>();
        for (double x : about(site.length() / 2, candidate.radius(), site.length(), COARSE)) {
            for (double y : about(site.width() / 2, candidate.radius(), site.width(), COARSE)) {
                for (double height : heights(site)) {
                    Place place = new Place(x, y, height);
                    if (keepsApart(site, candidate, place)) {
                        Placement placement = site.at(candidate, place);
                        if (placement.isGood()) {
                            good.add(placement);
                        }
                    }
                }
            }
        }
        good.sort(Comparator.comparingDouble(Sites::comfort).reversed());
        List<Placement> suggested = new ArrayList<>();
        for (Placement each : good) {
            if (suggested.size() < most && suggested.stream().noneMatch(known -> alike(known, each))) {
                suggested.add(each);
            }
        }
        return List.copyOf(suggested);
    }

    /** Only the neighbours, which is quick: light and flow are asked for where they allow a place. */
    private static boolean keepsApart(ReefSite site, Colony colony, Place place) {
        Colony there = colony.at(place);
        return site.placed().stream()
                .filter(other -> !other.isRow(colony))
                .allMatch(other -> Neighbours.of(there, other).standing() == Neighbours.Standing.APART);
    }

    private static boolean alike(Placement one, Placement other) {
        return one.place().from(other.place()) < ALIKE;
    }

    /**
     * How well a place suits: the least of light in the middle of what is needed and known there, flow known to suit, room to
     * the neighbours, each 0 to 1.
     */
    static @Unit("1") double comfort(Placement placement) {
        Ranged need = placement.colony().traits().light();
        PointValue light = placement.light();
        double lit = 0.5;
        if (need != null && light != null) {
            double middle = Math.sqrt(Math.max(DIM, need.low()) * need.high());
            double half = Math.log(need.high() / middle);
            double off = Math.abs(Math.log(light.value() / middle)) / Math.hypot(half, light.logError());
            lit = Math.max(0, 1 - off * off);
        }
        double flowing = placement.suitsFlow() == Suits.YES ? 1 : 0.6;
        double room = placement
                .nearest()
                .map(nearest -> Math.min(1, 0.5 + nearest.spare() / 0.2))
                .orElse(1.0);
        return Math.min(lit, Math.min(flowing, room)) + 0.1 * (lit + flowing + room);
    }

    private static double[] about(double middle, double radius, double whole) {
        return about(middle, radius, whole, FINE);
    }

    /** Steps from a middle to both sides, as far as a colony stays clear of the panes. */
    private static double[] about(double middle, double radius, double whole, double step) {
        double margin = Math.min(radius + TO_PANE, whole / 2);
        int before = (int) Math.ceil(whole / step);
        return DoubleStream.iterate(middle - before * step, at -> at <= whole, at -> at + step)
                .filter(at -> at >= margin - 1e-9 && at <= whole - margin + 1e-9)
                .toArray();
    }

    private static double[] heightsAbout(double height, ReefSite site) {
        double sand = site.sandHeight();
        double top = Math.max(site.rockTop(), height);
        return DoubleStream.concat(
                        DoubleStream.of(sand),
                        DoubleStream.iterate(height - 20 * FINE, at -> at <= top + 1e-9, at -> at + FINE)
                                .filter(at -> at > sand))
                .toArray();
    }

    private static double[] heights(ReefSite site) {
        return DoubleStream.iterate(site.sandHeight(), at -> at <= site.rockTop() + 1e-9, at -> at + COARSE)
                .toArray();
    }
}
