package org.tidewright.husbandry.forecast;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tidewright.twin.contract.Body;
import org.tidewright.twin.contract.Stock;
import org.tidewright.twin.forecast.Course;
import org.tidewright.twin.forecast.Quantity;
import org.tidewright.twin.run.Account;
import org.tidewright.twin.system.SystemTwin;

/** Where a quantity of the water came from and where it went, in the quantity's own unit over the system's water. */
public final class Explained {
    /** Causes smaller than this share of the largest are told together. */
    private static final double TINY = 0.01;

    /**
     * One cause.
     *
     * @param asRun what it brought to all of the water, negative for what it took
     * @param changed the same with the changes
     */
    public record Line(String cause, double asRun, double changed) {}

    private Explained() {}

    /** The account of a quantity, its sum last; empty where it is no amount that can be moved. */
    public static List<Line> of(ForecastReport report, SystemTwin twin, Quantity quantity) {
        Optional<Moved> moved = Moved.of(quantity);
        if (moved.isEmpty()) {
            return List.of();
        }
        Map<String, double[]> byCause = new LinkedHashMap<>();
        gather(byCause, 0, report.asRun(), twin, moved.get());
        Course changed = report.changed();
        gather(byCause, 1, changed == null ? report.asRun() : changed, twin, moved.get());
        double largest = byCause.values().stream()
                .mapToDouble(both -> Math.max(Math.abs(both[0]), Math.abs(both[1])))
                .max()
                .orElse(0);
        List<Line> lines = new ArrayList<>();
        double[] rest = new double[2];
        double[] sum = new double[2];
        byCause.forEach((cause, both) -> {
            for (int i = 0; i < 2; i++) {
                sum[i] += both[i];
            }
            if (Math.max(Math.abs(both[0]), Math.abs(both[1])) < TINY * largest) {
                rest[0] += both[0];
                rest[1] += both[1];
            } else {
                lines.add(new Line(cause, both[0], both[1]));
            }
        });
        lines.sort(Comparator.comparingDouble((Line line) -> -Math.abs(line.asRun())));
        lines.add(new Line("all else", rest[0], rest[1]));
        lines.add(new Line("together", sum[0], sum[1]));
        return lines;
    }

    private static void gather(Map<String, double[]> byCause, int column, Course course, SystemTwin twin, Moved moved) {
        Collection<Body> waters = twin.waters();
        for (Account.Line line : course.account().of(moved.stock(), waters)) {
            double told = line.amount() / twin.volume() * moved.perConcentration();
            byCause.computeIfAbsent(line.cause(), cause -> new double[2])[column] += told;
        }
    }

    /**
     * The stock behind a quantity.
     *
     * @param perConcentration the quantity's unit in 1 mol/m³
     */
    private record Moved(Stock stock, double perConcentration) {
        static Optional<Moved> of(Quantity quantity) {
            return Optional.ofNullable(
                    switch (quantity) {
                        case ALKALINITY -> new Moved(Stock.ALKALINITY, 56.077 / 20);
                        case CALCIUM -> new Moved(Stock.CALCIUM, 40.078);
                        case MAGNESIUM -> new Moved(Stock.MAGNESIUM, 24.305);
                        case OXYGEN -> new Moved(Stock.OXYGEN, 31.9988);
                        case AMMONIA -> new Moved(Stock.AMMONIA, 14.0067);
                        case NITRITE -> new Moved(Stock.NITRITE, 14.0067);
                        case NITRATE -> new Moved(Stock.NITRATE, 62.004);
                        case PHOSPHATE -> new Moved(Stock.PHOSPHATE, 94.970);
                        default -> null;
                    });
        }
    }
}
