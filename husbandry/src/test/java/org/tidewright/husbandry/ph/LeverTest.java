package org.tidewright.husbandry.ph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.Alkalinity;
import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.testkit.SeededCases;

/** Levers against balances worked by hand. */
class LeverTest {
    private static final double DAY = 86_400;
    private static final AiredWater REEF = AiredWater.of(25.5, 35);
    private static final double EIGHT = Alkalinity.fromGermanDegrees(8);

    /** A water of 8 dKH at rest with the air of its room, 900 ppm, in 200 L. */
    private static PhCase closedRoom() {
        double ph = REEF.phAtRest(EIGHT, 900e-6);
        PhReading reading = new PhReading(EIGHT, 0.1, 35, 0.5, 25.5, 0.3, ph, 0.06);
        return new PhCase(
                reading,
                RoomAir.measured(900e-6, 1e-9),
                Optional.of(GasExchange.of(0.5, 5 / DAY)),
                OptionalDouble.of(0.2));
    }

    /** 30 mmol a day through 0.5 m² at 2 m/day: 0.030 / (2 · 0.5 · 0.02804 · 1023.2) = 1046 µatm; at 5 m/day 418. */
    @Test
    void whatTheTankBreathesStandsAboveTheRoomAsTheWorkedExampleSays() {
        GasExchange exchange = GasExchange.of(0.5, 2 / DAY);
        assertThat(1e6 * exchange.excess(0.030 / DAY, 2 / DAY, REEF)).isCloseTo(1046, within(4.0));
        assertThat(1e6 * exchange.excess(0.030 / DAY, 5 / DAY, REEF)).isCloseTo(418, within(2.0));
    }

    /** One adult in 30 m³/h of outdoor air: 0.018/30 = 600 ppm above it. */
    @Test
    void aPersonAddsToTheRoomAsTheWorkedExampleSays() {
        RoomAir room = RoomAir.withPeople(1, 420e-6, 30.0 / 3600, 22);
        assertThat(1e6 * room.share()).isCloseTo(420 + 600, within(0.1));
    }

    /** 0.7 of the exchange through air of 50 ppm in a room of 900: 305 ppm; 8.20 in place of 7.82 on the total scale. */
    @Test
    void anAbsorberOnTheSkimmerLiftsThePhAsTheWorkedExampleSays() {
        Effect effect = new Lever.SkimmerAir(0.7, 50e-6).on(closedRoom());
        assertThat(1e6 * REEF.share(effect.pressure())).isCloseTo(305, within(0.01));
        assertThat(REEF.under(EIGHT, 305e-6).ph() - REEF.under(EIGHT, 900e-6).ph())
                .isCloseTo(8.20 - 7.82, within(0.01));
        double gain = effect.ph() - closedRoom().reading().ph();
        assertThat(gain).isCloseTo(8.20 - 7.82, within(0.02));
    }

    @Test
    void aWindowTakesWaterAtRestWithTheRoomToRestWithTheAiredRoom() {
        Effect effect = new Lever.Window(500e-6).on(closedRoom());
        assertThat(effect.ph()).isCloseTo(REEF.phAtRest(EIGHT, 500e-6), within(1e-9));
    }

    /** 1 L a day of 40.6 meq/L spares 40.6 mmol: 0.0406 / (5 · 0.5 · 0.02804 · 1023.2 · 0.997) = 568 µatm. */
    @Test
    void limewaterSparesTheCarbonThatBicarbonateBrings() {
        PhCase water = closedRoom();
        Lever.LimewaterInstead half = new Lever.LimewaterInstead(0.5e-3 / DAY, Lever.Replaced.BICARBONATE, 25);
        assertThat(1e6 * (water.pressure() - half.on(water).pressure())).isCloseTo(284, within(2.0));
        Lever.LimewaterInstead asCarbonate = new Lever.LimewaterInstead(0.5e-3 / DAY, Lever.Replaced.CARBONATE, 25);
        assertThat(1e6 * (water.pressure() - asCarbonate.on(water).pressure())).isCloseTo(142, within(1.0));
    }

    @Test
    void moreThanTheBalanceCanFollowStopsAtItsEnd() {
        Effect effect = new Lever.LimewaterInstead(3e-3 / DAY, Lever.Replaced.BICARBONATE, 25).on(closedRoom());
        assertThat(effect.pressure()).isEqualTo(Lever.LEAST_PRESSURE);
    }

