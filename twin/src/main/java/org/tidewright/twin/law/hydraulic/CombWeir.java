package org.tidewright.twin.law.hydraulic;

import org.tidewright.numerics.root.Bracketed;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Gravity;
import org.tidewright.seawater.unit.Unit;

/**
 * The toothed comb of an overflow: a row of equal slots, each a narrow weir, and the water above the teeth where there
 * is nothing over them.
 *
 * <pre>
 * h <= D:  Q = (2/3) Cd sqrt(2g) N w h^1.5
 * h >  D:  Q = (2/3) Cd sqrt(2g) N w (h^1.5 - (h - D)^1.5)  +  1.84 b (h - D)^1.5
 * </pre>
 *
 * @param slots N; a share of blocked slots makes it a fraction
 * @param slotWidth w
 * @param slotDepth D, from the foot of a slot to the top of the teeth
 * @param dischargeCoefficient Cd of a slot
 * @param lengthAbove b, length of the open crest that the tops of the teeth form; 0 where a lid or a bar closes it
 * @source slots as narrow rectangular notches, Cd 0.59 (0.50-0.64) from memory; open water above by Francis 1883
 *     without contraction. Francis' contraction is not for slots narrower than 3 h and would turn negative below 0.2 h.
 * @validity none published at these sizes; see {@link #relativeError}
 * @checkvalue 33 slots, 6 mm by 30 mm, Cd 0.59, brim-full: 1.7922e-3 m^3/s (6452 L/h, hand-worked)
 */
public record CombWeir(
        @Unit("1") double slots,
        @Unit("m") double slotWidth,
        @Unit("m") double slotDepth,
        @Unit("1") double dischargeCoefficient,
        @Unit("m") double lengthAbove)
        implements Weir {
    /** Usual discharge coefficient of a slot; from memory, 0.50 to 0.64. */
    @Unit("1")
    public static final double USUAL_COEFFICIENT = 0.59;

    private static final double TWO_THIRDS_ROOT_2G = 2.0 / 3 * Math.sqrt(2 * Gravity.STANDARD);
    private static final double FRANCIS = 1.84;
    private static final double RELATIVE_ERROR_OF_SLOTS = 0.25;

    public CombWeir {
        Bounds.positive(slots, "1", "number of open slots");
        Bounds.positive(slotWidth, "m", "width of a slot");
        Bounds.positive(slotDepth, "m", "depth of a slot");
        Bounds.within(dischargeCoefficient, "1", 0.1, 1, "discharge coefficient of a slot");
        Bounds.notNegative(lengthAbove, "m", "length of the open crest above the teeth");
    }

    /** The same comb with part of its slots shut by algae or snails; the crest above the teeth stays open. */
    public CombWeir blocked(@Unit("1") double share) {
        if (!(share >= 0 && share < 1)) {
            throw Bounds.refusal(share, "1", "blocked share of the slots", "0 or more and less than 1");
        }
        return new CombWeir(slots * (1 - share), slotWidth, slotDepth, dischargeCoefficient, lengthAbove);
    }

    /** Share of the comb's length that is slot: N w / b_total. */
    @Unit("1")
    public double openShare(@Unit("m") double combLength) {
        return slots * slotWidth / Bounds.positive(combLength, "m", "length of the comb");
    }

    /** Flow at which the slots are just full. */
    @Unit("m^3/s")
    public double brimfulFlow() {
        return flow(slotDepth);
    }

    @Override
    @Unit("m^3/s")
    public double flow(@Unit("m") double head) {
        if (!(head > 0)) {
            return Dry.noFlow(head);
        }
        double slotFactor = slotFactor();
        double whole = head * Math.sqrt(head);
        if (head <= slotDepth) {
            return slotFactor * whole;
        }
        double over = head - slotDepth;
        double above = over * Math.sqrt(over);
        return slotFactor * (whole - above) + FRANCIS * lengthAbove * above;
    }

    private double slotFactor() {
        return TWO_THIRDS_ROOT_2G * dischargeCoefficient * slots * slotWidth;
    }

    @Override
    @Unit("m")
    public double head(@Unit("m^3/s") double flow) {
        Bounds.notNegative(flow, "m^3/s", "flow over the comb");
        double perSlots = flow / slotFactor();
        double asTallSlots = Math.cbrt(perSlots * perSlots);
        if (flow <= brimfulFlow()) {
            return Math.min(slotDepth, asTallSlots);
        }
        double enough = 2 * asTallSlots;
        while (flow(enough) < flow) {
            enough *= 2;
        }
        return Bracketed.root(head -> flow(head) - flow, slotDepth, enough);
    }

    /** {@inheritDoc} Nobody has published a range for teeth: never. */
    @Override
    public boolean withinStatedRange(@Unit("m") double head) {
        return false;
    }

    /**
     * {@inheritDoc}
     *
     * @source common practice: 25 % for slots
     */
    @Override
    @Unit("1")
    public double relativeError() {
        return RELATIVE_ERROR_OF_SLOTS;
    }
}
