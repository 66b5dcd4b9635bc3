package org.tidewright.twin.mechanism.carbonate;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.carbonate.Calcification;
import org.tidewright.twin.mechanism.light.Lamps;

/** Skeleton that corals and coralline algae lay down, faster in the light, in warm and in supersaturated water. */
public final class SkeletonGrowth implements Mechanism {
    private final String name;
    private final Body water;
    private final Lamps lamps;
    private final Setting extent;
    private final Drawn rate;
    private final Parameter exponent;
    private final Parameter lightRatio;
    private final Recipe growth;

    /**
     * One kind of skeleton.
     *
     * @param skeletons where it stays
     * @param magnesium its share of the metal
     * @param extent setting: 1 for all that lay it down in the plan
     * @param rate of all together under the reference conditions of {@link Calcification}, mol/s
     * @param exponent of the answer to saturation
     * @param lightRatio of growth in the light to that in the dark
     */
    public SkeletonGrowth(
            String name,
            Body water,
            Body skeletons,
            Lamps lamps,
            @Unit("1") double magnesium,
            Setting extent,
            Drawn rate,
            Parameter exponent,
            Parameter lightRatio) {
        this.name = name;
        this.water = water;
        this.lamps = lamps;
        this.extent = extent;
        this.rate = rate;
        this.exponent = exponent;
        this.lightRatio = lightRatio;
        growth = Lime.from(name, water, skeletons, magnesium);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public void act(View now, Transfers out) {
        double response =
                Calcification.saturationResponse(now.solution(water).aragoniteSaturation(), now.value(exponent))
                        * Calcification.lightResponse(
                                lamps.light(now), Calcification.LIGHT_SATURATION_USUAL, now.value(lightRatio))
                        * Calcification.temperatureResponse(
                                now.temperature(water), Calcification.OPTIMUM_USUAL, Calcification.WIDTH_USUAL)
                        * Calcification.alkalinityLeft(now.concentration(water, Stock.ALKALINITY));
        out.run(growth, now.value(extent) * rate.in(now) * response);
    }
}
