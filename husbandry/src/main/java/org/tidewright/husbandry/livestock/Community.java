package org.tidewright.husbandry.livestock;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.burden.Lately;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.plan.model.Inhabitants;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.species.Catalogue;
import org.tidewright.plan.species.FishSpecies;
import org.tidewright.plan.species.Species;
import org.tidewright.seawater.unit.Unit;

/**
 * Who lives in a system: those the plan counts, and whom the log saw come and go from the day of that count on.
 *
 * @param residents of known species, fish at the length they will have reached
 * @param unknown names that no species of the catalogue goes by; nothing is judged of them
 * @param arrivals fish that came within the last eight weeks, the first first
 */
public record Community(List<Animals> residents, List<String> unknown, Experience experience, List<Arrival> arrivals) {
    private static final double DAYS_A_YEAR = 365.25;

    /** Who has lived somewhere for so long thrives there; ours. */
    private static final int HALF_A_YEAR = 182;

    private static final int YEAR = 365;

    /** Fish that came on a day. */
    public record Arrival(LocalDate day, Animals fish) {}

    public Community {
        residents = List.copyOf(residents);
        unknown = List.copyOf(unknown);
        arrivals = List.copyOf(arrivals);
    }

    /** As it stands on a day. */
    public static Community of(Plan plan, List<Line> lines, Catalogue catalogue, LocalDate today, ZoneId zone) {
        Gathering gathering = new Gathering(catalogue, today);
        if (plan.inhabitants() != null) {
            gathering.plan(plan.inhabitants());
        }
        LocalDate counted =
                plan.inhabitants() == null ? null : plan.inhabitants().counted();
        for (Line line : lines) {
            LocalDate day = line.at().atZoneSameInstant(zone).toLocalDate();
            if (line.event() instanceof Event.AnimalMoved moved) {
                gathering.remember(moved, day);
                if (counted == null || !day.isBefore(counted)) {
                    gathering.moved(moved, day);
                }
            }
        }
        return new Community(
                gathering.residents,
                gathering.unknown.stream().distinct().toList(),
                gathering.experience(),
                gathering.arrivals);
    }

    private static final class Gathering {
        private final Catalogue catalogue;
        private final LocalDate today;
        private final List<Animals> residents = new ArrayList<>();
        private final List<String> unknown = new ArrayList<>();
        private final List<Arrival> arrivals = new ArrayList<>();
        private final List<Animals> died = new ArrayList<>();
        private final Set<Species> fresh = new HashSet<>();

        Gathering(Catalogue catalogue, LocalDate today) {
            this.catalogue = catalogue;
            this.today = today;
        }

        void plan(Inhabitants inhabitants) {
            LocalDate counted = inhabitants.counted() == null ? today : inhabitants.counted();
            for (Inhabitants.Fish fish : inhabitants.fish()) {
                Species species = find(fish.species(), fish.name());
                if (species instanceof FishSpecies known) {
                    residents.add(new Animals(known, fish.count(), grown(known, length(known, fish), counted)));
                } else {
                    unknown.add(fish.name());
                }
            }
            inhabitants
                    .invertebrates()
                    .forEach(each -> other(find(each.species(), each.species()), each.species(), each.count()));
            inhabitants.corals().forEach(coral -> other(find(coral.species(), coral.name()), coral.name(), 1));
        }

        private void other(@Nullable Species species, String name, int count) {
            if (species == null || species instanceof FishSpecies) {
                unknown.add(name);
            } else {
                residents.add(new Animals(species, count, 0));
            }
        }

        private @Nullable Species find(@Nullable String species, String name) {
            return catalogue.find(species == null ? name : species).orElse(null);
        }

        /** As the plan measures it, else as its mass tells, W = a L^b turned. */
        private static @Unit("m") double length(FishSpecies known, Inhabitants.Fish fish) {
            if (fish.length() != null) {
                return fish.length().in("m");
            }
            double grams = 1000 * fish.massOfOne();
            return 0.01
                    * Math.pow(grams / known.weight().a(), 1 / known.weight().b());
        }

        private @Unit("m") double grown(FishSpecies known, @Unit("m") double length, LocalDate since) {
            return known.lengthAfter(length, Math.max(0, ChronoUnit.DAYS.between(since, today)) / DAYS_A_YEAR);
        }

        void moved(Event.AnimalMoved moved, LocalDate day) {
            Species species = catalogue.find(moved.animal()).orElse(null);
            if (species == null) {
                unknown.add(moved.animal());
            } else if (moved.move() == Event.Move.ARRIVED) {
                double length = species instanceof FishSpecies fish
                        ? grown(fish, moved.length() == null ? Candidates.sold(fish) : moved.length(), day)
                        : 0;
                residents.add(new Animals(species, moved.count(), length));
            } else {
                gone(species, moved.count());
            }
        }

        /** Who came lately, whoever counts them by now, and who died. */
        void remember(Event.AnimalMoved moved, LocalDate day) {
            Species species = catalogue.find(moved.animal()).orElse(null);
            long ago = ChronoUnit.DAYS.between(day, today);
            if (species == null || ago < 0) {
                return;
            }
            if (moved.move() == Event.Move.DIED && ago <= YEAR) {
                died.add(new Animals(species, moved.count(), 0));
            } else if (moved.move() == Event.Move.ARRIVED && ago < HALF_A_YEAR) {
                fresh.add(species);
                if (species instanceof FishSpecies fish && ago <= Lately.FOLLOWED) {
                    double length = moved.length() == null ? Candidates.sold(fish) : moved.length();
                    arrivals.add(new Arrival(day, new Animals(species, moved.count(), length)));
                }
            }
        }

        /** Of a kind that came lately nobody says which of them are old. */
        Experience experience() {
            return new Experience(
                    residents.stream()
                            .filter(each -> !fresh.contains(each.species()))
                            .toList(),
                    died);
        }

        /** The last to come is the first to be missed; which of them it was, nobody says. */
        private void gone(Species species, int count) {
            int left = count;
            for (int i = residents.size() - 1; i >= 0 && left > 0; i--) {
                Animals each = residents.get(i);
                if (each.species() == species) {
                    residents.remove(i);
                    if (each.count() > left) {
                        residents.add(i, new Animals(species, each.count() - left, each.length()));
                    }
                    left -= Math.min(left, each.count());
                }
            }
        }
    }
}
