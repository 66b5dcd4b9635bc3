package org.tidewright.web.page;

import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.FigureText;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.tank.Place;

/** The drawing's figures in a line under it, for narrow screens where its labels are left out. */
final class Keys {
    private Keys() {}

    static Markup of(Plan plan, WaterMovement movement, int sample, UnitSystem units) {
        double display = highest(movement, Place.DISPLAY, sample);
        double sump = highest(movement, Place.SUMP_SECTION, sample);
        StringBuilder html = new StringBuilder("<span>display <b data-key=\"display\">")
                .append(told(display, units))
                .append("</b>");
        if (plan.overflow() != null) {
            html.append(", crest ").append(told(plan.overflow().crest().in("m"), units));
        }
        html.append(' ').append(Measure.LEVEL.unit(units).symbol()).append("</span>");
        if (plan.sump() != null) {
            html.append("<span>sump <b data-key=\"sump\">")
                    .append(told(sump, units))
                    .append("</b> of ")
                    .append(told(plan.sump().height().in("m"), units))
                    .append(' ')
                    .append(Measure.LEVEL.unit(units).symbol())
                    .append("</span>");
        }
        return new Markup(html.toString());
    }

    private static double highest(WaterMovement movement, Place place, int sample) {
        return movement.vessels().stream()
                .filter(vessel -> vessel.place() == place)
                .mapToDouble(vessel -> vessel.level()[sample])
                .max()
                .orElse(0);
    }

    private static String told(double level, UnitSystem units) {
        return FigureText.of(Figure.exact(Measure.LEVEL, level), units).value();
    }
}
