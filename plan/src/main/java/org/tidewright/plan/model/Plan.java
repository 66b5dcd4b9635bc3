package org.tidewright.plan.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** One system: the whole plan file. */
public record Plan(
        @Entry(value = "version of this format", least = 1, most = 1)
        int tidewrightPlan,

        @Entry("name of the system") String name,

        @Entry("a sentence about it") @Nullable String about,

        @Entry("units shown to the keeper") UnitSystem units,

        @Entry("the water as it is kept") WaterKept water,

        @Entry("water mixed for water changes") @Nullable NewWater newWater,

        @Entry("the room it stands in") Room room,

        @Entry("the display tank") Display display,

        @Entry("how water leaves the display; left out when there is no sump") @Nullable
        Overflow overflow,

        @Entry("the sump; left out when there is none") @Nullable
        Sump sump,

        @Entry("how water comes back to the display") @Nullable
        ReturnLine returnLine,

        @Entry("a refugium that stands apart and is fed by the return pump") @Nullable
        Refugium refugium,

        @Entry("replacement of evaporated water") @Nullable TopOff topOff,

        @Entry(value = "skimmers, reactors, filters", most = 40)
        List<Gear> gear,

        @Entry(value = "heaters", most = 12) List<Heater> heaters,

        @Entry(value = "chillers", most = 12) List<Chiller> chillers,

        @Entry(value = "fans that blow over the water to cool it", most = 20)
        List<Fan> fans,

        @Entry(value = "lights", most = 20) List<Light> lights,

        @Entry(value = "pumps that only move water inside a vessel", most = 20)
        List<CirculationPump> circulationPumps,

        @Entry(value = "air pumps with their stones", most = 12)
        List<AirPump> airPumps,

        @Entry(value = "what is fed, and when", most = 40) List<Feeding> feeding,

        @Entry(value = "solutions that are dosed", most = 40)
        List<Dosing> dosing,

        @Entry(value = "water that is changed", most = 12) List<WaterChange> waterChanges,

        @Entry("power when the mains fail") @Nullable Backup backup,

        @Entry("who breathes here") @Nullable Inhabitants inhabitants,

        @Entry("what it stands on") @Nullable Stand stand,

        @Entry("values between which the water is to be held; common practice where left out") @Nullable
        Targets targets,

        @Entry("bounds that must hold; common practice where left out") @Nullable
        Limits limits,

        @Entry("for a quarantine tank, whom it serves and how long fish are watched in it") @Nullable
        Quarantine quarantine) {

    /** Whether water falls from the display to a sump and is pumped back. */
    public boolean hasSump() {
        return sump != null && overflow != null && returnLine != null;
    }
}
