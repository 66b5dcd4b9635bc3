package org.tidewright.twin.tank;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.tidewright.plan.model.Fitting;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.PipeLine;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Refugium;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.twin.law.hydraulic.CombWeir;
import org.tidewright.twin.law.hydraulic.FrancisWeir;
import org.tidewright.twin.law.hydraulic.LocalLoss;
import org.tidewright.twin.law.hydraulic.Manifold;
import org.tidewright.twin.law.hydraulic.PipeFriction;
import org.tidewright.twin.law.hydraulic.PipeRun;
import org.tidewright.twin.law.hydraulic.ReturnSiphon;
import org.tidewright.twin.law.hydraulic.Weir;

/** The plan's crests and pipes as laws. */
public final class Laws {
    private static final double ENTRY = Fitting.SHARP_ENTRY.loss().usual();
    /** From the pump's mouth to the tee where branches part. */
    private static final double PUMP_STUB_LENGTH = 0.05;

    private Laws() {}

    /** The crest of the overflow. */
    public static Weir overflowWeir(Overflow overflow) {
        if (overflow.teeth() != null) {
            Overflow.Teeth teeth = overflow.teeth();
            double around =
                    overflow.box().length().in("m") + 2 * overflow.box().width().in("m");
            return new CombWeir(
                    teeth.count(), teeth.width().in("m"), teeth.depth().in("m"), CombWeir.USUAL_COEFFICIENT, around);
        }
        return new FrancisWeir(requireNonNull(overflow.smoothLength()).in("m"), 0);
    }

    static Weir refugiumWeir(Refugium refugium) {
        return new FrancisWeir(refugium.crestLength().in("m"), 0);
    }

    /** A pipe with its fittings, without the losses of its two ends. */
    public static PipeRun bare(PipeLine line) {
        double losses = 0;
        for (Map.Entry<Fitting, Integer> fitting : line.fittings().entrySet()) {
            losses += fitting.getValue() * fitting.getKey().loss().usual();
        }
        double roughness = line.roughness() == null
                ? PipeFriction.CLEAN_PLASTIC
                : line.roughness().in("m");
        return new PipeRun(line.bore().in("m"), line.length().in("m"), roughness, losses);
    }

    /** A drain with the losses of its two ends, its valve open. */
    public static PipeRun drain(Overflow.Drain drain) {
        return bare(drain.pipe()).withExtraLoss(ENTRY + LocalLoss.EXIT);
    }

    /** The return line as the pump feels it: check valve included, the speed head lost at its mouths. */
    static PipeRun returnLine(ReturnLine line) {
        return bare(line.pipe()).withExtraLoss(line.checkValve().loss().usual() + mouths(line));
    }

    /** The return line run backward. */
    public static ReturnSiphon backSiphon(ReturnLine line) {
        // Water enters at the mouths and leaves through the standing pump; a check valve counts as absent.
        return new ReturnSiphon(bare(line.pipe()).withExtraLoss(ENTRY * mouths(line)), ReturnSiphon.STOPPED_IMPELLER);
    }

    /** The same for a feed of its own. */
    public static ReturnSiphon backSiphon(PipeLine feed) {
        return new ReturnSiphon(bare(feed).withExtraLoss(ENTRY), ReturnSiphon.STOPPED_IMPELLER);
    }

    /** Display first, refugium second. */
    static Manifold manifold(Plan plan, List<Double> outletHeights) {
        ReturnLine line = requireNonNull(plan.returnLine());
        List<Manifold.Branch> branches = new ArrayList<>();
        branches.add(new Manifold.Branch(outletHeights.get(0), returnLine(line)));
        if (plan.refugium() != null) {
            branches.add(new Manifold.Branch(
                    outletHeights.get(1), bare(plan.refugium().feed()).withExtraLoss(LocalLoss.EXIT)));
        }
        PipeRun stub = new PipeRun(line.pipe().bore().in("m"), PUMP_STUB_LENGTH, PipeFriction.CLEAN_PLASTIC, 0);
        return new Manifold(stub, branches);
    }

    /** Speed head lost where the line ends, referred to the pipe: (pipe area / mouths' area)². */
    private static double mouths(ReturnLine line) {
        double pipe = line.pipe().bore().in("m");
        double area = line.outlets().stream()
                .mapToDouble(outlet -> Math.pow(outlet.bore().in("m"), 2))
                .sum();
        double ratio = pipe * pipe / area;
        return ratio * ratio;
    }
}
