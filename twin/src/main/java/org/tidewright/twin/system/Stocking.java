package org.tidewright.twin.system;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Routine;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.biota.BodyComposition;
import org.tidewright.twin.run.Network;

/** Fish that are added, taken out or die while the system runs. Each lever says how much; once done it is back at none. */
final class Stocking {
    /** An event follows its lever within a millisecond: late enough for time to move. */
    private static final double AT_ONCE = 1e-3;

    private final Pools pools;
    private final Setting fish;
    private final double planned;

    /**
     * Levers and events.
     *
     * @param fish setting: those that breathe, 1 for all of the plan
     * @param planned live mass of those of the plan; without any there is nothing to add to
     */
    Stocking(
            Network.Builder builder,
            Levers levers,
            World world,
            Pools pools,
            Setting fish,
            @Unit("kg") double planned) {
        this.pools = pools;
        this.fish = fish;
        this.planned = planned;
        Setting added = levers.amount("added fish", "live mass put in at once", "kg", 0);
        Setting removed = levers.amount("removed fish", "live mass taken out at once", "kg", 0);
        Setting dying = levers.amount("dying fish", "live mass that dies at once and is left to rot", "kg", 0);
        if (planned > 0) {
            event(
                    builder,
                    "fish are added",
                    added,
                    (now, out, mass) -> move(now, out, world.store(), pools.fish(), mass));
            event(
                    builder,
                    "fish are taken out",
                    removed,
                    (now, out, mass) -> move(now, out, pools.fish(), world.waste(), mass));
            event(builder, "fish die", dying, (now, out, mass) -> move(now, out, pools.fish(), pools.carrion(), mass));
        }
    }

    /** Moves a live mass and says how the number of breathing fish changes, as a share of the plan's. */
    @FunctionalInterface
    private interface Deed {
        double of(View now, Transfers out, double mass);
    }

    private void event(Network.Builder builder, String name, Setting lever, Deed deed) {
        builder.add(new Routine(
                name,
                (time, now) -> now.value(lever) > 0 ? time + AT_ONCE : Double.POSITIVE_INFINITY,
                (now, switches) -> {
                    double change = deed.of(now, switches.atOnce(), now.value(lever));
                    switches.set(fish, Math.max(0, now.value(fish) + change));
                    switches.set(lever, 0);
                }));
    }

    private double move(View now, Transfers out, Body from, Body to, double mass) {
        double living = mass;
        if (from == pools.fish()) {
            double present = now.stock(pools.fish(), Stock.ORGANIC_CARBON) / BodyComposition.CARBON;
            living = Math.min(mass, Math.max(0, present));
            double share = present > 0 ? living / present : 0;
            for (Stock stock : new Stock[] {Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS}) {
                out.move(stock, from, to, share * now.stock(from, stock));
            }
            return -share * now.value(fish);
        }
        out.move(Stock.ORGANIC_CARBON, from, to, living * BodyComposition.CARBON);
        out.move(Stock.ORGANIC_NITROGEN, from, to, living * BodyComposition.NITROGEN);
        out.move(Stock.ORGANIC_PHOSPHORUS, from, to, living * BodyComposition.PHOSPHORUS);
        return living / planned;
    }
}
