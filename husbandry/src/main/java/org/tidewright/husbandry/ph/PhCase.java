package org.tidewright.husbandry.ph;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.seawater.unit.Unit;

/**
 * A water, the air it is under, and what else is known of it.
 *
 * @param exchange empty where nothing is known of the surface
 * @param volume m³ of the system; empty where it is not known
 */
public record PhCase(PhReading reading, RoomAir room, Optional<GasExchange> exchange, OptionalDouble volume) {
    /** Of which nothing more is known. */
    public static PhCase of(PhReading reading, RoomAir room) {
        return new PhCase(reading, room, Optional.empty(), OptionalDouble.empty());
    }

    AiredWater water() {
        return reading.water();
    }

    CarbonateState state() {
        return water().reading(reading.alkalinity(), reading.ph());
    }

    @Unit("atm")
    double pressure() {
        return state().partialPressure();
    }

    /** Against the room's air. */
    public Side againstRoom() {
        return reading.carbonDioxide().against(water().pressure(room.share()), room.logError());
    }

    /** Against outdoor air. */
    public Side againstOutdoors() {
        return reading.carbonDioxide().against(water().pressure(OutdoorAir.SHARE), 0);
    }

    /** What a meter would read if the water came to rest with the room's air. */
    public @Unit("1") double phInRoom() {
        return water().phAtRest(reading.alkalinity(), room.share());
    }

    /** What a meter would read if the water came to rest with outdoor air. */
    public @Unit("1") double phOutdoors() {
        return water().phAtRest(reading.alkalinity(), OutdoorAir.SHARE);
    }

    /** Below it a reading tells that the water holds more carbon dioxide than the room's air would give it. */
    public @Unit("1") double phThatTellsMore() {
        return phAtShift(1);
    }

    /** Above it a reading tells that the water holds less. */
    public @Unit("1") double phThatTellsLess() {
        return phAtShift(-1);
    }

    private double phAtShift(int side) {
        double doubt = Math.hypot(reading.carbonDioxide().logError(), room.logError());
        double pressure = water().pressure(room.share()) * Math.exp(side * WaterCarbonDioxide.NINETY_PER_CENT * doubt);
        return AiredWater.meter(water().under(reading.alkalinity(), pressure));
    }

    /**
     * The effect of a change of the air, whose size hangs on what the room's air is now.
     *
     * @param change of the share of carbon dioxide, by the room's
     */
    Effect ofAir(DoubleUnaryOperator change) {
        double spread = Math.exp(WaterCarbonDioxide.NINETY_PER_CENT * room.logError());
        double[] rooms = {room.share() / spread, room.share(), room.share() * spread};
        double[] after = new double[rooms.length];
        for (int i = 0; i < rooms.length; i++) {
            double moved = change.applyAsDouble(rooms[i]);
            double by = Math.signum(moved) * water().pressure(Math.abs(moved));
            after[i] = Math.max(Lever.LEAST_PRESSURE, pressure() + by);
        }
        return effect(after[0], after[1], after[2]);
    }

    /** The effect of coming to a pressure: at least, usual, at most of what is done. */
    Effect effect(double least, double usual, double most) {
        return new Effect(usual, ph(usual), ph(least) - reading.ph(), ph(most) - reading.ph(), most);
    }

    private double ph(double pressure) {
        return AiredWater.meter(water().under(reading.alkalinity(), pressure));
    }

    /** The same, part by part, with the test of two cups. */
    public PhReport report(List<Lever> levers) {
        return new PhWords(this, levers).report();
    }

    /** What holds the pH where it is, and what each lever would do. */
    public Advice advice(List<Lever> levers) {
        return new PhWords(this, levers).advice();
    }
}
