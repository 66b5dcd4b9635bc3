package org.tidewright.twin.mechanism.biota;

import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Mechanism;
import org.tidewright.twin.contract.Parameter;
import org.tidewright.twin.contract.Recipe;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.contract.Transfers;
import org.tidewright.twin.contract.View;
import org.tidewright.twin.law.biota.BodyComposition;
import org.tidewright.twin.law.biota.Digestion;
import org.tidewright.twin.law.biota.Hunger;
import org.tidewright.twin.law.biota.Partition;
import org.tidewright.twin.law.gas.OxygenLimitation;
import org.tidewright.twin.law.gas.Q10;

/**
 * All fish together: meals pass stomach and gut, and what leaves the gut is kept, excreted and dropped. The carbon that is
 * not kept fills a reserve, which is burnt within about a day, so that breath outlasts the meal. When the reserve gives
 * less than rest asks for, the fish burn their own fat and flesh and lose nitrogen and phosphorus with it; when it gives
 * more, lean fish lay on fat first. How many they are is what flesh there is: its nitrogen over that of the plan's fish.
 */
public final class Fish implements Mechanism {
    /** A gut empties into the reserve faster than it is burnt: breath evens out over a day; an estimate. */
    private static final double RESERVE_LASTS = 86_400;

    /** Condition under which growth makes flesh and no bone, fading over a tenth; an estimate. */
    private static final double TOO_THIN_FOR_BONE = 0.9;

    private static final double REFERENCE = 25;
    private static final double PHOSPHORUS_TO_NITROGEN = BodyComposition.PHOSPHORUS / BodyComposition.NITROGEN;

