package org.tidewright.husbandry.reef;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.quantity.Amount;
import org.tidewright.plan.source.Basis;
import org.tidewright.seawater.unit.Unit;
import org.tidewright.twin.law.carbonate.Calcification;
import org.tidewright.twin.law.carbonate.Calcifier;

/**
 * How colonies spread and what that takes out of the water.
 *
 * <pre>
 * r(t) = r + phi e t, A = number pi r^2
 * demand = sum over colonies of phi c A crowded(sum A)/(sum A), and coralline algae
 * </pre>
 *
 * with the extension e, the calcification c and the factor phi for captivity. Coralline algae stay as they are.
 */
public final class Growth {
    /** Share of the floor that colonies can cover at most, {@link Calcification#crowded}; a guess. */
    private static final double MOST_OF_FLOOR = 0.6;

    /** A use stated without a doubt counts as known to a tenth, as in the twin. */
    private static final double UNDOUBTED = 0.1;

    private final List<Colony> colonies;
    private final double floor;
    private final double coralline;
    private final Captivity captivity;

    /**
     * Growth of some colonies.
     *
     * @param floor of the display
     * @param coralline rock and glass under coralline algae
     */
    public Growth(
            List<Colony> colonies, @Unit("m^2") double floor, @Unit("m^2") double coralline, Captivity captivity) {
        this.colonies = List.copyOf(colonies);
        this.floor = floor;
        this.coralline = coralline;
        this.captivity = captivity;
    }

    /** Of a plan's corals. */
    public static Growth of(Plan plan, CoralLore lore, Captivity captivity) {
        Inhabitants inhabitants = plan.inhabitants();
        double coralline = inhabitants == null || inhabitants.corallineArea() == null
                ? 0
                : inhabitants.corallineArea().in("m^2");
        double floor = plan.display().length().in("m") * plan.display().width().in("m");
        return new Growth(Colony.of(plan, lore), floor, coralline, captivity);
    }

    /** Of a plan's corals, by the use of alkalinity the plan states, where it does. */
    public static Growth asStated(Plan plan, CoralLore lore, @Unit("m^3") double volume) {
        Growth usual = of(plan, lore, Captivity.USUAL);
        Amount use = plan.inhabitants() == null ? null : plan.inhabitants().alkalinityUse();
        double computed = usual.demand(0).alkalinity();
        if (use == null || computed <= 0) {
            return usual;
        }
        double seen = use.in("mol/(m^3*s)");
        double error = use.doubt() > 0 ? use.doubtIn("mol/(m^3*s)") : UNDOUBTED * seen;
        return usual.by(Captivity.fitted(seen * volume, error * volume, computed, Basis.YOUR_PLAN));
    }

    /** The same corals by another factor for captivity. */
    public Growth by(Captivity other) {
        return new Growth(colonies, floor, coralline, other);
    }

    public List<Colony> colonies() {
        return colonies;
    }

    public Captivity captivity() {
        return captivity;
    }

    /** Whether any of them lays down skeleton. */
    public boolean isAnySkeleton() {
        return coralline > 0
                || colonies.stream().anyMatch(colony -> colony.traits().calcifies());
    }

    /** Radius of one colony after some time, slowest and fastest. */
    public @Unit("m") Ranged radius(Colony colony, @Unit("y") double years) {
        Ranged extension = colony.traits().extension();
        return new Ranged(
                colony.radiusAfter(years, captivity.factor().value() * extension.value()),
                colony.radiusAfter(years, captivity.factor().low() * extension.low()),
                colony.radiusAfter(years, captivity.factor().high() * extension.high()));
    }

    /** Area of all colonies seen from above, each alone. */
    public @Unit("m^2") double area(@Unit("y") double years) {
        return colonies.stream()
                .mapToDouble(colony -> area(colony, years, captivity.factor().value(), Ranged::value))
                .sum();
    }

    /** Area they cover when they overlap. */
    public @Unit("m^2") double covered(@Unit("y") double years) {
        return Calcification.crowded(area(years), MOST_OF_FLOOR * floor);
    }

    /** What skeletons take after some time, at the usual values. */
    public Demand demand(@Unit("y") double years) {
        return demand(years, usual());
    }

