package org.tidewright.twin.contract;

import org.tidewright.seawater.unit.Unit;

/** The present state, for reading. */
public interface View extends Draw {
    /** Seconds since the run began. */
    @Unit("s")
    double time();

    /** Water in a body. */
    @Unit("m^3")
    double volume(Body body);

    /** Height of a body's surface above its own inside bottom. */
    @Unit("m")
    double level(Body body);

    /** Height of a body's surface above the finished floor. */
    @Unit("m")
    double height(Body body);

    /** Temperature of a body: of its water and solids, or of a room's fabric. */
    @Unit("degC")
    double temperature(Body body);

    /** Practical salinity of a body. */
    @Unit("1")
    double salinity(Body body);

    /** Dissolved oxygen of a body; never below none, though a step on trial may overdraw the stock. */
    @Unit("mol/m^3")
    double oxygen(Body body);

    /** A dissolved stock per volume of a body's water; never below none, though a step on trial may overdraw it. */
    @Unit("mol/m^3")
    double concentration(Body body, Stock stock);

    /** The chemistry of a body's water. */
    Solution solution(Body body);

    /** Any stock of a body, in the stock's unit. */
    @Unit("*")
    double stock(Body body, Stock stock);

    /** A parameter's value in this run. */
    @Override
    @Unit("*")
    double value(Parameter parameter);

    /** A setting's present value. */
    @Unit("*")
    double value(Setting setting);
}
