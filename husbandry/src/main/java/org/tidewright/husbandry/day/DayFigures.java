package org.tidewright.husbandry.day;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.forecast.UsualDay;

/**
 * What is told of a day.
 *
 * @param ph total scale
 * @param water carbon dioxide of the water, µatm
 * @param room carbon dioxide of the room, µatm
 */
public record DayFigures(
        UsualDay.Day day,
        Extreme ph,
        Extreme oxygen,
        Extreme saturation,
        Extreme temperature,
        Extreme water,
        Extreme room,
        @Unit("dKH") double alkalinity) {
    static DayFigures of(UsualDay.Day day) {
        return new DayFigures(
                day,
                Extreme.of(day.course(), Quantity.PH),
                Extreme.of(day.course(), Quantity.OXYGEN),
                Extreme.of(day.course(), Quantity.OXYGEN_SATURATION),
                Extreme.of(day.course(), Quantity.TEMPERATURE),
                Extreme.of(day.course(), Quantity.CARBON_DIOXIDE),
                Extreme.of(day.course(), Quantity.CARBON_DIOXIDE_OF_ROOM),
                Extreme.of(day.course(), Quantity.ALKALINITY).mean());
    }
}
