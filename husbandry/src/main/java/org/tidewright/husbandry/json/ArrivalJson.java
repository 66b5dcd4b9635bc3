package org.tidewright.husbandry.json;

import java.util.List;
import java.util.Locale;
import org.tidewright.husbandry.advice.Figure;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.advice.Sentence;
import org.tidewright.husbandry.arrival.Arrival;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.wishlist.ArrivalAnswer;
import org.tidewright.husbandry.wishlist.Money;
import org.tidewright.plan.model.UnitSystem;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The order and days of arrivals, for other programs. */
public final class ArrivalJson {
    private ArrivalJson() {}

    /**
     * One object about a wish list.
     *
     * @param units in which the sentences are told; the numbers are metric
     */
    public static String text(ArrivalAnswer answer, UnitSystem units) {
        ObjectNode root = AdviceJson.JSON.createObjectNode();
        root.put("system", answer.study().household().plan().name());
        root.put("today", answer.study().household().today().toString());
        root.put("lead", answer.advice().lead().text(units));
        sentences(root.putArray("remarks"), answer.advice().remarks(), units);
        root.put("proven_best", answer.study().plan().provenBest());
        ArrayNode arrivals = root.putArray("arrivals");
        answer.coming().forEach(coming -> coming(arrivals.addObject(), coming, units));
        ArrayNode staying = root.putArray("not_planned");
        for (ArrivalAnswer.Staying each : answer.staying()) {
            ObjectNode node = staying.addObject();
            animals(node, each.id(), each.animals());
            node.put("refused", each.refused());
            sentences(node.putArray("why"), each.why(), units);
            sentences(node.putArray("becomes_yes"), each.becomes(), units);
        }
        sentences(root.putArray("gone"), answer.gone(), units);
        ArrayNode months = root.putArray("months");
        for (ArrivalAnswer.Month month : answer.months()) {
            months.addObject()
                    .put("month", month.month().toString())
                    .put("price", Money.text(month.spent()))
                    .put("unpriced", month.unpriced());
        }
        AdviceJson.cautions(root, answer.advice().cautions());
        AdviceJson.sources(root, answer.advice().sources());
        return AdviceJson.text(root);
    }

    private static void coming(ObjectNode node, ArrivalAnswer.Coming coming, UnitSystem units) {
        Arrival arrival = coming.arrival();
        animals(node, arrival.id(), coming.animals());
        node.put("stage", arrival.stage().name().toLowerCase(Locale.ROOT));
        node.put("quarantine", arrival.tank());
        node.put("comes", arrival.in().toString());
        node.put("enters", arrival.out().toString());
        sentences(node.putArray("why"), coming.why(), units);
        if (coming.moved() != null) {
            node.put("moved", coming.moved().text(units));
        }
    }

    private static void animals(ObjectNode node, String id, Animals animals) {
        node.put("id", id);
        node.put("species", animals.species().name().scientific());
        node.put("common_name", animals.species().name().common());
        node.put("count", animals.count());
        if (animals.isFish()) {
            AdviceJson.put(node, "length", Figure.exact(Measure.LENGTH, animals.length()));
        }
    }

    private static void sentences(ArrayNode node, List<Sentence> sentences, UnitSystem units) {
        sentences.forEach(sentence -> node.add(sentence.text(units)));
    }
}
