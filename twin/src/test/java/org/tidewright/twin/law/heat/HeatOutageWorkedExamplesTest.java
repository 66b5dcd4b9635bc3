package org.tidewright.twin.law.heat;

import static org.tidewright.twin.law.heat.HeatWorkedExamplesTest.WORKED;
import static org.tidewright.twin.law.heat.WorkedTank.RUNNING;
import static org.tidewright.twin.law.heat.WorkedTank.STILL;
import static org.tidewright.twin.law.heat.WorkedTank.always;
import static org.tidewright.twin.law.heat.WorkedTank.humid;
import static org.tidewright.twin.law.heat.WorkedTank.relaxing;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.tidewright.plan.model.Room;
import org.tidewright.seawater.heat.MoistAir;
import org.tidewright.testkit.Close;

/**
 * Worked examples that integrate the heat balance in time; the laws are those of {@link WorkedTank}: Carrier's
 * equation, Bowen 1926, Churchill and Chu 1975, Stefan-Boltzmann, lid by common practice. Tolerance 1 %, as the file
 * says.
 */
class HeatOutageWorkedExamplesTest {
    private static final DoubleUnaryOperator DRY = always(0); // under a lid the room's vapour does not matter

    private static void check(String id, double got) {
        Close.relative(WORKED.row("id", id), "value", got, 1e-2);
    }

    @Test
    void aHotRoomReachesTheWaterAsWorkedOut() {
        var hot = always(35);
        check("E5.18", STILL.withLid().under(0, hot, DRY).hoursTo(30));
        check("E5.19", STILL.under(0, hot, humid(hot, 0.5)).hoursTo(30));
        var warming = relaxing(23, 35, 4);
        check("E5.20", STILL.under(0, warming, humid(warming, 0.5)).hoursTo(30));
        check("E5.44a", STILL.under(0, warming, humid(warming, 0.5)).hoursTo(28));
        check("E5.21", STILL.withLid().under(0, warming, DRY).hoursTo(30));
    }

    @Test
    void aFanHelpsInDryAirAndHardlyInHumidAirAsWorkedOut() {
        var warming = relaxing(23, 35, 4);
        var moistureKept = always(MoistAir.vapourPressure(23, 0.5));
        check("E5.22a", STILL.under(0, warming, moistureKept).hoursTo(30));
        check("E5.22b", STILL.withFan().under(0, warming, moistureKept).temperatureAfter(200));
        check("E5.22c", STILL.withFan().under(0, warming, humid(warming, 0.5)).hoursTo(30));
    }

    @Test
    void aColdRoomReachesTheWaterAsWorkedOut() {
        var cold = always(10);
        check("E5.23", STILL.under(0, cold, humid(cold, 0.6)).hoursTo(20));
        check("E5.24", STILL.withLid().under(0, cold, DRY).hoursTo(20));
        var cooling = relaxing(21, 10, 8);
        check("E5.25", STILL.under(0, cooling, humid(cooling, 0.6)).hoursTo(20));
        check("E5.44b", STILL.under(0, cooling, humid(cooling, 0.6)).hoursTo(23));
        check("E5.26", STILL.withLid().under(0, cooling, DRY).hoursTo(20));
        check("E5.27", STILL.withLid().behindFoam().under(0, cooling, DRY).hoursTo(20));
    }

    @Test
    void aHeaterStuckOnEndsAsWorkedOut() {
        var room = always(23);
        var vapour = humid(room, 0.5);
        check("E5.29a", RUNNING.under(100 + 60, room, vapour).temperatureAfter(400));
        check("E5.29b", RUNNING.under(150 + 60, room, vapour).temperatureAfter(400));
        check("E5.29c", RUNNING.under(200 + 60, room, vapour).temperatureAfter(400));
        check("E5.29d", RUNNING.under(300 + 60, room, vapour).hoursTo(30));
        check("E5.29e", RUNNING.under(500 + 60, room, vapour).hoursTo(30));
        check("E5.45a", RUNNING.under(150 + 125, room, vapour).temperatureAfter(400));
        var warm = always(26);
        check("E5.45b", RUNNING.under(150 + 125, warm, humid(warm, 0.5)).temperatureAfter(400));
        check("E5.45c", RUNNING.under(125, warm, humid(warm, 0.5)).temperatureAfter(400));
    }

    /** Room and tank together: 12 m^2 of medium construction, 40 W/K, 0 degC outside, from 21 degC; 50 % humidity. */
    @Test
    void aRoomWithoutHeatingTakesTheTankWithItAsWorkedOut() {
        double capacity = 12 * Room.Construction.MEDIUM.capacityPerArea();
        double water = 25.5;
        double room = 21;
        double step = 20;
        double seconds = 0;
        while (water > 20) {
            // the midpoint rule
            double waterMiddle = water + step / 2 * waterRate(water, room);
            double roomMiddle = room + step / 2 * roomRate(capacity, water, room);
            water += step * waterRate(waterMiddle, roomMiddle);
            room += step * roomRate(capacity, waterMiddle, roomMiddle);
            seconds += step;
        }
        check("E5.39", seconds / 3600);
        check("E5.40", room);
    }

    private static double waterRate(double water, double room) {
        return -STILL.loss(water, room, MoistAir.vapourPressure(room, 0.5)) / WorkedTank.CAPACITY;
    }

    private static double roomRate(double capacity, double water, double room) {
        double heat = STILL.sensibleLoss(water, room, MoistAir.vapourPressure(room, 0.5));
        return RoomHeat.rate(capacity, 40, room, 0, heat);
    }
}
