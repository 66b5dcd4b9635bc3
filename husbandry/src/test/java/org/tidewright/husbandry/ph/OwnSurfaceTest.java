package org.tidewright.husbandry.ph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.tidewright.plan.Examples;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

/** What the example plans say of water and air. */
class OwnSurfaceTest {
    private static final double WEEK = 7 * 86_400;
    private static final Plan HARBOUR = plan("harbour-room");
    private static final Plan NANO = plan("window-nano");

    private static Plan plan(String name) {
        return ((PlanReading.Sound) PlanText.read(Examples.text(name))).plan();
    }

    /** The nano is 60 by 35 cm and no more. */
    @Test
    void theSurfaceIsThatOfAllOpenVessels() {
        assertThat(OwnSurface.area(NANO)).isCloseTo(0.21, within(1e-12));
        double display =
                HARBOUR.display().length().in("m") * HARBOUR.display().width().in("m");
        assertThat(OwnSurface.area(HARBOUR)).isGreaterThan(display + 0.32 * 0.30);
    }

    @Test
    void whatMovesItIsSeenInThePlan() {
        assertThat(OwnSurface.moved(HARBOUR)).isEqualTo(GasExchange.Surface.AGITATED_WITH_SKIMMER);
        assertThat(OwnSurface.moved(NANO)).isEqualTo(GasExchange.Surface.RIPPLED);
        assertThat(OwnSurface.drawsRoomAir(HARBOUR)).isTrue();
        assertThat(OwnSurface.hasSkimmer(NANO)).isFalse();
    }

    /** 300 g thinned to 180 g every 14 days: 60 g a week. */
    @Test
    void algaeAreHarvestedAsThePlanSays() {
        assertThat(WEEK * OwnSurface.harvest(HARBOUR)).isCloseTo(0.060, within(1e-12));
        assertThat(OwnSurface.harvest(NANO)).isZero();
    }

    /** Velocities of oxygen √(3 8) = 4.90 and √(6 23) = 11.75 m a day: 1 − 4.90/11.75 = 0.583. */
    @Test
    void aSkimmerTakesThePartThatItAdds() {
        assertThat(GasExchange.skimmerPart()).isCloseTo(0.583, within(5e-4));
    }

    /**
     * Two people for 1.5 h and three for 5 h are 18 h of a person a day, 0.75 of one: 0.75 0.018 m³/h over 60 m³ 0.8 /h = 281
     * ppm over 425.
     */
    @Test
    void theRoomsAirFollowsFromItsPeople() {
        RoomAir room = RoomAir.of(HARBOUR.room());
        assertThat(1e6 * room.share()).isCloseTo(425 + 281.25, within(0.1));
        assertThat(room.basis()).isEqualTo(Basis.YOUR_PLAN);
        assertThat(RoomAir.of(NANO.room())).isEqualTo(RoomAir.ASSUMED);
        assertThat(RoomAir.measured(800e-6).logError()).isCloseTo(0.0625, within(1e-12));
    }
}
