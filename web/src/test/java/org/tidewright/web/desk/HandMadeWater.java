package org.tidewright.web.desk;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.NullUnmarked;
import org.tidewright.plan.model.Names;
import org.tidewright.plan.model.Overflow;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Refugium;
import org.tidewright.plan.model.ReturnLine;
import org.tidewright.plan.model.Sump;
import org.tidewright.twin.mechanism.water.WaterWay;
import org.tidewright.twin.rehearsal.WaterMovement;
import org.tidewright.twin.rehearsal.WaterMovement.Stream;
import org.tidewright.twin.rehearsal.WaterMovement.Vessel;
import org.tidewright.twin.tank.Place;

/** Plausible movements of water for the pages' tests: textbook weirs, stepped plainly. Proves nothing about a tank. */
@NullUnmarked // The example plans are known to have what is read here; a plan without it fails the test.
final class HandMadeWater {
    private static final double STEP = 0.02;
    private static final double SAMPLE = 0.5;
    private static final double LENGTH = 180;

    private final Plan plan;
    private final List<Double> time = new ArrayList<>();
    private final List<double[]> levels = new ArrayList<>();
    private final List<double[]> volumes = new ArrayList<>();
    private final List<double[]> flows = new ArrayList<>();

    private double displayLevel;
    private double boxLevel;
    private double refugiumLevel;
    private double[] sectionLevels = {};
    private double held;
    private double floor;

    private HandMadeWater(Plan plan) {
        this.plan = plan;
    }

    static WaterMovement running(Plan plan) {
        HandMadeWater water = new HandMadeWater(plan);
        water.start();
        double flow = water.pumped();
        water.keep(0, flow, flow, flow, 0, water.refugiumFlow(), 0, 0);
        return water.movement();
    }

    static WaterMovement powerCut(Plan plan, boolean holesBlocked) {
        HandMadeWater water = new HandMadeWater(plan);
        water.start();
        water.run(holesBlocked);
        return water.movement();
    }

    private double pumped() {
        ReturnLine line = plan.returnLine();
        if (line == null) {
            return 0;
        }
        return 0.5
                * line.pump().curve().get(line.pump().curve().size() - 1).flow().in("m^3/s");
    }

    private double refugiumFlow() {
        return plan.refugium() == null ? 0 : 0.08 * pumped();
    }

    private double crestLength() {
        Overflow overflow = plan.overflow();
        return overflow.teeth() != null
                ? overflow.teeth().count() * overflow.teeth().width().in("m")
                : overflow.smoothLength().in("m");
    }

    private static double weir(double length, double head) {
        return head > 0 ? 2.0 / 3 * 0.6 * length * Math.sqrt(2 * 9.81) * Math.pow(head, 1.5) : 0;
    }

    private static double head(double length, double flow) {
        return Math.pow(flow / (2.0 / 3 * 0.6 * length * Math.sqrt(2 * 9.81)), 2.0 / 3);
    }

    private void start() {
        if (plan.overflow() == null) {
            displayLevel = plan.display().waterLevel().in("m");
            return;
        }
        Overflow overflow = plan.overflow();
        displayLevel = overflow.crest().in("m") + head(crestLength(), pumped());
        double bottom =
                overflow.box().bottom() == null ? 0 : overflow.box().bottom().in("m");
        boxLevel = overflow.box().runningLevel() != null
                ? overflow.box().runningLevel().in("m") - bottom
                : overflow.drains().get(0).inlet().in("m") + 0.02 - bottom;
        Sump sump = plan.sump();
        sectionLevels = new double[sump.sections().size()];
        for (int i = sectionLevels.length - 1; i >= 0; i--) {
            Sump.Section section = sump.sections().get(i);
            if (section.waterLevel() != null) {
                sectionLevels[i] = section.waterLevel().in("m");
            } else if (section.baffle().over() != null) {
                sectionLevels[i] =
                        section.baffle().over().in("m") + head(sump.width().in("m"), pumped());
            } else {
                sectionLevels[i] = sectionLevels[i + 1];
            }
        }
        if (plan.refugium() != null) {
            refugiumLevel = plan.refugium().crest().in("m")
                    + head(plan.refugium().crestLength().in("m"), refugiumFlow());
        }
        held = 0.004
                + plan.gear().stream()
                        .mapToDouble(
                                g -> g.holdsBack() == null ? 0 : g.holdsBack().in("m^3"))
                        .sum();
    }

