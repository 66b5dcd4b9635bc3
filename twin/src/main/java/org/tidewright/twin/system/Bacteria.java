package org.tidewright.twin.system;

import static java.util.Objects.requireNonNull;

import java.util.EnumMap;
import java.util.Map;
import org.tidewright.plan.model.Display;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Refugium;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.law.nutrient.Denitrification;
import org.tidewright.twin.law.nutrient.Nitrifiers;
import org.tidewright.twin.law.nutrient.PhosphateAdsorption;
import org.tidewright.twin.law.nutrient.Remineralisation;
import org.tidewright.twin.law.nutrient.Spread;
import org.tidewright.twin.mechanism.nutrient.Decay;
import org.tidewright.twin.mechanism.nutrient.Nitrification;
import org.tidewright.twin.mechanism.nutrient.RockPhosphate;
import org.tidewright.twin.mechanism.nutrient.Settling;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.tank.Basins;

/** Bacteria and the ground they live on: decay, nitrification, denitrification, phosphate held by rock. */
final class Bacteria {
    private static final double DAY = 86_400;

    /** Rock of one kilogram gives the filter medium of a sump or box its share too: counted with the rock. */
    private final Drawn greatestCapacity;

    private final Parameter perKelvin;
    private final Map<Nitrification.Step, Parameter> growths = new EnumMap<>(Nitrification.Step.class);
    private final Map<Nitrification.Step, Parameter> affinities = new EnumMap<>(Nitrification.Step.class);
    private final Parameter phosphateRatio;
    private final Parameter soon;
    private final Parameter phosphorus;
    private final Brought brought;

    Bacteria(Plan plan, Network.Builder builder, Rocks rocks, World world, Pools pools, Basins basins) {
        Doubt doubt = new Doubt(builder);
        Body display = basins.display().body();
        double sandBed = sandBeds(plan);
        double area = sandBed + film(basins) + Brought.foam(plan);
        greatestCapacity = greatestCapacity(builder, rocks.all(), area);
        brought = Brought.of(plan, area);
        perKelvin = doubt.of(
                "nitrification, factor per kelvin",
                "1",
                org.tidewright.twin.law.nutrient.Nitrification.PER_KELVIN,
                Basis.FROM_MEMORY,
                "form as in activated sludge models");
        nitrification(builder, doubt, world, pools, display);
        soon = doubt.of(
                "decay of suspended waste",
                "1/s",
                Remineralisation.LABILE,
                Basis.FROM_MEMORY,
                "0.1–0.3 a day at 25 °C");
        phosphorus = doubt.of(
                "decay, how much faster phosphorus goes",
                "1",
                Remineralisation.PHOSPHORUS_FACTOR,
                Basis.PUBLISHED,
                "faeces leach half their phosphorus in a day (Meyer and Schultz 1985)");
        decay(builder, doubt, world, pools, basins);
        denitrification(builder, world, pools, display, rocks.all(), sandBed);
        phosphateRatio = doubt.of(
                "phosphate on rock and sand, ratio to that in the water",
                "1",
                PhosphateAdsorption.RESERVOIR_RATIO,
                Basis.FROM_MEMORY,
                "apparent capacity 5–50 times what is dissolved; weak");
        builder.add(new RockPhosphate(
                display,
                pools.rockPhosphate(),
                phosphateRatio,
                doubt.of(
                        "phosphate on rock and sand, rate of exchange",
                        "1/s",
                        PhosphateAdsorption.RESERVOIR_EXCHANGE,
                        Basis.FROM_MEMORY,
                        "0.02–0.1 a day; weak")));
    }

    /** Ground that sand covers in display and refugium; a sump's section has none. */
    private static @Unit("m^2") double sandBeds(Plan plan) {
        Display display = plan.display();
        double area = display.sand() == null
                ? 0
                : display.length().in("m") * display.width().in("m");
        Refugium refugium = plan.refugium();
        return refugium == null || refugium.sand() == null
                ? area
                : area + refugium.length().in("m") * refugium.width().in("m");
    }

    /** Panes and pipes carry a film too; a quarter of a square metre at least keeps a bare tank from having none. */
    private static @Unit("m^2") double film(Basins basins) {
        return Math.max(
                0.25,
                basins.all().stream()
                        .mapToDouble(basin -> basin.vessel().rimLength()
                                * basin.vessel().shape().level(basin.volume()))
                        .sum());
    }

    private static Drawn greatestCapacity(Network.Builder builder, Drawn rock, double area) {
        Spread perRock = org.tidewright.twin.law.nutrient.Nitrification.ROCK;
        Spread perFilm = org.tidewright.twin.law.nutrient.Nitrification.FILM;
        Parameter most = builder.parameter(
                "nitrification, the most the surfaces can carry",
                "mol/s",
                carried(rock.usual(), perRock.usual(), area, perFilm.usual()),
                carried(rock.usual(), perRock.low(), area, perFilm.low()),
                carried(rock.usual(), perRock.high(), area, perFilm.high()),
                Basis.PUBLISHED,
                "rock: Li et al. 2017; films: Nijhof and Bovendeur 1990; the areas are those of sand, panes and foam");
        return following(builder, most, draw -> carried(rock.in(draw), perRock.usual(), area, perFilm.usual()));
    }

    private static double carried(double rock, double perRock, double area, double perFilm) {
        return org.tidewright.twin.law.nutrient.Nitrification.greatestCapacity(
                rock, perRock, 0, perFilm, area, perFilm);
    }

