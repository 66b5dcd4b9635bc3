package org.tidewright.twin.mechanism.biota;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Setting;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.biota.BodyComposition;
import org.tidewright.twin.law.biota.Digestion;
import org.tidewright.twin.law.biota.Partition;
import org.tidewright.twin.law.gas.OxygenLimitation;
import org.tidewright.twin.law.gas.Q10;

/**
 * All fish together: meals pass stomach and gut, and what leaves the gut is kept, excreted and dropped. The carbon that is
 * not kept fills a reserve, which is burnt within about a day, so that breath outlasts the meal; when the reserve gives
 * less than rest asks for, the fish burns its own body and loses nitrogen with it.
 */
public final class Fish implements Mechanism {
    /** A gut empties into the reserve faster than it is burnt: breath evens out over a day; an estimate. */
    private static final double RESERVE_LASTS = 86_400;

    private static final double REFERENCE = 25;

    private final Places places;
    private final Diet diet;
    private final double restingAtReference;
    private final double mass;
    private final Setting extent;
    private final Parameter stage;
    private final Parameter activity;
    private final Parameter ammoniaShare;
    private final Parameter labileShare;
    private final Recipe breathing;
    private final Recipe burningBody;
    private final Recipe ammonia;
    private final Recipe phosphate;
    private final Recipe bodyAmmonia;

    /**
     * Where food goes.
     *
     * @param stomach first stage
     * @param gut second stage
     * @param reserve carbon to burn
     * @param flesh the fish themselves
     * @param ground where droppings come to lie
     * @param life what breathes
     */
    public record Places(Body water, Body stomach, Body gut, Body reserve, Body flesh, Body ground, Body life) {}

    /** How the three elements are shared out. */
    public record Diet(Partition carbon, Partition nitrogen, Partition phosphorus) {}

    /**
     * What is known of them.
     *
     * @param resting breath of all at 25 °C
     * @param mass of all, live
     * @param extent setting: 1 for those of the plan
     */
    public record Shoal(
            @Unit("mol/s") double resting, @Unit("kg") double mass, Setting extent) {}

    /**
     * What is not known exactly.
     *
     * @param stage specific rate of stomach and gut, 1/s
     * @param activity factor on resting breath below which the body itself is burnt
     * @param ammoniaShare of excreted nitrogen
     * @param labileShare of droppings that rots soon
     */
    public record Doubts(Parameter stage, Parameter activity, Parameter ammoniaShare, Parameter labileShare) {}

    /** All fish of a tank. */
    public Fish(Places places, Diet diet, Shoal shoal, Doubts doubts) {
        this.places = places;
        this.diet = diet;
        restingAtReference = shoal.resting();
        mass = shoal.mass();
        extent = shoal.extent();
        stage = doubts.stage();
        activity = doubts.activity();
        ammoniaShare = doubts.ammoniaShare();
        labileShare = doubts.labileShare();
        breathing = burning(places.reserve());
        burningBody = burning(places.flesh());
        ammonia = excretion(places.gut(), Stock.ORGANIC_NITROGEN, Stock.AMMONIA);
        phosphate = excretion(places.gut(), Stock.ORGANIC_PHOSPHORUS, Stock.PHOSPHATE);
        bodyAmmonia = excretion(places.flesh(), Stock.ORGANIC_NITROGEN, Stock.AMMONIA);
    }

    private Recipe burning(Body fuel) {
        return Recipe.named("breathing of fish")
                .takes(fuel, Stock.ORGANIC_CARBON, 1)
                .gives(places.water(), Stock.INORGANIC_CARBON, 1)
                .moves(Stock.OXYGEN, places.water(), places.life(), 1)
                .build();
    }

    private Recipe excretion(Body from, Stock organic, Stock dissolved) {
        return Recipe.named(dissolved + " from fish")
                .takes(from, organic, 1)
                .gives(places.water(), dissolved, 1)
                .build();
    }

    @Override
    public String name() {
        return "fish";
    }

