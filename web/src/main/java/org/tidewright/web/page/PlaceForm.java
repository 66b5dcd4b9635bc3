package org.tidewright.web.page;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.advice.Measure;
import org.tidewright.husbandry.reef.CatalogueLore;
import org.tidewright.husbandry.reef.Colony;
import org.tidewright.husbandry.reef.CoralTraits;
import org.tidewright.husbandry.reef.FormTraits;
import org.tidewright.husbandry.reef.Place;
import org.tidewright.husbandry.reef.ReefReport;
import org.tidewright.husbandry.reef.ReefSite;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.CoralForm;
import org.tidewright.plan.species.InvertebrateSpecies;
import org.tidewright.web.page.AmountField.Asked;
import org.tidewright.web.page.AmountField.Known;

/**
 * The form that tries a place for a coral without keeping anything: one of the plan's that is to move, or a new one by its
 * species or its form. Without a place it asks where the coral could stand.
 *
 * @param trial null where nothing is asked yet, or something is wrong
 * @param coral the coral that was asked about, as it stands in an address
 */
record PlaceForm(QuestionForm form, ReefReport.@Nullable Trial trial, String coral) {
    private static final String OWN = "own-";
    private static final double SMALLEST = 0.005;
    private static final double LARGEST = 1;

    static PlaceForm read(Levers.Query query, ReefSite site, Catalogue catalogue, UnitSystem units) {
        String asked = query.get("coral");
        String chosen = asked == null ? "" : asked.strip();
        Optional<Colony> own = own(chosen, site);
        Optional<Colony> kind = kind(chosen, catalogue);
        boolean unknown = !chosen.isEmpty() && own.isEmpty() && kind.isEmpty();
        Select coral = new Select(
                "coral",
                "The coral",
                groups(chosen, site, catalogue),
                unknown ? "“" + Entry.shortened(chosen) + "” is none of the list." : "");
        Known width = own.map(colony -> new Known(2 * colony.radius(), "", "from the plan"))
                .orElse(null);
        AmountField across = field(
                query,
                "across",
                "How wide it is",
                units,
                SMALLEST,
                Math.min(LARGEST, site.width()),
                width,
                "from edge to edge");
        AmountField x = field(query, "x", "From the left", units, 0, site.length(), null, "from the left pane, inside");
        AmountField y =
                field(query, "y", "From the front", units, 0, site.width(), null, "from the front pane, inside");
        AmountField height =
                field(query, "height", "Height", units, 0, site.waterLevel(), null, "above the inside bottom");
        List<AmountField> place = List.of(x, y, height);
        long given = place.stream().filter(AmountField::isGiven).count();
        boolean faulty = unknown || across.faulty() || place.stream().anyMatch(AmountField::faulty);
        if (!faulty && given > 0 && given < 3) {
            place = place.stream().map(PlaceForm::missing).toList();
            faulty = true;
        }
        boolean any = given > 0 || across.isGiven();
        if (!faulty && chosen.isEmpty() && any) {
            coral = new Select(coral.name(), coral.label(), coral.groups(), "Choose which coral it is.");
            faulty = true;
        }
        if (!faulty && !chosen.isEmpty() && !across.isGiven()) {
            across = across.refused("Found nothing; expected how wide it is, from edge to edge.");
            faulty = true;
        }
        QuestionForm form = new QuestionForm(List.of(
                new QuestionForm.Part("Which coral", false, List.of(coral), List.of(), List.of(across)),
                new QuestionForm.Part("Where", false, List.of(), List.of(), place)));
        return faulty || chosen.isEmpty()
                ? new PlaceForm(form, null, "")
                : new PlaceForm(
                        form,
                        trial(own.or(() -> kind).orElseThrow(), across.value(), place, given == 3),
                        "coral=" + URLEncoder.encode(chosen, StandardCharsets.UTF_8) + "&across="
                                + inAddress(across.value()));
    }

    /** A length as it stands in an address, whatever units its reader has. */
    static String inAddress(double metres) {
        return URLEncoder.encode(FieldUnits.plain(100 * metres, 4) + " cm", StandardCharsets.UTF_8);
    }

    private static ReefReport.Trial trial(Colony chosen, double across, List<AmountField> place, boolean placed) {
        Colony colony = across == 2 * chosen.radius()
                ? chosen
                : new Colony(chosen.name(), 1, across / 2, chosen.traits(), chosen.place());
        return new ReefReport.Trial(
                colony,
                placed
                        ? new Place(
                                place.get(0).value(),
                                place.get(1).value(),
                                place.get(2).value())
                        : null);
    }

    private static AmountField missing(AmountField field) {
        return field.isGiven()
                ? field
                : field.refused("Found nothing; expected a length, or none of the three to ask where it could stand.");
    }

    private static AmountField field(
            Levers.Query query,
            String name,
            String label,
            UnitSystem units,
            double least,
            double most,
            @Nullable Known known,
            String wants) {
        return AmountField.read(query, Asked.of(name, label, Measure.LENGTH, units, least, most), known, wants);
    }

    private static Optional<Colony> own(String chosen, ReefSite site) {
        List<Colony> all = site.colonies();
        for (int i = 0; i < all.size(); i++) {
            if (chosen.equals(OWN + (i + 1))) {
                return Optional.of(all.get(i));
            }
        }
        return Optional.empty();
    }

    /** A new one of no size yet. */
    private static Optional<Colony> kind(String chosen, Catalogue catalogue) {
        for (CoralForm form : CoralForm.values()) {
            if (key(form).equals(chosen)) {
                CoralTraits traits = FormTraits.of(form);
                return Optional.of(new Colony("new " + traits.name(), 1, 0, traits, null));
            }
        }
        return corals(catalogue)
                .filter(coral -> coral.name().scientific().equals(chosen))
                .findFirst()
                .map(coral -> new Colony("new " + coral.name().common(), 1, 0, CatalogueLore.traits(coral), null));
    }

    static String key(CoralForm form) {
        return form.name().toLowerCase(Locale.ROOT);
    }

    private static Stream<InvertebrateSpecies> corals(Catalogue catalogue) {
        return catalogue.invertebrates().stream()
                .filter(animal -> animal.group().isCoral());
    }

    private static List<Select.Group> groups(String chosen, ReefSite site, Catalogue catalogue) {
        List<Select.Group> groups = new ArrayList<>();
        groups.add(Select.group("", chosen, List.of("", "choose one")));
        List<String> own = new ArrayList<>();
        List<Colony> all = site.colonies();
        for (int i = 0; i < all.size(); i++) {
            own.add(OWN + (i + 1));
            own.add((i + 1) + " " + all.get(i).name());
        }
        if (!own.isEmpty()) {
            groups.add(Select.group("Yours, elsewhere", chosen, own));
        }
        for (InvertebrateSpecies.Group kind : InvertebrateSpecies.Group.values()) {
            List<String> species = new ArrayList<>();
            corals(catalogue).filter(coral -> coral.group() == kind).forEach(coral -> {
                species.add(coral.name().scientific());
                species.add(coral.name().common() + ", " + coral.name().scientific());
            });
            if (!species.isEmpty()) {
                groups.add(Select.group("A new " + kind.words(), chosen, species));
            }
        }
        List<String> forms = new ArrayList<>();
        for (CoralForm form : CoralForm.values()) {
            forms.add(key(form));
            forms.add(FormTraits.of(form).name());
        }
        groups.add(Select.group("A new one, known by its form alone", chosen, forms));
        return groups;
    }
}
