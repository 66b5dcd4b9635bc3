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

    /** The values of a run, in the order of its network's parameters. */
    static Draw of(@Unit("*") double[] values) {
        return parameter -> values[parameter.index()];
    }
}
