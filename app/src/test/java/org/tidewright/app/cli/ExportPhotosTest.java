package org.tidewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.HexFormat;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tidewright.app.CommandLineRun;
import org.tidewright.app.folder.KeptFolder;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Photos.Photo;
import org.tidewright.plan.Examples;

class ExportPhotosTest {
    private static final String SYSTEM = "window-nano";
    private static final byte[] PNG = HexFormat.of().parseHex("89504e470d0a1a0a0000000d49484452");

    @TempDir
    private Path folder = Path.of("");

    private Path at(String name) {
        return folder.resolve(name);
    }

    private String keepOne(Path in) {
        try (KeptFolder kept = new KeptFolder(in, Clock.systemUTC())) {
            kept.plans().keep(SYSTEM, 0, Examples.text(SYSTEM));
            String photo = kept.photos().keep(SYSTEM, new Photo("image/png", PNG));
            Event seen = new Event.Observation("white spots", photo);
            kept.journal()
                    .write(SYSTEM, new Draft(UUID.randomUUID(), OffsetDateTime.parse("2026-03-01T08:00Z"), seen, ""));
            return photo;
        }
    }

    @Test
    void aPhotoGoesOutWithTheJsonAndComesBackInAsItWas() {
        String photo = keepOne(at("from"));
        String file = at("log.json").toString();
        CommandLineRun out = CommandLineRun.of("export", "--folder", at("from").toString(), "--json", file);
        assertThat(out.exitCode()).isEqualTo(ExitCode.HOLDS);
        assertThat(out.err()).doesNotContain("left out");
        try (KeptFolder kept = new KeptFolder(at("to"), Clock.systemUTC())) {
            kept.plans().keep(SYSTEM, 0, Examples.text(SYSTEM));
        }
        CommandLineRun in = CommandLineRun.of("restore", file, "--folder", at("to").toString());
        assertThat(in.words()).contains("1 photos are kept");
        try (KeptFolder kept = new KeptFolder(at("to"), Clock.systemUTC())) {
            assertThat(kept.photos().find(SYSTEM, photo).orElseThrow().bytes()).isEqualTo(PNG);
        }
    }

    @Test
    void anExportAsCsvSaysThatPhotosAreLeftOut() {
        keepOne(at("from"));
        CommandLineRun out = CommandLineRun.of(
                "export", "--folder", at("from").toString(), "--csv", at("csv").toString());
        assertThat(out.exitCode()).isEqualTo(ExitCode.HOLDS);
        assertThat(out.err()).contains("One photo is left out", "--json");
    }
}