    /** The alkalinity of it, with the ends between which it lies. */
    public @Unit("mol/s") Ranged alkalinity(@Unit("y") double years) {
        return spread(values -> demand(years, values).alkalinity());
    }

    /** How much more alkalinity skeletons take after some time than they take now. */
    public @Unit("mol/s") Ranged moreAlkalinity(@Unit("y") double years) {
        return spread(
                values -> demand(years, values).alkalinity() - demand(0, values).alkalinity());
    }

    /** What the corals lay down after some time over what they lay down now, coralline algae left aside; 1 where nothing is. */
    public @Unit("1") double ofCorals(@Unit("y") double years) {
        double now = corals(0, usual());
        return now == 0 ? 1 : corals(years, usual()) / now;
    }

    // ── what is not known exactly ──

    /** One choice of what is not known exactly. */
    private record Values(
            double factor, double all, ToDoubleFunction<Ranged> extension, ToDoubleFunction<Ranged> calcification) {}

    private Values usual() {
        return new Values(captivity.factor().value(), captivity.all().value(), Ranged::value, Ranged::value);
    }

    /** Each goes to its low and its high end while the others stay; where the use was seen, the field's rates do not count. */
    private List<Values[]> ends() {
        Values usual = usual();
        double factor = usual.factor;
        double all = usual.all;
        List<Values[]> ends = new ArrayList<>();
        ends.add(new Values[] {
            new Values(captivity.factor().low(), all, Ranged::value, Ranged::value),
            new Values(captivity.factor().high(), all, Ranged::value, Ranged::value)
        });
        ends.add(new Values[] {
            new Values(factor, captivity.all().low(), Ranged::value, Ranged::value),
            new Values(factor, captivity.all().high(), Ranged::value, Ranged::value)
        });
        ends.add(new Values[] {
            new Values(factor, all, Ranged::low, Ranged::value), new Values(factor, all, Ranged::high, Ranged::value)
        });
        if (!captivity.isFitted()) {
            ends.add(new Values[] {
                new Values(factor, all, Ranged::value, Ranged::low),
                new Values(factor, all, Ranged::value, Ranged::high)
            });
        }
        return ends;
    }

    /** The usual value of something positive; the effects of all ends are added as independent ones, as factors. */
    private Ranged spread(ToDoubleFunction<Values> told) {
        double usual = told.applyAsDouble(usual());
        if (!(usual > 0)) {
            return Ranged.exactly(0);
        }
        double downward = 0;
        double upward = 0;
        for (Values[] end : ends()) {
            downward = Math.hypot(downward, Math.max(0, Math.log(usual / told.applyAsDouble(end[0]))));
            upward = Math.hypot(upward, Math.max(0, Math.log(told.applyAsDouble(end[1]) / usual)));
        }
        return new Ranged(usual, usual * Math.exp(-downward), usual * Math.exp(upward));
    }

    // ── sums ──

    private Demand demand(double years, Values values) {
        // A use that was seen is split as the usual factor splits it; the factor then only spreads the colonies.
        double rate = captivity.isFitted() ? Calcification.CAPTIVITY_USUAL : values.factor;
        return Demand.of(rate * corals(years, values), Calcification.MAGNESIUM_IN_CORAL)
                .plus(Demand.of(
                        coralline * Calcifier.CORALLINE_ALGAE.rate(), Calcifier.CORALLINE_ALGAE.magnesiumShare()))
                .times(values.all);
    }

    /** Carbonate the corals would lay down on a reef. */
    private double corals(double years, Values values) {
        double carbonate = 0;
        double sum = 0;
        for (Colony colony : colonies) {
            double area = area(colony, years, values.factor, values.extension);
            carbonate +=
                    area * values.calcification.applyAsDouble(colony.traits().calcification());
            sum += area;
        }
        return sum == 0 ? 0 : carbonate * Calcification.crowded(sum, MOST_OF_FLOOR * floor) / sum;
    }

    private static double area(Colony colony, double years, double factor, ToDoubleFunction<Ranged> extension) {
        double radius = colony.radiusAfter(
                years, factor * extension.applyAsDouble(colony.traits().extension()));
        return colony.number() * Math.PI * radius * radius;
    }
}
