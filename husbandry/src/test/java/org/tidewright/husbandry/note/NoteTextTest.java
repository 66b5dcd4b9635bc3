package org.tidewright.husbandry.note;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.journal.Event;
import org.tidewright.husbandry.journal.Parasite;
import org.tidewright.husbandry.journal.Sign;
import org.tidewright.plan.method.WaterQuantity;
import org.tidewright.plan.model.Plan;
import org.tidewright.plan.model.Salt;
import org.tidewright.twin.system.Levers;
import org.tidewright.twin.system.SystemTwin;

class NoteTextTest {
    private static final Plan PLAN = TestPlans.example("harbour-room");
    private static final Levers LEVERS = SystemTwin.of(PLAN).levers();

    private static Event read(String text) throws UnreadableNote {
        return NoteText.read(text, PLAN, LEVERS);
    }

    @ParameterizedTest
    @CsvSource({
        "alkalinity 8.1 dKH, ALKALINITY, 8.1, dKH,",
        "Alk 2.9 meq/L by photometer, ALKALINITY, 2.9, meq/L, photometer",
        "ca 420ppm by titration, CALCIUM, 420, mg/L, titration",
        "pH 8.21 by glass electrode in the system, PH, 8.21, '', ",
        "temperature 78 °F, TEMPERATURE, 78, °F,",
        "salinity 1.0264 SG by swing arm hydrometer, SALINITY, 1.0264, SG 25/25, swing_arm_hydrometer",
        "alkalinity 7.9 dKH by endpoint, ALKALINITY, 7.9, dKH, endpoint_titration",
        "salinity 35, SALINITY, 35, '',",
        "PO4 .05 ppm, PHOSPHATE, 0.05, mg/L PO4,"
    })
    void aReadingIsReadAsWritten(String text, WaterQuantity quantity, double written, String unit, String method)
            throws UnreadableNote {
        assertThat(read(text)).isInstanceOfSatisfying(Event.Reading.class, reading -> {
            assertThat(reading.quantity()).isEqualTo(quantity);
            assertThat(reading.written()).isEqualTo(written);
            assertThat(reading.unit().symbol()).isEqualTo(unit);
            if (method != null) {
                assertThat(reading.method()).isEqualTo(method);
            }
        });
    }

    @Test
    void theOtherKindsOfLinesAreRead() throws UnreadableNote {
        assertThat(read("dose vinegar 20 mL")).isInstanceOfSatisfying(Event.Dose.class, dose -> {
            assertThat(dose.solution()).isEqualTo("vinegar");
            assertThat(dose.salt()).isEqualTo(Salt.ACETIC_ACID);
            assertThat(dose.volume()).isCloseTo(20e-6, within(1e-12));
        });
        assertThat(read("dose sodium bicarbonate 12 g"))
                .isEqualTo(new Event.Dose("sodium bicarbonate", Salt.SODIUM_BICARBONATE, 0.012, null));
        assertThat(read("changed 40 L")).isInstanceOfSatisfying(Event.WaterChanged.class, change -> {
            assertThat(change.volume()).isCloseTo(0.040, within(1e-12));
            assertThat(change.newWater()).containsKeys(WaterQuantity.SALINITY, WaterQuantity.ALKALINITY);
        });
        assertThat(read("fed 2 g pellets")).isEqualTo(read("fed pellets 2 g"));
        assertThat(read("died 1 cardinalfish"))
                .isEqualTo(new Event.AnimalMoved("cardinalfish", 1, Event.Move.DIED, null));
        assertThat(read("arrived 2 clownfish of 6 cm"))
                .isEqualTo(new Event.AnimalMoved("clownfish", 2, Event.Move.ARRIVED, 0.06));
        assertThat(read("did clean the skimmer for 10 min"))
                .isEqualTo(new Event.WorkDone("clean the skimmer", Duration.ofMinutes(10)));
        assertThat(read("did wait for the post")).isEqualTo(new Event.WorkDone("wait for the post", null));
        assertThat(read("saw white spots on the surgeonfish"))
                .isEqualTo(new Event.Observation("white spots on the surgeonfish", null));
    }

    @Test
    void aLeverIsMovedToWhereItStandsNow() throws UnreadableNote {
        assertThat(read("set bicarbonate dose 45 mL/d")).isInstanceOfSatisfying(Event.LeverMoved.class, moved -> {
            assertThat(moved.lever()).isEqualTo("bicarbonate dose");
            assertThat(moved.after()).isCloseTo(45e-6 / 86400, within(1e-18));
        });
        assertThatExceptionOfType(UnreadableNote.class)
                .isThrownBy(() -> read("set bicarbonate dose 45 mL/d for 3 d"))
                .withMessageContaining("a time in the line");
    }

