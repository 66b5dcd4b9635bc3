package org.tidewright.plan.species;

import static java.util.stream.Collectors.joining;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.fault.Spelling;
import org.tidewright.plan.source.Basis;

/** All species that are known: those of the program, and a keeper's own over them. */
public final class Catalogue {
    /** So many kinds are named to somebody who gave but a word of their names. */
    private static final int SHOWN = 3;

    private static final Map<String, SpeciesSource> SOURCES = sources();
    private static final Catalogue OF_PROGRAM = program();

    private final SpeciesFile<FishSpecies> fish;
    private final SpeciesFile<InvertebrateSpecies> invertebrates;
    private final Map<String, Species> byName;

    private Catalogue(SpeciesFile<FishSpecies> fish, SpeciesFile<InvertebrateSpecies> invertebrates) {
        this.fish = fish;
        this.invertebrates = invertebrates;
        byName = new LinkedHashMap<>();
        all(fish, invertebrates).forEach(species -> name(species.name().scientific(), species));
        all(fish, invertebrates).forEach(species -> {
            name(species.name().common(), species);
            species.name().synonyms().forEach(name -> name(name, species));
        });
    }

    private void name(String name, Species species) {
        byName.putIfAbsent(name.toLowerCase(Locale.ROOT), species);
    }

    private static List<Species> all(SpeciesFile<FishSpecies> fish, SpeciesFile<InvertebrateSpecies> invertebrates) {
        List<Species> all = new ArrayList<>(fish.species().values());
        all.addAll(invertebrates.species().values());
        return all;
    }

    /** The species of the program. */
    public static Catalogue ofProgram() {
        return OF_PROGRAM;
    }

    /**
     * A catalogue with a keeper's file over it.
     *
     * @param catalogue as it was where there are faults
     * @param faults in the order of their places; empty for a file that is right
     */
    public record Extended(Catalogue catalogue, List<Fault> faults) {}

    /** With fish of a keeper's own, a CSV in the columns of the program's. */
    public Extended withFish(String csv) {
        SpeciesFile<FishSpecies> own = SpeciesFile.read(csv, FishColumns.ALL, fish, SOURCES, FishColumns::fish);
        return own.faults().isEmpty()
                ? new Extended(new Catalogue(own, invertebrates), List.of())
                : new Extended(this, own.faults());
    }

    /** With invertebrates of a keeper's own. */
    public Extended withInvertebrates(String csv) {
        SpeciesFile<InvertebrateSpecies> own = SpeciesFile.read(
                csv, InvertebrateColumns.ALL, invertebrates, SOURCES, InvertebrateColumns::invertebrate);
        return own.faults().isEmpty()
                ? new Extended(new Catalogue(fish, own), List.of())
                : new Extended(this, own.faults());
    }

    public Collection<FishSpecies> fish() {
        return fish.species().values();
    }

    public Collection<InvertebrateSpecies> invertebrates() {
        return invertebrates.species().values();
    }

    /** Fish first, then the others, in the order of the files. */
    public List<Species> all() {
        return all(fish, invertebrates);
    }

    /** The species of a name, scientific, common or an older one, in any case. */
    public Optional<Species> find(String name) {
        return Optional.ofNullable(byName.get(name.strip().toLowerCase(Locale.ROOT)));
    }

    /** {@code Did you mean “yellow tang”?}, or of which kind where several go by a word; or nothing. */
    public String suggestion(String name) {
        String word = " " + name.strip().toLowerCase(Locale.ROOT) + " ";
        List<String> kinds = all().stream()
                .map(Species::name)
                .filter(each -> word(each.common()).contains(word)
                        || word(each.scientific()).contains(word))
                .map(Species.Name::common)
                .distinct()
                .sorted()
                .toList();
        if (kinds.isEmpty()) {
            return Spelling.suggestion(name, byName.keySet());
        }
        String first = kinds.stream().limit(SHOWN).map(each -> "“" + each + "”").collect(joining(", "));
        return "Which of them: " + first + (kinds.size() > SHOWN ? " or " + (kinds.size() - SHOWN) + " more?" : "?");
    }

    private static String word(String name) {
        return " " + name.toLowerCase(Locale.ROOT) + " ";
    }

    private static Catalogue program() {
        SpeciesFile<FishSpecies> fish = right(
                "fish.csv",
                SpeciesFile.read(text("fish.csv"), FishColumns.ALL, SpeciesFile.none(), SOURCES, FishColumns::fish));
        SpeciesFile<InvertebrateSpecies> invertebrates = right(
                "invertebrates.csv",
                SpeciesFile.read(
                        text("invertebrates.csv"),
                        InvertebrateColumns.ALL,
                        SpeciesFile.none(),
                        SOURCES,
                        InvertebrateColumns::invertebrate));
        return new Catalogue(fish, invertebrates);
    }

    private static <S extends Species> SpeciesFile<S> right(String file, SpeciesFile<S> read) {
        if (!read.faults().isEmpty()) {
            throw new IllegalStateException(file + ": "
                    + String.join(
                            " ",
                            read.faults().stream()
                                    .map(fault -> "Line " + fault.line() + ": " + fault.sentence())
                                    .toList()));
        }
        return read;
    }

    private static Map<String, SpeciesSource> sources() {
        Map<String, SpeciesSource> sources = new LinkedHashMap<>();
        try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text("sources.csv"))) {
            for (NamedCsvRecord row : rows) {
                String key = row.getField("key");
                Basis basis = java.util.Arrays.stream(Basis.values())
                        .filter(each -> each.words().equals(row.getField("basis")))
                        .findFirst()
                        .orElseThrow(() -> new IllegalStateException("sources.csv, " + key + ": no such basis"));
                SpeciesSource.Confidence confidence = SpeciesSource.Confidence.valueOf(
                        row.getField("confidence").toUpperCase(Locale.ROOT));
                sources.put(key, new SpeciesSource(key, basis, confidence, row.getField("citation")));
            }
            return sources;
        } catch (IOException cannotBe) {
            throw new UncheckedIOException(cannotBe);
        }
    }

    private static String text(String file) {
        try (InputStream bytes = Objects.requireNonNull(Catalogue.class.getResourceAsStream(file), file)) {
            return new String(bytes.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(file + " cannot be read", unreadable);
        }
    }
}
