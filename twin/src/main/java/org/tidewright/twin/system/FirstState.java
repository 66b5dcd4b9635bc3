package org.tidewright.twin.system;

import java.util.List;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Rock;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Draw;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.law.biota.Partition;
import org.tidewright.twin.law.nutrient.Nitrifiers;
import org.tidewright.twin.law.nutrient.Remineralisation;
import org.tidewright.twin.mechanism.biota.Fish;
import org.tidewright.twin.mechanism.nutrient.Nitrification;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.run.State;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.PowerSupplies;
import org.tidewright.twin.tank.Water;

/**
 * What a system holds when a run begins: the water as the plan states it, and everything the plan cannot state as it would
 * be after months of the same regime.
 */
final class FirstState {
    private static final double DAY = 86_400;

    /** Carbon dioxide of a fed tank in a lived-in room, before the twin finds its own; common practice. */
    private static final double USUAL_CARBON_DIOXIDE = 600e-6;

    /** A few algae are always there: 0.1 mmol of nitrogen in a cubic metre; an estimate. */
    private static final double FEW_ALGAE = 1e-4;

    /** Share of the nitrifiers of ripe rock on rock that is seeded, or dry with a trace in it; an estimate. */
    private static final double SEEDED = 0.02;

    private static final double TRACE = 5e-4;

    private static final List<Stock> WASTE =
            List.of(Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);

    private final Plan plan;
    private final Water water;
    private final KeptWater.InDraw kept;
    private final Network network;
    private final Surroundings room;
    private final Basins basins;
    private final Pools pools;
    private final Ration fed;
    private final Bacteria bacteria;
    private final PowerSupplies supplies;
    private final TopOffs topOffs;
    private final AlgaeBeds algaeBeds;
    private final Life life;
    private final Dosing dosing;

    FirstState(
            Plan plan,
            Water water,
            KeptWater.InDraw kept,
            Network network,
            Surroundings room,
            Basins basins,
            Pools pools,
            Ration fed,
            Bacteria bacteria,
            PowerSupplies supplies,
            TopOffs topOffs,
            AlgaeBeds algaeBeds,
            Life life,
            Dosing dosing) {
        this.dosing = dosing;
        this.plan = plan;
        this.water = water;
        this.kept = kept;
        this.network = network;
        this.room = room;
        this.basins = basins;
        this.pools = pools;
        this.fed = fed;
        this.bacteria = bacteria;
        this.supplies = supplies;
        this.topOffs = topOffs;
        this.algaeBeds = algaeBeds;
        this.life = life;
    }

    State of(@Unit("*") double[] parameters) {
        Draw draw = Draw.of(parameters);
        State state = new State(network);
        for (Basins.Basin basin : basins.all()) {
            state.fill(basin.body(), basin.volume(), water.temperature(), water.salinity(), water.oxygen());
        }
        state(state, parameters, USUAL_CARBON_DIOXIDE);
        room.fill(state);
        supplies.fill(state, parameters);
        waste(state);
        nitrifiers(state, draw);
        life.rest(state, parameters, fed);
        dosing.fill(state);
        fewAlgae(state);
        return state;
    }

    /**
     * The same on the day it is filled: no waste lies in it, no fish are in it yet, and nitrifiers are as many as were brought
     * in.
     *
     * @param ammoniaOxidisers as a share of the most the surfaces can carry
     * @param nitriteOxidisers likewise
     */
    State newlyFilled(
            @Unit("*") double[] parameters, @Unit("1") double ammoniaOxidisers, @Unit("1") double nitriteOxidisers) {
        for (double share : new double[] {ammoniaOxidisers, nitriteOxidisers}) {
            if (!(share >= 0 && share <= 1)) {
                throw new IllegalArgumentException(
                        "nitrifiers cannot begin with " + share + " of what the surfaces can carry; it needs 0 to 1");
            }
        }
        State state = of(parameters);
        clean(state, parameters, ammoniaOxidisers, nitriteOxidisers);
        WASTE.forEach(stock -> state.set(pools.fish(), stock, 0));
        state.set(pools.reserve(), Stock.ORGANIC_CARBON, 0);
        return state;
    }

