package org.tidewright.plan.model;

import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.seawater.unit.Unit;

/** The room around the system. */
public record Room(
        @Entry(value = "usual temperature", unit = "degC", least = 0, most = 45)
        Amount temperature,

        @Entry(value = "usual relative humidity", unit = "1", least = 0.05, most = 1)
        Amount humidity,

        @Entry(value = "floor area", unit = "m^2", least = 1, most = 1000)
        Amount floorArea,

        @Entry("weight of walls and floors, which decides how slowly the room follows the weather")
        Construction construction,

        @Entry(value = "heat lost to outdoors per degree of difference", unit = "W/K", least = 1, most = 5000) @Nullable
        Amount heatLoss,

        @Entry(value = "coldest the room gets while its heating works", unit = "degC", least = -20, most = 40) @Nullable
        Amount coldest,

        @Entry(value = "warmest the room gets", unit = "degC", least = 0, most = 50) @Nullable
        Amount warmest,

        @Entry(value = "air in it", unit = "m^3", least = 3, most = 10000) @Nullable
        Amount airVolume,

        @Entry(
                value = "times per hour its air is replaced by outdoor air",
                unit = "1/s",
                least = 0.01 / 3600,
                most = 20.0 / 3600)
        @Nullable
        Amount airChanges,

        @Entry(
                value = "carbon dioxide outdoors, as its share of the moles of dry air",
                unit = "1",
                least = 200e-6,
                most = 1000e-6)
        @Nullable
        Amount carbonDioxideOutdoors,

        @Entry(
                value =
                        "carbon dioxide in its air on the mean of the day, where people are left out; 600 ppm, usual of a"
                                + " lived-in room, where both are",
                unit = "1",
                least = 200e-6,
                most = 10_000e-6)
        @Nullable
        Amount carbonDioxide,

        @Entry(value = "when people are in it, who breathe out carbon dioxide", most = 24)
        List<People> people) {
    /** Carbon dioxide of the air of a room that is lived in, mean of the day, 500 to 1000 ppm; common practice. */
    @Unit("1")
    public static final double LIVED_IN = 600e-6;

    /** Carbon dioxide in its air on the mean of the day where no people are named. */
    public @Unit("1") double usualCarbonDioxide() {
        return carbonDioxide == null ? LIVED_IN : carbonDioxide.in("1");
    }

    /** People who are in the room for the same hours of every day. */
    public record People(
            @Entry(value = "how many", least = 1, most = 200)
            int count,

            @Entry("when they come") LocalTime from,

            @Entry(value = "hours a day they stay", unit = "s", least = 36, most = 86400)
            Amount daily) {}

    /** How heavily a building is built, by its heat capacity per floor area. */
    public enum Construction {
        VERY_LIGHT(80e3),
        LIGHT(110e3),
        MEDIUM(165e3),
        HEAVY(260e3),
        VERY_HEAVY(370e3);

        private final double capacityPerArea;

        Construction(double capacityPerArea) {
            this.capacityPerArea = capacityPerArea;
        }

        /**
         * Heat capacity per floor area.
         *
         * @return heat per floor area and kelvin
         * @source ISO 13790:2008, table 12
         * @validity whole building zones; a single room by its own walls
         */
        @Unit("J/(m^2*K)")
        public double capacityPerArea() {
            return capacityPerArea;
        }
    }
}
