package org.tidewright.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.app.CommandLineRun;
import org.tidewright.app.cli.ExitCode;
import org.tidewright.testkit.SeededCases;

class SeawaterCsvTest {
    @TempDir
    Path folder = Path.of("");

    /** PyCO2SYS 1.8.3.4: the file gives alkalinity, DIC, pH and pCO2 of each state, of which the first two decide. */
    @ParameterizedTest
    @ValueSource(strings = {"uppstrom", "lee"})
    void everyColumnAnotherCodeComputedIsComputedTheSame(String boron) throws IOException {
        String reference = resource("speciation_" + boron + ".csv");
        CommandLineRun run = solve(reference, "--boron", boron);
        assertThat(run.exitCode()).as(run.err()).isEqualTo(ExitCode.HOLDS);
        Map<String, Integer> compared = new HashMap<>();
        for (NamedCsvRecord row : rows(run.out())) {
            for (String column : row.getHeader()) {
                String given = row.getField(column);
                String computed = row.findField(column + "_computed").orElse("");
                if (!computed.isEmpty()) {
                    compared.merge(column, 1, Integer::sum);
                    double expected = Double.parseDouble(given);
                    double allowed = column.startsWith("ph_")
                            ? 1e-9
                            : Math.abs(expected)
                                    * (column.equals("revelle_factor")
                                            ? 1e-5
                                            : column.startsWith("xco2") ? 1.3e-4 : 1e-7);
                    assertThat(Math.abs(Double.parseDouble(computed) - expected))
                            .as(column + " of row " + row.getField("row"))
                            .isLessThanOrEqualTo(allowed);
                }
            }
        }
        assertThat(compared).hasSize(31).containsKeys("ph_total", "pco2_uatm", "carbonate_umol_kg", "po4_umol_kg");
        assertThat(compared.values()).containsOnly(64);
        assertThat(run.out()).contains("\n").doesNotContain("dic_umol_kg_computed");
    }

    @Test
    void whatStoodInTheFileStandsInTheResultAsItStood() {
        String file = """
                # seven buckets, an invented example
                name,temperature_c,practical_salinity,note
                a,25.0,35,"deep, ""clear"" water"
                # between
                b, 20 ,,"two
                lines"
                """;
        CommandLineRun run = solve(file);
        assertThat(run.exitCode()).isEqualTo(ExitCode.HOLDS);
        assertThat(run.out())
                .startsWith("# seven buckets, an invented example\nname,temperature_c,practical_salinity,note,")
                .contains("a,25.0,35,\"deep, \"\"clear\"\" water\",")
                .contains("\n# between\n")
                .contains("b, 20 ,,\"two\nlines\",,");
    }

    /** UNESCO 1983: 42.914 mS/cm at 15 °C on IPTS-68 is S = 35. */
    @Test
    void conductivityWillDoForSalinity() throws IOException {
        CommandLineRun run = solve("temperature_c,conductivity_ms_cm\n14.996400863792691,42.914\n");
        NamedCsvRecord row = rows(run.out()).get(0);
        assertThat(Double.parseDouble(row.getField("practical_salinity"))).isBetween(34.999999, 35.000001);
        assertThat(row.getHeader())
                .contains("density_teos10_kg_m3", "density_eos80_kg_m3", "oxygen_umol_kg", "oxygen_mg_l");
    }

    @Test
    void aRowsOwnEmptyCellsDecideWhichPairItIsSolvedFrom() throws IOException {
        CommandLineRun run = solve("""
                temperature_c,practical_salinity,total_alkalinity_umol_kg,dic_umol_kg,ph_total
                25,35,2400,2088,
                25,35,2400,,8.050501963727777
                """);
        List<NamedCsvRecord> rows = rows(run.out());
        assertThat(Double.parseDouble(rows.get(0).getField("ph_total_computed")))
                .isBetween(8.0505019, 8.0505020);
        assertThat(rows.get(1).getField("ph_total_computed")).isEmpty();
        assertThat(Double.parseDouble(rows.get(1).getField("dic_umol_kg_computed")))
                .isBetween(2087.9999, 2088.0001);
        assertThat(rows.get(0).getField("dic_umol_kg_computed")).isEmpty();
    }

    @Test
    void aBadRowIsReportedWithItsLineAndTheOthersAreSolved() throws IOException {
        CommandLineRun run = solve("""
                # a comment
                temperature_c,practical_salinity
                25,35
                "25,1",35
                25,350
                25
                25,35,1
                24,35
                """);
        assertThat(run.exitCode()).isEqualTo(ExitCode.DOES_NOT_HOLD);
        assertThat(run.err())
                .contains(":4: temperature_c: found “25,1”; expected a number such as 25.1")
                .contains(":5: practical salinity 350.0 is outside 0.0 to 120.0; is it in mg/kg or mS/cm?")
                .contains(":6: found 1 cells; expected 2 as in the header")
                .contains(":7: found 3 cells; expected 2 as in the header")
                .contains("4 of 6 rows were refused");
        List<String> lines = run.out().lines().toList();
        assertThat(lines.get(3)).startsWith("\"25,1\",35,,,");
        assertThat(lines.get(2)).matches("25,35,.*1023.*");
        assertThat(lines.get(7)).matches("24,35,.*1023.*");
    }

