package org.tidewright.web.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.reef.Colony;
import org.tidewright.husbandry.reef.Growth;
import org.tidewright.husbandry.reef.Neighbours;
import org.tidewright.husbandry.reef.Place;
import org.tidewright.husbandry.reef.ReefSite;
import org.tidewright.plan.model.Display;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.drawing.SectionPen.Anchor;

/** One drawing of a display's corals in the making: millimetres from the left pane, and from the bottom or the front pane. */
final class ReefSheet {
    /** Light, µmol/(m²·s), a line each. */
    private static final List<Integer> LEVELS = List.of(25, 50, 75, 100, 150, 200, 300, 400, 600, 800, 1200, 1600);

    private static final double LATER = 3;

    /** How flat a level disc looks from the front, a little from above. */
    private static final double FLATTENED = 0.3;

    private static final int COLUMNS = 48;
    private static final int ROWS = 20;

    /** Width of the drawing on a wide page, CSS pixels, without its margins. */
    private static final double SHEET = 770;

    /** Which way it is looked at. */
    enum Side {
        FRONT,
        ABOVE
    }

    private final ReefSite site;
    private final Growth growth;
    private final @Nullable Colony tried;
    private final UnitSystem units;
    private final Side side;
    private final double plane;
    private final double along;
    private final double up;
    private final SvgWriter svg = new SvgWriter();
    private final SectionPen pen;

    ReefSheet(ReefSite site, Growth growth, @Nullable Colony tried, UnitSystem units, Side side, double plane) {
        this.site = site;
        this.growth = growth;
        this.tried = tried;
        this.units = units;
        this.side = side;
        this.plane = plane;
        along = 1000 * site.length();
        up = 1000 * (side == Side.FRONT ? site.plan().display().height().in("m") : site.width());
        pen = new SectionPen(svg, Math.max(1, (along + 60) / SHEET));
    }

    ReefDrawing drawn(String label) {
        double below = pen.pixels(side == Side.ABOVE ? 46 : 30);
        double width = along + 60;
        svg.open("svg")
                .has(
                        "viewBox",
                        SvgWriter.number(-30) + " " + SvgWriter.number(-up - 20) + " " + SvgWriter.number(width) + " "
                                + SvgWriter.number(up + 20 + below))
                .has("role", "img")
                .has("aria-label", label)
                .has("class", "section reef");
        ground();
        light();
        List<Colony> colonies = new ArrayList<>(site.placed());
        colonies.sort(Comparator.comparingDouble(this::depth));
        colonies.forEach(this::later);
        colonies.forEach(this::disc);
        candidate();
        if (side == Side.ABOVE) {
            reaches();
        }
        measured();
        numbers();
        glass();
        svg.close();
        int rung = (int) Math.round(20 * Math.log10(width / 100));
        return new ReefDrawing(svg.finished(), "drawing scale-" + Math.max(8, Math.min(50, rung)));
    }

    /** What lies farther from the eye is drawn first. */
    private double depth(Colony colony) {
        Place place = place(colony);
        return side == Side.FRONT ? -place.y() : place.height();
    }

    private void ground() {
        if (side == Side.ABOVE) {
            pen.area(new Area(0, 0, along, up), site.sandHeight() > 0 ? "sand-floor" : "water-was");
            return;
        }
        double sand = 1000 * site.sandHeight();
        pen.area(new Area(0, 0, along, 1000 * site.waterLevel()), "water-was");
        Area strip = new Area(0, 0, along, sand);
        if (sand > 0) {
            pen.area(strip, "sand");
        }
        if (site.rockTop() > 0) {
            RockDrawing.draw(pen, strip, 1000 * site.rockTop(), site.plan().name(), List.of());
        }
        pen.line(0, 1000 * site.waterLevel(), along, 1000 * site.waterLevel(), "surface");
    }

    // ── light ──

    private void light() {
        site.light().ifPresent(field -> {
            double high = side == Side.FRONT ? site.waterLevel() : site.width();
            Contours contours = new Contours(
                    site.length(),
                    high,
                    COLUMNS,
                    ROWS,
                    (x, other) -> 1e6
                            * field.valueAt(
                                    side == Side.FRONT ? new Place(x, plane, other) : new Place(x, other, plane)));
            for (int level : LEVELS) {
                if (level > contours.least() && level < contours.most()) {
                    contour(contours.at(level), level);
                }
            }
        });
    }

    private void contour(List<Contours.Piece> pieces, int level) {
        SectionPen.Path path = new SectionPen.Path();
        for (Contours.Piece piece : pieces) {
            path.to(1000 * piece.x1(), 1000 * piece.y1()).line(1000 * piece.x2(), 1000 * piece.y2());
        }
        pen.path(path, "light-line");
        pieces.stream()
                .filter(piece -> piece.middleX() > 0.04 * site.length() && piece.middleX() < 0.96 * site.length())
                .max(Comparator.comparingDouble(this::clear))
                .ifPresent(piece -> pen.words(
                        1000 * piece.middleX(),
                        1000 * piece.middleY(),
                        Integer.toString(level),
                        Anchor.MIDDLE,
                        0,
                        4,
                        "scale halo"));
    }

