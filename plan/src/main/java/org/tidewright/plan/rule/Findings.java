package org.tidewright.plan.rule;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.fault.Places;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.quantity.Amount;

/** Collects what the rules find, each at its place in the text. */
final class Findings {
    private final Function<String, Places.Place> places;
    private final List<Fault> faults = new ArrayList<>();

    Findings(Function<String, Places.Place> places) {
        this.places = places;
    }

    void add(String path, String found, String expected, String mend) {
        Places.Place place = places.apply(path);
        faults.add(new Fault(place.line(), place.column(), path, found, expected, mend));
    }

    /** Reports a height that is not under another one. */
    void notBelow(String path, Amount amount, String boundName, Amount bound) {
        if (amount.in("m") >= bound.in("m")) {
            add(path, amount.toString(), "less than " + boundName + ", " + bound, "");
        }
    }

    /** Reports a name that none of the candidates bears. */
    void unknownName(String path, String name, String kind, Collection<String> candidates) {
        if (!candidates.contains(name)) {
            add(
                    path,
                    "“" + name + "”",
                    "the name of " + kind + ": " + String.join(", ", candidates),
                    Spelling.suggestion(name, candidates));
        }
    }

    List<Fault> faults() {
        return faults;
    }
}
