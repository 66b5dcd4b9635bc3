package org.tidewright.twin.mechanism.heat;

import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.mechanism.air.Weather;

/**
 * The room's exchange with the weather.
 *
 * @param conductance heat lost per kelvin of difference
 */
public record RoomEnvelope(Body room, Body outdoors, Weather weather, Parameter conductance) implements Mechanism {
    @Override
    public void act(View now, Transfers out) {
        double difference = now.temperature(room) - weather.temperature(now.time());
        out.heat(room, outdoors, now.value(conductance) * difference);
    }
}
