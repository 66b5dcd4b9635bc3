package org.tidewright.twin.system;

import java.util.LinkedHashMap;
import java.util.Map;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Drawn;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.law.nutrient.ActivatedCarbon;
import org.tidewright.twin.law.nutrient.PhosphateAdsorption;
import org.tidewright.twin.law.nutrient.Remineralisation;
import org.tidewright.twin.law.nutrient.Skimming;
import org.tidewright.twin.law.nutrient.Straining;
import org.tidewright.twin.mechanism.air.AirOver;
import org.tidewright.twin.mechanism.gas.BubbleGases;
import org.tidewright.twin.mechanism.nutrient.CarbonMedium;
import org.tidewright.twin.mechanism.nutrient.PhosphateMedium;
import org.tidewright.twin.mechanism.nutrient.Skimmer;
import org.tidewright.twin.mechanism.nutrient.Strainer;
import org.tidewright.twin.run.Network;
import org.tidewright.twin.tank.Basins;
import org.tidewright.twin.tank.PowerSupplies;

/** Skimmers, media and fine filters that take matter out of the water. */
final class Filters {
    private static final double DAY = 86_400;

    /** Column through which a skimmer's bubbles rise; common practice. */
    private static final double COLUMN = 0.3;

    /** Carbon dioxide left in air led through an absorber, atm; common practice. */
    private static final double SCRUBBED = 50e-6;

    /** What a medium can hold and takes along when it is changed. */
    private static final Stock[] SPENT = {
        Stock.PHOSPHATE, Stock.ALKALINITY, Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS
    };

    private final Plan plan;
    private final Network.Builder builder;
    private final Levers levers;
    private final Doubt doubt;
    private final World world;
    private final PowerSupplies supplies;
    private final Basins basins;
    private final Surroundings room;
    private final Bacteria bacteria;
    private final Stated stated;
    private final double systemVolume;
    private final Map<String, Body> media = new LinkedHashMap<>();

    Filters(
            Plan plan,
            Network.Builder builder,
            Levers levers,
            World world,
            PowerSupplies supplies,
            Basins basins,
            Surroundings room,
            Bacteria bacteria,
            Stated stated) {
        this.bacteria = bacteria;
        this.stated = stated;
        this.plan = plan;
        this.builder = builder;
        this.levers = levers;
        this.doubt = new Doubt(builder);
        this.world = world;
        this.supplies = supplies;
        this.basins = basins;
        this.room = room;
        systemVolume = basins.all().stream().mapToDouble(Basins.Basin::volume).sum();
        for (Gear gear : plan.gear()) {
            if (gear.skims() != null) {
                skimmer(gear, gear.skims());
            }
            if (gear.media() != null) {
                media(gear, gear.media());
            }
            if (gear.strains() != null) {
                strainer(gear, gear.strains());
            }
        }
    }

    private void skimmer(Gear gear, Gear.Skimming skims) {
        Body water = basins.holding(gear.standsIn(), plan);
        Setting strength = levers.factor(gear.name() + " strength", "what it takes out");
        double skimmate = skims.skimmate() == null
                ? Skimming.skimmate(systemVolume, Skimming.WETNESS.usual())
                : skims.skimmate().in("m^3/s");
        // With plenty of flow it catches a share w of what is wasted, while the rest rots at k: k_most = k w / (1 - w).
        double rots = Remineralisation.LABILE.usual();
        Parameter most = builder.parameter(
                gear.name() + ", most of the waste it can take",
                "1/s",
                Straining.most(rots, Skimming.WASTE_CAUGHT.usual()),
                Straining.most(rots, Skimming.WASTE_CAUGHT.low()),
                Straining.most(rots, Skimming.WASTE_CAUGHT.high()),
                Basis.PUBLISHED,
                "removal levels off at 20–35 % of organic carbon (Feldman 2009 and 2010)");
        builder.add(new Skimmer(
                gear.name(),
                water,
                world.waste(),
                strength,
                skims.waterFlow().in("m^3/s"),
                skimmate,
                doubt.of(
                        gear.name() + ", share taken in one pass",
                        "1",
                        Skimming.SINGLE_PASS,
                        Basis.FROM_MEMORY,
                        "an estimate"),
                doubt.of(
                        gear.name() + ", share that foam can take",
                        "1",
                        Skimming.SKIMMABLE,
                        Basis.PUBLISHED,
                        "trials on tank water (Feldman 2009 and 2010)"),
                most,
                systemVolume,
                supplies.of(gear.name())));
        builder.add(new BubbleGases(
                water,
                world.oxygenInAir(),
                airOf(gear, skims),
                skims.airFlow().in("m^3/s"),
                COLUMN,
                skims.waterFlow().in("m^3/s"),
                doubt.of(
                        gear.name() + ", oxygen off its bubbles",
                        "1/m",
                        Skimming.OXYGEN_PER_METRE,
                        Basis.FROM_MEMORY,
                        "as a fine stone"),
                supplies.of(gear.name())));
    }

