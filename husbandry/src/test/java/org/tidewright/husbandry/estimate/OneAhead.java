package org.tidewright.husbandry.estimate;

import java.util.List;

/** Each reading of a log foretold from those before it, by the estimate, by the last reading and by a line through four. */
final class OneAhead {
    private OneAhead() {}

    /**
     * How that went.
     *
     * @param known readings from which on it is tried
     * @param most readings that are looked back on
     */
    static Tally of(List<RealLogs.Log> logs, int known, int most) {
        return logs.parallelStream().map(log -> of(log, known, most)).reduce(new Tally(), (one, other) -> {
            Tally both = new Tally();
            both.add(one);
            both.add(other);
            return both;
        });
    }

    private static Tally of(RealLogs.Log log, int known, int most) {
        Tally tally = new Tally();
        for (int i = known; i < log.readings().size(); i++) {
            Inputs.Reading next = log.readings().get(i);
            List<Inputs.Reading> before = log.readings().subList(Math.max(0, i - most), i);
            Estimate estimate =
                    Estimates.of(RealLogs.inputs(before)).of(next.quantity()).orElseThrow();
            Known foretold = estimate.reading(next.time(), next.method());
            tally.add(foretold, next.value());
            CoverageStudy.Spreadsheet simple = CoverageStudy.Spreadsheet.of(estimate.readings(), next.time());
            tally.compare(foretold.value() - next.value(), simple.last() - next.value(), simple.line() - next.value());
        }
        return tally;
    }
}
