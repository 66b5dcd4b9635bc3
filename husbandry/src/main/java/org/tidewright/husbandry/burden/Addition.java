package org.tidewright.husbandry.burden;

import org.jspecify.annotations.Nullable;
import org.tidewright.seawater.unit.Unit;

/**
 * Animals of one kind that are to come. They breathe, eat and excrete as fish do.
 *
 * @param mass live, of one when it comes
 * @param grown live mass of one when it is grown
 * @param food more that is fed a day when they come, dry pellets for all of them; null for as much as the animals that are
 *     there get for their breath
 * @param day on which they come, 0 for today
 */
public record Addition(
        @Unit("kg") double mass,
        int count,
        @Unit("kg") double grown,
        @Nullable @Unit("kg/d") Double food,
        int day) {
    /** Later than this nobody plans a fish; common practice. */
    public static final int LATEST = 56;

    private static final double HEAVIEST = 50;
    private static final int MOST = 100;

    public Addition {
        if (!(mass > 0 && mass <= HEAVIEST) || !(grown >= mass && grown <= HEAVIEST)) {
            throw new IllegalArgumentException("an animal of " + mass + " kg that grows to " + grown
                    + " kg cannot be added; it needs more than 0, at most " + HEAVIEST
                    + " kg, and grown no less than now");
        }
        if (count < 1 || count > MOST) {
            throw new IllegalArgumentException(count + " animals cannot be added at once; it needs 1 to " + MOST);
        }
        if (food != null && !(food >= 0 && food <= 1)) {
            throw new IllegalArgumentException(food + " kg more food a day is not fed; it needs 0 to 1 kg");
        }
        if (day < 0 || day > LATEST) {
            throw new IllegalArgumentException("day " + day + " is not planned for; it needs 0 to " + LATEST);
        }
    }

    /** Of animals fed like those that are there, today. */
    public static Addition today(@Unit("kg") double mass, int count, @Unit("kg") double grown) {
        return new Addition(mass, count, grown, null, 0);
    }

    /** The same on another day. */
    public Addition on(int otherDay) {
        return new Addition(mass, count, grown, food, otherDay);
    }

    /** Whether they still grow much. */
    boolean isGrowing() {
        return mass < 0.9 * grown;
    }
}
