package org.tidewright.husbandry.reef;

import org.tidewright.plan.model.Display;
import org.tidewright.plan.model.Light;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Rock;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.light.LampSpread;
import org.tidewright.twin.law.light.LightThroughWater;
import org.tidewright.twin.system.SystemTwin;

/**
 * Light at a place as far as a plan alone tells it, all lights at full power. The plan says how much light there is on the
 * average of what grows below, not where lamps hang: they count as one even lamp as large as the tank, at the usual height
 * over its water, and the stated light as the mean over the tank half way up its rock.
 *
 * <pre>I = I_stated S(x, y, z)/mean S(z_rock), S = F e^(-K z)</pre>
 *
 * with {@link LampSpread#under F} and {@link LightThroughWater#left}. How far it may be off is {@link #logError} and, from
 * place to place, what {@link LightField} adds.
 */
public final class LightModel {
    /** Lamps hang 15 to 30 cm over the water; common practice. */
    private static final double ABOVE_WATER = 0.2;

    /** That the stated light is the mean half way up the rock: right within a fifth; an estimate. */
    private static final double ERROR_OF_REFERENCE = 0.2;

    /** Light by a lamp's power alone: efficacy and what reaches the animals, each within a third; from memory. */
    private static final double ERROR_BY_POWER = 0.5;

    private static final int ALONG = 12;
    private static final int ACROSS = 8;

    private final double length;
    private final double width;
    private final double waterLevel;
    private final double reference;
    private final double scale;
    private final double logError;

    private LightModel(Plan plan, double scale, double logError) {
        Display display = plan.display();
        length = display.length().in("m");
        width = display.width().in("m");
        waterLevel = waterLevel(plan);
        reference = middleOfRock(display, waterLevel);
        this.scale = scale;
        this.logError = logError;
    }

    public static LightModel of(Plan plan) {
        LightModel shape = new LightModel(plan, 1, 0);
        return new LightModel(plan, SystemTwin.fullLight(plan) / shape.meanAt(shape.reference), error(plan));
    }

    /** Height of the water, the overflow's crest where it sets it. */
    static @Unit("m") double waterLevel(Plan plan) {
        if (plan.display().waterLevel() != null) {
            return plan.display().waterLevel().in("m");
        }
        return plan.overflow() == null
                ? plan.display().height().in("m")
                : plan.overflow().crest().in("m");
    }

    private static double middleOfRock(Display display, double waterLevel) {
        Rock rock = display.rock();
        double top = rock == null || rock.top() == null
                ? waterLevel
                : Math.min(waterLevel, rock.top().in("m"));
        return top / 2;
    }

    private double meanAt(double height) {
        double sum = 0;
        for (int i = 0; i < ALONG; i++) {
            for (int j = 0; j < ACROSS; j++) {
                sum += at(new Place(length * (i + 0.5) / ALONG, width * (j + 0.5) / ACROSS, height));
            }
        }
        return sum / (ALONG * ACROSS);
    }

    private static double error(Plan plan) {
        double doubts = 0;
        double sum = 0;
        for (Light light : plan.lights()) {
            if (light.over().equals(Names.DISPLAY)) {
                if (light.par() == null) {
                    return ERROR_BY_POWER;
                }
                doubts = Math.hypot(doubts, light.par().doubtIn("mol/(m^2*s)"));
                sum += light.par().in("mol/(m^2*s)");
            }
        }
        return sum == 0 ? ERROR_BY_POWER : Math.hypot(doubts / sum, ERROR_OF_REFERENCE);
    }

    /** Whether the plan has any light over the display. */
    public boolean isLit() {
        return scale > 0;
    }

    /** Photosynthetically active light at a place, all lights at full power. */
    public @Unit("mol/(m^2*s)") double at(Place place) {
        double depth = Math.max(0, waterLevel - place.height());
        double x = Math.max(0, Math.min(length, place.x()));
        double y = Math.max(0, Math.min(width, place.y()));
        return scale
                * LampSpread.under(x, length - x, y, width - y, LampSpread.apparentDistance(ABOVE_WATER, depth))
                * LightThroughWater.left(LightThroughWater.ATTENUATION_USUAL, depth);
    }

    /** One standard error of the logarithm, of all places together. */
    public @Unit("1") double logError() {
        return logError;
    }

    /** Height to which the light the plan states belongs. */
    public @Unit("m") double reference() {
        return reference;
    }
}
