package org.tidewright.twin.mechanism.air;

import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.View;

/**
 * Reads the air of a room: a perfect gas, well mixed, at the room's temperature and one atmosphere.
 *
 * @param air body that holds the vapour as water and the carbon dioxide as inorganic carbon
 * @param room whose temperature it has
 * @param volume of the air
 */
public record RoomAir(Body air, Body room, @Unit("m^3") double volume) {
    /** Gas constant, CODATA 2018, exact. */
    private static final double GAS = 8.31446261815324;

    /** Of water, kg/mol, IUPAC. */
    private static final double MOLAR_MASS_OF_WATER = 18.01528e-3;

    /** Pure water near 25 °C, EOS-80: vapour is counted as the volume it had. */
    private static final double FRESH_DENSITY = 997.05;

    private static final double ZERO_CELSIUS = 273.15;
    private static final double ATMOSPHERE = 101_325;

    /** Partial pressure of its vapour. What it cannot hold lies on panes and walls until it can again. */
    public @Unit("Pa") double vapourPressure(View now) {
        return Math.min(
                pressureOf(now, vapour(now.stock(air, Stock.WATER))),
                MoistAir.vapourPressure(now.temperature(room), 1));
    }

    /** Partial pressure of its carbon dioxide. */
    public @Unit("atm") double carbonDioxide(View now) {
        return pressureOf(now, Math.max(0, now.stock(air, Stock.INORGANIC_CARBON))) / ATMOSPHERE;
    }

    /** Liquid water that makes a vapour pressure in this air. */
    public @Unit("m^3") double waterFor(@Unit("Pa") double pressure, @Unit("degC") double temperature) {
        return amountFor(pressure, temperature) * MOLAR_MASS_OF_WATER / FRESH_DENSITY;
    }

    /** Amount of a gas that makes a partial pressure in this air. */
    public @Unit("mol") double amountFor(@Unit("Pa") double pressure, @Unit("degC") double temperature) {
        return pressure * volume / (GAS * (temperature + ZERO_CELSIUS));
    }

    private static double vapour(double liquid) {
        return Math.max(0, liquid) * FRESH_DENSITY / MOLAR_MASS_OF_WATER;
    }

    private double pressureOf(View now, double amount) {
        return amount * GAS * (now.temperature(room) + ZERO_CELSIUS) / volume;
    }
}
