package org.tidewright.app.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.text.PlanDocument;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;

/** Reads the plan a command was given, or says what is wrong with it. */
final class PlanArgument {
    private PlanArgument() {}

    /** The plan; empty after its faults have been printed. */
    static Optional<PlanDocument> read(Path file, PrintWriter err) {
        PlanReading reading;
        try {
            if (Files.isDirectory(file)) {
                err.println("tidewright: " + file + " is a folder; name the plan file in it.");
                return Optional.empty();
            }
            reading = PlanText.read(file);
        } catch (NoSuchFileException missing) {
            err.println("tidewright: there is no file " + file + ". Start one with: tidewright example harbour-room > "
                    + file);
            return Optional.empty();
        } catch (AccessDeniedException denied) {
            err.println("tidewright: " + file + " may not be read; look at its permissions.");
            return Optional.empty();
        } catch (IOException unreadable) {
            err.println("tidewright: " + file + " cannot be read: " + unreadable.getMessage());
            return Optional.empty();
        }
        if (reading instanceof PlanReading.Faulty faulty) {
            for (Fault fault : faulty.faults()) {
                err.println(file + ":" + fault.line() + ":" + fault.column() + ": " + fault.sentence());
            }
            int count = faulty.faults().size();
            err.println(count == 1 ? "1 fault; nothing was done." : count + " faults; nothing was done.");
            return Optional.empty();
        }
        return Optional.of(((PlanReading.Sound) reading).document());
    }
}
