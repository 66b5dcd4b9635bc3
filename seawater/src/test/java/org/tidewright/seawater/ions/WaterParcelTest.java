package org.tidewright.seawater.ions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.seawater.carbonate.CarbonicAcid;
import org.tidewright.seawater.carbonate.TotalConcentrations;

class WaterParcelTest {
    private static final WaterParcel TANK = new WaterParcel(
            90, 26, 36, 2.8e-3, 2.5e-3, new TotalConcentrations(4.2e-4, 0.0110, 1e-6, 2e-5, 3e-6), 0.0560);
    private static final WaterParcel FRESH =
            new WaterParcel(10, 20, 31, 3.6e-3, 3.3e-3, new TotalConcentrations(3.2e-4, 0.0090, 0, 1e-5, 1e-6), 0.0460);

    /** Nine tenths of the one number and a tenth of the other, by hand. */
    @Test
    void ninetyKilogramsAndTenMixAsByHand() {
        WaterParcel mixed = TANK.mixedWith(FRESH);
        assertThat(mixed.mass()).isEqualTo(100);
        assertThat(mixed.practicalSalinity()).isCloseTo(35.5, within(1e-13));
        assertThat(mixed.alkalinity()).isCloseTo(2.88e-3, within(1e-17));
        assertThat(mixed.inorganicCarbon()).isCloseTo(2.58e-3, within(1e-17));
        assertThat(mixed.magnesium()).isCloseTo(0.0550, within(1e-16));
        assertThat(mixed.totals().borate()).isCloseTo(4.1e-4, within(1e-18));
        assertThat(mixed.totals().calcium()).isCloseTo(0.0108, within(1e-17));
        assertThat(mixed.totals().phosphate()).isCloseTo(9e-7, within(1e-20));
        assertThat(mixed.totals().silicate()).isCloseTo(1.9e-5, within(1e-19));
        assertThat(mixed.totals().ammonia()).isCloseTo(2.8e-6, within(1e-20));
        // 0.9 * 26 + 0.1 * 20, moved by a specific heat that differs by 0.7 %.
        assertThat(mixed.temperature()).isCloseTo(25.4, within(0.01));
    }

    /**
     * Heat of water over 0 degC from steam tables, from memory: 83.91 kJ/kg at 20 degC, 125.74 at 30. Specific heat by
     * EOS-80 may be 4.5 J/(kg K) off, over 10 K.
     */
    @Test
    void warmAndCoolPureWaterMeetInTheMiddle() {
        WaterParcel mixed = WaterParcel.pureWater(1, 20).mixedWith(WaterParcel.pureWater(1, 30));
        assertThat(mixed.temperature()).isCloseTo(25, within(0.003));
        assertThat(WaterParcel.pureWater(1, 30).heat()
                        - WaterParcel.pureWater(1, 20).heat())
                .isCloseTo(125_740 - 83_910, within(45.0));
    }

    /** Topping off 97 kg of S = 36 with 3 kg: everything dissolved times 0.97, by hand. */
    @Test
    void dilutionThinsEverythingAlike() {
        WaterParcel tank = TANK.withMass(97);
        WaterParcel topped = tank.diluted(3, 26);
        assertThat(topped.mass()).isEqualTo(100);
        assertThat(topped.practicalSalinity()).isCloseTo(34.92, within(1e-13));
        assertThat(topped.alkalinity()).isCloseTo(2.716e-3, within(1e-17));
        assertThat(topped.inorganicCarbon()).isCloseTo(2.425e-3, within(1e-17));
        assertThat(topped.totals().calcium()).isCloseTo(0.01067, within(1e-16));
        assertThat(topped.magnesium()).isCloseTo(0.05432, within(1e-16));
        assertThat(tank.diluted(0, 26)).isEqualTo(tank);
    }

    /** A tenth of the water gone: 40 from 36, by hand. */
    @Test
    void evaporationThickensEverythingAlike() {
        WaterParcel left = TANK.evaporated(9);
        assertThat(left.mass()).isEqualTo(81);
        assertThat(left.practicalSalinity()).isCloseTo(40, within(1e-13));
        assertThat(left.alkalinity()).isCloseTo(2.8e-3 / 0.9, within(1e-17));
        assertThat(left.inorganicCarbon()).isCloseTo(2.5e-3 / 0.9, within(1e-17));
        assertThat(left.magnesium()).isCloseTo(0.0560 / 0.9, within(1e-16));
        assertThat(left.totals().calcium()).isCloseTo(0.0110 / 0.9, within(1e-16));
        assertThat(left.totals().ammonia()).isCloseTo(3e-6 / 0.9, within(1e-20));
        assertThat(left.temperature()).isCloseTo(26, within(1e-3));
    }

