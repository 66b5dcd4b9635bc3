package org.tidewright.plan.model;

import org.jspecify.annotations.Nullable;
import org.tidewright.plan.quantity.Amount;

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
        Amount warmest) {

    /** Internal heat capacity classes of a building per floor area, after ISO 13790 table 12. */
    public enum Construction {
        VERY_LIGHT(80e3),
        LIGHT(110e3),
        MEDIUM(165e3),
        HEAVY(260e3),
        VERY_HEAVY(370e3);

        private final double heatCapacityPerArea;

        Construction(double heatCapacityPerArea) {
            this.heatCapacityPerArea = heatCapacityPerArea;
        }

        /** J/(K m²) of floor. */
        public double heatCapacityPerArea() {
            return heatCapacityPerArea;
        }
    }
}
