package org.tidewright.twin.system;

import java.util.List;
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

    private static final List<Stock> ELEMENTS =
            List.of(Stock.ORGANIC_CARBON, Stock.ORGANIC_NITROGEN, Stock.ORGANIC_PHOSPHORUS);

    private final Pools pools;

    Stocking(Network.Builder builder, Levers levers, World world, Pools pools) {
        this.pools = pools;
        Setting added = levers.amount("added fish", "live mass put in at once", "kg", 0);
        Setting removed = levers.amount("removed fish", "live mass taken out at once", "kg", 0);
        Setting dying = levers.amount("dying fish", "live mass that dies at once and is left to rot", "kg", 0);
        event(builder, "fish are added", added, (now, out, mass) -> {
            out.move(Stock.ORGANIC_CARBON, world.store(), pools.fish(), mass * BodyComposition.CARBON);
            out.move(Stock.ORGANIC_NITROGEN, world.store(), pools.fish(), mass * BodyComposition.NITROGEN);
            out.move(Stock.ORGANIC_PHOSPHORUS, world.store(), pools.fish(), mass * BodyComposition.PHOSPHORUS);
        });
        event(builder, "fish are taken out", removed, (now, out, mass) -> leave(now, out, world.waste(), mass));
        event(builder, "fish die", dying, (now, out, mass) -> leave(now, out, pools.carrion(), mass));
    }

    @FunctionalInterface
    private interface Deed {
        void of(View now, Transfers out, double mass);
    }

    private void event(Network.Builder builder, String name, Setting lever, Deed deed) {
        builder.add(new Routine(
                name,
                (time, now) -> now.value(lever) > 0 ? time + AT_ONCE : Double.POSITIVE_INFINITY,
                (now, switches) -> {
                    deed.of(now, switches.atOnce(), now.value(lever));
                    switches.set(lever, 0);
                }));
    }

    /** Fish take along what they carry. Their mass is that of their flesh without regard to how fat it is. */
    private void leave(View now, Transfers out, Body to, double mass) {
        double present = now.stock(pools.fish(), Stock.ORGANIC_NITROGEN) / BodyComposition.NITROGEN;
        double share = present > mass ? mass / present : 1;
        for (Body body : List.of(pools.fish(), pools.stomach(), pools.gut(), pools.reserve())) {
            for (Stock stock : ELEMENTS) {
                if (body.holds(stock)) {
                    out.move(stock, body, to, share * Math.max(0, now.stock(body, stock)));
                }
            }
        }
    }
}
