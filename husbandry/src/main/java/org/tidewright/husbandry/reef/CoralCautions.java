package org.tidewright.husbandry.reef;

import java.util.ArrayList;
import java.util.List;

/** What to mind where a coral is handled or cut. */
public final class CoralCautions {
    private CoralCautions() {}

    /** For moving corals. */
    public static List<String> handling(List<Colony> colonies) {
        List<String> cautions = new ArrayList<>();
        cautions.add(
                "Wear gloves, cover cuts and wash afterwards: corals sting, and tank water carries germs into wounds. Locate"
                        + " spiny and venomous fish before a hand goes in, and switch off pumps and heaters at the wall first.");
        if (colonies.stream().anyMatch(colony -> colony.traits().palytoxin())) {
            cautions.add(palytoxin());
        }
        return List.copyOf(cautions);
    }

    /** For cutting corals. */
    public static List<String> cutting() {
        return List.of(
                "Wear eye protection and gloves whenever you cut or break a coral: it squirts, and chips of skeleton fly. Cut"
                        + " stone wet, away from food and children, with a saw behind a residual-current device.",
                palytoxin());
    }

    private static String palytoxin() {
        return "Zoanthids and their kin may carry palytoxin, which poisons through eyes, wounds and lungs: handle them under"
                + " water, with gloves and goggles, never with hot water, steam or a dry brush, in a room that is aired."
                + " If you fall ill after it, ring the poison centre or the emergency doctor and say “palytoxin”.";
    }
}
