package org.tidewright.twin.law.hydraulic;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.numerics.root.Bracketed;
import org.tidewright.seawater.range.Bounds;
import org.tidewright.seawater.unit.Unit;

/**
 * One pump, one common line and a junction from which several branches leave.
 *
 * <pre>
 * H_j(Q) = H_pump(Q) - loss_common(Q);   sum of Q_i(H_j - z_i) = Q
 * </pre>
 *
 * <p>The left side of the second equation falls with Q and the right side rises, so there is one answer. Heights are
 * measured from the surface the pump draws from.
 *
 * @param common line from the pump to the junction
 * @param branches from the junction
 * @source continuity at the junction
 */
public record Manifold(PipeRun common, List<Branch> branches) {
    public Manifold {
        if (branches.isEmpty()) {
            throw new IllegalArgumentException("a manifold has 0 branches; it must have 1 or more");
        }
        branches = List.copyOf(branches);
    }

    /**
     * One branch.
     *
     * @param outletHeight z, surface or free outlet it feeds, over the surface the pump draws from
     * @param run its pipe and fittings, exit included
     * @param mayFlowBack whether water can run back through it: its outlet is under water and no valve stops it
     */
    public record Branch(@Unit("m") double outletHeight, PipeRun run, boolean mayFlowBack) {
        public Branch {
            Bounds.finite(outletHeight, "m", "height of the outlet");
        }

        /** A branch whose outlet is in air or behind a valve. */
        public Branch(@Unit("m") double outletHeight, PipeRun run) {
            this(outletHeight, run, false);
        }

        /** Flow from the junction at a junction head. */
        @Unit("m^3/s")
        public double flow(@Unit("m") double junctionHead, @Unit("m^2/s") double kinematicViscosity) {
            double difference = junctionHead - outletHeight;
            if (difference < 0 && !mayFlowBack) {
                return 0;
            }
            return run.flow(difference, kinematicViscosity);
        }
    }

    /**
     * How the flow divides.
     *
     * @param total through the pump
     * @param junctionHead over the surface the pump draws from
     * @param branchFlows in the order of the branches, positive away from the junction
     */
    public record Division(
            @Unit("m^3/s") double total, @Unit("m") double junctionHead, List<@Unit("m^3/s") Double> branchFlows) {
        public Division {
            branchFlows = List.copyOf(branchFlows);
        }
    }

    /** How a running pump's flow divides. Nothing is taken to run back through the pump itself. */
    public Division divide(PumpCurve pump, @Unit("m^2/s") double kinematicViscosity) {
        double junctionHead = junctionHead(pump, kinematicViscosity);
        List<Double> flows = new ArrayList<>();
        double total = 0;
        for (Branch branch : branches) {
            double flow = branch.flow(junctionHead, kinematicViscosity);
            flows.add(flow);
            total += flow;
        }
        return new Division(Math.max(0, total), junctionHead, flows);
    }

    private double junctionHead(PumpCurve pump, double viscosity) {
        double shutOff = pump.shutOffHead();
        double taken = taken(shutOff, viscosity);
        if (taken == 0) {
            return shutOff;
        }
        if (taken < 0) {
            // Some branch pushes back harder than the pump can: the branches settle among themselves.
            return Bracketed.root(head -> taken(head, viscosity), shutOff, highestOutlet());
        }
        double enough = Math.max(pump.freeFlow(), Double.MIN_NORMAL);
        while (surplus(pump, enough, viscosity) > 0) {
            enough *= 2;
        }
        double total = Bracketed.root(flow -> surplus(pump, flow, viscosity), 0, enough);
        return pump.head(total) - common.headLoss(total, viscosity);
    }

    private double surplus(PumpCurve pump, double total, double viscosity) {
        return taken(pump.head(total) - common.headLoss(total, viscosity), viscosity) - total;
    }

    private double taken(double junctionHead, double viscosity) {
        double sum = 0;
        for (Branch branch : branches) {
            sum += branch.flow(junctionHead, viscosity);
        }
        return sum;
    }

    private double highestOutlet() {
        return branches.stream().mapToDouble(Branch::outletHeight).max().orElseThrow();
    }
}