    /** The same on the day a batch of animals comes into washed panes and new water, with what is brought in for them. */
    void batch(State state, @Unit("*") double[] parameters) {
        clean(
                state,
                parameters,
                bacteria.brought().ammoniaOxidisers(),
                bacteria.brought().nitriteOxidisers());
        fewAlgae(state);
    }

    /** Takes all waste out and puts so many nitrifiers in. */
    private void clean(State state, double[] parameters, double ammoniaOxidisers, double nitriteOxidisers) {
        for (Stock stock : WASTE) {
            basins.all().forEach(basin -> state.set(basin.body(), stock, 0));
            state.set(pools.ground(), stock, 0);
        }
        double most = bacteria.greatestCapacity().in(Draw.of(parameters));
        colony(state, pools.ammoniaOxidisers(), Nitrification.Step.AMMONIA, ammoniaOxidisers * most);
        colony(state, pools.nitriteOxidisers(), Nitrification.Step.NITRITE, nitriteOxidisers * most);
    }

    /**
     * Sets what the plan states: the water, with carbon for a partial pressure of carbon dioxide, its algae and fish. The
     * reservoir is full, because it was filled the midnight from which days are counted.
     */
    void state(State state, @Unit("*") double[] parameters, @Unit("atm") double carbonDioxide) {
        Draw draw = Draw.of(parameters);
        KeptWater stated = kept.in(draw);
        for (Basins.Basin basin : basins.all()) {
            Body body = basin.body();
            state.dissolve(body, Stock.SALT, stated.salt())
                    .dissolve(body, Stock.ALKALINITY, stated.alkalinity())
                    .dissolve(body, Stock.CALCIUM, stated.calcium())
                    .dissolve(body, Stock.MAGNESIUM, stated.magnesium())
                    .dissolve(body, Stock.NITRATE, stated.nitrate())
                    .dissolve(body, Stock.NITRITE, stated.nitrite())
                    .dissolve(body, Stock.AMMONIA, stated.ammonia())
                    .dissolve(body, Stock.PHOSPHATE, stated.phosphate())
                    .dissolve(
                            body,
                            Stock.INORGANIC_CARBON,
                            KeptWater.carbonUnder(
                                    carbonDioxide,
                                    water.temperature(),
                                    stated.salinity(),
                                    stated.alkalinity(),
                                    water.density()));
        }
        double display = state.get(basins.display().body(), Stock.WATER);
        state.set(
                pools.rockPhosphate(),
                Stock.PHOSPHATE,
                bacteria.phosphateRatio().in(draw) * stated.phosphate() * display);
        topOffs.fill(state);
        algaeBeds.fill(state, draw);
        life.stock(state);
    }

    /** Waste as it comes to rest between what the animals drop and what rots. */
    private void waste(State state) {
        double soon = Remineralisation.LABILE.usual();
        double slow = Remineralisation.SLOW.usual();
        double settles = 0.1 / DAY;
        double labile = Remineralisation.LABILE_SHARE.usual();
        double volume = basins.all().stream().mapToDouble(Basins.Basin::volume).sum();
        Stock[] stocks = {Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS};
        Fish.Diet diet = life.diet();
        Partition[] shares = {diet.carbon(), diet.nitrogen(), diet.phosphorus()};
        double[] ration = {fed.carbon(), fed.nitrogen(), fed.phosphorus()};
        for (int i = 0; i < stocks.length; i++) {
            double quicker = stocks[i] == Stock.ORGANIC_PHOSPHORUS ? Remineralisation.PHOSPHORUS_FACTOR.usual() : 1;
            double afloat = ration[i] * (shares[i].faeces() * labile + shares[i].uneaten());
            double suspended = afloat / (soon * quicker + settles);
            double dropped = ration[i] * shares[i].faeces() * (1 - labile) + settles * suspended;
            for (Basins.Basin basin : basins.all()) {
                state.dissolve(basin.body(), stocks[i], suspended / volume);
            }
            state.set(pools.ground(), stocks[i], dropped / (slow * quicker + WaterChanges.siphonedPerTime(plan)));
        }
    }

