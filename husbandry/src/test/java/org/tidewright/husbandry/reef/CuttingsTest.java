package org.tidewright.husbandry.reef;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.TestPlans;
import org.tidewright.husbandry.journal.Line;
import org.tidewright.husbandry.note.NoteText;
import org.tidewright.husbandry.note.UnreadableNote;
import org.tidewright.plan.model.Plan;
import org.tidewright.twin.system.Levers;
import org.tidewright.twin.system.SystemTwin;

class CuttingsTest {
    private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-03-01T12:00:00+01:00");

    private final Plan plan = TestPlans.example("harbour-room");
    private final Levers levers = SystemTwin.of(plan).levers();
    private final List<Line> lines = new ArrayList<>();

    private void write(String note, String remark, boolean struck) throws UnreadableNote {
        OffsetDateTime at = NOON.plusDays(lines.size());
        lines.add(
                new Line(UUID.randomUUID(), 1, at, NoteText.read(note, plan, levers), remark, struck, at.toInstant()));
    }

    @Test
    void piecesThatLeftAreToldWithTheirCoralTheirSizeAndWhereTheyWent() throws UnreadableNote {
        write("left 3 frags of the left staghorn of 5 cm", "to the club’s swap table", false);
        write("left 1 upper plate", "", false);
        List<Cuttings.Cutting> cuttings = Cuttings.of(plan, lines);
        assertThat(cuttings).hasSize(2);
        assertThat(cuttings.get(0).of()).isEqualTo("upper plate");
        assertThat(cuttings.get(1))
                .isEqualTo(new Cuttings.Cutting(
                        NOON, "frags of the left staghorn", 3, "left staghorn", 0.05, "to the club’s swap table"));
    }

    @Test
    void piecesOfCoralsThePlanDoesNotNameCountAndFishDoNot() throws UnreadableNote {
        write("left 2 mushroom frags", "", false);
        write("left 1 goby", "", false);
        write("died 1 staghorn frag", "", false);
        write("left 9 green frags", "", true);
        assertThat(Cuttings.of(plan, lines))
                .singleElement()
                .satisfies(cutting -> assertThat(cutting.of()).isNull());
    }
}
