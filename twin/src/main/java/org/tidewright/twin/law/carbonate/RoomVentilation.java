package org.tidewright.twin.law.carbonate;

import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.TemperatureScale;
import org.tidewright.seawater.unit.Unit;

/**
 * Carbon dioxide in the air of one room, well mixed, that outside air flushes and people fill. Shares are moles per
 * mole of air: 1000 ppm is 1e-3. A tank that gives off or takes up carbon dioxide is one more source, of either sign.
 *
 * <pre>
 * dC/dt = (Q/V) (C_out - C) + G v / V
 * v = R T / P
 * </pre>
 */
public final class RoomVentilation {
    /** Air changes of a closed bedroom in an hour, low: tight windows; common practice. */
    @Unit("1/s")
    public static final double CHANGES_LOW = 0.1 / 3600;

    /** Air changes of a lived-in room, usual; common practice. */
    @Unit("1/s")
    public static final double CHANGES_USUAL = 0.4 / 3600;

    /** Air changes of a leaky or aired room, high; common practice. */
    @Unit("1/s")
    public static final double CHANGES_HIGH = 1.5 / 3600;

    private static final double GAS_CONSTANT = 8.314462618; // J/(mol K)

    private RoomVentilation() {}

    /**
     * Volume a mole of the room's air takes.
     *
     * <pre>v = R T / P</pre>
     *
     * @param temperature of the room, ITS-90
     * @param pressure of the air, not reduced to sea level
     * @return molar volume
     * @source ideal gas, CODATA 2018
     * @validity room air
     */
    @Unit("m^3/mol")
    public static double molarVolume(@Unit("degC") double temperature, @Unit("Pa") double pressure) {
        Bounds.within(temperature, "degC", -50, 80, "room temperature");
        Bounds.within(pressure, "Pa", 20_000, 200_000, "air pressure", "is it in mbar or hPa?");
        return GAS_CONSTANT * TemperatureScale.kelvin(temperature) / pressure;
    }

    /**
     * How fast the share rises.
     *
     * <pre>dC/dt = [Q (C_out - C) + G v] / V</pre>
     *
     * @param share C in the room
     * @param outside C_out
     * @param airFlow Q of outside air
     * @param source G, people's and the tank's
     * @param molarVolume v
     * @param volume V of the room
     * @return share per time
     * @source mass balance
     * @validity well-mixed room
     */
    @Unit("1/s")
    public static double rise(
            @Unit("1") double share,
            @Unit("1") double outside,
            @Unit("m^3/s") double airFlow,
            @Unit("mol/s") double source,
            @Unit("m^3/mol") double molarVolume,
            @Unit("m^3") double volume) {
        Bounds.within(share, "1", 0, 1, "share of carbon dioxide in the room", "is it in ppm?");
        Bounds.within(outside, "1", 0, 1, "share of carbon dioxide outside", "is it in ppm?");
        Bounds.within(airFlow, "m^3/s", 0, 1000, "flow of outside air");
        Bounds.within(source, "mol/s", -1, 1, "source of carbon dioxide");
        Bounds.within(molarVolume, "m^3/mol", 1e-3, 1, "molar volume of air");
        Bounds.within(volume, "m^3", 1e-3, 1e7, "volume of the room");
        return (airFlow * (outside - share) + source * molarVolume) / volume;
    }

    /**
     * Share where the room settles.
     *
     * <pre>C_ss = C_out + G v / Q</pre>
     *
     * @param outside C_out
     * @param airFlow Q of outside air, above zero: a sealed room never settles
     * @param source G
     * @param molarVolume v
     * @return share
     * @source mass balance
     * @validity well-mixed room
     */
    @Unit("1")
    public static double settled(
            @Unit("1") double outside,
            @Unit("m^3/s") double airFlow,
            @Unit("mol/s") double source,
            @Unit("m^3/mol") double molarVolume) {
        Bounds.within(outside, "1", 0, 1, "share of carbon dioxide outside", "is it in ppm?");
        Bounds.within(airFlow, "m^3/s", 1e-12, 1000, "flow of outside air");
        Bounds.within(source, "mol/s", -1, 1, "source of carbon dioxide");
        Bounds.within(molarVolume, "m^3/mol", 1e-3, 1, "molar volume of air");
        return outside + source * molarVolume / airFlow;
    }

    /**
     * Share after a time of constant source and flow, in a sealed room too.
     *
     * <pre>
     * C(t) = C0 + t (dC/dt)_0 phi(Q t / V),  phi(x) = (1 - exp(-x)) / x
     * </pre>
     *
     * @param initial C0
     * @param time t since then
     * @param outside C_out
     * @param airFlow Q of outside air
     * @param source G
     * @param molarVolume v
     * @param volume V of the room
     * @return share; above 1 means that the room cannot be so small
     * @source mass balance, closed form
     * @validity well-mixed room
     */
    @Unit("1")
    public static double after(
            @Unit("1") double initial,
            @Unit("s") double time,
            @Unit("1") double outside,
            @Unit("m^3/s") double airFlow,
            @Unit("mol/s") double source,
            @Unit("m^3/mol") double molarVolume,
            @Unit("m^3") double volume) {
        Bounds.within(time, "s", 0, 1e12, "time");
        double start = rise(initial, outside, airFlow, source, molarVolume, volume);
        double changes = airFlow * time / volume;
        double lag = changes < 1e-12 ? 1 : -Math.expm1(-changes) / changes;
        return initial + time * start * lag;
    }
}
