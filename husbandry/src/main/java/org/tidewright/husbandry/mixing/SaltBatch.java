package org.tidewright.husbandry.mixing;

import java.util.List;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.density.Density;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.salinity.AbsoluteSalinity;
import org.tidewright.seawater.unit.Unit;

/**
 * New salt water to be made. With s the share of salt in the finished water, 1/1000 of its absolute salinity, and y the
 * yield of the mix:
 *
 * <pre>
 * salt water of volume V:  m = s rho(S, T) V / y,  pure water  rho V - m
 * pure water of volume V:  m = s rho_w(T) V / (y - s)
 * </pre>
 *
 * @param salinity wanted
 * @param temperature at which the volume is read
 * @param volume of the salt water wanted, or of the pure water at hand
 */
public record SaltBatch(
        @Unit("1") double salinity,
        @Unit("degC") double temperature,
        @Unit("m^3") double volume,
        SaltMix.Filled filled,
        SaltMix mix) {
    /** Goes in before the first measurement: more is easily added, and not taken out again. */
    private static final double FIRST = 0.9;

    /** Refuses what cannot be meant. */
    public SaltBatch {
        Bounds.within(salinity, "1", 0.1, 50, "salinity wanted", "is it a specific gravity or in mS/cm?");
        Bounds.waterTemperature(temperature);
        Bounds.positive(volume, "m^3", "volume of the batch");
    }

    private double share() {
        return AbsoluteSalinity.fromPractical(salinity) / 1000;
    }

    /** Of dry mix. */
    public @Unit("kg") double mixMass() {
        return filled == SaltMix.Filled.SALT_WATER
                ? share() * volume * Density.ofSeawater(temperature, salinity) / mix.yield()
                : share() * volume * Density.ofPureWater(temperature) / (mix.yield() - share());
    }

    /** One standard error of the mass of mix, by the yield's. */
    public @Unit("kg") double mixMassError() {
        double divisor = filled == SaltMix.Filled.SALT_WATER ? mix.yield() : mix.yield() - share();
        return mixMass() * mix.standardError() / divisor;
    }

    /** Of salt and water together. */
    public @Unit("kg") double mass() {
        return mixMass() * mix.yield() / share();
    }

    /** Of the salt alone, without the water bound in the mix. */
    public @Unit("kg") double saltMass() {
        return mixMass() * mix.yield();
    }

    public @Unit("m^3") double pureWater() {
        return (mass() - mixMass()) / Density.ofPureWater(temperature);
    }

    public @Unit("m^3") double saltWater() {
        return mass() / Density.ofSeawater(temperature, salinity);
    }

    /** How much to weigh, and what to do with it. */
    public Advice advice() {
        Sources sources = new Sources();
        String salt = sources.key(
                "Salt in seawater of a practical salinity",
                Basis.PUBLISHED,
                "reference composition, Millero et al. 2008; density, Millero and Poisson 1981");
        String yield = sources.key("How much of the dry mix is salt", mix.basis(), mix.detail());
        Figure mass = Figure.about(Measure.SMALL_MASS, mixMass(), mixMassError());
        Sentence lead = Sentence.of(
                "Weigh ",
                Sentence.figure(mass, yield),
                " of dry mix for ",
                Telling.volume(pureWater()),
                " of pure water, stir in nine tenths of it, and measure before the rest goes in: together they make ",
                Telling.volume(saltWater()),
                " of salinity ",
                Telling.salinity(salinity),
                ".");
        double off = mix.standardError() / mix.yield() * salinity;
        Sentence doubt = Sentence.of(
                "All of it at once would come to ",
                Figure.about(Measure.SALINITY, salinity, off),
                mix.basis() == Basis.YOUR_LOG
                        ? ", by the batch you measured."
                        : ": tell what your first batch came to, and the next is surer.");
        return new Advice(
                lead,
                List.of(doubt),
                List.of(
                        new Advice.Told("dry mix", mass, yield),
                        new Advice.Told("to stir in first", Figure.exact(Measure.SMALL_MASS, FIRST * mixMass()), yield),
                        new Advice.Told("pure water", Telling.volume(pureWater()), salt),
                        new Advice.Told("finished salt water", Telling.volume(saltWater()), salt),
                        new Advice.Told(
                                "yield of the mix",
                                Figure.about(Measure.SHARE, mix.yield(), mix.standardError()),
                                yield)),
                List.of(
                        Sentence.of(
                                "Salinity ",
                                Telling.salinity(salinity),
                                " is ",
                                Figure.exact(Measure.NUMBER, 1000 * share()),
                                " g of salt in each kg of water with its salt."),
                        Sentence.of(
                                Telling.volume(saltWater()),
                                " weigh ",
                                Figure.exact(Measure.MASS, mass()),
                                " and hold ",
                                Figure.exact(Measure.SMALL_MASS, saltMass()),
                                " of salt; of the mix ",
                                Figure.about(Measure.SHARE, mix.yield(), mix.standardError()),
                                " is salt.")),
                List.of(Telling.DRY_MIX),
                sources.all());
    }
}
