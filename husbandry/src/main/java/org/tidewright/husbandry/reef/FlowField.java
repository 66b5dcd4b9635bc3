package org.tidewright.husbandry.reef;

import java.util.List;
import java.util.Optional;
import org.tidewright.numerics.field.Covariance;
import org.tidewright.numerics.field.GaussianField;
import org.tidewright.plan.model.Display.FlowPoint;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.unit.Unit;

/**
 * Flow near where it was measured. A plan says what its pumps draw in watts, not where they point, and turnover tells nothing
 * of a place behind a rock: away from measured points the flow is not known, and no number is given.
 */
public final class FlowField {
    /** How far a measured flow tells of its surroundings; jets and rock change it over 20 cm; an estimate. */
    @Unit("m")
    public static final double LENGTH = 0.2;

    /** Flow from place to place in one tank, one standard error of the logarithm; an estimate. */
    private static final double ROUGHNESS = 0.6;

    /** How much less or more flow there is in all of a tank; an estimate. */
    private static final double BETWEEN_TANKS = 1.0;

    /** Speed about which tanks differ; common practice. */
    private static final double USUAL = 0.1; // m/s

    /** Eddies and a meter held by hand, one standard error of the logarithm of a minute's mean; an estimate. */
    private static final double METER = 0.15;

    /** Beyond it a flow counts as not known: 90 of 100 lie within a factor of 2.3 either way. */
    private static final double KNOWN = 0.5;

    private final GaussianField field;

    private FlowField(GaussianField field) {
        this.field = field;
    }

    public static FlowField of(Plan plan) {
        List<FlowPoint> points = plan.display().flowPoints();
        double[][] places = new double[points.size()][];
        double[] values = new double[points.size()];
        double[] errors = new double[points.size()];
        for (int i = 0; i < points.size(); i++) {
            FlowPoint point = points.get(i);
            double speed = point.flow().in("m/s");
            places[i] = new Place(
                            point.x().in("m"), point.y().in("m"), point.height().in("m"))
                    .coordinates();
            values[i] = Math.log(speed / USUAL);
            double doubt = point.flow().doubtIn("m/s") / speed;
            errors[i] = doubt > 0 ? doubt : METER;
        }
        Covariance covariance = Covariance.offset(BETWEEN_TANKS).plus(Covariance.rough(ROUGHNESS, LENGTH));
        return new FlowField(new GaussianField(covariance, places, values, errors));
    }

    /** Speed at a place; empty where no measured point is near enough to tell. */
    public Optional<PointValue> at(Place place) {
        GaussianField.Expected log = field.at(place.coordinates());
        return log.deviation() > KNOWN
                ? Optional.empty()
                : Optional.of(new PointValue(USUAL * Math.exp(log.mean()), log.deviation()));
    }
}
