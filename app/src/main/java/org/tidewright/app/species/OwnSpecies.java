package org.tidewright.app.species;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.species.Catalogue;

/**
 * The program's species with a keeper's own over them.
 *
 * @param faults what is wrong in a file, each with its name; that file then counts for nothing
 */
public record OwnSpecies(Catalogue catalogue, List<String> faults) {
    /** Fish of a keeper's own. */
    public static final String FISH = "fish.csv";

    /** Corals and other animals of a keeper's own. */
    public static final String INVERTEBRATES = "invertebrates.csv";

    public OwnSpecies {
        faults = List.copyOf(faults);
    }

    /** With those of {@code fish.csv} and {@code invertebrates.csv} in the folder of the systems, where they are. */
    public static OwnSpecies of(Path folder) {
        return new OwnSpecies(Catalogue.ofProgram(), List.of())
                .with(folder.resolve(FISH), Catalogue::withFish)
                .with(folder.resolve(INVERTEBRATES), Catalogue::withInvertebrates);
    }

    private OwnSpecies with(Path file, BiFunction<Catalogue, String, Catalogue.Extended> reading) {
        if (!Files.exists(file)) {
            return this;
        }
        List<String> told = new ArrayList<>(faults);
        try {
            Catalogue.Extended extended = reading.apply(catalogue, Files.readString(file));
            for (Fault fault : extended.faults()) {
                told.add(file.getFileName() + ":" + fault.line() + ":" + fault.column() + ": " + fault.sentence());
            }
            return new OwnSpecies(extended.catalogue(), told);
        } catch (MalformedInputException notText) {
            told.add(file.getFileName() + " is no text in UTF-8; save it as CSV in UTF-8.");
        } catch (IOException unreadable) {
            told.add(file.getFileName() + " cannot be read: " + unreadable.getMessage());
        }
        return new OwnSpecies(catalogue, told);
    }
}
