package org.tidewright.twin.mechanism.power;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;

/**
 * Where one device draws its power: the first of its sources that is on.
 *
 * @param works setting: 1 while the device is in order and switched on, 0 else; null where nothing can stop it
 */
public record Supply(List<Source> sources, @Nullable Setting works) {
    /**
     * A source of power.
     *
     * @param store body whose heat stock is its energy
     * @param on setting: 1 while it gives power
     * @param efficiency share of what it gives up that reaches the socket; null where nothing is lost on the way
     */
    public record Source(Body store, Setting on, @Nullable Parameter efficiency) {}

    public Supply {
        sources = List.copyOf(sources);
    }

    /** Whether the device runs. */
    public boolean isOn(View now) {
        return source(now) != null;
    }

    /**
     * Draws power from the source that is on and gives it off as heat.
     *
     * @param power at the socket
     * @param share of it that ends in {@code into}; the rest, and what is lost on the way, warms {@code room}
     */
    public void draw(View now, Transfers out, @Unit("W") double power, @Unit("1") double share, Body into, Body room) {
        Source source = source(now);
        if (source == null) {
            return;
        }
        double drawn = source.efficiency() == null ? power : power / now.value(source.efficiency());
        out.heat(source.store(), into, share * power);
        out.heat(source.store(), room, drawn - share * power);
    }

    private @Nullable Source source(View now) {
        if (works != null && now.value(works) <= 0) {
            return null;
        }
        for (int i = 0; i < sources.size(); i++) {
            Source source = sources.get(i);
            if (now.value(source.on()) > 0) {
                return source;
            }
        }
        return null;
    }
}
