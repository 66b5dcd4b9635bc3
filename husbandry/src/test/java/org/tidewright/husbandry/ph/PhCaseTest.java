package org.tidewright.husbandry.ph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.seawater.carbonate.Alkalinity;

class PhCaseTest {
    private static final double DAY = 86_400;
    private static final double EIGHT = Alkalinity.fromGermanDegrees(8);

    /** A water at rest with air of so many ppm, in a room of so many, read with an error. */
    private static PhCase water(double ppm, double roomPpm, double phError) {
        double ph = AiredWater.of(25.5, 35).phAtRest(EIGHT, ppm * 1e-6);
        PhReading reading = new PhReading(EIGHT, 0.1, 35, 0.5, 25.5, 0.3, ph, phError);
        return new PhCase(
                reading,
                RoomAir.measured(roomPpm * 1e-6, 30e-6),
                Optional.of(GasExchange.of(0.7, GasExchange.Surface.AGITATED, 25.5)),
                OptionalDouble.of(0.4));
    }

    private static String lead(PhCase water) {
        return text(water.advice(List.of()).lead());
    }

    private static String text(Sentence sentence) {
        return sentence.text(UnitSystem.METRIC).replace('\u00a0', ' ').replace("\u202f", "");
    }

    @Test
    void aTankThatBreathesMoreThanItLetsGoAsksForAirOverTheWater() {
        assertThat(lead(water(1200, 500, 0.06)))
                .startsWith("Move more air over the water: it holds the carbon dioxide of air with 1200 ppm")
                .contains("the tank's own breath");
    }

    @Test
    void aStuffyRoomAsksForAWindow() {
        PhCase water = water(1600, 1200, 0.02);
        assertThat(water.againstRoom()).isEqualTo(Side.MORE);
        assertThat(lead(water)).startsWith("Open a window, or lead outdoor air to the skimmer");
    }

    @Test
    void aStuffyRoomThatTheReadingCannotPartFromTheTankAsksForFresherAir() {
        PhCase water = water(1250, 1200, 0.06);
        assertThat(water.againstRoom()).isEqualTo(Side.CANNOT_TELL);
        assertThat(water.againstOutdoors()).isEqualTo(Side.MORE);
        assertThat(lead(water)).startsWith("Give the water fresher air").contains("not good enough to say");
    }

    @Test
    void waterThatHoldsLessThanTheRoomIsLeftToTheAir() {
        assertThat(lead(water(250, 700, 0.06))).startsWith("Add nothing to move this pH");
    }

    @Test
    void aReadingAtRestWithFreshAirIsLeftAlone() {
        assertThat(lead(water(425, 450, 0.06))).startsWith("Leave the pH alone: it is what fresh air gives.");
    }

    @Test
    void aPoorReadingIsNotActedOn() {
        PhCase water = water(640, 600, 0.2);
        assertThat(water.againstOutdoors()).isEqualTo(Side.CANNOT_TELL);
        assertThat(lead(water))
                .startsWith("Do not act on this reading: it is not good enough to say")
                .contains("test with two cups");
    }

    @Test
    void hardlyAnyCarbonDioxideIsMeasuredAgain() {
        assertThat(lead(water(60, 600, 0.06))).startsWith("Measure pH and alkalinity again before you act");
    }

    @Test
    void aReadingBeyondTheToldOnesTells() {
        PhCase unsure = water(640, 600, 0.06);
        for (double off : new double[] {-0.005, 0.005}) {
            PhCase below = withPh(unsure, unsure.phThatTellsMore() + off);
            assertThat(below.againstRoom()).isEqualTo(off < 0 ? Side.MORE : Side.CANNOT_TELL);
            PhCase above = withPh(unsure, unsure.phThatTellsLess() + off);
            assertThat(above.againstRoom()).isEqualTo(off < 0 ? Side.CANNOT_TELL : Side.LESS);
        }
    }

    private static PhCase withPh(PhCase water, double ph) {
        PhReading r = water.reading();
        return PhCase.of(
                new PhReading(
                        r.alkalinity(),
                        r.alkalinityError(),
                        r.salinity(),
                        r.salinityError(),
                        r.temperature(),
                        r.temperatureError(),
                        ph,
                        r.phError()),
                water.room());
    }

