package org.tidewright.husbandry.livestock;

import java.util.ArrayList;
import java.util.List;
import org.tidewright.plan.species.Hazard;
import org.tidewright.plan.species.InvertebrateSpecies;

/** What to mind when an animal is taken home, handled and put in. */
final class Handling {
    private Handling() {}

    static List<String> cautions(Animals candidate) {
        List<String> cautions = new ArrayList<>();
        for (Hazard hazard : Hazard.values()) {
            if (candidate.species().danger().hazards().contains(hazard)) {
                cautions.add(words(hazard));
            }
        }
        cautions.add(
                "Rinse hands and arms of soap and lotion before they go in, and wash them afterwards; cover every cut.");
        if (candidate.isFish()) {
            cautions.add(
                    "Quarantine it first. Treat only signs you have seen, by the label and a veterinarian who treats fish; copper"
                            + " kills shrimps, snails and corals, and never belongs into the display.");
        } else if (candidate.invertebrate().group() != InvertebrateSpecies.Group.CALCAREOUS_ALGAE) {
            cautions.add(
                    "It carries cysts of fish parasites on rock and shell: watch it apart from fish before it comes in.");
        }
        if (!candidate.species().care().trade().isEmpty()) {
            cautions.add("Trade in it is regulated: ask for its papers, or for one bred or grown by people.");
        }
        return cautions;
    }

    private static String words(Hazard hazard) {
        return switch (hazard) {
            case VENOMOUS_SPINES ->
                "Its spines are venomous: know where it is before a hand goes in, and never work alone. After a sting call a poison"
                        + " centre or a doctor; water as hot as the unhurt hand bears, at most 45 °C, is the usual first aid.";
            case TAIL_BLADE -> "It carries a blade on each side of the tail: move it in a tub, not in a net or a hand.";
            case VENOMOUS_TAIL_BLADE ->
                "It carries venomous blades at the tail: move it in a tub, not in a net or a hand; after a cut see a doctor.";
            case CHEEK_SPINE -> "Spines on its cheeks catch in nets: move it in a tub.";
            case VENOMOUS_BITE -> "Its bite is venomous: never hold it in a hand; after a bite see a doctor.";
            case BITES -> "It bites: keep fingers away from its mouth.";
            case POISON_IF_EATEN -> "It is poisonous if eaten: keep it from pets, dead or alive.";
            case PALYTOXIN ->
                "Treat it as if it held palytoxin: gloves and goggles, cut only under water, never scrub, boil, heat or dry it or its"
                        + " rock, air the room. Unwell afterwards: poison centre or emergency doctor, and say “palytoxin”.";
            case STINGS -> "It stings: gloves on, and off the eyes.";
            case BRISTLES -> "Its bristles burn: gloves or tongs; bristles in the skin come out with adhesive tape.";
            case CUTS -> "Its edges cut: gloves on.";
            case LETHAL -> "Never touch it. Bitten or stung: ambulance at once, and rescue breathing until help comes.";
        };
    }
}