    @Test
    void aFileThatCannotBeUsedIsRefusedWithOneClearLine() {
        assertRefused("", "found no header");
        assertRefused("# only a comment\n", "found no header");
        assertRefused("a,b\n1,2\n", "found no column to compute from; expected some of");
        assertRefused("temperature_c,temperature_c\n1,2\n", "temperature_c stands twice");
        assertRefused("ph_total\n8.1\n", "nothing can be computed from [ph_total] alone");
        assertRefused(
                "temperature_c,practical_salinity,oxygen_mg_l,oxygen_mg_l_computed\n25,35,1,2\n", "are both taken");
    }

    private void assertRefused(String file, String words) {
        CommandLineRun run = solve(file);
        assertThat(run.exitCode()).as(run.out()).isEqualTo(ExitCode.INVALID);
        assertThat(run.err()).contains(words).doesNotContain("Exception", "\tat ");
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).hasSize(1);
    }

    @Test
    void filesGoInAndOutByName() throws IOException {
        Path in =
                Files.writeString(folder.resolve("points.csv"), "\uFEFFtemperature_c,practical_salinity\r\n25,35\r\n");
        Path out = folder.resolve("solved.csv");
        CommandLineRun run = CommandLineRun.of("seawater", "--in", in.toString(), "--out", out.toString());
        assertThat(run.exitCode()).as(run.err()).isEqualTo(ExitCode.HOLDS);
        assertThat(run.out()).isEmpty();
        assertThat(Files.readString(out))
                .startsWith("temperature_c,practical_salinity,")
                .contains("\n25,35,");
        assertThat(folder.toFile().list()).containsExactlyInAnyOrder("points.csv", "solved.csv");
    }

    @Test
    void whatStoodUnderTheResultsNameStaysWhereTheFileCannotBeUsed() throws IOException {
        Path in = Files.writeString(folder.resolve("points.csv"), "nothing,known\n1,2\n");
        Path out = Files.writeString(folder.resolve("solved.csv"), "kept");
        CommandLineRun run = CommandLineRun.of("seawater", "--in", in.toString(), "--out", out.toString());
        assertThat(run.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(Files.readString(out)).isEqualTo("kept");
        assertThat(folder.toFile().list()).hasSize(2);
    }

    @Test
    void aFileIsNotSolvedOntoItselfNorOntoAFolder() throws IOException {
        Path in = Files.writeString(folder.resolve("points.csv"), "temperature_c,practical_salinity\n25,35\n");
        CommandLineRun onto = CommandLineRun.of("seawater", "--in", in.toString(), "--out", in.toString());
        assertThat(onto.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(onto.err()).contains("both --in and --out");
        assertThat(Files.readString(in)).isEqualTo("temperature_c,practical_salinity\n25,35\n");
        CommandLineRun dir = CommandLineRun.of("seawater", "--in", in.toString(), "--out", folder.toString());
        assertThat(dir.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(dir.err()).contains("is a folder");
        CommandLineRun none =
                CommandLineRun.of("seawater", "--in", folder.resolve("no.csv").toString());
        assertThat(none.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(none.err()).contains("there is no file or folder");
    }

    /** Devices of Unix: the one swallows everything, the other is always full. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aDeviceIsWrittenToAndAFullDiskIsSaidInOneLine() throws IOException {
        Path in = Files.writeString(folder.resolve("points.csv"), "temperature_c,practical_salinity\n25,35\n");
        CommandLineRun nowhere = CommandLineRun.of("seawater", "--in", in.toString(), "--out", "/dev/null");
        assertThat(nowhere.exitCode()).as(nowhere.err()).isEqualTo(ExitCode.HOLDS);
        assertThat(Files.isRegularFile(Path.of("/dev/null"))).isFalse();
        CommandLineRun full = CommandLineRun.of("seawater", "--in", in.toString(), "--out", "/dev/full");
        assertThat(full.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(full.err().lines()).singleElement().asString().contains("No space left on device");
    }

    @Test
    void anyBytesGiveAnAnswerOrAClearRefusal() {
        SeededCases.check(300, draw -> {
            String text = draw.oneOf("", "temperature_c,practical_salinity,ph_total\n", "practical_salinity\n")
                    + draw.text()
                    + draw.oneOf("", ",\n\"", "\n1,2\n")
                    + draw.text();
            CommandLineRun run = solve(text);
            assertThat(run.exitCode()).isIn(ExitCode.HOLDS, ExitCode.DOES_NOT_HOLD, ExitCode.INVALID);
            assertThat(run.err()).doesNotContain("Exception", "\tat ");
        });
    }

    private static CommandLineRun solve(String file, String... options) {
        String[] arguments = new String[options.length + 5];
        arguments[0] = "seawater";
        arguments[1] = "--in";
        arguments[2] = "-";
        arguments[3] = "--out";
        arguments[4] = "-";
        System.arraycopy(options, 0, arguments, 5, options.length);
        InputStream before = System.in;
        System.setIn(new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8)));
        try {
            return CommandLineRun.of(arguments);
        } finally {
            System.setIn(before);
        }
    }

    private static List<NamedCsvRecord> rows(String csv) throws IOException {
        try (CsvReader<NamedCsvRecord> reader =
                CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(csv)) {
            return reader.stream().toList();
        }
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = SeawaterCsvTest.class.getResourceAsStream("/sheet/" + name)) {
            assertThat(in).as(name).isNotNull();
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
