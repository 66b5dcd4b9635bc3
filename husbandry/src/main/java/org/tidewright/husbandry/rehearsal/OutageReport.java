package org.tidewright.husbandry.rehearsal;

import java.util.List;
import org.tidewright.husbandry.advice.Assumption;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.advice.Source;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.rehearsal.OutageOrder;

/**
 * A power cut, rehearsed.
 *
 * @param lead the sentence the page opens with
 * @param water the first minutes, the check valve counted as absent and the air holes as the order says
 * @param traces temperature and oxygen over the hours
 * @param crossings for every limit of every trace, when it is met
 * @param remarks what else came out: the check valve's benefit, the restart, the battery
 * @param assumptions what was not known exactly and drawn from a range
 * @param sources every source referred to
 * @param cautions whose word comes first
 */
public record OutageReport(
        Plan plan,
        OutageOrder order,
        Sentence lead,
        WaterReport water,
        List<Trace> traces,
        List<Crossing> crossings,
        List<Sentence> remarks,
        List<Assumption> assumptions,
        List<Source> sources,
        List<String> cautions) {}
