package org.tidewright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.tidewright.app.CommandLineRun;
import org.tidewright.husbandry.sheet.SheetColumn;
import org.tidewright.husbandry.sheet.WaterSheet;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SeawaterCommandTest {
    private static CommandLineRun water(String... options) {
        String[] arguments = new String[options.length + 1];
        arguments[0] = "seawater";
        System.arraycopy(options, 0, arguments, 1, options.length);
        return CommandLineRun.of(arguments);
    }

    /** PyCO2SYS 1.8.3.4: alkalinity 2300 µmol/kg and pH 8.15 at S 35, 25 °C. */
    @Test
    void tellsAWaterWithUnitsAndSources() {
        CommandLineRun run =
                water("--salinity", "35", "--temperature", "25", "--alkalinity", "2300 umol/kg", "--ph", "8.15");
        assertThat(run.exitCode()).as(run.err()).isEqualTo(ExitCode.HOLDS);
        assertThat(run.words())
                .startsWith("Add nothing to bring this pH down: air will.")
                .contains("Dissolved inorganic carbon 1 935 µmol/kg")
                .contains("Partial pressure of CO₂ 294.1 µatm")
                .contains("Saturation of aragonite Ω 4.052")
                .containsPattern(" ([a-z]) Mucci 1983")
                .contains("pH, total scale 8.150 as given")
                .contains("pH, NBS scale (a probe set with trade buffers) 8.287")
                .doesNotContain("HSO₄⁻", "Ksp");
        assertThat(water(
                                "--salinity",
                                "35",
                                "--temperature",
                                "25",
                                "--alkalinity",
                                "2300 umol/kg",
                                "--ph",
                                "8.15",
                                "--all")
                        .words())
                .contains("HCO₃⁻ 1 671 µmol/kg", "Ksp of aragonite 6.482 × 10⁻⁷ (mol/kg)²")
                .doesNotContain("PO₄³⁻");
    }

    @Test
    void jsonCarriesTheNamesOfTheColumns() {
        CommandLineRun run = water(
                "--json",
                "--boron",
                "lee",
                "--salinity",
                "35",
                "--temperature",
                "25",
                "--alkalinity",
                "2300 umol/kg",
                "--ph",
                "8.15");
        JsonNode root = JsonMapper.builder().build().readTree(run.out());
        assertThat(root.get("dic_umol_kg").asDouble()).isBetween(1931.19, 1931.20);
        assertThat(root.get("ph_total").asDouble()).isEqualTo(8.15);
        assertThat(root.get("boron").asString()).isEqualTo("Lee et al. 2010");
    }

    @Test
    void saysWhatWouldLetItGoOn() {
        assertThat(water("--salinity", "35").words()).contains("Give temperature and salinity too");
        assertThat(water("--salinity", "35", "--temperature", "25").words()).contains("Give two of alkalinity");
        assertThat(water("--salinity", "35", "--temperature", "25", "--ph", "8").words())
                .contains("Give one more of alkalinity")
                .contains("Un-ionised share of ammonia 5.37 %");
    }

    @Test
    void warnsOutsideTheRangeOfTheConstants() {
        assertThat(water("--salinity", "10", "--temperature", "25", "--alkalinity", "8 dKH", "--ph", "8")
                        .words())
                .contains("Caution. The constants of carbonic acid were measured at salinities 19 to 43");
    }

    @Test
    void whatCannotBeReadIsSaidInALineEachAndNothingIsComputed() {
        CommandLineRun run = water("--salinity", "35", "--temperature", "25", "--alkalinity", "8", "--ph", "8,1");
        assertThat(run.exitCode()).isEqualTo(ExitCode.INVALID);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines())
                .hasSize(2)
                .anyMatch(line -> line.contains("alkalinity: found “8” without a unit; expected a number with one of"))
                .anyMatch(line -> line.contains("pH: “8,1” has a comma; write the decimal point: 8.1"));
        assertThat(water("--salinity", "35", "--temperature", "77").err())
                .contains("outside −10 to 60. Is the unit right?");
        assertThat(water("--salinity", "35", "--temperature", "25", "--alkalinity", "0.01 dKH", "--ph", "9")
                        .err())
                .contains("without any carbon");
        assertThat(water().err()).contains("nothing is known of the water. For example");
        assertThat(water("--out", "x.csv").err()).contains("--out needs --in");
        assertThat(water("--in", "x.csv", "--ph", "8").err()).contains("give one or the other");
    }

    /** Prints the table to paste where it fails. */
    @Test
    void everyColumnStandsInTheDocument() throws IOException {
        String table = Arrays.stream(SheetColumn.values())
                .map(column ->
                        "| `" + column.key() + "` | " + (WaterSheet.KNOWABLE.contains(column) ? "in, out" : "out")
                                + " | " + column.words() + " | " + column.unit() + " | " + column.source() + " |")
                .collect(Collectors.joining("\n"));
        Path document = Path.of("..", "docs", "formats", "seawater-csv.md");
        assertThat(Files.readString(document)).contains(table);
    }
}
