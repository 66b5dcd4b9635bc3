package org.tidewright.web.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Rock as stacked outlines with contour lines, like heights on a chart; the same name always gives the same rock. */
final class RockDrawing {
    /** One rock of a group: where along the free length, how wide, how high against the highest. */
    private record Stone(double at, double width, double height, int contours) {}

    private static final List<Stone> TWO_GROUPS = List.of(
            new Stone(0.27, 0.29, 0.56, 3),
            new Stone(0.385, 0.17, 1.0, 4),
            new Stone(0.67, 0.25, 0.45, 3),
            new Stone(0.77, 0.19, 0.8, 4),
            new Stone(0.85, 0.14, 0.4, 2));
    private static final List<Stone> ONE_GROUP =
            List.of(new Stone(0.42, 0.34, 0.55, 3), new Stone(0.55, 0.27, 1.0, 4), new Stone(0.68, 0.24, 0.5, 2));
    private static final int CORNERS = 16;

    private RockDrawing() {}

    /**
     * Rock on a bottom.
     *
     * @param bottom the strip it stands on, whose top is the ground under the rock
     * @param top height the highest part reaches
     * @param clear areas lower rocks keep out of, for the words in them
     */
    static void draw(SectionPen pen, Area bottom, double top, String name, List<Area> clear) {
        Random random = new Random(name.hashCode());
        boolean wide = bottom.width() > 2.2 * (top - bottom.top());
        for (Stone stone : wide ? TWO_GROUPS : ONE_GROUP) {
            double width = stone.width() * bottom.width();
            double middle = bottom.left() + (stone.at() + 0.02 * (random.nextDouble() - 0.5)) * bottom.width();
            double height = stone.height() * (top - bottom.top());
            if (stone.height() < 1) {
                for (Area words : clear) {
                    if (words.left() < middle + width / 2 && words.right() > middle - width / 2) {
                        height = Math.min(height, words.bottom() - bottom.top());
                    }
                }
            }
            if (height > 8) {
                stone(pen, middle, bottom.top(), width, height, stone.contours(), random);
            }
        }
    }

    private static void stone(
            SectionPen pen, double middle, double ground, double width, double height, int contours, Random random) {
        double[] radii = new double[CORNERS];
        for (int i = 0; i < CORNERS; i++) {
            radii[i] = 0.8 + 0.3 * random.nextDouble();
        }
        double reached = highest(radii);
        pen.path(outline(radii, middle, ground, width, height / reached, 1).closed(), "rock");
        for (int i = 1; i <= contours; i++) {
            pen.path(
                    outline(radii, middle, ground + 2, width, height / reached, 1 - i * 0.92 / (contours + 1)),
                    "rock-line");
        }
    }

    private static List<double[]> corners(double[] radii) {
        List<double[]> corners = new ArrayList<>();
        for (int i = 0; i <= CORNERS; i++) {
            double angle = Math.PI * i / CORNERS;
            double radius = radii[i % CORNERS];
            corners.add(new double[] {Math.cos(angle) * radius, Math.sin(angle) * radius});
        }
        return corners;
    }

    private static SectionPen.Path outline(
            double[] radii, double middle, double ground, double width, double height, double size) {
        List<double[]> corners = corners(radii);
        SectionPen.Path path = new SectionPen.Path();
        double[] first = corners.get(0);
        path.to(middle + first[0] * size * width / 2, ground);
        for (int i = 1; i < corners.size(); i++) {
            double[] a = corners.get(i - 1);
            double[] b = corners.get(i);
            path.curve(
                    middle + a[0] * size * width / 2,
                    ground + a[1] * size * height,
                    middle + (a[0] + b[0]) / 2 * size * width / 2,
                    ground + (a[1] + b[1]) / 2 * size * height);
        }
        return path.line(middle + corners.get(CORNERS)[0] * size * width / 2, ground);
    }

    /** Greatest height of the smoothed outline for a height of one. */
    private static double highest(double[] radii) {
        List<double[]> corners = corners(radii);
        double highest = 0;
        for (int i = 1; i < corners.size() - 1; i++) {
            double before = (corners.get(i - 1)[1] + corners.get(i)[1]) / 2;
            double control = corners.get(i)[1];
            double after = (corners.get(i)[1] + corners.get(i + 1)[1]) / 2;
            for (double t = 0; t <= 1; t += 0.05) {
                double y = (1 - t) * (1 - t) * before + 2 * t * (1 - t) * control + t * t * after;
                highest = Math.max(highest, y);
            }
        }
        return highest;
    }
}
