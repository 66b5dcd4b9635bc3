package org.tidewright.app.cli;

import java.io.PrintWriter;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Kind;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.journal.Span;
import org.tidewright.husbandry.note.NoteText;
import org.tidewright.husbandry.note.NoteWords;
import org.tidewright.husbandry.note.UnreadableNote;
import org.tidewright.husbandry.quantity.EarlyMove;
import org.tidewright.husbandry.quantity.ProbeHours;
import org.tidewright.husbandry.quantity.QuantityStudy;
import org.tidewright.husbandry.quantity.WaterStudy;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.twin.system.SystemTwin;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code tidewright note}. */
@Command(
        name = "note",
        mixinStandardHelpOptions = true,
        description = {
            "Writes a line into the log of a system: a reading, a dose, a water change, what you did or saw.",
            "",
            "The line is on disk when the command says so. docs/formats/notes.md tells all that can be written."
        },
        footer = {
            "",
            "Examples:",
            "  tidewright note alkalinity 8.1 dKH by photometer",
            "  tidewright note pH 8.05 --at 07:40",
            "  tidewright note changed 40 L --at 'yesterday 18:00' --remark 'siphoned the sand'",
            "  tidewright note set bicarbonate dose 45 mL/d",
            "  tidewright note saw white spots on the surgeonfish"
        })
public final class NoteCommand implements Callable<Integer> {
    private static final DateTimeFormatter TOLD =
            DateTimeFormatter.ofPattern("EEEE d MMMM yyyy 'at' HH:mm", Locale.ENGLISH);

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "WORDS", arity = "1..*", description = "the line")
    private List<String> words = List.of();

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description = "when it was: 07:40, 'yesterday 18:00', '2026-03-07 07:40'; now where left out")
    private @Nullable String at;

    @Option(names = "--remark", paramLabel = "TEXT", description = "what else there is to say")
    private String remark = "";

    @Mixin
    private FolderOptions options = new FolderOptions();

    @Option(names = "--all-the-same", description = "move a lever although its last move cannot be told from noise yet")
    private boolean allTheSame;

    private final Clock clock = Clock.system(ZoneId.systemDefault());

    @Override
    public Integer call() {
        FolderOptions.Chosen chosen = options.chosen(spec.commandLine());
        Event event;
        try {
            event = NoteText.read(
                    String.join(" ", words),
                    chosen.plan(),
                    SystemTwin.of(chosen.plan()).levers());
        } catch (UnreadableNote unreadable) {
            throw new ParameterException(spec.commandLine(), unreadable.getMessage(), unreadable);
        }
        Draft draft = new Draft(UUID.randomUUID(), when(), event, remark);
        try (KeptFolder folder = new KeptFolder(options.folder(), clock)) {
            Optional<String> early = tooEarly(chosen, folder, event);
            if (early.isPresent()) {
                new Prose(spec.commandLine().getErr())
                        .paragraph("tidewright: " + early.get()
                                + " Nothing was written. To move it all the same, add --all-the-same.");
                return ExitCode.INVALID;
            }
            Line kept = folder.journal().write(chosen.id(), draft);
            tell(chosen, kept, folder);
        }
        return ExitCode.HOLDS;
    }

    private void tell(FolderOptions.Chosen chosen, Line kept, KeptFolder folder) {
        PrintWriter out = spec.commandLine().getOut();
        Prose prose = new Prose(out);
        UnitSystem units = chosen.plan().units();
        prose.paragraph("In the log of " + chosen.plan().name() + ": " + NoteWords.of(kept.event(), units) + ", "
                + TOLD.format(kept.at()) + ".");
        if (kept.event() instanceof Event.Reading reading) {
            Optional<QuantityStudy> study = water(chosen, folder).of(reading.quantity());
            study.ifPresent(known -> prose.paragraph(known.advice().lead().text(units)));
        }
        out.flush();
    }

    /** Why a lever should not be moved yet; empty where it may, or where the keeper insists. */
    private Optional<String> tooEarly(FolderOptions.Chosen chosen, KeptFolder folder, Event event) {
        return event instanceof Event.LeverMoved && !allTheSame
                ? EarlyMove.reason(water(chosen, folder), event, clock.getZone())
                : Optional.empty();
    }

    private WaterStudy water(FolderOptions.Chosen chosen, KeptFolder folder) {
        List<Line> lines = folder.journal().lines(chosen.id(), Span.EVER, EnumSet.allOf(Kind.class));
        Instant now = clock.instant();
        List<ProbeHours> probes = ProbeHours.of(folder.probes(), chosen.id(), now);
        return WaterStudy.of(chosen.plan(), lines, probes, now, clock.getZone());
    }

    private OffsetDateTime when() {
        OffsetDateTime now = OffsetDateTime.now(clock);
        if (at == null) {
            return now;
        }
        LocalDateTime local = local(at.strip());
        List<ZoneOffset> offsets = clock.getZone().getRules().getValidOffsets(local);
        if (offsets.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "--at: the clock was put forward over " + local + "; expected a time before or after.");
        }
        OffsetDateTime told = local.atOffset(offsets.get(0));
        if (told.isAfter(now.plusMinutes(1))) {
            throw new ParameterException(
                    spec.commandLine(), "--at: found " + local + ", which is yet to come; expected a time up to now.");
        }
        return told;
    }

    private LocalDateTime local(String text) {
        LocalDate today = LocalDate.now(clock);
        try {
            if (text.matches("\\d{1,2}:\\d{2}")) {
                return today.atTime(time(text));
            }
            String[] parts = text.split("[ T]+", 2);
            if (parts.length == 2 && parts[0].equalsIgnoreCase("yesterday")) {
                return today.minusDays(1).atTime(time(parts[1]));
            }
            if (parts.length == 2) {
                return LocalDate.parse(parts[0]).atTime(time(parts[1]));
            }
        } catch (DateTimeParseException unreadable) {
            // Told below, with what is expected.
        }
        throw new ParameterException(
                spec.commandLine(),
                "--at: found “" + text + "”; expected 07:40, 'yesterday 18:00' or '2026-03-07 07:40'");
    }

    private static LocalTime time(String text) {
        return LocalTime.parse(text.length() == 4 ? "0" + text : text);
    }
}
