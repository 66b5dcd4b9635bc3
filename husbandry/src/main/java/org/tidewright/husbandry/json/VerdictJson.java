package org.tidewright.husbandry.json;

import java.util.List;
import java.util.Locale;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.livestock.Community;
import org.tidewright.husbandry.livestock.Finding;
import org.tidewright.husbandry.livestock.Verdict;
import org.tidewright.plan.model.UnitSystem;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Verdicts on candidates, for other programs. */
public final class VerdictJson {
    private static final JsonMapper JSON = JsonMapper.shared();

    private VerdictJson() {}

    public static String text(String system, Community community, List<Verdict> verdicts, UnitSystem units) {
        ObjectNode root = JSON.createObjectNode();
        root.put("system", system);
        ArrayNode unknown = root.putArray("not_judged");
        community.unknown().forEach(unknown::add);
        ArrayNode candidates = root.putArray("candidates");
        verdicts.forEach(verdict -> candidate(candidates.addObject(), verdict, units));
        return AdviceJson.text(root);
    }

    private static void candidate(ObjectNode node, Verdict verdict, UnitSystem units) {
        node.put("species", verdict.candidate().species().name().scientific());
        node.put("common_name", verdict.candidate().species().name().common());
        node.put("count", verdict.candidate().count());
        if (verdict.candidate().isFish()) {
            AdviceJson.put(
                    node,
                    "length",
                    Figure.exact(Measure.LENGTH, verdict.candidate().length()));
        }
        node.put("verdict", verdict.call().verdict());
        node.put("lead", verdict.lead().text(units));
        ArrayNode becomes = node.putArray("becomes_yes");
        verdict.becomes().forEach(change -> becomes.add(change.text(units)));
        ArrayNode reasons = node.putArray("reasons");
        for (Finding finding : verdict.findings()) {
            ObjectNode reason = reasons.addObject();
            reason.put("rule", finding.rule());
            reason.put("says", finding.call().name().toLowerCase(Locale.ROOT));
            reason.put(
                    "sentence", finding.what().text(units) + " " + finding.why().text(units));
            ArrayNode keys = reason.putArray("source");
            finding.sources().forEach(keys::add);
        }
        AdviceJson.cautions(node, verdict.cautions());
        AdviceJson.sources(node, verdict.sources());
    }
}
