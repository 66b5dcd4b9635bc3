package org.tidewright.seawater.ions;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.tidewright.seawater.carbonate.BoronRatio;
import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.carbonate.CarbonicAcid;
import org.tidewright.seawater.carbonate.TotalConcentrations;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * An amount of water and what is dissolved in it, to be mixed, diluted and evaporated. Everything it carries is
 * conserved by mass; pH is not, and follows from the mixture's alkalinity and carbon.
 *
 * <pre>{@code
 * WaterParcel tank = WaterParcel.seawater(90, 26, 36, 2.8e-3, 2.5e-3);
 * WaterParcel fresh = WaterParcel.seawater(10, 20, 34, 3.6e-3, 3.3e-3);
 * tank.mixedWith(fresh).state().ph(); // 7.95
 * }</pre>
 *
 * @param mass of the water with its salt
 * @param temperature ITS-90
 * @param practicalSalinity PSS-78
 * @param alkalinity per kilogram of the water
 * @param inorganicCarbon per kilogram of the water
 * @param totals boron, calcium, nutrients
 * @param magnesium per kilogram of the water
 */
public record WaterParcel(
        @Unit("kg") double mass,
        @Unit("degC") double temperature,
        @Unit("1") double practicalSalinity,
        @Unit("mol/kg") double alkalinity,
        @Unit("mol/kg") double inorganicCarbon,
        TotalConcentrations totals,
        @Unit("mol/kg") double magnesium) {

    /** More than in a brine of three times the sea; dosing solutions are no water to mix by these rules. */
    private static final double MOST_MAGNESIUM = 0.3;

    /** Refuses what cannot be meant. */
    public WaterParcel {
        Bounds.positive(mass, "kg", "mass of water");
        Bounds.waterTemperature(temperature);
        Bounds.practicalSalinity(practicalSalinity);
        Bounds.within(alkalinity, "mol/kg", -0.1, 1, "alkalinity", "is it in umol/kg, meq/L or dKH?");
        Bounds.within(inorganicCarbon, "mol/kg", 0, 1, "inorganic carbon", "is it in umol/kg or mg/L?");
        Bounds.within(magnesium, "mol/kg", 0, MOST_MAGNESIUM, "magnesium", "is it in mmol/kg or mg/L?");
    }

    /**
     * Seawater whose calcium, magnesium and boron go with its salt, without nutrients.
     *
     * @param mass of the water with its salt
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @param alkalinity per kilogram of the water
     * @param inorganicCarbon per kilogram of the water
     * @source {@link TotalConcentrations#ofSeawater} with {@link BoronRatio#UPPSTROM_1974};
     *     {@link MajorIon#MAGNESIUM}
     * @validity sea salt in its natural proportions
     */
    public static WaterParcel seawater(
            @Unit("kg") double mass,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity,
            @Unit("mol/kg") double alkalinity,
            @Unit("mol/kg") double inorganicCarbon) {
        return new WaterParcel(
                mass,
                temperature,
                practicalSalinity,
                alkalinity,
                inorganicCarbon,
                TotalConcentrations.ofSeawater(practicalSalinity, BoronRatio.UPPSTROM_1974),
                MajorIon.MAGNESIUM.amount(practicalSalinity));
    }

    /**
     * The same, so much of it by volume.
     *
     * @param volume at this temperature
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @param alkalinity per kilogram of the water
     * @param inorganicCarbon per kilogram of the water
     * @source as {@link #seawater}; EOS-80 density, {@link Density#ofSeawater}
     * @validity as {@link #seawater} and the density
     */
    public static WaterParcel seawaterOfVolume(
            @Unit("m^3") double volume,
            @Unit("degC") double temperature,
            @Unit("1") double practicalSalinity,
            @Unit("mol/kg") double alkalinity,
            @Unit("mol/kg") double inorganicCarbon) {
        return seawater(
                mass(volume, temperature, practicalSalinity),
                temperature,
                practicalSalinity,
                alkalinity,
                inorganicCarbon);
    }

    /**
     * Water with nothing in it, not even the gas of the air.
     *
     * @param mass of the water
     * @param temperature ITS-90
     * @source the definition
     * @validity water straight from the membrane; {@link #pureWaterUnderAir} once it has stood
     */
    public static WaterParcel pureWater(@Unit("kg") double mass, @Unit("degC") double temperature) {
        return new WaterParcel(mass, temperature, 0, 0, 0, new TotalConcentrations(0, 0, 0, 0, 0), 0);
    }

    /**
     * Pure water that has taken up carbon dioxide from the air until in equilibrium.
     *
     * @param mass of the water
     * @param temperature ITS-90
     * @param partialPressure of carbon dioxide
     * @source {@link CarbonicAcid#MILLERO_2010}, the set that ends in the constants of pure water, without alkalinity
     * @validity 0 to 50 degC
     * @checkvalue 25 degC, 420 uatm: 16.8 umol/kg, pH 5.60
     */
    public static WaterParcel pureWaterUnderAir(
            @Unit("kg") double mass, @Unit("degC") double temperature, @Unit("atm") double partialPressure) {
        WaterParcel water = pureWater(mass, temperature);
        double carbon = new CarbonateSystem(temperature, 0, water.totals, CarbonicAcid.MILLERO_2010)
                .fromAlkalinityAndPartialPressure(0, partialPressure)
                .inorganicCarbon();
        return new WaterParcel(mass, temperature, 0, 0, carbon, water.totals, 0);
    }

    /**
     * What waters become when poured together, in whatever order, shut off from the air and the room.
     *
     * <p>Mass, salt, alkalinity, carbon, magnesium and each of the totals of the mixture are the sums of the parts'.
     * So is the heat over that at 25 degC: the warming or cooling by the mixing itself, which is neglected, is at most
     * 0.014 degC for waters of 5 to 35 degC from fresh to S = 40, by comparison with TEOS-10.
     *
     * @param parcels one or more
     * @source conservation; {@link org.tidewright.seawater.heat.SpecificHeat} for the heat
     * @validity as the specific heat; where nothing precipitates
     */
    public static WaterParcel mix(List<WaterParcel> parcels) {
        if (parcels.isEmpty()) {
            throw new IllegalArgumentException("number of parcels to mix is 0; it must be 1 or more");
        }
        double mass = parcels.stream().mapToDouble(WaterParcel::mass).sum();
        double salinity = mean(parcels, mass, WaterParcel::practicalSalinity);
        double heat = mean(parcels, mass, WaterParcel::heatPerMass);
        double guess = mean(parcels, mass, WaterParcel::temperature);
        return new WaterParcel(
                mass,
                HeatContent.temperature(heat, salinity, guess),
                salinity,
                mean(parcels, mass, WaterParcel::alkalinity),
                mean(parcels, mass, WaterParcel::inorganicCarbon),
                new TotalConcentrations(
                        mean(parcels, mass, parcel -> parcel.totals.borate()),
                        mean(parcels, mass, parcel -> parcel.totals.calcium()),
                        mean(parcels, mass, parcel -> parcel.totals.phosphate()),
                        mean(parcels, mass, parcel -> parcel.totals.silicate()),
                        mean(parcels, mass, parcel -> parcel.totals.ammonia())),
                mean(parcels, mass, WaterParcel::magnesium));
    }

    private static double mean(List<WaterParcel> parcels, double mass, ToDoubleFunction<WaterParcel> perMass) {
        return parcels.stream()
                        .mapToDouble(parcel -> parcel.mass * perMass.applyAsDouble(parcel))
                        .sum()
                / mass;
    }

    /** What this and another become when poured together: {@link #mix}. */
    public WaterParcel mixedWith(WaterParcel other) {
        return mix(List.of(this, other));
    }

    /**
     * This with pure water added.
     *
     * @param massOfPureWater 0 or more
     * @param temperatureOfPureWater ITS-90
     */
    public WaterParcel diluted(@Unit("kg") double massOfPureWater, @Unit("degC") double temperatureOfPureWater) {
        Bounds.notNegative(massOfPureWater, "kg", "mass of pure water");
        return massOfPureWater == 0 ? this : mixedWith(pureWater(massOfPureWater, temperatureOfPureWater));
    }

    /**
     * What stays when so much pure water has left as vapour. The heat of evaporation is taken to come from elsewhere:
     * temperature stays, within 0.001 degC for a twentieth of a tank, so that as much water as warm brings this parcel
     * back. Carbon stays too; that the water exchanges it with the air is another matter.
     *
     * @param massOfVapour less than there is
     */
    public WaterParcel evaporated(@Unit("kg") double massOfVapour) {
        Bounds.notNegative(massOfVapour, "kg", "mass of vapour");
        double left = mass - massOfVapour;
        if (!(left > 0)) {
            throw Bounds.refusal(massOfVapour, "kg", "mass of vapour", "less than the " + mass + " kg of water");
        }
        double by = mass / left;
        double salinity = by * practicalSalinity;
        Bounds.practicalSalinity(salinity);
        double heat = (mass * heatPerMass() - massOfVapour * HeatContent.of(temperature, 0)) / left;
        return new WaterParcel(
                left,
                HeatContent.temperature(heat, salinity, temperature),
                salinity,
                by * alkalinity,
                by * inorganicCarbon,
                new TotalConcentrations(
                        by * totals.borate(),
                        by * totals.calcium(),
                        by * totals.phosphate(),
                        by * totals.silicate(),
                        by * totals.ammonia()),
                by * magnesium);
    }

    /** The same water, another amount of it: what stays after some was drained, or a sample. */
    public WaterParcel withMass(@Unit("kg") double newMass) {
        return new WaterParcel(newMass, temperature, practicalSalinity, alkalinity, inorganicCarbon, totals, magnesium);
    }

    /** The same water, so much of it by volume. */
    public WaterParcel withVolume(@Unit("m^3") double newVolume) {
        return withMass(mass(newVolume, temperature, practicalSalinity));
    }

    /** The same water with other boron, calcium and nutrients. */
    public WaterParcel withTotals(TotalConcentrations measured) {
        return new WaterParcel(mass, temperature, practicalSalinity, alkalinity, inorganicCarbon, measured, magnesium);
    }

    /** The same water with magnesium as measured. */
    public WaterParcel withMagnesium(@Unit("mol/kg") double measured) {
        return new WaterParcel(mass, temperature, practicalSalinity, alkalinity, inorganicCarbon, totals, measured);
    }

    /** The same water warmed or cooled, shut off from the air. */
    public WaterParcel broughtTo(@Unit("degC") double newTemperature) {
        return new WaterParcel(mass, newTemperature, practicalSalinity, alkalinity, inorganicCarbon, totals, magnesium);
    }

    /** By EOS-80 density at its temperature. */
    @Unit("m^3")
    public double volume() {
        return mass / Density.ofSeawater(temperature, practicalSalinity);
    }

    /** Over that of the same water at 25 degC. */
    @Unit("J")
    public double heat() {
        return mass * heatPerMass();
    }

    /**
     * Its carbon dioxide system, and so its pH, with the constants of {@link CarbonicAcid#LUEKER_2000}.
     *
     * @throws IllegalArgumentException where it holds no carbon at all: pH would hang on traces nobody knows
     */
    public CarbonateState state() {
        return state(CarbonicAcid.LUEKER_2000);
    }

    /** Its carbon dioxide system by chosen constants; {@link CarbonicAcid#MILLERO_2010} reaches to fresh water. */
    public CarbonateState state(CarbonicAcid carbonicAcid) {
        return new CarbonateSystem(temperature, practicalSalinity, totals, carbonicAcid)
                .fromAlkalinityAndCarbon(alkalinity, inorganicCarbon);
    }

    private double heatPerMass() {
        return HeatContent.of(temperature, practicalSalinity);
    }

    private static double mass(double volume, double temperature, double practicalSalinity) {
        Bounds.positive(volume, "m^3", "volume of water");
        return volume * Density.ofSeawater(temperature, practicalSalinity);
    }
}
