package org.tidewright.husbandry.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tidewright.husbandry.spreadsheet.Sheets.SYSTEM;
import static org.tidewright.husbandry.spreadsheet.Sheets.taken;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.tidewright.husbandry.exchange.MemoryRecords;
import org.tidewright.husbandry.journal.Draft;
import org.tidewright.testkit.SeededCases;

/** What must hold for every log, however it is saved. */
class SheetPropertyTest {
    @Test
    void howASheetIsSavedChangesNothing() {
        SeededCases.check(150, draw -> {
            RandomSheet sheet = RandomSheet.drawn(draw);
            List<Draft> first = drafts(sheet, RandomSheet.Style.drawn(draw));
            assertThat(first).isNotEmpty();
            assertThat(drafts(sheet, RandomSheet.Style.drawn(draw))).isEqualTo(first);
        });
    }

    @Test
    void anotherOrderOfTheRowsChangesNothingButTheOrder() {
        SeededCases.check(150, draw -> {
            RandomSheet sheet = RandomSheet.drawn(draw);
            RandomSheet.Style style = RandomSheet.Style.drawn(draw);
            assertThat(drafts(sheet.shuffled(draw.anyLong()), style))
                    .containsExactlyInAnyOrderElementsOf(drafts(sheet, style));
        });
    }

    @Test
    void takenInTwiceItIsKeptOnceAndOneThatHasGrownAddsOnlyWhatIsNew() {
        SeededCases.check(150, draw -> {
            RandomSheet sheet = RandomSheet.drawn(draw);
            List<Draft> all = drafts(sheet, RandomSheet.Style.drawn(draw));
            List<Draft> begun = drafts(sheet.begun(draw.whole(25, sheet.size() - 1)), RandomSheet.Style.drawn(draw));
            MemoryRecords records = new MemoryRecords();
            assertThat(records.writeAll(SYSTEM, begun, kept -> {})).isEqualTo(begun.size());
            assertThat(records.writeAll(SYSTEM, all, kept -> {})).isEqualTo(all.size() - begun.size());
            assertThat(records.writeAll(SYSTEM, drafts(sheet, RandomSheet.Style.drawn(draw)), kept -> {}))
                    .isZero();
        });
    }

    @Test
    void anotherSystemGetsDraftsOfItsOwn() throws Exception {
        String text = "date,KH\n2023-06-05,8.1\n";
        Spreadsheet sheet = Sheets.saved(text);
        Mapping mapping = sheet.proposal(RandomSheet.ZONE).mapping();
        Draft here = taken(sheet.drafts(mapping, "here", rows -> {})).drafts().get(0);
        Draft there = taken(sheet.drafts(mapping, "there", rows -> {})).drafts().get(0);
        assertThat(here.event()).isEqualTo(there.event());
        assertThat(here.id()).isNotEqualTo(there.id());
    }

    /** What is detected is checked on the way: the signs of the style, and that only its words of doubt are left. */
    private static List<Draft> drafts(RandomSheet sheet, RandomSheet.Style style) throws Exception {
        Spreadsheet saved = sheet.saved(style);
        Mapping mapping = saved.proposal(RandomSheet.ZONE).mapping();
        assertThat(mapping.layout()).isEqualTo(new Layout(mapping.layout().charset(), style.separator(), 1, 2));
        assertThat(mapping.decimal()).isIn(style.decimal(), null);
        boolean named = style.dates().contains("MMM");
        assertThat(mapping.times().order()).isIn(named ? DateOrder.YMD : style.order(), null);
        Mapping answered = mapping.with(style.decimal()).with(style.order());
        assertThat(answered.questions()).isEmpty();
        return taken(saved.drafts(answered, SYSTEM, rows -> {})).drafts();
    }
}