    private double displayArea() {
        double area = plan.display().length().in("m") * plan.display().width().in("m");
        // A tenth of the space is rock and sand.
        return 0.9 * (plan.overflow() == null ? area : area - boxArea());
    }

    private double boxArea() {
        Overflow.Box box = plan.overflow().box();
        return box.length().in("m") * box.width().in("m")
                + (plan.overflow().outerBox() == null
                        ? 0
                        : plan.overflow().outerBox().length().in("m")
                                * plan.overflow().outerBox().width().in("m"));
    }

    private double sectionArea(int i) {
        return plan.sump().sections().get(i).length().in("m")
                * plan.sump().width().in("m");
    }

    private void run(boolean holesBlocked) {
        Overflow overflow = plan.overflow();
        Sump sump = plan.sump();
        ReturnLine.Outlet outlet = plan.returnLine().outlets().get(0);
        double breaksAt = outlet.airHole() == null || holesBlocked
                ? outlet.lowerEdge().in("m")
                : outlet.airHole().height().in("m");
        double crest = overflow.crest().in("m");
        double bottom =
                overflow.box().bottom() == null ? 0 : overflow.box().bottom().in("m");
        double inlet = overflow.drains().get(0).inlet().in("m") - bottom;
        double pumped = pumped();
        boolean siphons = true;
        int last = sectionLevels.length - 1;
        double heldAtStart = held;
        double dry = overflow.box().bottom() == null ? 0 : 0.002;
        keep(0, pumped, pumped, pumped, 0, refugiumFlow(), 0, 0);
        int steps = (int) Math.round(LENGTH / STEP);
        int every = (int) Math.round(SAMPLE / STEP);
        for (int k = 1; k <= steps; k++) {
            double over = weir(crestLength(), displayLevel - crest);
            double free = Math.max(0, (boxLevel - inlet - dry) * boxArea()) / STEP + over;
            double drained = Math.min(pumped, free);
            siphons &= displayLevel > breaksAt;
            double siphon = siphons ? 0.45 * pumped * Math.sqrt(Math.max(0.1, displayLevel / crest)) : 0;
            double falling = siphons ? 0 : Math.min(held / STEP, heldAtStart / 25);
            double fromRefugium = 0;
            displayLevel -= (over + siphon) * STEP / displayArea();
            boxLevel += (over - drained) * STEP / boxArea();
            if (plan.refugium() != null) {
                Refugium refugium = plan.refugium();
                fromRefugium = weir(
                        refugium.crestLength().in("m"),
                        refugiumLevel - refugium.crest().in("m"));
                double area = refugium.length().in("m") * refugium.width().in("m");
                refugiumLevel -= fromRefugium * STEP / area;
            }
            sectionLevels[0] += (drained + fromRefugium) * STEP / sectionArea(0);
            sectionLevels[last] += (siphon + falling) * STEP / sectionArea(last);
            held -= falling * STEP;
            level(sump);
            double spilt = 0;
            for (int i = 0; i <= last; i++) {
                double above = sectionLevels[i] - sump.height().in("m");
                if (above > 0) {
                    spilt += above * sectionArea(i);
                    sectionLevels[i] = sump.height().in("m");
                }
            }
            floor += spilt;
            if (k % every == 0) {
                keep(k * STEP, over, drained, 0, siphon, fromRefugium, falling, spilt / STEP);
            }
        }
    }

