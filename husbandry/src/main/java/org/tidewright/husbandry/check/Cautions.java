package org.tidewright.husbandry.check;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.plan.model.Plan;

/** Whose word comes before the program's, where a check could lead somebody to act. */
public final class Cautions {
    private Cautions() {}

    public static List<String> of(Plan plan) {
        List<String> cautions = new ArrayList<>();
        cautions.add(
                "Electricity stands beside this water. Switch off at the wall before hands go in, keep every socket"
                        + " above a drip loop and behind a residual-current device, and leave mains wiring to a licensed"
                        + " electrician and your local code.");
        cautions.add("The program states loads and stresses; it does not say that a floor or a pane will hold. Upper"
                + " floors, old joists and screed over heating need a structural engineer’s word, panes the maker’s"
                + " table, and local building rules come before this page.");
        if (plan.backup() != null && plan.backup().generator() != null) {
            cautions.add(generator());
        }
        return List.copyOf(cautions);
    }

    /** For wherever a generator is advised. */
    public static String generator() {
        return "Run a generator outdoors only, at least 6 m from doors and windows, with carbon monoxide alarms inside;"
                + " never in a garage. Never feed a socket of the house with it: an electrician fits the transfer"
                + " switch and decides on earthing. Refuel it cold, and store petrol as your fire code says.";
    }
}
