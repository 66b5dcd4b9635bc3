package org.tidewright.husbandry.estimate;

import java.util.List;
import java.util.Set;
import org.tidewright.numerics.filter.Belief;
import org.tidewright.numerics.filter.Hindsight;
import org.tidewright.numerics.filter.Innovation;
import org.tidewright.numerics.filter.LinearFilter;
import org.tidewright.numerics.filter.Measurement;
import org.tidewright.numerics.filter.Passage;
import org.tidewright.numerics.filter.Stretch;
import org.tidewright.plan.method.WaterQuantity;

/** A model of some quantities with its noise learnt and its readings screened: what is believed at any time. */
final class Fitted {
    /** Noise is learnt from so many days: what a system was like before matters less, and costs time. */
    static final double LATELY = 730;

    /** The reaction of calcification is known to no more than a third; so far off it need not be mended. */
    private static final double CLOSE_ENOUGH = 0.1;

    private final WaterModel model;
    private final Timeline timeline;
    private final Reckoning reckoning;
    private final double[] sizes;
    private final List<Hindsight> arriving;
    private final Innovation[] off;

    private Fitted(WaterModel model, Timeline timeline, Reckoning reckoning, double[] sizes) {
        this.model = model;
        this.timeline = timeline;
        this.reckoning = reckoning;
        this.sizes = sizes;
        Hindsight[] kept = new Hindsight[timeline.stops().size()];
        off = new Innovation[timeline.readings().size()];
        reckoning.goBack(new Reckoning.WayBack() {
            @Override
            public void reading(int place, Innovation againstAllOthers) {
                off[place] = againstAllOthers;
            }

            @Override
            public void arriving(int stop, Hindsight later) {
                kept[stop] = later.copy();
            }
        });
        arriving = List.of(kept);
    }

    /** Of quantities that have readings. */
    static Fitted of(Inputs inputs, Set<WaterQuantity> quantities) {
        Kits kits = Kits.of(inputs, quantities);
        double expected = reaction(
                inputs,
                inputs.level(WaterQuantity.ALKALINITY),
                inputs.use(WaterQuantity.ALKALINITY).value());
        WaterModel first = new WaterModel(inputs, quantities, kits, expected, null);
        Timeline draft = Timeline.of(first);
        Evidence drafted = Evidence.of(draft);
        double[] rough = RoughNoise.sizes(draft, drafted);
        draft.shake(rough);
        Reckoning lenient = Screening.screen(draft, drafted);

        double found = reaction(inputs, first, lenient.last());
        boolean asExpected = Math.abs(found - expected) <= CLOSE_ENOUGH * expected;
        WaterModel model = asExpected ? first : new WaterModel(inputs, quantities, kits, found, null);
        Timeline timeline = asExpected ? draft : Timeline.of(model);
        Evidence all = Evidence.of(timeline);
        Timeline lately = timeline.after(inputs.until() - LATELY);
        double[] sizes = NoiseFit.sizes(lately, all.finding(lenient.evidence()), rough);
        timeline.shake(sizes);
        Evidence strict = Screening.screen(timeline, all).evidence();
        sizes = NoiseFit.sizes(lately, strict, sizes);
        timeline.shake(sizes);
        Evidence last = Screening.screen(timeline, strict).evidence();
        return new Fitted(model, timeline, Reckoning.kept(timeline, last), sizes);
    }

    /** How fast alkalinity falls back to where its use is what it was: that depends on the use itself. */
    private static double reaction(Inputs inputs, WaterModel model, Belief found) {
        if (!model.quantities().contains(WaterQuantity.ALKALINITY)) {
            return 0;
        }
        return reaction(
                inputs,
                found.mean(model.trendRow(WaterQuantity.ALKALINITY)),
                found.mean(model.useRow(WaterQuantity.ALKALINITY)));
    }

    private static double reaction(Inputs inputs, double level, double use) {
        return level > 0 ? Math.max(0, inputs.response() * use / level) : 0;
    }

    WaterModel model() {
        return model;
    }

    Timeline timeline() {
        return timeline;
    }

    Reckoning reckoning() {
        return reckoning;
    }

    /** Of each noise of the model, as learnt. */
    double[] sizes() {
        return sizes;
    }

    /** Standard errors of their natural logarithms; as long to find as they were themselves. */
    double[] errorsOfSizes() {
        Timeline lately = Timeline.of(model).after(model.inputs().until() - LATELY);
        return NoiseFit.errors(lately, reckoning.evidence(), sizes);
    }

    /** How far a reading stands from what all others let expect. */
    Innovation off(int place) {
        Innovation known = off[place];
        if (known != null) {
            return known;
        }
        Inputs.Reading reading = timeline.readings().get(place);
        Measurement measurement = reckoning.evidence().measurements().get(place);
        Belief others = at(reading.time());
        double spread = others.standardError(measurement.row());
        return new Innovation(
                measurement.value() - others.mean(measurement.row()), spread * spread + measurement.variance());
    }

    /** What is believed of a time, in the light of all readings. */
    Belief at(double time) {
        if (time > model.inputs().until()) {
            return ahead(time, model);
        }
        int before = stopBy(time);
        double since = before < 0 ? 0 : timeline.stops().get(before).time();
        LinearFilter filter = new LinearFilter(left(before));
        pass(filter, model, Math.min(since, time), time);
        if (before == timeline.stops().size() - 1) {
            return filter.belief();
        }
        Hindsight later = arriving.get(before + 1).copy();
        Stretch onward =
                model.structure().stretch(timeline.stops().get(before + 1).time() - time);
        later.goBack(model.passage(onward, time));
        return later.sharpen(filter.belief());
    }

    /** What a model that may know other doses lets expect of a time after the last line. */
    Belief ahead(double time, WaterModel future) {
        double now = model.inputs().until();
        if (time - now > Inputs.HORIZON) {
            throw new IllegalArgumentException("a forecast of " + Math.round(time - now)
                    + " days cannot be made; water changes are foreseen for " + Inputs.HORIZON);
        }
        LinearFilter filter = new LinearFilter(future.taken(model, reckoning.last()));
        double since = now;
        for (Renewal renewal : future.inputs().renewals()) {
            if (renewal.time() > now && renewal.time() <= time) {
                pass(filter, future, since, renewal.time());
                filter.pass(future.renewal(renewal));
                since = renewal.time();
            }
        }
        pass(filter, future, since, time);
        return filter.belief();
    }

    private void pass(LinearFilter filter, WaterModel through, double from, double to) {
        Stretch stretch = through.structure().stretch(to - from);
        Passage passage = through.passage(stretch, from);
        stretch.shake(passage, sizes);
        filter.pass(passage);
    }

    /** The last stop that is not later than a time; -1 where there is none. */
    private int stopBy(double time) {
        int low = 0;
        int high = timeline.stops().size();
        while (low < high) {
            int middle = (low + high) / 2;
            if (timeline.stops().get(middle).time() <= time) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low - 1;
    }

    /** What was believed on leaving a stop, all its events over. */
    private Belief left(int stop) {
        int moment = stop < 0
                ? 0
                : reckoning.arrivals()[stop]
                        + timeline.stops().get(stop).events().size();
        return reckoning.moments().get(moment).filtered();
    }
}