    @Override
    public void act(View now, Transfers out) {
        double temperature = now.temperature(places.water());
        double passing = Digestion.passage(1, now.value(stage), temperature);
        fill(Stock.ORGANIC_CARBON, passing, now, out);
        fill(Stock.ORGANIC_NITROGEN, passing, now, out);
        fill(Stock.ORGANIC_PHOSPHORUS, passing, now, out);
        carbon(passing, now, out);
        nitrogen(passing, now, out);
        phosphorus(passing, now, out);
        breathe(now, out, temperature);
    }

    private void fill(Stock stock, double passing, View now, Transfers out) {
        out.move(stock, places.stomach(), places.gut(), passing * now.stock(places.stomach(), stock));
    }

    private void carbon(double passing, View now, Transfers out) {
        double leaving = passing * now.stock(places.gut(), Stock.ORGANIC_CARBON);
        Partition shares = diet.carbon();
        out.move(Stock.ORGANIC_CARBON, places.gut(), places.flesh(), leaving * shares.retained() / shares.eaten());
        out.move(Stock.ORGANIC_CARBON, places.gut(), places.reserve(), leaving * shares.excreted() / shares.eaten());
        drop(Stock.ORGANIC_CARBON, leaving * shares.faeces() / shares.eaten(), now, out);
    }

    private void nitrogen(double passing, View now, Transfers out) {
        double leaving = passing * now.stock(places.gut(), Stock.ORGANIC_NITROGEN);
        Partition shares = diet.nitrogen();
        double excreted = leaving * shares.excreted() / shares.eaten();
        double asAmmonia = now.value(ammoniaShare);
        out.move(Stock.ORGANIC_NITROGEN, places.gut(), places.flesh(), leaving * shares.retained() / shares.eaten());
        out.run(ammonia, asAmmonia * excreted);
        out.move(Stock.ORGANIC_NITROGEN, places.gut(), places.water(), (1 - asAmmonia) * excreted);
        drop(Stock.ORGANIC_NITROGEN, leaving * shares.faeces() / shares.eaten(), now, out);
    }

    private void phosphorus(double passing, View now, Transfers out) {
        double leaving = passing * now.stock(places.gut(), Stock.ORGANIC_PHOSPHORUS);
        Partition shares = diet.phosphorus();
        out.move(Stock.ORGANIC_PHOSPHORUS, places.gut(), places.flesh(), leaving * shares.retained() / shares.eaten());
        out.run(phosphate, leaving * shares.excreted() / shares.eaten());
        drop(Stock.ORGANIC_PHOSPHORUS, leaving * shares.faeces() / shares.eaten(), now, out);
    }

    private void drop(Stock stock, double amount, View now, Transfers out) {
        double soon = now.value(labileShare);
        out.move(stock, places.gut(), places.water(), soon * amount);
        out.move(stock, places.gut(), places.ground(), (1 - soon) * amount);
    }

    private void breathe(View now, Transfers out, double temperature) {
        double warmth = Q10.factor(Q10.WITHIN_A_FISH_SPECIES, temperature, REFERENCE);
        double air = OxygenLimitation.share(now.oxygen(places.water()), OxygenLimitation.HALF_SATURATION);
        double fromReserve =
                Math.max(0, now.stock(places.reserve(), Stock.ORGANIC_CARBON)) / RESERVE_LASTS * warmth * air;
        out.run(breathing, fromReserve);
        double rest = now.value(extent) * now.value(activity) * restingAtReference * warmth * air;
        double lack = rest - fromReserve;
        double flesh = now.stock(places.flesh(), Stock.ORGANIC_CARBON);
        if (lack > 0 && flesh > 0) {
            out.run(burningBody, lack);
            double fasting = Digestion.fasting(mass, Digestion.FASTING.usual(), temperature);
            out.run(bodyAmmonia, now.value(extent) * fasting * lack / rest);
        }
    }

    /** Carbon of flesh of a live mass. */
    public static @Unit("mol") double carbonOf(@Unit("kg") double mass) {
        return mass * BodyComposition.CARBON;
    }
}
