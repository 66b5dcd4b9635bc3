package org.tidewright.twin.mechanism.heat;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.heat.LidFilm;

/** Water under a lid of one pane: what evaporates condenses there and runs back, so heat leaves and water stays. */
public record CoveredSurface(
        Body water, Body room, @Unit("m^2") double area) implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        double inside = now.temperature(water);
        double outside = now.temperature(room);
        out.heat(water, room, area * LidFilm.coefficient(inside, outside) * (inside - outside));
    }
}
