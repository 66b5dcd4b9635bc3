package org.tidewright.husbandry.burden;

import java.util.List;
import org.tidewright.seawater.unit.Unit;

/**
 * What the bacteria were asked for lately, and so may not have followed yet. A plan says who lives in the system and not since
 * when.
 *
 * @param arrivals of animals that the plan counts already
 * @param cleared dose of ammonia, as nitrogen, that was last seen to be gone with its nitrite within a day, before the first of
 *     these arrivals; 0 where nobody tried
 */
public record Lately(List<Arrival> arrivals, @Unit("mg/L") double cleared) {
    /** Animals have lived for months with those that are there, and nobody tried more. */
    public static final Lately NOTHING = new Lately(List.of(), 0);

    /** Bacteria have followed an arrival by then. */
    public static final int FOLLOWED = 56;

    private static final double MOST = 5;

    /**
     * Animals that came.
     *
     * @param daysAgo 0 for today
     * @param mass live, all together
     */
    public record Arrival(int daysAgo, @Unit("kg") double mass) {
        public Arrival {
            if (daysAgo < 0 || !(mass > 0 && Double.isFinite(mass))) {
                throw new IllegalArgumentException("an arrival of " + mass + " kg " + daysAgo
                        + " days ago cannot be; it needs a mass above 0 and days that are not negative");
            }
        }
    }

    public Lately {
        arrivals = arrivals.stream()
                .filter(arrival -> arrival.daysAgo() <= FOLLOWED)
                .toList();
        if (!(cleared >= 0 && cleared <= MOST)) {
            throw new IllegalArgumentException(
                    "water that clears " + cleared + " mg/L of nitrogen a day is not known; it needs 0 to " + MOST);
        }
    }

    /** The same where no more came than there is: of a plan that does not count all of them yet, those it counts are new. */
    Lately within(@Unit("kg") double present) {
        double share = Math.min(1, present / Math.max(present, came()));
        List<Arrival> counted = share > 0
                ? arrivals.stream()
                        .map(each -> new Arrival(each.daysAgo(), share * each.mass()))
                        .toList()
                : List.of();
        return new Lately(counted, cleared);
    }

    /** Days since the first of the arrivals. */
    int since() {
        return arrivals.stream().mapToInt(Arrival::daysAgo).max().orElse(0);
    }

    /** Mass that came so many days ago. */
    @Unit("kg")
    double cameOn(int daysAgo) {
        return arrivals.stream()
                .filter(arrival -> arrival.daysAgo() == daysAgo)
                .mapToDouble(Arrival::mass)
                .sum();
    }

    /** Mass of all that came. */
    @Unit("kg")
    double came() {
        return arrivals.stream().mapToDouble(Arrival::mass).sum();
    }
}