    private final Places places;
    private final Diet diet;
    private final Shoal shoal;
    private final Parameter stage;
    private final Parameter activity;
    private final Parameter ammoniaShare;
    private final Parameter labileShare;
    private final Recipe breathing;
    private final Recipe burningBody;
    private final Recipe ammonia;
    private final Recipe phosphate;
    private final Recipe bodyAmmonia;
    private final Recipe bodyPhosphate;

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
     * What is known of those of the plan, all together.
     *
     * @param mass live
     * @param resting breath at 25 °C
     * @param fasting nitrogen lost without food at 25 °C
     */
    public record Shoal(
            @Unit("kg") double mass,
            @Unit("mol/s") double resting,
            @Unit("mol/s") double fasting) {}

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
        this.shoal = shoal;
        stage = doubts.stage();
        activity = doubts.activity();
        ammoniaShare = doubts.ammoniaShare();
        labileShare = doubts.labileShare();
        breathing = burning(places.reserve());
        burningBody = burning(places.flesh());
        ammonia = excretion(places.gut(), Stock.ORGANIC_NITROGEN, Stock.AMMONIA);
        phosphate = excretion(places.gut(), Stock.ORGANIC_PHOSPHORUS, Stock.PHOSPHATE);
        bodyAmmonia = excretion(places.flesh(), Stock.ORGANIC_NITROGEN, Stock.AMMONIA);
        bodyPhosphate = excretion(places.flesh(), Stock.ORGANIC_PHOSPHORUS, Stock.PHOSPHATE);
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
        double kept = nitrogen(passing, now, out);
        phosphorus(passing, kept, now, out);
        breathe(now, out, temperature);
    }

    private void fill(Stock stock, double passing, View now, Transfers out) {
        out.move(stock, places.stomach(), places.gut(), passing * now.stock(places.stomach(), stock));
    }

    /** Lean fish do not grow: what they would keep they burn or excrete, and lay on fat. */
    private double growing(View now) {
        return Math.min(1, fat(now));
    }

    private double fat(View now) {
        return Hunger.fat(
                now.stock(places.flesh(), Stock.ORGANIC_CARBON), now.stock(places.flesh(), Stock.ORGANIC_NITROGEN));
    }

    private void carbon(double passing, View now, Transfers out) {
        double leaving = passing * now.stock(places.gut(), Stock.ORGANIC_CARBON);
        Partition shares = diet.carbon();
        double digested = leaving * (shares.retained() + shares.excreted()) / shares.eaten();
        double kept = growing(now) * leaving * shares.retained() / shares.eaten();
        out.move(Stock.ORGANIC_CARBON, places.gut(), places.flesh(), kept);
        out.move(Stock.ORGANIC_CARBON, places.gut(), places.reserve(), digested - kept);
        drop(Stock.ORGANIC_CARBON, leaving * shares.faeces() / shares.eaten(), now, out);
    }

    /** Tells what is kept. */
    private double nitrogen(double passing, View now, Transfers out) {
        double leaving = passing * now.stock(places.gut(), Stock.ORGANIC_NITROGEN);
        Partition shares = diet.nitrogen();
        double digested = leaving * (shares.retained() + shares.excreted()) / shares.eaten();
        double kept = growing(now) * leaving * shares.retained() / shares.eaten();
        double excreted = digested - kept;
        double asAmmonia = now.value(ammoniaShare);
        out.move(Stock.ORGANIC_NITROGEN, places.gut(), places.flesh(), kept);
        out.run(ammonia, asAmmonia * excreted);
        out.move(Stock.ORGANIC_NITROGEN, places.gut(), places.water(), (1 - asAmmonia) * excreted);
        drop(Stock.ORGANIC_NITROGEN, leaving * shares.faeces() / shares.eaten(), now, out);
        return kept;
    }

    /** No more is kept than growing flesh and bone ask for; what else is digested is excreted. */
    private void phosphorus(double passing, double nitrogenKept, View now, Transfers out) {
        double leaving = passing * now.stock(places.gut(), Stock.ORGANIC_PHOSPHORUS);
        Partition shares = diet.phosphorus();
        double digested = leaving * (shares.retained() + shares.excreted()) / shares.eaten();
        double bone = Hunger.BONE * Math.max(0, Math.min(1, (condition(now) - TOO_THIN_FOR_BONE) * 10));
        double asked = nitrogenKept * PHOSPHORUS_TO_NITROGEN * (1 - Hunger.BONE + bone);
        double kept = Math.min(leaving * shares.retained() / shares.eaten(), asked);
        out.move(Stock.ORGANIC_PHOSPHORUS, places.gut(), places.flesh(), kept);
        out.run(phosphate, digested - kept);
        drop(Stock.ORGANIC_PHOSPHORUS, leaving * shares.faeces() / shares.eaten(), now, out);
    }

    private double condition(View now) {
        return Hunger.condition(
                now.stock(places.flesh(), Stock.ORGANIC_NITROGEN), now.stock(places.flesh(), Stock.ORGANIC_PHOSPHORUS));
    }

    private void drop(Stock stock, double amount, View now, Transfers out) {
        double soon = now.value(labileShare);
        out.move(stock, places.gut(), places.water(), soon * amount);
        out.move(stock, places.gut(), places.ground(), (1 - soon) * amount);
    }

    private void breathe(View now, Transfers out, double temperature) {
        double warmth = Q10.factor(Q10.WITHIN_A_FISH_SPECIES, temperature, REFERENCE);
        double pace = warmth * OxygenLimitation.ofAired(now.oxygen(places.water()));
        double nitrogen = Math.max(0, now.stock(places.flesh(), Stock.ORGANIC_NITROGEN));
        double fat = fat(now);
        double many = nitrogen / (shoal.mass() * BodyComposition.NITROGEN);
        double resting = now.value(activity) * shoal.resting();
        double rest = many * resting * pace;
        double fromReserve = Math.max(0, now.stock(places.reserve(), Stock.ORGANIC_CARBON)) / RESERVE_LASTS * pace;
        double laidOn = Math.max(0, fromReserve - rest) * Math.max(0, 1 - fat);
        out.run(breathing, fromReserve - laidOn);
        out.move(Stock.ORGANIC_CARBON, places.reserve(), places.flesh(), laidOn);
        double lack = rest - fromReserve;
        if (lack > 0) {
            double ordinary = Math.min(1, shoal.fasting() * Hunger.LEAN_CARBON / resting);
            double fleshBurnt = lack * Hunger.proteinShare(fat, ordinary) / Hunger.LEAN_CARBON;
            out.run(burningBody, lack);
            out.run(bodyAmmonia, fleshBurnt);
            out.run(bodyPhosphate, fleshBurnt * PHOSPHORUS_TO_NITROGEN * (1 - Hunger.BONE));
        }
    }
}
