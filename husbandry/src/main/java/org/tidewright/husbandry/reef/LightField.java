package org.tidewright.husbandry.reef;

import java.util.List;
import java.util.Optional;
import org.tidewright.numerics.field.Covariance;
import org.tidewright.numerics.field.GaussianField;
import org.tidewright.plan.model.Display.LightPoint;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.seawater.unit.Unit;

/**
 * Light at a place, all lights at full power: the plan's own lights as {@link LightModel} spreads them, set right by what
 * was measured. What the logarithm of a measurement has over the model's is split into a factor for the whole tank, a slope
 * with height, and a rough field that is forgotten within {@link #LENGTH}; see {@link GaussianField}. A point stated without
 * a doubt counts as exact, as everywhere in a plan.
 */
public final class LightField {
    /** How far a measurement tells of its surroundings: beams, walls and rock change light over 20 to 30 cm; an estimate. */
    @Unit("m")
    public static final double LENGTH = 0.25;

    /** Beams and shade, one standard error from place to place: factors of 0.7 to 1.4; an estimate. */
    static final double ROUGHNESS = 0.35;

    /** Attenuation and falloff, one standard error, 1/m: attenuation alone 0.1 to 0.6, lenses against even lamps more. */
    private static final double SLOPE = 1.0;

    /** Calibration of a quantum meter, the same in all its readings; usual statement of makers, from memory. */
    private static final double METER = 0.05;

    /** A light nobody states is known by its points alone. */
    private static final double UNKNOWN_SCALE = 3;

    /** No number is exact to more than a thousandth. */
    private static final double EXACT = 1e-3;

    private final LightModel model;
    private final double level;
    private final int points;
    private final GaussianField deviations;

    private LightField(LightModel model, double level, int points, GaussianField deviations) {
        this.model = model;
        this.level = level;
        this.points = points;
        this.deviations = deviations;
    }

    /** Of a plan; empty where it has neither a light over the display nor a measured point. */
    public static Optional<LightField> of(Plan plan) {
        LightModel model = LightModel.of(plan);
        List<LightPoint> points = plan.display().lightPoints();
        if (!model.isLit() && points.isEmpty()) {
            return Optional.empty();
        }
        double level = model.isLit() ? Double.NaN : geometricMean(points);
        Covariance covariance = Covariance.offset(model.isLit() ? model.logError() : UNKNOWN_SCALE)
                .plus(Covariance.slope(SLOPE, 2, model.reference()))
                .plus(Covariance.rough(ROUGHNESS, LENGTH));
        double[][] places = new double[points.size()][];
        double[] values = new double[points.size()];
        double[] errors = new double[points.size()];
        for (int i = 0; i < points.size(); i++) {
            LightPoint point = points.get(i);
            Place place = place(point);
            Amount par = point.par();
            places[i] = place.coordinates();
            values[i] = Math.log(par.in("mol/(m^2*s)") / base(model, level, place));
            errors[i] = Math.max(EXACT, par.doubtIn("mol/(m^2*s)") / par.in("mol/(m^2*s)"));
        }
        return Optional.of(
                new LightField(model, level, points.size(), new GaussianField(covariance, places, values, errors)));
    }

    private static Place place(LightPoint point) {
        return new Place(point.x().in("m"), point.y().in("m"), point.height().in("m"));
    }

    private static double geometricMean(List<LightPoint> points) {
        return Math.exp(points.stream()
                .mapToDouble(point -> Math.log(point.par().in("mol/(m^2*s)")))
                .average()
                .orElseThrow());
    }

    private static double base(LightModel model, double level, Place place) {
        return model.isLit() ? model.at(place) : level;
    }

    /** Light at a place, and how well it is known. */
    public PointValue at(Place place) {
        GaussianField.Expected deviation = deviations.at(place.coordinates());
        double measured = points == 0 ? 0 : METER;
        return new PointValue(
                base(model, level, place) * Math.exp(deviation.mean()), Math.hypot(deviation.deviation(), measured));
    }

    /** The same without how well it is known, which is quicker. */
    public @Unit("mol/(m^2*s)") double valueAt(Place place) {
        return base(model, level, place) * Math.exp(deviations.meanAt(place.coordinates()));
    }

    /** Whether measured points tell more of a place than the plan's lights do. */
    public boolean isMeasured(Place place) {
        return points > 0 && deviations.at(place.coordinates()).deviation() < ROUGHNESS;
    }

    /** How many points were measured. */
    public int points() {
        return points;
    }

    /** What all other points let expect of one, its own error included. */
    PointValue leftOut(Plan plan, int point) {
        GaussianField.Expected deviation = deviations.without(point);
        Place place = place(plan.display().lightPoints().get(point));
        return new PointValue(base(model, level, place) * Math.exp(deviation.mean()), deviation.deviation());
    }
}
