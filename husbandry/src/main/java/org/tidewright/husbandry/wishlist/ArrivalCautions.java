package org.tidewright.husbandry.wishlist;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.husbandry.arrival.Arrival.Stage;
import org.tidewright.husbandry.livestock.Animals;
import org.tidewright.husbandry.quarantine.Caution;

/** What to mind where animals are bought, watched and moved. */
final class ArrivalCautions {
    private static final String NO_PROMISE =
            "No day here is a promise. They go in only when they were well for the whole watch and eat, and only while a test shows"
                    + " no ammonia and no nitrite in the display. Of a sick one ask a veterinarian who treats fish.";

    private static final String LAMP =
            "Corals need light and moving water in quarantine too, and a tank in which no medicine ever was.";

    private ArrivalCautions() {}

    static List<String> of(ArrivalStudy study) {
        List<Animals> coming = study.plan().arrivals().stream()
                .filter(each -> each.stage() != Stage.IN_DISPLAY)
                .map(each -> study.member(each.id()).animals())
                .toList();
        List<String> cautions = new ArrayList<>();
        if (coming.isEmpty()) {
            return cautions;
        }
        cautions.add(NO_PROMISE);
        if (coming.stream().anyMatch(each -> !each.species().danger().hazards().isEmpty())) {
            cautions.add(Caution.VENOM);
        }
        cautions.add(Caution.TOOLS);
        if (coming.stream().anyMatch(each -> !each.isFish())) {
            cautions.add(Caution.COPPER);
        }
        if (coming.stream().anyMatch(LiveMass::isFixed)) {
            cautions.add(LAMP);
        }
        return cautions;
    }
}
