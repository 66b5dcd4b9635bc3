package org.tidewright.seawater.ions;

import java.util.List;
import org.tidewright.seawater.carbonate.CarbonateState;
import org.tidewright.seawater.carbonate.CarbonateSystem;
import org.tidewright.seawater.carbonate.TotalConcentrations;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.heat.SpecificHeat;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * An amount of water with what mixes conservatively in it: salt, alkalinity, inorganic carbon, boron, calcium, nutrients,
 * heat. pH and carbon dioxide do not; they follow from the mixture ({@link #state}).
 *
 * @param mass of the water with its salt
 * @param temperature ITS-90
 * @param practicalSalinity PSS-78
 * @param alkalinity per kilogram of water
 * @param inorganicCarbon per kilogram of water
 * @param totals the rest, per kilogram of water
 */
public record WaterParcel(
        @Unit("kg") double mass,
        @Unit("degC") double temperature,
        @Unit("1") double practicalSalinity,
        @Unit("mol/kg") double alkalinity,
        @Unit("mol/kg") double inorganicCarbon,
        TotalConcentrations totals) {

    /** Refuses what cannot be meant. */
    public WaterParcel {
        Bounds.positive(mass, "kg", "mass of water");
        Bounds.waterTemperature(temperature);
        Bounds.practicalSalinity(practicalSalinity);
        Bounds.within(alkalinity, "mol/kg", -0.1, 1, "alkalinity", "is it in umol/kg, meq/L or dKH?");
        Bounds.within(inorganicCarbon, "mol/kg", 0, 1, "inorganic carbon", "is it in umol/kg?");
    }

    /**
     * Pure water without salt, alkalinity or carbon. What has stood in air holds some 1.3e-5 mol/kg of carbon dioxide,
     * 0.6 % of the sea's carbon, which is left out.
     *
     * @param mass of it
     * @param temperature ITS-90
     * @source definition
     * @validity reverse-osmosis water of a few mg/L; harder tap water carries alkalinity of its own
     */
    public static WaterParcel pure(@Unit("kg") double mass, @Unit("degC") double temperature) {
        return new WaterParcel(mass, temperature, 0, 0, 0, new TotalConcentrations(0, 0, 0, 0, 0));
    }

    /**
     * Mass of a volume of seawater.
     *
     * @param volume of the water
     * @param temperature ITS-90
     * @param practicalSalinity PSS-78
     * @source EOS-80, {@link Density#ofSeawater}
     * @validity as the density
     */
    @Unit("kg")
    public static double massOf(
            @Unit("m^3") double volume, @Unit("degC") double temperature, @Unit("1") double practicalSalinity) {
        return Bounds.positive(volume, "m^3", "volume of water") * Density.ofSeawater(temperature, practicalSalinity);
    }

    /** Space the water takes. */
    @Unit("m^3")
    public double volume() {
        return mass / Density.ofSeawater(temperature, practicalSalinity);
    }

    /**
     * Both together: everything dissolved by mass, temperature by heat. The heat of mixing itself is left out: fresh water
     * and seawater warm each other by less than 0.05 degC (from memory).
     */
    public WaterParcel mixedWith(WaterParcel other) {
        double whole = mass + other.mass;
        double share = other.mass / whole;
        double heat = mass * SpecificHeat.ofSeawater(temperature, practicalSalinity);
        double otherHeat = other.mass * SpecificHeat.ofSeawater(other.temperature, other.practicalSalinity);
        double heatShare = otherHeat / (heat + otherHeat);
        return new WaterParcel(
                whole,
                between(temperature, other.temperature, heatShare),
                between(practicalSalinity, other.practicalSalinity, share),
                between(alkalinity, other.alkalinity, share),
                between(inorganicCarbon, other.inorganicCarbon, share),
                new TotalConcentrations(
                        between(totals.borate(), other.totals.borate(), share),
                        between(totals.calcium(), other.totals.calcium(), share),
                        between(totals.phosphate(), other.totals.phosphate(), share),
                        between(totals.silicate(), other.totals.silicate(), share),
                        between(totals.ammonia(), other.totals.ammonia(), share)));
    }

    /**
     * All of them together.
     *
     * @param parcels one at least
     * @source conservation of mass and heat
     * @validity as {@link #mixedWith}
     */
    public static WaterParcel mixed(List<WaterParcel> parcels) {
        return parcels.stream()
                .reduce(WaterParcel::mixedWith)
                .orElseThrow(() -> new IllegalArgumentException("no water to mix"));
    }

    /** With pure water of its own temperature added. */
    public WaterParcel diluted(@Unit("kg") double pureWater) {
        return mixedWith(pure(pureWater, temperature));
    }

    /**
     * With pure water gone as vapour, its temperature kept: what is dissolved stays. The exchange of carbon dioxide with the
     * air is another matter, left out here.
     */
    public WaterParcel evaporated(@Unit("kg") double vapour) {
        Bounds.within(vapour, "kg", 0, 0.9 * mass, "water evaporated");
        double factor = mass / (mass - vapour);
        return new WaterParcel(
                mass - vapour,
                temperature,
                practicalSalinity * factor,
                alkalinity * factor,
                inorganicCarbon * factor,
                new TotalConcentrations(
                        totals.borate() * factor,
                        totals.calcium() * factor,
                        totals.phosphate() * factor,
                        totals.silicate() * factor,
                        totals.ammonia() * factor));
    }

    /** The carbonate system that results, without exchange with the air. */
    public CarbonateState state() {
        return CarbonateSystem.at(temperature, practicalSalinity, totals)
                .fromAlkalinityAndCarbon(alkalinity, inorganicCarbon);
    }

    private static double between(double here, double there, double share) {
        return here + share * (there - here);
    }
}