    /**
     * Nitrifiers in the number that a load keeps: growth mu m meets loss b, so that C = L mu / b, as far as there is room.
     */
    private void nitrifiers(State state, Draw draw) {
        double load = fed.nitrogen() * (1 - life.diet().nitrogen().retained());
        double most = bacteria.greatestCapacity().in(draw);
        cells(state, pools.ammoniaOxidisers(), Nitrification.Step.AMMONIA, load, most);
        cells(state, pools.nitriteOxidisers(), Nitrification.Step.NITRITE, load, most);
    }

    private void cells(State state, Body cells, Nitrification.Step step, double load, double most) {
        Nitrifiers guild = step.cells();
        double kept = Math.min(0.9 * most, load * guild.growth() / guild.decay());
        double capacity = Math.max(1e-3 * most, kept) * ripeness(plan.display().rock());
        colony(state, cells, step, capacity);
    }

    /** As many of both guilds as another state has, and the ammonia and nitrite they leave where the plan states none. */
    void bringNitrifiers(State from, State to) {
        for (Body cells : List.of(pools.ammoniaOxidisers(), pools.nitriteOxidisers())) {
            for (Stock stock : cells.held()) {
                to.set(cells, stock, from.get(cells, stock));
            }
        }
        for (Basins.Basin basin : basins.all()) {
            if (plan.water().ammonia() == null) {
                to.set(basin.body(), Stock.AMMONIA, from.get(basin.body(), Stock.AMMONIA));
            }
            if (plan.water().nitrite() == null) {
                to.set(basin.body(), Stock.NITRITE, from.get(basin.body(), Stock.NITRITE));
            }
        }
    }

    /**
     * Both guilds in the number that clears a dose within a day, where they are fewer: by the Monod law C = S + K ln(S/s), less
     * the little that is left; what they grow by meanwhile, and what oxygen slows, are left out.
     *
     * @param dose S of ammonia or nitrite
     * @param left s at which it counts as cleared
     */
    void raiseNitrifiers(
            State state, @Unit("*") double[] parameters, @Unit("mol/m^3") double dose, @Unit("mol/m^3") double left) {
        Draw draw = Draw.of(parameters);
        raise(state, pools.ammoniaOxidisers(), Nitrification.Step.AMMONIA, draw, dose, left);
        raise(state, pools.nitriteOxidisers(), Nitrification.Step.NITRITE, draw, dose, left);
    }

    private void raise(State state, Body cells, Nitrification.Step step, Draw draw, double dose, double left) {
        double volume = basins.all().stream().mapToDouble(Basins.Basin::volume).sum();
        double slowing = bacteria.halfSaturation(step).in(draw) * Math.log(Math.max(1, dose / left));
        double capacity = volume
                * (dose + slowing)
                / DAY
                / bacteria.pace(step, water.temperature()).in(draw);
        if (state.get(cells, Stock.ORGANIC_NITROGEN) < step.cells().cells(capacity)) {
            colony(state, cells, step, capacity);
        }
    }

    /** Cells of a capacity at 25 °C. */
    private static void colony(State state, Body cells, Nitrification.Step step, double capacity) {
        double nitrogen = step.cells().cells(capacity);
        state.set(cells, Stock.ORGANIC_NITROGEN, nitrogen);
        state.set(cells, Stock.ORGANIC_CARBON, 5 * nitrogen);
    }

    private static double ripeness(@org.jspecify.annotations.Nullable Rock rock) {
        Rock.State ripe = rock == null || rock.state() == null ? Rock.State.LIVE : rock.state();
        return switch (ripe) {
            case LIVE -> 1;
            case SEEDED -> SEEDED;
            case DRY -> TRACE;
        };
    }

    private void fewAlgae(State state) {
        double algae = FEW_ALGAE * basins.display().volume();
        state.set(pools.freeAlgae(), Stock.ORGANIC_NITROGEN, algae)
                .set(pools.freeAlgae(), Stock.ORGANIC_CARBON, algae * 106.0 / 16)
                .set(pools.freeAlgae(), Stock.ORGANIC_PHOSPHORUS, algae / 16);
    }
}
