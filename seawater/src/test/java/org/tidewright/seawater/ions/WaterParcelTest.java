package org.tidewright.seawater.ions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.BoronRatio;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.carbonate.TotalConcentrations;
import org.tidewright.seawater.heat.SpecificHeat;
import org.tidewright.testkit.Draw;
import org.tidewright.testkit.ReferenceTable;
import org.tidewright.testkit.SeededCases;

class WaterParcelTest {
    private static WaterParcel parcel(double mass, double temperature, double salinity, double alkalinity, double dic) {
        return new WaterParcel(
                mass,
                temperature,
                salinity,
                alkalinity,
                dic,
                TotalConcentrations.ofSeawater(salinity, BoronRatio.UPPSTROM_1974));
    }

    /** By hand: a tenth changed. S 35 and 33, 0.9 x 35 + 0.1 x 33 = 34.8; alkalinity 2.2 and 3.2 give 2.3 mmol/kg. */
    @Test
    void aWaterChangeMixesByMass() {
        WaterParcel tank = parcel(90, 25, 35, 2.2e-3, 2.0e-3);
        WaterParcel fresh = parcel(10, 25, 33, 3.2e-3, 2.9e-3);
        WaterParcel mixed = tank.mixedWith(fresh);
        assertThat(mixed.mass()).isEqualTo(100);
        assertThat(mixed.practicalSalinity()).isCloseTo(34.8, within(1e-12));
        assertThat(mixed.alkalinity()).isCloseTo(2.3e-3, within(1e-15));
        assertThat(mixed.inorganicCarbon()).isCloseTo(2.09e-3, within(1e-15));
        assertThat(mixed.temperature()).isCloseTo(25, within(1e-12));
    }

    /** By hand, with equal specific heats: 90 kg of 25 degC and 10 kg of 15 degC are 24 degC. */
    @Test
    void warmAndColdMeetByHeat() {
        assertThat(parcel(90, 25, 35, 2.2e-3, 2e-3)
                        .mixedWith(parcel(10, 15, 35, 2.2e-3, 2e-3))
                        .temperature())
                .isCloseTo(24, within(0.01));
    }

    /**
     * PyCO2SYS 1.8.3.4: alkalinity 2400 and DIC 2088 umol/kg have pH 8.050502. The same water out of two halves, DIC 2000
     * and 2176, whose pHs are not its mean.
     */
    @Test
    void thePhOfAMixtureFollowsFromItsCarbonAndIsNotTheMean() {
        var row = ReferenceTable.read(WaterParcelTest.class, "/reference/carbonate/speciation_uppstrom.csv")
                .row("row", "2");
        WaterParcel less = parcel(1, 25, 35, 2400e-6, 2000e-6);
        WaterParcel more = parcel(1, 25, 35, 2400e-6, 2176e-6);
        double ph = less.mixedWith(more).state().ph();
        assertThat(ph).isCloseTo(row.number("ph_total"), within(1e-9));
        double mean = (less.state().ph() + more.state().ph()) / 2;
        assertThat(Math.abs(ph - mean)).isGreaterThan(0.005);
    }

    @Test
    void nothingIsLostAndTheOrderDoesNotMatter() {
        SeededCases.check(draw -> {
            List<WaterParcel> parcels = new ArrayList<>();
            int count = draw.whole(2, 5);
            for (int i = 0; i < count; i++) {
                parcels.add(drawn(draw));
            }
            WaterParcel mixed = WaterParcel.mixed(parcels);
            double mass = parcels.stream().mapToDouble(WaterParcel::mass).sum();
            assertThat(mixed.mass()).isCloseTo(mass, within(1e-12 * mass));
            assertThat(mixed.mass() * mixed.alkalinity())
                    .isCloseTo(
                            parcels.stream()
                                    .mapToDouble(each -> each.mass() * each.alkalinity())
                                    .sum(),
                            within(1e-14 * mass));
            assertThat(mixed.mass() * mixed.inorganicCarbon())
                    .isCloseTo(
                            parcels.stream()
                                    .mapToDouble(each -> each.mass() * each.inorganicCarbon())
                                    .sum(),
                            within(1e-14 * mass));
            assertThat(mixed.mass() * mixed.totals().calcium())
                    .isCloseTo(
                            parcels.stream()
                                    .mapToDouble(
                                            each -> each.mass() * each.totals().calcium())
                                    .sum(),
                            within(1e-14 * mass));
            Collections.reverse(parcels);
            WaterParcel reversed = WaterParcel.mixed(parcels);
            assertThat(reversed.practicalSalinity()).isCloseTo(mixed.practicalSalinity(), within(1e-11));
            // Specific heat depends a little on temperature, so the order moves the last millikelvins.
            assertThat(reversed.temperature()).isCloseTo(mixed.temperature(), within(0.02));
        });
    }