    @Test
    void everyLeverIsToldWithItsNumbersAndItsCautions() {
        List<Lever> levers = List.of(
                new Lever.Window(500e-6),
                new Lever.SkimmerAir(0.5, OutdoorAir.SHARE),
                new Lever.SkimmerAir(0.5, 50e-6),
                new Lever.LimewaterInstead(1e-3 / DAY, Lever.Replaced.BICARBONATE, 23),
                new Lever.AlgaeAtNight(0.1 / (7 * DAY), DAY / 2, false),
                new Lever.MoreAlkalinity(Alkalinity.fromGermanDegrees(1)));
        Advice advice = water(1200, 900, 0.06).advice(levers);
        List<String> remarks = advice.remarks().stream().map(PhCaseTest::text).toList();
        assertThat(remarks).hasSize(2 + levers.size() + 1);
        assertThat(remarks.get(2)).startsWith("A room aired until it is at 500 ppm would bring the reading to ");
        assertThat(remarks.get(4)).startsWith("An absorber before the skimmer, its air at 50 ppm");
        assertThat(remarks.get(5))
                .startsWith("Saturated limewater, 1 L a day in place of as much bicarbonate, would bring");
        assertThat(remarks.get(7)).startsWith("Do not chase pH with buffers").contains("a rise of 1 dKH lifts");
        assertThat(remarks).allSatisfy(remark -> assertThat(remark).endsWith("."));
        assertThat(advice.cautions())
                .anySatisfy(caution -> assertThat(caution).contains("caustic", "doctor"))
                .anySatisfy(caution -> assertThat(caution).contains("frost"))
                .anySatisfy(caution -> assertThat(caution).contains("Absorbent"));
        assertThat(advice.sources())
                .anySatisfy(source -> assertThat(source.detail()).contains("2023"));
        assertThat(advice.figures())
                .allSatisfy(told -> assertThat(advice.sources())
                        .anySatisfy(source -> assertThat(source.key()).isEqualTo(told.source())));
    }

    @Test
    void whatNoProbeShowsAndWhatNoBalanceFollowsIsToldSo() {
        PhCase balanced = water(1200, 500, 0.06);
        String small = text(
                balanced.advice(List.of(new Lever.Window(500e-6))).remarks().get(2));
        assertThat(small).endsWith("a difference that no probe shows.");
        PhCase low = water(250, 700, 0.06);
        String far = text(
                low.advice(List.of(new Lever.SkimmerAir(1, 50e-6))).remarks().get(2));
        assertThat(far).contains("further than a balance can follow");
        String blind = text(PhCase.of(low.reading(), RoomAir.ASSUMED)
                .advice(List.of(new Lever.AlgaeAtNight(1e-7, DAY / 2, true)))
                .remarks()
                .get(2));
        assertThat(blind).contains("cannot be told without the area of the surface");
    }

    @Test
    void anElectrodeIsThreeHundredthsAndWhatItHasDriftedByOff() {
        // 0.03, a step of 0.01 and 0.05 of bias: √(0.03² + 0.01²/12 + 0.05²); after half a year 0.05 + 6 × 0.02.
        assertThat(Electrode.fresh().standardError(8)).isCloseTo(0.0584, within(1e-4));
        assertThat(new Electrode(180 * DAY).bias(8)).isCloseTo(0.17, within(1e-12));
    }

    @Test
    void everyLeverHasItsOwnCautionsAndTheCupsShareTheLetters() {
        PhReport report = water(1200, 900, 0.06)
                .report(List.of(
                        new Lever.Window(500e-6), new Lever.SkimmerAir(0.5, 50e-6), new Lever.MoreAlkalinity(0.3)));
        assertThat(report.levers().get(0).cautions()).singleElement().asString().contains("frost");
        assertThat(report.levers().get(1).cautions()).singleElement().asString().contains("Absorbent");
        assertThat(report.levers().get(2).cautions()).isEmpty();
        List<String> letters = report.sources().stream().map(Source::key).toList();
        assertThat(letters).doesNotHaveDuplicates();
        assertThat(report.cups().figures())
                .allSatisfy(told -> assertThat(letters).contains(told.source()));
    }

    @Test
    void twoCupsTellRoomFromTank() {
        assertThat(new CupTest(8.00, 8.20, 8.03).finding()).isEqualTo(CupTest.Finding.ROOM_AIR);
        assertThat(new CupTest(8.00, 8.20, 8.12).finding()).isEqualTo(CupTest.Finding.TANK);
        assertThat(new CupTest(8.20, 8.24, 8.18).finding()).isEqualTo(CupTest.Finding.ALKALINITY_OR_ELECTRODE);
        assertThat(new CupTest(8.00, 8.02, 8.15).finding()).isEqualTo(CupTest.Finding.REPEAT);
        assertThat(text(new CupTest(8.00, 8.20, 8.03).told())).contains("rose by 0.2");
    }

    @Test
    void theCupsAreToldWhatToComeTo() {
        PhCase water = water(1000, 800, 0.06);
        Advice advice = CupTest.instruction(water);
        assertThat(advice.figures().get(0).figure().value()).isEqualTo(water.phOutdoors());
        assertThat(advice.figures().get(1).figure().value()).isEqualTo(water.phInRoom());
        assertThat(water.phOutdoors()).isGreaterThan(water.phInRoom());
        assertThat(text(advice.lead())).startsWith("Fill two clean cups");
    }
}
