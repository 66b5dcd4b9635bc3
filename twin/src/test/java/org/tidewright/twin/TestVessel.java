package org.tidewright.twin;

import java.util.List;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Layout;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Shape;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.mechanism.power.Supply;
import org.tidewright.twin.run.Accuracy;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.Run;
import org.tidewright.twin.run.State;

/** One vessel of seawater and the world around it, for a network of the one or two mechanisms a test is about. */
public final class TestVessel {
    public static final double DENSITY = 1023;
    public static final double SPECIFIC_HEAT = 3990;

    /** Far below what is asked of it. */
    public static final Accuracy TIGHT = new Accuracy(1e-10, 1e-12, 1e-9, 1e-9, 1800);

    private final Network.Builder builder = new Network.Builder(Layout.OF_ALL, DENSITY, SPECIFIC_HEAT);
    private final Body world = builder.outside("world");
    private final Body water;
    private final double volume;

    /** Of a floor's area and a depth. */
    public TestVessel(@Unit("m^2") double area, @Unit("m") double depth) {
        water = builder.body("water", Shape.upright(area, 0, 0), 0, 0);
        volume = area * depth;
    }

    public Network.Builder builder() {
        return builder;
    }

    /** Gives and takes everything. */
    public Body world() {
        return world;
    }

    public Body water() {
        return water;
    }

    public TestVessel with(Mechanism mechanism) {
        builder.add(mechanism);
        return this;
    }

    /** A number that is known exactly. */
    public Parameter exactly(String name, String unit, @Unit("*") double value) {
        return builder.parameter(name, unit, value, value, value, Basis.COMPUTED, "the test");
    }

    /** Power from the world at all times. */
    public Supply mains() {
        return new Supply(List.of(new Supply.Source(world, builder.setting("mains", 1), null)), null);
    }

    /** No power from anywhere. */
    public static Supply noPower() {
        return new Supply(List.of(), null);
    }

    /** Filled with aired seawater of S 35. */
    public State filled(Network network, @Unit("degC") double temperature, @Unit("mol/m^3") double oxygen) {
        return new State(network).fill(water, volume, temperature, 35, oxygen).dissolve(water, Stock.CALCIUM, 10.5);
    }

    /** A run of a network at its usual values. */
    public static Run run(Network network, State state) {
        return new Run(network, network.usualParameters(), state, TIGHT);
    }
}