    private AirOver airOf(Gear gear, Gear.Skimming skims) {
        Gear.Air air = skims.air() == null ? Gear.Air.ROOM : skims.air();
        return switch (air) {
            case ROOM -> AirOver.of(room.air());
            case OUTDOORS ->
                AirOver.ledIn(
                        world.outdoors(),
                        levers.amount(
                                gear.name() + " air", "carbon dioxide in its air", "1", room.carbonDioxideOutdoors()));
            case SCRUBBED ->
                AirOver.ledIn(
                        world.outdoors(),
                        levers.amount(gear.name() + " air", "carbon dioxide in its air", "1", SCRUBBED));
        };
    }

    private void media(Gear gear, Gear.Media described) {
        Body water = basins.holding(gear.standsIn(), plan);
        Body medium = builder.pool("medium of the " + gear.name(), SPENT);
        media.put(gear.name(), medium);
        Setting mass = levers.amount(
                gear.name() + " mass", "of the medium", "kg", described.mass().in("kg"));
        Setting flow = levers.amount(
                gear.name() + " flow",
                "of water through it",
                "m^3/s",
                described.waterFlow().in("m^3/s"));
        if (described.kind() == Gear.Media.Kind.IRON_OXIDE) {
            builder.add(new PhosphateMedium(
                    gear.name(),
                    water,
                    medium,
                    mass,
                    flow,
                    doubt.of(
                            gear.name() + ", share taken in one pass",
                            "1",
                            PhosphateAdsorption.SINGLE_PASS,
                            Basis.FROM_MEMORY,
                            "an estimate"),
                    doubt.of(
                            gear.name() + ", usable share of the load at rest",
                            "1",
                            PhosphateAdsorption.USABLE,
                            Basis.FROM_MEMORY,
                            "an estimate")));
        } else {
            builder.add(new CarbonMedium(
                    gear.name(),
                    water,
                    medium,
                    mass,
                    flow,
                    doubt.of(
                            gear.name() + ", share taken in one pass",
                            "1",
                            ActivatedCarbon.SINGLE_PASS,
                            Basis.FROM_MEMORY,
                            "an estimate"),
                    doubt.of(
                            gear.name() + ", capacity",
                            "mol/kg",
                            ActivatedCarbon.CAPACITY,
                            Basis.FROM_MEMORY,
                            "10–100 mg of carbon per gram")));
        }
        if (described.changedEvery() != null) {
            changed(
                    gear.name() + ": medium changed",
                    medium,
                    described.changedEvery().in("s"));
        }
    }

    private void strainer(Gear gear, Gear.Straining strains) {
        Body water = basins.holding(gear.standsIn(), plan);
        Body caught = builder.pool(
                "held by the " + gear.name(), Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);
        String share = gear.name() + ", share of particles held back";
        Drawn heldBack = strains.share() == null
                ? doubt.of(
                        share,
                        "1",
                        Straining.HELD_BACK,
                        Basis.FROM_MEMORY,
                        "microscreens of fish farms hold 30–80 % of suspended solids (Timmons and Ebeling)")
                : stated.of(share, strains.share(), "1");
        // Without a motor of its own it hangs in the water that the return pump sends round.
        String driven = gear.power() == null && plan.returnLine() != null ? Names.RETURN_PUMP : gear.name();
        builder.add(new Strainer(
                gear.name(),
                water,
                caught,
                levers.factor(gear.name() + " strength", "what it holds back"),
                strains.waterFlow().in("m^3/s"),
                heldBack,
                doubt.of(
                        gear.name() + ", share of the waste it can catch",
                        "1",
                        Straining.WASTE_CAUGHT,
                        Basis.FROM_MEMORY,
                        "an estimate: half the particles' mass is finer than a mesh holds (Chen et al. 1993)"),
                systemVolume,
                supplies.of(driven)));
        builder.add(bacteria.asAfloat("decay in the " + gear.name(), caught, water, world));
        changed(gear.name() + " changed", caught, strains.changedEvery().in("s"));
    }

    /** Spent media and full filters go out with all they hold. */
    private void changed(String event, Body spent, @Unit("s") double every) {
        double days = Math.max(1, Math.rint(every / DAY));
        builder.add(new Routine(event, Routine.daily(DAY / 2, (int) days), (now, switches) -> {
            Transfers out = switches.atOnce();
            for (Stock stock : spent.held()) {
                out.move(stock, spent, world.waste(), now.stock(spent, stock));
            }
        }));
    }

    /** What the media of a device hold, by the device's name. */
    Map<String, Body> media() {
        return media;
    }
}