    /** The heat given up by the warm is that taken by the cold, within the change of specific heat over the step. */
    @Test
    void heatIsKept() {
        SeededCases.check(draw -> {
            WaterParcel one = drawn(draw);
            WaterParcel other = drawn(draw);
            double mixed = one.mixedWith(other).temperature();
            double given = one.mass()
                    * SpecificHeat.ofSeawater(one.temperature(), one.practicalSalinity())
                    * (mixed - one.temperature());
            double taken = other.mass()
                    * SpecificHeat.ofSeawater(other.temperature(), other.practicalSalinity())
                    * (other.temperature() - mixed);
            assertThat(given).isCloseTo(taken, within(1e-7 * Math.max(1, Math.abs(given) + 4000)));
        });
    }

    @Test
    void toppingOffWhatEvaporatedGivesTheSameWaterBack() {
        SeededCases.check(draw -> {
            WaterParcel tank = drawn(draw);
            double vapour = tank.mass() * draw.between(0.001, 0.5);
            WaterParcel back = tank.evaporated(vapour).diluted(vapour);
            assertThat(back.mass()).isCloseTo(tank.mass(), within(1e-9));
            assertThat(back.practicalSalinity()).isCloseTo(tank.practicalSalinity(), within(1e-11));
            assertThat(back.alkalinity()).isCloseTo(tank.alkalinity(), within(1e-15));
            assertThat(back.totals().borate()).isCloseTo(tank.totals().borate(), within(1e-16));
            assertThat(back.temperature()).isEqualTo(tank.temperature());
        });
    }

    /** By hand: half sea, half pure water: everything halves. */
    @Test
    void dilutionHalvesWhatIsDissolved() {
        WaterParcel half = parcel(1, 25, 36, 2.4e-3, 2e-3).diluted(1);
        assertThat(half.practicalSalinity()).isCloseTo(18, within(1e-12));
        assertThat(half.alkalinity()).isCloseTo(1.2e-3, within(1e-15));
        assertThat(half.state().alkalinity()).isEqualTo(half.alkalinity());
    }

    /** EOS-80: 100 L of S 35 at 25 degC weigh 102.334 kg. */
    @Test
    void volumeAndMassGoTogether() {
        double mass = WaterParcel.massOf(0.1, 25, 35);
        assertThat(mass).isCloseTo(102.334, within(1e-3));
        assertThat(parcel(mass, 25, 35, 2.3e-3, 2e-3).volume()).isCloseTo(0.1, within(1e-15));
    }

    @Test
    void whatCannotBeMeantIsRefused() {
        assertThatThrownBy(() -> parcel(0, 25, 35, 2e-3, 2e-3)).hasMessageContaining("mass of water");
        assertThatThrownBy(() -> parcel(1, 25, 35, 2300, 2e-3)).hasMessageContaining("umol/kg");
        assertThatThrownBy(() -> parcel(1, 25, 35, 2e-3, 2e-3).evaporated(1)).hasMessageContaining("evaporated");
        assertThatThrownBy(() -> WaterParcel.mixed(List.of())).hasMessageContaining("no water to mix");
    }

    private static WaterParcel drawn(Draw draw) {
        double salinity = draw.between(0, 45);
        double alkalinity = draw.between(1e-4, 5e-3);
        var state = CarbonateSystem.at(25, salinity).fromAlkalinityAndCarbon(alkalinity, alkalinity);
        return parcel(draw.between(0.1, 500), draw.between(5, 35), salinity, alkalinity, state.inorganicCarbon());
    }
}