    /** Sea of S = 35 and 25 degC weighs 1023.343 kg/m^3 at 25 degC of IPTS-68 (UNESCO 1983). */
    @Test
    void aVolumeWeighsWhatItsDensitySays() {
        WaterParcel parcel = WaterParcel.seawaterOfVolume(0.2, 25 / 1.00024, 35, 2.3e-3, 2e-3);
        assertThat(parcel.mass()).isCloseTo(204.6686, within(1e-4));
        assertThat(parcel.volume()).isCloseTo(0.2, within(1e-15));
        assertThat(TANK.withVolume(0.1).volume()).isCloseTo(0.1, within(1e-15));
        assertThat(parcel.magnesium()).isCloseTo(0.0528171, within(5e-8));
        assertThat(parcel.totals().calcium()).isCloseTo(0.0102846, within(5e-8));
        assertThat(parcel.totals().borate()).isCloseTo(4.157e-4, within(1e-12));
    }

    /**
     * By hand at 25 degC: K0 = 10^-1.468 (Weiss 1974) and K1 = 10^-6.352 (Harned and Davis 1943) give [H+] = sqrt(K0 K1
     * f + Kw) and carbon K0 f + [H+]; rain in clean air has pH 5.6.
     */
    @Test
    void pureWaterUnderAirIsAsSourAsRain() {
        double gas = Math.pow(10, -1.468) * 0.9968 * 420e-6;
        double hydrogen = Math.sqrt(Math.pow(10, -6.352) * gas + 1e-14);
        WaterParcel rain = WaterParcel.pureWaterUnderAir(1, 25, 420e-6);
        assertThat(rain.state(CarbonicAcid.MILLERO_2010).ph()).isCloseTo(-Math.log10(hydrogen), within(0.002));
        assertThat(rain.state(CarbonicAcid.MILLERO_2010).ph()).isCloseTo(5.6, within(0.05));
        assertThat(rain.inorganicCarbon() / (gas + hydrogen)).isCloseTo(1, within(0.003));
        assertThat(rain.alkalinity()).isZero();
    }

    @Test
    void warmedWaterKeepsWhatIsInIt() {
        WaterParcel warm = TANK.broughtTo(28);
        assertThat(warm.temperature()).isEqualTo(28);
        assertThat(warm.broughtTo(26)).isEqualTo(TANK);
        assertThat(warm.state().alkalinity()).isEqualTo(TANK.alkalinity());
        assertThat(warm.state().ph()).isLessThan(TANK.state().ph());
        assertThat(TANK.withMagnesium(0.05).magnesium()).isEqualTo(0.05);
        assertThat(TANK.withTotals(FRESH.totals()).totals()).isEqualTo(FRESH.totals());
    }

    @Test
    void refusesWhatCannotBeMeant() {
        assertThatThrownBy(() -> WaterParcel.mix(List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("number of parcels to mix is 0; it must be 1 or more");
        assertThatThrownBy(() -> TANK.withMass(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TANK.withMass(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TANK.withVolume(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TANK.evaporated(90))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("mass of vapour is 90.0 kg; it must be less than the 90.0 kg of water");
        assertThatThrownBy(() -> TANK.evaporated(80))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("practical salinity 324.0 is outside");
        assertThatThrownBy(() -> TANK.evaporated(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TANK.diluted(-1, 25)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WaterParcel.seawater(1, 25, 35, 2300, 2e-3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("is it in umol/kg, meq/L or dKH?");
        assertThatThrownBy(() -> WaterParcel.seawater(1, 25, 35, 2.3e-3, 2000))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WaterParcel.seawater(1, 298, 35, 2.3e-3, 2e-3))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> TANK.withMagnesium(1350))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("is it in mmol/kg or mg/L?");
        assertThatThrownBy(() -> WaterParcel.pureWater(1, 25).state()).isInstanceOf(IllegalArgumentException.class);
    }
}
