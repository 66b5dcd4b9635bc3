package org.tidewright.husbandry.mixing;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Sources;
import org.tidewright.husbandry.limit.SafeRate;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * Water kept in hand: pure water for the top-off of some days, salt water for one change in an emergency.
 *
 * @param volume of the system
 * @param salinity of the system
 * @param temperature of the system
 * @param evaporation pure water by volume, in the month that takes most
 * @param reservoir volume of the top-off's reservoir when full
 * @param time that must be bridged without making water
 * @param share of the system that one change in an emergency exchanges
 * @param mix the salt water is made of
 */
public record Reserve(
        @Unit("m^3") double volume,
        @Unit("1") double salinity,
        @Unit("degC") double temperature,
        @Unit("m^3/s") double evaporation,
        @Unit("m^3") double reservoir,
        @Unit("s") double time,
        @Unit("1") double share,
        SaltMix mix) {
    /** Refuses what cannot be meant. */
    public Reserve {
        Bounds.positive(volume, "m^3", "volume of the system");
        Bounds.within(salinity, "1", 2, 60, "salinity", "is it a specific gravity?");
        Bounds.within(evaporation, "m^3/s", 0, 1, "evaporation", "is it in litres a day?");
        Bounds.notNegative(reservoir, "m^3", "volume of the reservoir");
        Bounds.notNegative(time, "s", "time to bridge");
        Bounds.within(share, "1", 0, 1, "share changed", "is it in percent?");
        Bounds.positive(share, "1", "share changed");
    }

    /** How long a full reservoir lasts; endless where nothing evaporates. */
    public @Unit("s") double reservoirLasts() {
        return reservoir / evaporation;
    }

    /** Pure water that the time takes. */
    public @Unit("m^3") double topOff() {
        return evaporation * time;
    }

    /** The batch of salt water for one change. */
    public SaltBatch batch() {
        return new SaltBatch(salinity, temperature, share * volume, SaltMix.Filled.SALT_WATER, mix);
    }

    /** Pure water in all, where the salt water is still to be made of it. */
    public @Unit("m^3") double pureWater() {
        return topOff() + batch().pureWater();
    }

    /**
     * The largest reservoir that, run in whole by a float that sticks, lowers the salinity by no more than 1.
     *
     * <pre>V_r = V / (S - 1)</pre>
     */
    public @Unit("m^3") double harmlessReservoir() {
        return volume / (salinity - 1);
    }

    /** What to keep. */
    public Advice advice() {
        return advice(0, Origin.TYPED);
    }

    /**
     * What to keep.
     *
     * @param evaporationError one standard error of the evaporation; 0 where none was stated
     * @param ofEvaporation where it is from
     */
    public Advice advice(@Unit("m^3/s") double evaporationError, Origin ofEvaporation) {
        Sources sources = new Sources();
        String log = Telling.given(sources, "Evaporation", ofEvaporation);
        String custom = sources.key(
                "One change in an emergency, and days without fresh water", Basis.COMMON_PRACTICE, "as you chose them");
        String mass = sources.key("How much of the dry mix is salt", mix.basis(), mix.detail());
        SaltBatch batch = batch();
        double off = evaporation > 0 ? evaporationError / evaporation : 0;
        Figure topOff = off > 0 ? Figure.about(Measure.VOLUME, topOff(), off * topOff()) : Telling.volume(topOff());
        Figure drawn = off > 0
                ? Figure.about(Measure.DURATION, reservoirLasts(), off * reservoirLasts())
                : Telling.time(reservoirLasts());
        Figure dry = Figure.about(Measure.SMALL_MASS, batch.mixMass(), batch.mixMassError());
        Sentence lead = Sentence.of(
                "Keep ",
                Sentence.figure(topOff, log),
                " of pure water and ",
                Sentence.figure(Telling.volume(batch.saltWater()), custom),
                " of salt water ready: top-off for ",
                Telling.time(time),
                ", and one change of ",
                Figure.exact(Measure.SHARE, share),
                " in an emergency.");
        Sentence dryInstead = Sentence.of(
                "Or keep ",
                Telling.volume(pureWater()),
                " of pure water and ",
                Sentence.figure(dry, mass),
                " of dry mix, closed from the air: salt water is then a day away, and an emergency may not wait.");
        Sentence lasting = evaporation > 0
                ? Sentence.of(" lasts ", Sentence.figure(drawn, log))
                : Sentence.of(" is not drawn on while nothing evaporates");
        Sentence lasts = Sentence.of(
                "A full reservoir of ",
                Telling.volume(reservoir),
                lasting,
                reservoir > harmlessReservoir() ? secondStop(sources) : Sentence.of("."));
        List<Advice.Told> figures = new ArrayList<>();
        if (reservoir > 0 && evaporation > 0) {
            figures.add(new Advice.Told("the reservoir lasts", drawn, log));
        }
        figures.addAll(List.of(
                new Advice.Told("pure water for the top-off", topOff, log),
                new Advice.Told("salt water for one change", Telling.volume(batch.saltWater()), custom),
                new Advice.Told("pure water if nothing is mixed yet", Telling.volume(pureWater()), custom),
                new Advice.Told("dry mix for one change", dry, mass)));
        return new Advice(
                lead,
                reservoir > 0 ? List.of(lasts, dryInstead) : List.of(dryInstead),
                figures,
                List.of(
                        Sentence.of(
                                Telling.volume(evaporation * SafeRate.DAY),
                                " a day for ",
                                Telling.time(time),
                                " is ",
                                Telling.volume(topOff()),
                                "."),
                        Sentence.of(
                                Figure.exact(Measure.SHARE, share),
                                " of ",
                                Telling.volume(volume),
                                " is ",
                                Telling.volume(batch.saltWater()),
                                " of salt water; its making takes ",
                                Telling.volume(batch.pureWater()),
                                " of pure water."),
                        Sentence.of(
                                "Pure water in all: ",
                                Telling.volume(topOff()),
                                " and ",
                                Telling.volume(batch.pureWater()),
                                ", ",
                                Telling.volume(pureWater()),
                                ".")),
                List.of(
                        "Keep water covered, salt water moving, out of the sun, and out of reach of children; a full"
                                + " drum weighs a kilogram a litre and needs a floor that bears it.",
                        Telling.DRY_MIX),
                sources.all());
    }

    private Sentence secondStop(Sources sources) {
        String stuck = sources.key(
                "Pure water that lowers salinity by no more than 1",
                Basis.COMMON_PRACTICE,
                "volume over salinity less one, some thirty-fifth of the system");
        return Sentence.of(
                ". Give the top-off a second, independent stop: more than ",
                Sentence.figure(Telling.volume(harmlessReservoir()), stuck),
                " run in by a stuck float lower the salinity by more than 1.");
    }
}
