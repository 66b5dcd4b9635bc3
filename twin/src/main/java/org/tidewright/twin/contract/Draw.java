package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/** What the parameters of a network are taken to be in one run. */
@FunctionalInterface
public interface Draw {
    /** Each in the middle of its distribution. */
    Draw USUAL = Parameter::usual;

    /** A parameter's value. */
    @Unit("*")
    double value(Parameter parameter);

    /** A number derived from parameters; a run keeps it. */
    default @Unit("*") double derived(Derived number) {
        return number.of().in(this);
    }

    /** The values of a run, in the order of its network's parameters. */
    static Draw of(@Unit("*") double[] values) {
        return parameter -> values[parameter.index()];
    }
}
