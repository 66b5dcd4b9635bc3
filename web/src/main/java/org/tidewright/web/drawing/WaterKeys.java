package org.tidewright.web.drawing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.mechanism.water.WaterWay;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.rehearsal.WaterMovement.Stream;
import org.tidewright.twin.rehearsal.WaterMovement.Vessel;

/** The short names by which drawing, script and samples call the same water and the same pipe. */
public final class WaterKeys {
    public static final String DISPLAY = "display";
    public static final String BOX = "box";
    public static final String REFUGIUM = "refugium";
    public static final String RESERVOIR = "reservoir";
    public static final String HELD_BACK = "held-back";
    public static final String FLOOR = "floor";
    static final String WEIR = "weir";

    private WaterKeys() {}

    static String section(int index) {
        return "section-" + index;
    }

    static String baffle(int index) {
        return "baffle-" + index;
    }

    /** The key of a vessel of a run. */
    public static String of(Vessel vessel, Plan plan) {
        return switch (vessel.place()) {
            case DISPLAY -> DISPLAY;
            case OVERFLOW_BOX -> BOX;
            case SUMP_SECTION -> section(Math.max(0, Names.sections(plan).indexOf(vessel.name())));
            case REFUGIUM -> REFUGIUM;
            case RESERVOIR -> RESERVOIR;
            case HELD_BACK -> HELD_BACK;
            case FLOOR -> FLOOR;
        };
    }

    /** The vessel of a run with this key, if it has one. */
    static @Nullable Vessel vessel(WaterMovement run, Plan plan, String key) {
        return run.vessels().stream()
                .filter(vessel -> of(vessel, plan).equals(key))
                .findFirst()
                .orElse(null);
    }

    /** Every pipe and fall the drawing knows for a plan. */
    static List<String> flows(Plan plan) {
        List<String> keys = new ArrayList<>();
        if (plan.overflow() != null) {
            keys.add(WEIR);
            for (int i = 0; i < plan.overflow().drains().size(); i++) {
                keys.add(PipeRoutes.drainKey(i));
            }
        }
        if (plan.returnLine() != null) {
            keys.add(PipeRoutes.RETURN);
        }
        if (plan.refugium() != null) {
            keys.add(PipeRoutes.FEED);
            keys.add(PipeRoutes.REFUGIUM_OVERFLOW);
        }
        for (int i = 0; i + 1 < Names.sections(plan).size(); i++) {
            keys.add(baffle(i));
        }
        return keys;
    }

    /** Flow in a pipe or over a wall at a sample, m³/s, positive the usual way. */
    static double flow(WaterMovement run, Plan plan, String key, int sample) {
        double sum = 0;
        for (Stream stream : run.streams()) {
            double flow = stream.flow()[sample];
            String from = keyOf(run, plan, stream.from());
            String to = keyOf(run, plan, stream.to());
            sum += flow * share(stream.kind(), from, to, key);
        }
        if (key.startsWith("drain-") && !carries(run, plan, key, sample)) {
            return 0;
        }
        return sum;
    }

    /** +1 where a stream runs in this pipe the usual way, −1 against it, else 0. */
    private static int share(WaterWay.Kind kind, String from, String to, String key) {
        if (key.equals(PipeRoutes.RETURN)) {
            return kind == WaterWay.Kind.RETURN && to.equals(DISPLAY)
                    ? 1
                    : kind == WaterWay.Kind.BACK_SIPHON && from.equals(DISPLAY) ? -1 : 0;
        } else if (key.equals(PipeRoutes.FEED)) {
            return kind == WaterWay.Kind.RETURN && to.equals(REFUGIUM)
                    ? 1
                    : kind == WaterWay.Kind.BACK_SIPHON && from.equals(REFUGIUM) ? -1 : 0;
        } else if (key.equals(PipeRoutes.REFUGIUM_OVERFLOW)) {
            return (kind == WaterWay.Kind.WEIR || kind == WaterWay.Kind.DRAIN) && from.equals(REFUGIUM) ? 1 : 0;
        } else if (key.equals(WEIR)) {
            return kind == WaterWay.Kind.WEIR && from.equals(DISPLAY) ? 1 : 0;
        } else if (key.startsWith("drain-")) {
            return kind == WaterWay.Kind.DRAIN && from.equals(BOX) ? 1 : 0;
        } else if (key.startsWith("baffle-")) {
            int index = Integer.parseInt(key.substring("baffle-".length()));
            if (kind != WaterWay.Kind.BAFFLE) {
                return 0;
            }
            return from.equals(section(index)) && to.equals(section(index + 1))
                    ? 1
                    : from.equals(section(index + 1)) && to.equals(section(index)) ? -1 : 0;
        }
        return 0;
    }

    /** Whether a drain's mouth stands under the water of its box. */
    private static boolean carries(WaterMovement run, Plan plan, String key, int sample) {
        Overflow overflow = plan.overflow();
        Vessel box = vessel(run, plan, BOX);
        if (overflow == null || box == null || Double.isNaN(box.level()[sample])) {
            return true;
        }
        double boxBottom =
                overflow.box().bottom() == null ? 0 : overflow.box().bottom().in("m");
        Overflow.Drain drain = overflow.drains().get(Integer.parseInt(key.substring("drain-".length())));
        return boxBottom + box.level()[sample] > drain.inlet().in("m") - 1e-4;
    }

    private static String keyOf(WaterMovement run, Plan plan, String name) {
        return run.vessels().stream()
                .filter(vessel -> vessel.name().equals(name))
                .findFirst()
                .map(vessel -> of(vessel, plan))
                .orElse(name);
    }
}