    /**
     * 150 g of wet algae a week are 15 g dry and 4.5 g of carbon: 0.375 mol a week, 53.5 mmol a day. The linear tank is
     * stepped through three weeks of days to find what its mornings come to.
     */
    @Test
    void algaeLitAtNightLiftTheMorningAsTheSteppedTankSays() {
        PhCase water = closedRoom();
        Lever.AlgaeAtNight night = new Lever.AlgaeAtNight(0.150 / (7 * DAY), DAY / 2, false);
        assertThat(night.carbon() * DAY).isCloseTo(0.0535, within(0.0001));
        CarbonateState state = water.state();
        double mass = 0.2 * 1023.19;
        // k A K0 rho, mol/(s atm), and carbon that goes with each atmosphere, from a small step of the chemistry.
        double conductance = 5 / DAY * 0.5 * 0.02804 * 1023.2 * 0.9968;
        double rise = REEF.withCarbon(state, 1e-7).partialPressure() - state.partialPressure();
        double dic = 0;
        double morning = 0;
        double evening = 0;
        int steps = 4000;
        for (int day = 0; day < 21; day++) {
            for (int i = 0; i < steps; i++) {
                boolean lit = i < steps / 2;
                double leaving = conductance * dic / 1e-7 * rise / mass;
                double taken = lit ? night.carbon() * 2 / mass : 0;
                dic -= DAY / steps * (taken + leaving);
                morning = i == steps / 2 - 1 ? dic : morning;
            }
            evening = dic;
        }
        assertThat(night.on(water).pressure())
                .isCloseTo(REEF.withCarbon(state, morning).partialPressure(), within(0.4e-6));
        Lever.AlgaeAtNight moved = new Lever.AlgaeAtNight(0.150 / (7 * DAY), DAY / 2, true);
        assertThat(moved.on(water).pressure())
                .isCloseTo(REEF.withCarbon(state, morning - evening).partialPressure(), within(0.4e-6));
    }

    /** In the table at 25.5 °C from 8 to 9 dKH: 0.05 at 420 µatm and 0.04 at 1000. */
    @Test
    void oneMoreDegreeHardlyRaisesThePh() {
        Effect effect = new Lever.MoreAlkalinity(Alkalinity.fromGermanDegrees(1)).on(closedRoom());
        assertThat(effect.leastGain()).isBetween(0.03, 0.06);
        assertThat(effect.pressure()).isEqualTo(closedRoom().pressure());
    }

    @Test
    void everyLeverMovesThePhTheWayItsNameSays() {
        SeededCases.check(300, draw -> {
            AiredWater aired = AiredWater.of(draw.between(22, 29), draw.between(30, 38));
            double alkalinity = Alkalinity.fromGermanDegrees(draw.between(6, 12));
            double room = draw.between(450e-6, 2000e-6);
            double ph = aired.phAtRest(alkalinity, draw.between(400e-6, 2500e-6));
            PhReading reading =
                    new PhReading(alkalinity, 0.1, aired.salinity(), 0.5, aired.temperature(), 0.3, ph, 0.06);
            PhCase water = new PhCase(
                    reading,
                    RoomAir.measured(room, 20e-6),
                    Optional.of(
                            GasExchange.of(draw.between(0.2, 2), GasExchange.Surface.AGITATED, aired.temperature())),
                    OptionalDouble.of(draw.between(0.05, 1)));
            assertRises(new Lever.Window(room * draw.between(0.5, 0.8)).on(water), ph);
            assertRises(new Lever.SkimmerAir(draw.between(0.1, 1), room * 0.5).on(water), ph);
            assertRises(
                    new Lever.LimewaterInstead(
                                    draw.between(0.01e-3, 2e-3) / DAY, draw.oneOf(Lever.Replaced.values()), 22)
                            .on(water),
                    ph);
            assertRises(
                    new Lever.AlgaeAtNight(draw.between(1e-8, 5e-7), DAY / 2, draw.oneOf(true, false)).on(water), ph);
            assertRises(new Lever.MoreAlkalinity(draw.between(0.05, 2)).on(water), ph);
            Effect closed = new Lever.Window(room * 1.2).on(water);
            assertThat(closed.ph()).isLessThan(ph);
        });
    }

    private static void assertRises(Effect effect, double from) {
        assertThat(effect.ph()).isGreaterThan(from);
        assertThat(effect.mostGain()).isGreaterThanOrEqualTo(effect.leastGain());
    }

    @Test
    void withoutASurfaceNobodyGuessesWhatLimewaterDoes() {
        PhCase little = PhCase.of(closedRoom().reading(), RoomAir.ASSUMED);
        Lever lever = new Lever.LimewaterInstead(1e-3 / DAY, Lever.Replaced.CARBONATE, 25);
        assertThat(lever.needs(little)).contains("surface");
        assertThat(lever.needs(closedRoom())).isEmpty();
    }
}
