package org.tidewright.numerics.ode;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.tidewright.numerics.root.Bracketed;

/**
 * Looks for the first crossing of a guard within a step.
 *
 * <p>A guard crosses when, after a strict sign, it reaches zero or the other sign in its direction. One that is zero when
 * the advance begins has no sign yet: it is armed by its first strict sign, looked for very soon after. The guards are
 * read at the end of the step and at three points within, on the dense output, so two crossings are told apart unless
 * they fall in the same quarter of a step; a maximum step guards against that.
 */
final class Crossings {
    private static final int QUARTERS = 4;
    private static final int PART_OF_STEP_THAT_ARMS = 1024;

    /** Crossings this near each other are one event: the tighter of a billionth and 1e-10 steps. */
    private static final double LONGEST_WINDOW = 1e-9;

    private static final double WINDOW_IN_STEPS = 1e-10;

    /** Each is located more closely than that, or its lag would add up over the many events of a run. */
    private static final double PART_OF_WINDOW = 1e-3;

    private static final int LAST_PLACES = 4;

    private final Interpolant step;
    private final double[] scratch;
    private final DoubleUnaryOperator guardOverTime = this::guardAt;

    private List<? extends Guard> guards = List.of();
    private int[] signs = new int[0];
    private int[] signsAfter = new int[0];
    private boolean[] crossed = new boolean[0];
    private double length;
    private boolean unarmed;
    private int watched;

    Crossings(int size, Interpolant step) {
        scratch = new double[size];
        this.step = step;
    }

    /** Arms the guards by their signs at the start of an advance. */
    void begin(double time, double[] state, List<? extends Guard> watchedGuards) {
        guards = watchedGuards;
        length = 0;
        unarmed = false;
        int count = watchedGuards.size();
        if (signs.length < count) {
            signs = new int[count];
            signsAfter = new int[count];
            crossed = new boolean[count];
        }
        System.arraycopy(state, 0, scratch, 0, scratch.length);
        for (int i = 0; i < count; i++) {
            signs[i] = (int) Math.signum(valueOf(i, time));
            unarmed |= signs[i] == 0;
        }
    }

    /** The time just past the first crossing in the step, or NaN when there is none. */
    double first() {
        int count = guards.size();
        if (count == 0) {
            return Double.NaN;
        }
        double from = step.from();
        length = step.to() - from;
        double before = from;
        if (unarmed) {
            unarmed = false;
            double soon = from + length / PART_OF_STEP_THAT_ARMS;
            double first = firstBetween(before, soon);
            if (!Double.isNaN(first)) {
                return first;
            }
            before = soon;
        }
        for (int quarter = 1; quarter <= QUARTERS; quarter++) {
            double time = quarter == QUARTERS ? step.to() : from + length * quarter / QUARTERS;
            double first = firstBetween(before, time);
            if (!Double.isNaN(first)) {
                return first;
            }
            before = time;
        }
        return Double.NaN;
    }

    /** Indexes of the guards that crossed at the time {@link #first()} gave. */
    int[] crossed() {
        int count = 0;
        for (int i = 0; i < guards.size(); i++) {
            count += crossed[i] ? 1 : 0;
        }
        int[] indexes = new int[count];
        int next = 0;
        for (int i = 0; i < guards.size(); i++) {
            if (crossed[i]) {
                indexes[next++] = i;
            }
        }
        return indexes;
    }

    private double firstBetween(double before, double time) {
        if (!(time > before)) {
            return Double.NaN;
        }
        int count = guards.size();
        boolean any = false;
        step.at(time, scratch);
        for (int i = 0; i < count; i++) {
            double value = valueOf(i, time);
            crossed[i] = crosses(i, value);
            any |= crossed[i];
            signsAfter[i] = (int) Math.signum(value);
        }
        if (!any) {
            System.arraycopy(signsAfter, 0, signs, 0, count);
            return Double.NaN;
        }
        double window = Math.min(LONGEST_WINDOW, WINDOW_IN_STEPS * length);
        double first = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            if (crossed[i]) {
                watched = i;
                first = Math.min(
                        first, Bracketed.past(guardOverTime, before, time, atLeastLastPlaces(PART_OF_WINDOW * window)));
            }
        }
        return withNeighbours(first, Math.min(first + atLeastLastPlaces(window), step.to()));
    }

    /**
     * Marks the guards that have crossed by the first crossing, or within the window after it; the stop is moved to
     * where all of them have.
     */
    private double withNeighbours(double first, double last) {
        boolean moved = false;
        for (int i = 0; i < guards.size(); i++) {
            watched = i;
            crossed[i] = crosses(i, guardAt(first));
            if (!crossed[i] && crosses(i, guardAt(last))) {
                crossed[i] = true;
                moved = true;
            }
        }
        return moved ? last : first;
    }

    private boolean crosses(int i, double value) {
        Guard.Direction direction = guards.get(i).direction();
        if (signs[i] < 0) {
            return value >= 0 && direction != Guard.Direction.FALLING;
        }
        return signs[i] > 0 && value <= 0 && direction != Guard.Direction.RISING;
    }

    private double guardAt(double time) {
        step.at(time, scratch);
        return valueOf(watched, time);
    }

    private double valueOf(int i, double time) {
        double value = guards.get(i).value(time, scratch);
        if (Double.isNaN(value)) {
            throw StepRefused.guard(i, time, length);
        }
        return value;
    }

    private double atLeastLastPlaces(double span) {
        return Math.max(span, LAST_PLACES * Math.ulp(Math.max(Math.abs(step.from()), Math.abs(step.to()))));
    }
}
