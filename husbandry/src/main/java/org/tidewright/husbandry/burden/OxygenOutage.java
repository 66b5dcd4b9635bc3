package org.tidewright.husbandry.burden;

import java.util.List;
import java.util.Map;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.limit.DisplayLimits;
import org.tidewright.husbandry.water.DrainDownStudy;
import org.tidewright.plan.model.Plan;
import org.tidewright.seawater.gas.MolarMass;
import org.tidewright.twin.ensemble.Ensemble;
import org.tidewright.twin.rehearsal.Bound;
import org.tidewright.twin.rehearsal.Outage;
import org.tidewright.twin.rehearsal.OutageOrder;
import org.tidewright.twin.tank.Basins;

/** How long the oxygen lasts when the power fails, with those that are there and with more. */
final class OxygenOutage {
    /** A draw of an outage costs a hundredth of one of twelve weeks. */
    static final int DRAWS = 40;

    private static final String ACT = "act";
    private static final String HARM = "harm";

    private final OutageOrder order;
    private final Basins.Volumes volumes;
    private final List<Bound> bounds;
    private final Times without;

    /**
     * Since the mains failed, draw by draw; infinite for not within the outage.
     *
     * @param act until the keeper must act, half of saturation unless the plan says otherwise
     * @param harm until animals come to harm, three tenths of saturation unless the plan says otherwise
     */
    record Times(double[] act, double[] harm) {}

    private OxygenOutage(
            Plan plan, OutageOrder order, Basins.Volumes volumes, List<Bound> bounds, Ensemble.Progress progress) {
        this.order = order;
        this.volumes = volumes;
        this.bounds = bounds;
        without = of(plan, progress);
    }

    static OxygenOutage of(Plan plan, OutageOrder order, Ensemble.Progress progress) {
        DisplayLimits limits = DisplayLimits.of(plan, new Sources());
        List<Bound> bounds = List.of(
                new Bound(ACT, Bound.Quantity.OXYGEN, limits.actOxygen().value() / MolarMass.OXYGEN, true),
                new Bound(HARM, Bound.Quantity.OXYGEN, limits.harmOxygen().value() / MolarMass.OXYGEN, true));
        Basins.Volumes volumes = Outage.volumesOf(plan);
        if (plan.hasSump()) {
            DrainDownStudy study = DrainDownStudy.of(plan, order.airHolesClear(), false);
            volumes = Outage.volumesAfter(study.cut(), study.result());
        }
        return new OxygenOutage(plan, order, volumes, bounds, progress);
    }

    /** With other animals in the same water. */
    Times of(Plan plan, Ensemble.Progress progress) {
        Map<String, double[]> met = new Outage(plan, order, volumes, bounds).firstTimes(DRAWS, progress);
        return new Times(met.getOrDefault(ACT, new double[0]), met.getOrDefault(HARM, new double[0]));
    }

    /** Those of the system as it is. */
    Times without() {
        return without;
    }

    OutageOrder order() {
        return order;
    }
}
