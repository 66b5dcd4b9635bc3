package org.tidewright.husbandry.mixing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.tidewright.husbandry.advice.Advice;
import org.tidewright.husbandry.limit.Keeping;
import org.tidewright.husbandry.limit.SafeRate;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * A change of water: so much is taken out, as much put in.
 *
 * @param system before the change; of its heat only the water's counts, rock and glass soften a change of temperature
 * @param volume taken out and put in
 * @param newWater what is put in
 */
public record WaterChange(Portion system, @Unit("m^3") double volume, KnownWater newWater) {
    /** Nobody pours more often for one change; a water that asks for it is to be mended instead. */
    private static final int MOST_PARTS = 50;

    private static final double HOUR = 3600;

    /**
     * Into how many equal parts a change is split.
     *
     * @param apart from one to the next
     */
    public record Split(int parts, @Unit("s") double apart) {}

    /** Refuses what cannot be meant. */
    public WaterChange {
        Bounds.positive(volume, "m^3", "volume of the change");
        Bounds.within(volume, "m^3", 0, system.volume(), "volume of the change", "is it more than the system holds?");
    }

    /** The system right after it. */
    public Portion after() {
        return Portion.mix(
                List.of(new Portion(system.volume() - volume, system.water()), new Portion(volume, newWater)));
    }

    /** Of the mass after it, how much is new. */
    public @Unit("1") double share() {
        double put = volume * newWater.density();
        return put / (put + (system.volume() - volume) * system.water().density());
    }

    /** What is known to move, in the order of the quantities. */
    public List<Shift> shifts() {
        KnownWater after = after().water();
        List<Shift> shifts = new ArrayList<>();
        for (WaterQuantity quantity : KnownWater.KEPT) {
            OptionalDouble then = after.value(quantity);
            if (then.isPresent()) {
                double before = system.water().value(quantity).orElseThrow();
                shifts.add(new Shift(quantity, before, then.getAsDouble()));
            }
        }
        return shifts;
    }

    /** What is known of neither or of one water only, and so not of the mixture. */
    public List<WaterQuantity> unknown() {
        KnownWater after = after().water();
        return KnownWater.KEPT.stream()
                .filter(quantity -> after.value(quantity).isEmpty())
                .toList();
    }

    /** One of so many equal parts of it. */
    WaterChange part(int parts) {
        return new WaterChange(system, volume / parts, newWater);
    }

    /**
     * The fewest equal parts of which each moves a quantity by no more than is comfortable: a day apart, or an hour where
     * the practice has an hourly rate and all parts together keep the daily one. The first part moves it farthest. Empty
     * where fifty are not enough.
     */
    public Optional<Split> split(WaterQuantity quantity, Keeping keeping) {
        Optional<Shift> whole = shift(quantity);
        if (whole.isEmpty()) {
            return Optional.of(new Split(1, 0));
        }
        List<SafeRate> rates = whole.get().rates(keeping);
        for (int parts = 1; parts <= MOST_PARTS; parts++) {
            double first = part(parts).shift(quantity).orElseThrow().step();
            if (rates.stream().allMatch(rate -> rate.isComfortable(first))) {
                boolean hourly = rates.stream().anyMatch(rate -> rate.span() == HOUR)
                        && rates.stream()
                                .filter(rate -> rate.span() > HOUR)
                                .allMatch(rate -> rate.isComfortable(whole.get().step()));
                return Optional.of(new Split(parts, parts == 1 ? 0 : hourly ? HOUR : SafeRate.DAY));
            }
        }
        return Optional.empty();
    }

    private Optional<Shift> shift(WaterQuantity quantity) {
        return shifts().stream().filter(shift -> shift.quantity() == quantity).findFirst();
    }

    /** Whether to do it, and how. */
    public Advice advice(Keeping keeping) {
        return new ChangeWords(this, keeping).advice();
    }
}
