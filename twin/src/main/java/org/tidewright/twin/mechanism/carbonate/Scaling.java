package org.tidewright.twin.mechanism.carbonate;

import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.carbonate.Precipitation;

/** Lime that falls out by itself on heaters, pumps and sand, and as a cloud when the water is overdosed. */
public final class Scaling implements Mechanism {
    private final Body water;
    private final Parameter bare;
    private final Parameter fine;
    private final Recipe fall;

    /**
     * In one vessel.
     *
     * @param scale where it stays
     * @param bare carbonate surface per volume that is always there, 1/m
     * @param fine surface per volume of the particles of a runaway, 1/m
     */
    public Scaling(Body water, Body scale, Parameter bare, Parameter fine) {
        this.water = water;
        this.bare = bare;
        this.fine = fine;
        fall = Lime.from("lime that falls out", water, scale, 0);
    }

    @Override
    public String name() {
        return "lime that falls out";
    }

    @Override
    public void act(View now, Transfers out) {
        double saturation = now.solution(water).aragoniteSaturation();
        if (saturation > 1) {
            double rate = Precipitation.perVolume(saturation, now.temperature(water), now.value(bare), now.value(fine));
            out.run(fall, rate * now.volume(water));
        }
    }
}
