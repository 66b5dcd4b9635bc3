package org.tidewright.husbandry.ph;

import org.tidewright.plan.model.Room;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.carbonate.RoomVentilation;

/**
 * The air the water is under.
 *
 * @param share of carbon dioxide in the dry moles
 * @param logError one standard error of its logarithm: 0.1 is 10 %
 * @param detail where it is from, in words
 */
public record RoomAir(@Unit("1") double share, @Unit("1") double logError, Basis basis, String detail) {
    /** Nobody measured it: a lived-in room, 500 to 1000 ppm on the mean of the day in nine of ten. */
    public static final RoomAir ASSUMED = new RoomAir(
            Room.LIVED_IN,
            Math.log(1000.0 / 500) / (2 * 1.645),
            Basis.COMMON_PRACTICE,
            "a lived-in room, 500 to 1000 ppm on the mean of the day");

    /** Error of what a plan states without one, as a share; from memory. */
    private static final double OF_A_PLAN = 0.15;

    /** Error of a room reckoned from its people, as a share; from memory. */
    private static final double WITH_PEOPLE = 0.2;

    private static final double DAY = 86_400;

    /** Carbon dioxide of an adult who rests; from memory, 0.018 m³/h. */
    private static final double RESTING = 0.018 / 3600;

    /** Refuses what cannot be meant. */
    public RoomAir {
        Bounds.within(share, "1", 100e-6, 0.05, "share of carbon dioxide in the room's air", "is it in ppm?");
        Bounds.within(logError, "1", 0, 2, "error of the room's carbon dioxide, as a share of it");
    }

    /** Standard error of a household meter of carbon dioxide; from memory, claims of 50 ppm and 3 % are usual. */
    @Unit("1")
    public static final double METER_ERROR = 50e-6;

    /** As a household meter showed it. */
    public static RoomAir measured(@Unit("1") double share) {
        return measured(share, METER_ERROR);
    }

    /** What a plan says of its room: with the people it names, else its mean of the day, else what is usual. */
    public static RoomAir of(Room room) {
        double outdoors = room.carbonDioxideOutdoors() == null
                ? OutdoorAir.SHARE
                : room.carbonDioxideOutdoors().in("1");
        if (room.carbonDioxide() != null) {
            double error = Math.max(
                    room.carbonDioxide().doubtIn("1") / room.carbonDioxide().in("1"), OF_A_PLAN);
            return new RoomAir(room.carbonDioxide().in("1"), error, Basis.YOUR_PLAN, "the room’s mean of the day");
        }
        if (room.people().isEmpty() || room.airVolume() == null || room.airChanges() == null) {
            return ASSUMED;
        }
        double personDays = room.people().stream()
                .mapToDouble(people -> people.count() * people.daily().in("s") / DAY)
                .sum();
        double airFlow = room.airVolume().in("m^3") * room.airChanges().in("1/s");
        double share = outdoors + personDays * RESTING / airFlow;
        return new RoomAir(
                share,
                WITH_PEOPLE,
                Basis.YOUR_PLAN,
                "mean of the day with the plan’s people, 18 L of carbon dioxide an hour"
                        + " each at rest, in its changes of air");
    }

    /** As a meter showed it. */
    public static RoomAir measured(@Unit("1") double share, @Unit("1") double standardError) {
        return new RoomAir(share, standardError / share, Basis.YOUR_LOG, "as your meter showed it");
    }

    /**
     * Where the air settles with people at rest in it.
     *
     * <pre>C = C_out + n G / Q</pre>
     *
     * @param outdoors share of carbon dioxide there
     * @param airFlow Q of outdoor air through the room
     * @param temperature of the room
     */
    public static RoomAir withPeople(
            int people, @Unit("1") double outdoors, @Unit("m^3/s") double airFlow, @Unit("degC") double temperature) {
        double mole = RoomVentilation.molarVolume(temperature, MoistAir.STANDARD_PRESSURE);
        double share = RoomVentilation.settled(outdoors, airFlow, people * RESTING / mole, mole);
        return new RoomAir(
                share,
                WITH_PEOPLE,
                Basis.FROM_MEMORY,
                "people at rest, 18 L of carbon dioxide an hour each, in settled air");
    }
}
