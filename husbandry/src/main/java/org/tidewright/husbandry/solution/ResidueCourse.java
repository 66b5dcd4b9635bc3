package org.tidewright.husbandry.solution;

import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.ions.MajorIon;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.seawater.unit.Unit;

/**
 * A residue that comes every second, in a system whose water is changed for seawater now and then.
 *
 * <pre>x(t) = r (1 - w) [1 - (1 - w)^n]/w + rate (t - n P), n = floor(t/P), r = rate P; r/w before each change, in the end</pre>
 *
 * <p>What evaporates is replaced by fresh water; salt that leaves with skimmate and drops is not counted.
 *
 * @param residue per second, mol/s
 * @param volume of the water in the system
 * @param practicalSalinity of the water and of what it is changed for, PSS-78
 * @param temperature of the water, ITS-90
 * @param changed w, share of the water changed each time; 0 for never
 * @param period P, time between changes
 * @source mass balance
 * @validity residues small beside the salt of the sea
 */
public record ResidueCourse(
        Residue residue,
        @Unit("m^3") double volume,
        @Unit("1") double practicalSalinity,
        @Unit("degC") double temperature,
        @Unit("1") double changed,
        @Unit("s") double period) {
    /** A year of 365.25 days. */
    @Unit("s")
    public static final double YEAR = 365.25 * 86_400;

    public ResidueCourse {
        Bounds.positive(volume, "m^3", "volume of the system");
        Bounds.practicalSalinity(practicalSalinity);
        Bounds.positive(practicalSalinity, "1", "practical salinity");
        Bounds.waterTemperature(temperature);
        Bounds.within(changed, "1", 0, 1, "share of the water changed", "is it in percent?");
        Bounds.positive(period, "s", "time between water changes");
    }

    /** What has gathered of an ion by then, over what seawater holds. */
    @Unit("mol/m^3")
    public double gathered(MajorIon ion, @Unit("s") double time) {
        return residue.amount(ion) / volume * spans(time);
    }

    /** What has gathered of an ion before each change, in the end; infinite where water is never changed. */
    @Unit("mol/m^3")
    public double plateau(MajorIon ion) {
        double rate = residue.amount(ion) / volume;
        return rate == 0 ? 0 : rate * period / changed;
    }

    /** Mass of all that has gathered by then. */
    @Unit("kg/m^3")
    public double saltGathered(@Unit("s") double time) {
        return residue.mass() / volume * spans(time);
    }

    /** Mass of all that has gathered before each change, in the end; infinite where water is never changed. */
    @Unit("kg/m^3")
    public double saltPlateau() {
        double rate = residue.mass() / volume;
        return rate == 0 ? 0 : rate * period / changed;
    }

    /**
     * By how much the salinity has risen by then, if nobody brings it back: by mass, as if it were sea salt. A meter reads
     * it a little otherwise, for it is not.
     */
    @Unit("1")
    public double creep(@Unit("s") double time) {
        return salinity(saltGathered(time));
    }

    /** The same before each change, in the end. */
    @Unit("1")
    public double creepPlateau() {
        return Double.isInfinite(saltPlateau()) ? saltPlateau() : salinity(saltPlateau());
    }

    /**
     * An ion over what seawater of this salinity holds, once fresh water has brought the salinity back: 1.02 is two per
     * cent too much.
     *
     * <pre>(c + x)/c s/(s + dS)</pre>
     */
    @Unit("1")
    public double shareOfSea(MajorIon ion, @Unit("s") double time) {
        double natural = ion.amount(practicalSalinity) * density();
        double dilution = practicalSalinity / (practicalSalinity + creep(time));
        return (natural + gathered(ion, time)) / natural * dilution;
    }

    private double salinity(double salt) {
        double gramsPerKilogram = 1000 * salt / density();
        return gramsPerKilogram / AbsoluteSalinity.fromPractical(1);
    }

    private double density() {
        return Density.ofSeawater(temperature, practicalSalinity);
    }

    /** Seconds of residue that are in the water by then: all of them without changes. */
    private double spans(double time) {
        Bounds.notNegative(time, "s", "time");
        if (changed == 0) {
            return time;
        }
        double changes = Math.floor(time / period);
        double left = (1 - changed) * (1 - Math.pow(1 - changed, changes)) / changed;
        return period * left + time - changes * period;
    }
}
