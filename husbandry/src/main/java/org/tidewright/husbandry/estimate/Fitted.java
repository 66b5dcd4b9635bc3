package org.tidewright.husbandry.estimate;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.tidewright.numerics.filter.Belief;
import org.tidewright.numerics.filter.Hindsight;
import org.tidewright.numerics.filter.LinearFilter;
import org.tidewright.numerics.filter.Passage;
import org.tidewright.numerics.filter.Stretch;
import org.tidewright.plan.method.TestMethod;
import org.tidewright.plan.method.WaterQuantity;

/** A model of some quantities with its noise learnt and its readings screened: what is believed at any time. */
final class Fitted {
    /** The first screening is lenient, or what wanders more than usual would be taken for errors. */
    private static final double LENIENT = 1;

    private final WaterModel model;
    private final Timeline timeline;
    private final Reckoning reckoning;
    private final NoiseFit.Found noise;
    private final List<Hindsight> arriving = new ArrayList<>();

    private Fitted(WaterModel model, Timeline timeline, Reckoning reckoning, NoiseFit.Found noise) {
        this.model = model;
        this.timeline = timeline;
        this.reckoning = reckoning;
        this.noise = noise;
        Hindsight[] kept = new Hindsight[timeline.stops().size()];
        reckoning.goBack(new Reckoning.WayBack() {
            @Override
            public void arriving(int stop, Hindsight later) {
                kept[stop] = later.copy();
            }
        });
        arriving.addAll(List.of(kept));
    }

    /** Of quantities that have readings. */
    static Fitted of(Inputs inputs, Set<WaterQuantity> quantities) {
        List<TestMethod> methods = inputs.readings().stream()
                .map(Inputs.Reading::method)
                .filter(method -> quantities.contains(method.quantity()))
                .distinct()
                .toList();
        double expected = reaction(
                inputs,
                WaterModel.level(inputs, WaterQuantity.ALKALINITY),
                WaterModel.expected(inputs, WaterQuantity.ALKALINITY).use().value());
        WaterModel first = new WaterModel(inputs, quantities, methods, expected, null);
        Timeline draft = Timeline.of(first);
        draft.shake(NoiseFit.usual(first, LENIENT));
        Reckoning lenient = Screening.screen(draft, Evidence.of(draft));

        WaterModel model = new WaterModel(inputs, quantities, methods, reaction(inputs, first, lenient.last()), null);
        Timeline timeline = Timeline.of(model);
        Evidence all = Evidence.of(timeline);
        double[] sizes = NoiseFit.sizes(timeline, all.finding(lenient.evidence()), NoiseFit.usual(model, 0));
        Reckoning strict = Screening.screen(timeline, all);
        NoiseFit.Found noise = NoiseFit.found(timeline, strict.evidence(), sizes);
        return new Fitted(model, timeline, Screening.screen(timeline, all), noise);
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

    NoiseFit.Found noise() {
        return noise;
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
        stretch.shake(passage, noise.sizes());
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
