package org.tidewright.twin.rehearsal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.tidewright.numerics.sample.RankCorrelation;
import org.tidewright.twin.contract.Parameter;

/** Which of the numbers that are not known exactly made draws differ. */
final class Influence {
    /** Of 200 draws of a number that does nothing, one in 200 goes so far along with an outcome. */
    private static final double SHARE = 0.04;

    private Influence() {}

    /** A parameter and the greatest share of the differences of an outcome that goes along with it. */
    private record Told(Parameter parameter, double share) {}

    /**
     * Those that matter, the most telling first.
     *
     * @param draws values of the parameters in each draw, in their order
     * @param outcomes numbers that came of the draws, one array for each kind
     */
    static List<Parameter> of(List<Parameter> parameters, List<double[]> draws, List<double[]> outcomes) {
        List<Told> told = new ArrayList<>();
        for (int i = 0; i < parameters.size(); i++) {
            int index = i;
            double[] drawn = draws.stream().mapToDouble(values -> values[index]).toArray();
            double share = 0;
            for (double[] outcome : outcomes) {
                share = Math.max(share, Math.pow(RankCorrelation.of(drawn, outcome), 2));
            }
            if (share >= SHARE) {
                told.add(new Told(parameters.get(i), share));
            }
        }
        told.sort(Comparator.comparingDouble(each -> -each.share()));
        return told.stream().map(Told::parameter).toList();
    }
}
