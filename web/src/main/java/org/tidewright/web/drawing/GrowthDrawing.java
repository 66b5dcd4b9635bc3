package org.tidewright.web.drawing;

import java.util.Locale;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.seawater.unit.Unit;

/** A fish in the display from the front, to scale, as it comes and in one, three and five years. */
public final class GrowthDrawing {
    private static final double[] YEARS = {0, 1, 3, 5};
    private static final String[] WORDS = {"now", "1 year", "3 years", "5 years"};
    /** Width of the drawing in its own units, whatever the tank: so letters are as large in each. */
    private static final double WIDE = 1000;

    /** Share of the length that is tail. */
    private static final double TAIL = 0.2;

    private GrowthDrawing() {}

    /** As SVG. */
    public static String of(Animals fish, @Unit("m") double length, @Unit("m") double height, UnitSystem units) {
        double scale = WIDE / length;
        double high = height * scale;
        StringBuilder svg = new StringBuilder();
        svg.append(String.format(
                Locale.ROOT,
                "<svg class=\"growth\" viewBox=\"-10 -10 %.0f %.0f\" role=\"img\" aria-label=\"%s\">",
                WIDE + 20,
                high + 20,
                SvgWriter.escaped(told(fish, units))));
        svg.append(String.format(
                Locale.ROOT,
                "<rect class=\"water\" x=\"0\" y=\"%.0f\" width=\"%.0f\" height=\"%.0f\"/>",
                0.06 * high,
                WIDE,
                0.94 * high));
        svg.append(String.format(Locale.ROOT, "<path class=\"glass\" d=\"M0,0V%.0fH%.0fV0\"/>", high, WIDE));
        for (int i = 0; i < YEARS.length; i++) {
            double then = fish.fish().lengthAfter(fish.length(), YEARS[i]);
            double x = WIDE * (2 * i + 1) / (2 * YEARS.length);
            svg.append(fish(fish.fish(), then, scale, x, 0.5 * high));
            svg.append(text(x, 0.86 * high, WORDS[i])).append(text(x, 0.95 * high, words(then, units)));
        }
        return svg.append("</svg>").toString();
    }

    private static String text(double x, double y, String words) {
        return String.format(
                Locale.ROOT,
                "<text x=\"%.0f\" y=\"%.0f\" text-anchor=\"middle\">%s</text>",
                x,
                y,
                SvgWriter.escaped(words));
    }

    /** An outline: body an ellipse, tail a triangle; its middle at x, y. */
    private static String fish(FishSpecies fish, double real, double scale, double x, double y) {
        double length = real * scale;
        double body = length * (1 - TAIL);
        double depth = fish.depth(real) * scale;
        double left = x - length / 2;
        double root = left + body - 0.05 * length;
        double fin = Math.max(0.35 * depth, 0.06 * length);
        return String.format(
                Locale.ROOT,
                "<path class=\"animal\" d=\"M%.1f,%.1fA%.1f,%.1f 0 1 1 %.1f,%.1fA%.1f,%.1f 0 1 1 %.1f,%.1fM%.1f,%.1fL%.1f,%.1fV%.1fZ\"/>",
                left,
                y,
                body / 2,
                depth / 2,
                left + body,
                y,
                body / 2,
                depth / 2,
                left,
                y,
                root,
                y,
                left + length,
                y - fin,
                y + fin);
    }

    private static String told(Animals fish, UnitSystem units) {
        StringBuilder told = new StringBuilder("The candidate in your display, to scale: ");
        for (int i = 0; i < YEARS.length; i++) {
            told.append(i == 0 ? "" : ", ")
                    .append(WORDS[i])
                    .append(' ')
                    .append(words(fish.fish().lengthAfter(fish.length(), YEARS[i]), units));
        }
        return told.toString();
    }

    private static String words(@Unit("m") double length, UnitSystem units) {
        return FigureText.of(Figure.exact(Measure.LENGTH, length), units).line();
    }
}
