package org.tidewright.husbandry.solution;

import java.util.List;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Where a solution is mixed, kept and dosed.
 *
 * @param water volume of the system
 * @param room temperature of the room it is mixed in, 5 to 35 degC
 * @param coldest temperature of the coldest place its bottle stands in
 * @param perDay volume the plan doses of it a day; 0 where it does not
 * @param uses what the system uses a day, as far as it is known
 */
public record Surroundings(
        @Unit("m^3") double water,
        @Unit("degC") double room,
        @Unit("degC") double coldest,
        @Unit("m^3/d") double perDay,
        List<DailyUse> uses) {
    /** A night may cool a room by so much; common practice. */
    private static final double COLD_NIGHT = 5;

    public Surroundings {
        Bounds.positive(water, "m^3", "volume of the system");
        Bounds.within(room, "degC", 5, 35, "temperature of the room", "is it in fahrenheit?");
        Bounds.within(coldest, "degC", 0, 35, "coldest place the bottle stands in", "is it in fahrenheit?");
        Bounds.notNegative(perDay, "m^3/d", "volume dosed a day");
        uses = List.copyOf(uses);
    }

    /** A room that a night may cool, and nothing known of doses. */
    public static Surroundings of(@Unit("m^3") double water, @Unit("degC") double room) {
        double checked = Bounds.within(room, "degC", 5, 35, "temperature of the room", "is it in fahrenheit?");
        return new Surroundings(water, checked, Math.max(0, checked - COLD_NIGHT), 0, List.of());
    }
}
