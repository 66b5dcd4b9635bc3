package org.tidewright.husbandry.reef;

import java.util.Optional;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.CoralForm;
import org.tidewright.plan.species.Hazard;
import org.tidewright.plan.species.InvertebrateSpecies;
import org.tidewright.twin.law.carbonate.Calcification;

/** What the catalogue of species tells of corals; where it is silent on growth, their form speaks. */
public record CatalogueLore(Catalogue catalogue) implements CoralLore {
    private static final double DAY = 86_400;

    @Override
    public Optional<CoralTraits> of(String species) {
        return catalogue.find(species).map(found -> {
            return found instanceof InvertebrateSpecies animal && animal.group().isCoral() ? traits(animal) : null;
        });
    }

    /** Of a coral of the catalogue. */
    public static CoralTraits traits(InvertebrateSpecies coral) {
        InvertebrateSpecies.Place place = coral.place();
        CoralForm form = coral.form();
        CoralTraits ofForm = form == null ? null : FormTraits.of(form);
        InvertebrateSpecies.Extension extension = coral.extension();
        InvertebrateSpecies.Skeleton skeleton = coral.skeleton();
        Ranged still = Ranged.exactly(0);
        return new CoralTraits(
                coral.name().scientific(),
                true,
                place == null ? null : Ranged.between(place.lightLeast(), place.lightMost()),
                place == null ? FlowClass.ANY : FlowClass.valueOf(place.flow().name()),
                coral.contest().reach(),
                coral.contest().immune(),
                extension != null
                        ? Ranged.between(extension.low(), extension.high())
                        : ofForm == null ? still : ofForm.extension(),
                skeleton != null
                        ? new Ranged(skeleton.usual(), skeleton.low(), skeleton.high())
                                .times(1 / Calcification.MOLAR_MASS / DAY)
                        : ofForm == null ? still : ofForm.calcification(),
                // Zoanthids are taken for one another so often that the caution stands with all of them.
                coral.danger().hazards().contains(Hazard.PALYTOXIN)
                        || coral.group() == InvertebrateSpecies.Group.ZOANTHID);
    }
}