    /** A rate known for the rock as stated, in proportion to what the drawn rock makes of it. */
    private static Drawn following(Network.Builder builder, Parameter rate, Drawn ofRock) {
        double usual = ofRock.usual();
        return usual > 0 ? builder.derived(draw -> draw.value(rate) * (ofRock.in(draw) / usual)) : rate;
    }

    private void nitrification(Network.Builder builder, Doubt doubt, World world, Pools pools, Body display) {
        String grown = "usual 0.5 and 0.38 a day attached; pure cultures 0.86 and 1.5 (Helder and De Vries 1983)";
        for (Nitrification.Step step : Nitrification.Step.values()) {
            boolean first = step == Nitrification.Step.AMMONIA;
            String who = first ? "ammonia oxidisers" : "nitrite oxidisers";
            Parameter growth = doubt.factor(
                    who + ", growth, factor",
                    first ? Nitrifiers.AMMONIA_OXIDISER_GROWTH : Nitrifiers.NITRITE_OXIDISER_GROWTH,
                    Basis.FROM_MEMORY,
                    grown);
            growths.put(step, growth);
            // Affinity is the inverse of the half-saturation, so its ends change places.
            Spread half = first ? Nitrifiers.AMMONIA_HALF_SATURATION : Nitrifiers.NITRITE_HALF_SATURATION;
            Parameter affinity = builder.parameter(
                    who + ", affinity, factor",
                    "1",
                    1,
                    half.usual() / half.high(),
                    half.usual() / half.low(),
                    Basis.PUBLISHED,
                    "half-saturations from archaea (Martens-Habbena et al. 2009) to cultures (Helder and De Vries 1983)");
            affinities.put(step, affinity);
            Body cells = first ? pools.ammoniaOxidisers() : pools.nitriteOxidisers();
            builder.add(new Nitrification(
                    step,
                    new Nitrification.Place(display, cells, pools.ground(), world.life()),
                    growth,
                    affinity,
                    greatestCapacity,
                    perKelvin));
        }
    }

    private void decay(Network.Builder builder, Doubt doubt, World world, Pools pools, Basins basins) {
        Parameter slow = doubt.of(
                "decay of waste on the ground", "1/s", Remineralisation.SLOW, Basis.FROM_MEMORY, "0.01–0.03 a day");
        Parameter settles = builder.parameter(
                "settling of suspended waste",
                "1/s",
                0.1 / DAY,
                0.02 / DAY,
                0.4 / DAY,
                Basis.FROM_MEMORY,
                "a stirred tank keeps most of it afloat until it rots; an estimate");
        for (Basins.Basin basin : basins.all()) {
            Body water = basin.body();
            builder.add(asAfloat("decay of suspended waste", water, water, world));
            builder.add(new Settling(water, pools.ground(), settles));
        }
        builder.add(new Decay(
                "decay of waste on the ground",
                pools.ground(),
                basins.display().body(),
                world.life(),
                slow,
                phosphorus,
                0));
    }

    private static void denitrification(
            Network.Builder builder, World world, Pools pools, Body display, Drawn rock, double sandBed) {
        Spread perRock = Denitrification.ROCK;
        Spread perSand = Denitrification.SAND;
        Drawn ofRock = draw -> Denitrification.fullRate(rock.in(draw), perRock.usual(), sandBed, perSand.usual());
        Parameter full = builder.parameter(
                "denitrification with plenty of nitrate",
                "mol/s",
                ofRock.usual(),
                Denitrification.fullRate(rock.usual(), perRock.low(), sandBed, perSand.low()),
                Denitrification.fullRate(rock.usual(), perRock.high(), sandBed, perSand.high()),
                Basis.FROM_MEMORY,
                "reef surfaces 0.05–1 mmol/m² a day; a controlled study found none (Li et al. 2017); weak");
        Parameter half = builder.parameter(
                "denitrification, half-saturation",
                "mol/m^3",
                Denitrification.HALF_SATURATION.usual(),
                Denitrification.HALF_SATURATION.low(),
                Denitrification.HALF_SATURATION.high(),
                Basis.FROM_MEMORY,
                "sand alone is satisfied above 0.018 mol/m³ (Cook, Kessler and Eyre 2016)");
        builder.add(new org.tidewright.twin.mechanism.nutrient.Denitrification(
                display, pools.ground(), world.outdoors(), following(builder, full, ofRock), half));
    }

    /** Decay of matter that water goes on passing, such as what a filter holds. */
    Decay asAfloat(String name, Body matter, Body water, World world) {
        return new Decay(name, matter, water, world.life(), soon, phosphorus, 1);
    }

    /** What a guild oxidises at a temperature with plenty of everything, over what its number does at 25 °C in the usual case. */
    Drawn pace(Nitrification.Step step, @Unit("degC") double temperature) {
        Parameter growth = requireNonNull(growths.get(step));
        return draw -> growth.in(draw)
                * org.tidewright.twin.law.nutrient.Nitrification.warmth(temperature, perKelvin.in(draw));
    }

    /** Half-saturation of a guild, mol/m³ of what it oxidises. */
    Drawn halfSaturation(Nitrification.Step step) {
        Parameter affinity = requireNonNull(affinities.get(step));
        return draw -> step.cells().halfSaturation() / affinity.in(draw);
    }

    /** What the surfaces can come to oxidise, mol/s at 25 °C. */
    Drawn greatestCapacity() {
        return greatestCapacity;
    }

    /** What is brought in when animals come to washed panes. */
    Brought brought() {
        return brought;
    }

    /** Phosphate that rock and sand hold, over what the display's water holds, at rest. */
    Drawn phosphateRatio() {
        return phosphateRatio;
    }
}