    @Test
    void healthIsReadByEachOfItsWords() throws UnreadableNote {
        assertThat(read("watched ate nothing"))
                .isEqualTo(new Event.AnimalsChecked(null, Event.Appetite.NONE, null, Set.of()));
        assertThat(read("watched six-line wrasse : Ate Some , 110 breaths a minute, fast breathing"))
                .isEqualTo(new Event.AnimalsChecked(
                        "six-line wrasse", Event.Appetite.SOME, 110, Set.of(Sign.FAST_BREATHING)));
        assertThat(read("treated 10 gal with an invented medicine by the veterinarian: until Friday"))
                .isInstanceOfSatisfying(Event.Treated.class, treated -> {
                    assertThat(treated.what()).isEqualTo("an invented medicine");
                    assertThat(treated.word()).isEqualTo(Event.Word.VETERINARIAN);
                    assertThat(treated.volume()).isCloseTo(0.0378541, within(1e-6));
                    assertThat(treated.said()).isEqualTo("until Friday");
                });
        assertThat(read("fallow velvet ended")).isEqualTo(new Event.Fallow(Parasite.VELVET, Event.Turn.ENDED));
    }

    @Test
    void aMethodIsCheckedAgainstAStandard() throws UnreadableNote {
        assertThat(read("check alkalinity by photometer 8.4 for 8.0 ± 0.1 dKH"))
                .isEqualTo(new Event.MethodChecked(
                        WaterQuantity.ALKALINITY,
                        "photometer",
                        WaterQuantity.ALKALINITY.units().get(0),
                        8.4,
                        8.0,
                        0.1));
    }

    @ParameterizedTest
    @CsvSource({
        "alkalinity 8.1, a number without a unit",
        "alkalinity 160 dKH, cannot be meant",
        "alkalinity 8.1 furlongs, the unit “furlongs”",
        "alkalinity dKH, a number with its unit",
        "alkalinity 8.1 dKH by eye, the unknown method “eye”",
        "alkalinity 8.1 dKH by titration, more than one method",
        "alkalinty 8.1 dKH, Did you mean “alkalinity”?",
        "dose vinager 20 mL, Did you mean “vinegar”?",
        "dose vinegar 20 g, a volume with its unit",
        "changed 40, without a unit",
        "changed 0 L, more than nothing",
        "set bicarbonat dose 45 mL/d, Did you mean “bicarbonate dose”?",
        "watched clownfish: scratching, nothing on how they ate",
        "watched all: ate all; cloudy eye, a sign",
        "'watched ate all, clowdy eye', Did you mean “cloudy eye”?",
        "'watched ate all, 900 breaths', cannot be meant",
        "treated 40 L with copper, on whose word",
        "treated 0 L with copper by label, more than nothing",
        "fallow white sport began, Did you mean “white spot”?",
        "fallow velvet, 'began, broken or ended'"
    })
    void aFaultIsToldWithWhatIsExpected(String text, String told) {
        assertThatExceptionOfType(UnreadableNote.class)
                .isThrownBy(() -> read(text))
                .withMessageContaining(told)
                .withMessageContaining("expected");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void noTextEndsInAnythingButALineOrItsFault(long seed) {
        String[] parts = {
            "alkalinity",
            "dose",
            "vinegar",
            "changed",
            "fed",
            "set",
            "check",
            "by",
            "for",
            "8.1",
            "-3",
            "1e400",
            "dKH",
            "L",
            "±",
            "",
            "\u0000",
            "ß",
            "𝛼",
            "of",
            "2",
            "saw",
            "did",
            "pH",
            "ca",
            ".",
            "9".repeat(50)
        };
        Random random = new Random(seed);
        for (int i = 0; i < 3000; i++) {
            StringBuilder text = new StringBuilder();
            for (int words = random.nextInt(7); words >= 0; words--) {
                text.append(parts[random.nextInt(parts.length)]).append(random.nextInt(8) == 0 ? "" : " ");
            }
            try {
                assertThat(read(text.toString())).isNotNull();
            } catch (UnreadableNote told) {
                assertThat(told.getMessage()).isNotBlank();
            }
        }
    }
}