    /** How far a spot of the drawing is from every colony's number. */
    private double clear(Contours.Piece piece) {
        double nearest = Double.POSITIVE_INFINITY;
        for (Colony colony : site.placed()) {
            Place place = place(colony);
            double other = side == Side.FRONT ? place.height() : place.y();
            nearest = Math.min(nearest, Math.hypot(piece.middleX() - place.x(), piece.middleY() - other));
        }
        return nearest;
    }

    /** Where light and flow were measured. */
    private void measured() {
        double arm = pen.pixels(4);
        for (Display.LightPoint point : site.plan().display().lightPoints()) {
            double x = 1000 * point.x().in("m");
            double y = 1000 * (side == Side.FRONT ? point.height() : point.y()).in("m");
            pen.line(x - arm, y, x + arm, y, "measured");
            pen.line(x, y - arm, x, y + arm, "measured");
        }
        for (Display.FlowPoint point : site.plan().display().flowPoints()) {
            double x = 1000 * point.x().in("m");
            double y = 1000 * (side == Side.FRONT ? point.height() : point.y()).in("m");
            pen.path(new SectionPen.Path().to(x - arm, y - arm).line(x + arm, y).line(x - arm, y + arm), "measured");
        }
    }

    // ── corals ──

    private static Place place(Colony colony) {
        Place place = colony.place();
        if (place == null) {
            throw new IllegalStateException(colony.name() + " has no place to be drawn at");
        }
        return place;
    }

    private void disc(Colony colony) {
        round(colony, colony.radius(), "colony");
    }

    private void later(Colony colony) {
        round(colony, growth.radius(colony, LATER).value(), "colony-later");
    }

    private void round(Colony colony, double radius, String style) {
        Place place = place(colony);
        double y = 1000 * (side == Side.FRONT ? place.height() : place.y());
        svg.open("ellipse")
                .has("class", style)
                .has("cx", 1000 * place.x())
                .has("cy", -y)
                .has("rx", 1000 * radius)
                .has("ry", 1000 * radius * (side == Side.FRONT ? FLATTENED : 1))
                .close();
    }

    private void candidate() {
        if (tried != null && tried.place() != null) {
            round(tried, growth.radius(tried, LATER).value(), "colony-later");
            round(tried, tried.radius(), "colony tried");
            Place place = place(tried);
            double y = 1000 * (side == Side.FRONT ? place.height() : place.y());
            pen.words(1000 * place.x(), y, "?", Anchor.MIDDLE, 0, 4, "strong");
        }
    }

    /** How far a stinger reaches, where it meets a neighbour. */
    private void reaches() {
        List<Colony> placed = site.placed();
        for (int i = 0; i < placed.size(); i++) {
            for (int j = i + 1; j < placed.size(); j++) {
                reach(Neighbours.of(placed.get(i), placed.get(j)));
            }
        }
        if (tried != null && tried.place() != null) {
            for (Colony colony : placed) {
                if (!colony.name().equals(tried.name())) {
                    reach(Neighbours.of(tried, colony));
                }
            }
        }
    }

    private void reach(Neighbours pair) {
        if (pair.standing() != Neighbours.Standing.TOUCHING && pair.standing() != Neighbours.Standing.IN_REACH) {
            return;
        }
        for (Colony colony : List.of(pair.one(), pair.other())) {
            if (colony.traits().reach() >= pair.gap()) {
                Place place = place(colony);
                pen.circle(
                        1000 * place.x(),
                        1000 * place.y(),
                        1000 * (colony.radius() + colony.traits().reach()),
                        "reach");
            }
        }
    }

    /** Each coral's number in the list of the page. */
    private void numbers() {
        List<Colony> all = site.colonies();
        for (int i = 0; i < all.size(); i++) {
            Place place = all.get(i).place();
            if (place != null) {
                double y = 1000 * (side == Side.FRONT ? place.height() : place.y());
                pen.words(1000 * place.x(), y, String.format(Locale.ROOT, "%d", i + 1), Anchor.MIDDLE, 0, 4, "strong");
            }
        }
    }

    private void glass() {
        if (side == Side.FRONT) {
            pen.path(new SectionPen.Path().to(0, up).line(0, 0).line(along, 0).line(along, up), "cut");
        } else {
            pen.area(new Area(0, 0, along, up), "cut");
            pen.words(along / 2, 0, "front", Anchor.MIDDLE, 0, 16, "");
        }
        Neatline.along(pen, along, -pen.pixels(side == Side.ABOVE ? 24 : 8), units);
    }
}
