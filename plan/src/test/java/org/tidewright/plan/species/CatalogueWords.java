package org.tidewright.plan.species;

import java.util.Map;
import java.util.Set;

/** The words that a cell of the catalogue may hold, by column. */
final class CatalogueWords {
    private static final Set<String> PREY =
            words("fish small_fish shrimp small_shrimp crabs snails urchins stars worms clams"
                    + " stony_polyps large_polyps small_polyps soft_corals zoanthids anemones sponges feather_worms microfauna"
                    + " pods algae_film");
    static final Map<String, Set<String>> FISH = Map.ofEntries(
            Map.entry(
                    "diet",
                    words(
                            "herbivore detritivore grazer planktivore invertivore omnivore carnivore piscivore corallivore"
                                    + " parasite_picker microcarnivore")),
            Map.entry("foods", words("algae plankton meaty live_microfauna live_food polyps sponges parasites")),
            Map.entry("eats", PREY),
            Map.entry("may_eat", PREY),
            Map.entry(
                    "troubles",
                    words("own_kind own_genus own_family like_shape like_food newcomers small_fish slow_fish all")),
            Map.entry("shape", words("deep_disc oval torpedo slender eel box perching seahorse")),
            Map.entry(
                    "look",
                    words("yellow purple blue red black white brown green orange stripes bars spots two_halves")),
            Map.entry("social", words("single pair harem group")),
            Map.entry("swimming", words("roams cruises stays perches buries")),
            Map.entry("zone", words("open mid rock cave bottom perch")),
            Map.entry("night", words("nothing cocoon sand hole active")),
            Map.entry("digs", words("yes no")),
            Map.entry(
                    "hazard",
                    words(
                            "venomous_spines tail_blade venomous_tail_blade cheek_spine venomous_bite bites poison_if_eaten"
                                    + " lethal")),
            Map.entry("poisons_tank", words("yes no")),
            Map.entry("captive_bred", words("usual some no")));
    static final Map<String, Set<String>> INVERTEBRATES = Map.ofEntries(
            Map.entry(
                    "group",
                    words("sps lps soft gorgonian zoanthid corallimorph anemone nps hydrocoral clam shrimp crab snail"
                            + " urchin star cucumber worm slug cephalopod calcareous_algae")),
            Map.entry("flow", words("low low_medium medium medium_high high any")),
            Map.entry(
                    "form",
                    words("branching_acropora pocillopora stylophora branching_montipora plating_montipora"
                            + " massive_porites euphyllia lobophyllia favites soft")),
            Map.entry("foods", words("dissolved plankton phytoplankton meaty algae detritus film pest")),
            Map.entry("eats", PREY),
            Map.entry("may_eat", PREY),
            Map.entry("social", words("single pair group")),
            Map.entry("troubles", words("own_kind own_group small_fish all")),
            Map.entry("hazard", words("palytoxin stings venomous_spines bristles lethal cuts")),
            Map.entry("poisons_tank", words("yes no")),
            Map.entry("captive_grown", words("usual some no")));

    private CatalogueWords() {}

    private static Set<String> words(String words) {
        return Set.of(words.split(" "));
    }
}
