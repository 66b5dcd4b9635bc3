package org.tidewright.husbandry.ph;

import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.ph.GasExchange.Surface;
import org.tidewright.plan.model.Algae;
import org.tidewright.plan.model.Gear;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Sump;
import org.tidewright.seawater.unit.Unit;

/** What a plan says of how its water meets the air, and of the algae that take carbon out of it. */
public final class OwnSurface {
    private OwnSurface() {}

    /** Open water of display, sump and refugium. */
    public static @Unit("m^2") double area(Plan plan) {
        double area = plan.display().length().in("m") * plan.display().width().in("m");
        Sump sump = plan.sump();
        if (sump != null) {
            area += sump.sections().stream()
                            .mapToDouble(section -> section.length().in("m"))
                            .sum()
                    * sump.width().in("m");
        }
        if (plan.refugium() != null) {
            area += plan.refugium().length().in("m") * plan.refugium().width().in("m");
        }
        return area;
    }

    /** How it is moved: by a skimmer, by an overflow and a sump, or rippled by pumps alone. */
    public static Surface moved(Plan plan) {
        boolean bubbles = hasSkimmer(plan) || !plan.airPumps().isEmpty();
        return bubbles ? Surface.AGITATED_WITH_SKIMMER : plan.hasSump() ? Surface.AGITATED : Surface.RIPPLED;
    }

    /** Whether air could be led to a skimmer. */
    public static boolean hasSkimmer(Plan plan) {
        return skimmer(plan) != null;
    }

    private static Gear.@Nullable Skimming skimmer(Plan plan) {
        for (Gear gear : plan.gear()) {
            if (gear.skims() != null) {
                return gear.skims();
            }
        }
        return null;
    }

    /** Whether the skimmer draws the room's air, so that other air can take its place. */
    public static boolean drawsRoomAir(Plan plan) {
        Gear.Skimming skimmer = skimmer(plan);
        return skimmer != null && skimmer.airOrRoom() == Gear.Air.ROOM;
    }

    /** Wet algae taken out, on the mean; half of them each time where the plan does not say what is left; 0 for none. */
    public static @Unit("kg/s") double harvest(Plan plan) {
        Algae algae = algae(plan);
        if (algae == null || algae.harvestedEvery() == null) {
            return 0;
        }
        double now = algae.wetMass().in("kg");
        double left =
                algae.leftStanding() == null ? now / 2 : algae.leftStanding().in("kg");
        return Math.max(0, now - left) / algae.harvestedEvery().in("s");
    }

    private static @Nullable Algae algae(Plan plan) {
        if (plan.refugium() != null && plan.refugium().algae() != null) {
            return plan.refugium().algae();
        }
        if (plan.sump() != null) {
            for (Sump.Section section : plan.sump().sections()) {
                if (section.algae() != null) {
                    return section.algae();
                }
            }
        }
        return null;
    }
}