    /** Neighbouring sections find each other's level once both stand over the baffle between them. */
    private void level(Sump sump) {
        for (int pass = 0; pass < 4; pass++) {
            for (int i = 0; i + 1 < sectionLevels.length; i++) {
                Sump.Baffle baffle = sump.sections().get(i).baffle();
                double sill = baffle.over() == null ? 0 : baffle.over().in("m");
                double high = Math.max(sectionLevels[i], sectionLevels[i + 1]);
                if (high <= sill) {
                    continue;
                }
                double a = sectionArea(i);
                double b = sectionArea(i + 1);
                double sum = sectionLevels[i] * a + sectionLevels[i + 1] * b;
                double even = sum / (a + b);
                if (even >= sill) {
                    sectionLevels[i] = even;
                    sectionLevels[i + 1] = even;
                } else if (sectionLevels[i] > sill) {
                    sectionLevels[i + 1] += (sectionLevels[i] - sill) * a / b;
                    sectionLevels[i] = sill;
                } else {
                    sectionLevels[i] += (sectionLevels[i + 1] - sill) * b / a;
                    sectionLevels[i + 1] = sill;
                }
            }
        }
    }

    private void keep(
            double at,
            double over,
            double drained,
            double returned,
            double siphon,
            double fromRefugium,
            double falling,
            double spilt) {
        time.add(at);
        List<Double> level = new ArrayList<>();
        List<Double> volume = new ArrayList<>();
        level.add(displayLevel);
        volume.add(displayLevel * displayArea());
        if (plan.overflow() != null) {
            level.add(boxLevel);
            volume.add(boxLevel * boxArea());
            for (int i = 0; i < sectionLevels.length; i++) {
                level.add(sectionLevels[i]);
                volume.add(sectionLevels[i] * sectionArea(i));
            }
            if (plan.refugium() != null) {
                level.add(refugiumLevel);
                volume.add(refugiumLevel
                        * plan.refugium().length().in("m")
                        * plan.refugium().width().in("m"));
            }
            level.add(Double.NaN);
            volume.add(held);
            level.add(Double.NaN);
            volume.add(floor);
        }
        levels.add(array(level));
        volumes.add(array(volume));
        flows.add(new double[] {over, drained, returned, siphon, fromRefugium, falling, spilt});
    }

    private WaterMovement movement() {
        List<Vessel> vessels = new ArrayList<>();
        int column = 0;
        vessels.add(vessel("display", Place.DISPLAY, column++));
        List<Stream> streams = new ArrayList<>();
        if (plan.overflow() != null) {
            List<String> sections = Names.sections(plan);
            String first = sections.get(0);
            String last = sections.get(sections.size() - 1);
            vessels.add(vessel("overflow box", Place.OVERFLOW_BOX, column++));
            for (String section : sections) {
                vessels.add(vessel(section, Place.SUMP_SECTION, column++));
            }
            streams.add(stream(WaterWay.Kind.WEIR, "display", "overflow box", 0));
            streams.add(stream(WaterWay.Kind.DRAIN, "overflow box", first, 1));
            streams.add(stream(WaterWay.Kind.RETURN, last, "display", 2));
            streams.add(stream(WaterWay.Kind.BACK_SIPHON, "display", last, 3));
            streams.add(stream(WaterWay.Kind.HELD_BACK, "pipes and gear", last, 5));
            streams.add(stream(WaterWay.Kind.SPILL, first, "floor", 6));
            for (int i = 0; i + 1 < sections.size(); i++) {
                streams.add(stream(WaterWay.Kind.BAFFLE, sections.get(i), sections.get(i + 1), 1));
            }
            if (plan.refugium() != null) {
                String name = plan.refugium().name();
                vessels.add(vessel(name, Place.REFUGIUM, column++));
                streams.add(stream(WaterWay.Kind.WEIR, name, plan.refugium().into(), 4));
                streams.add(stream(WaterWay.Kind.RETURN, last, name, 2));
            }
            vessels.add(vessel("pipes and gear", Place.HELD_BACK, column++));
            vessels.add(vessel("floor", Place.FLOOR, column));
        }
        return new WaterMovement(array(time), vessels, streams);
    }

    private Vessel vessel(String name, Place place, int column) {
        return new Vessel(name, place, column(levels, column), column(volumes, column));
    }

    private Stream stream(WaterWay.Kind kind, String from, String to, int column) {
        return new Stream(kind, from, to, column(flows, column));
    }

    private static double[] column(List<double[]> rows, int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }

    private static double[] array(List<Double> values) {
        double[] array = new double[values.size()];
        Arrays.setAll(array, values::get);
        return array;
    }
}
