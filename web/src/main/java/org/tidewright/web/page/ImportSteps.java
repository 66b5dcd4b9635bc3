package org.tidewright.web.page;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneId;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.spreadsheet.Mapping;
import org.tidewright.husbandry.spreadsheet.MappingText;
import org.tidewright.husbandry.spreadsheet.Preview;
import org.tidewright.husbandry.spreadsheet.Proposal;
import org.tidewright.husbandry.spreadsheet.Spreadsheet;
import org.tidewright.husbandry.spreadsheet.Taking;
import org.tidewright.husbandry.spreadsheet.UnusableSheet;
import org.tidewright.plan.model.UnitSystem;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;

/** One sheet under the choices a keeper has made: what it is taken for, what it would give, and the taking of it. */
public final class ImportSteps {
    private static final int FIRST_ROWS = 12;
    private static final int MOST_TANKS = 60;

    private final Desk desk;
    private final SystemView view;
    private final String name;
    private final String parcel;
    private final Spreadsheet sheet;
    private final Proposal proposal;
    private final ImportForm form;

    /**
     * Looks a sheet through.
     *
     * @param name of its file
     * @param bytes of its file
     * @param parcel the same as a text that goes with the form
     * @param fields what was chosen; null where nobody has chosen yet
     * @throws UnusableSheet where no guess can be made at all
     */
    public ImportSteps(
            Desk desk,
            SystemView view,
            String name,
            byte[] bytes,
            String parcel,
            @Nullable UnaryOperator<@Nullable String> fields)
            throws UnusableSheet {
        this.desk = desk;
        this.view = view;
        this.name = name;
        this.parcel = parcel;
        sheet = new Spreadsheet(() -> new ByteArrayInputStream(bytes));
        try {
            proposal = sheet.proposal(zone());
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        form = fields == null ? ImportForm.of(proposal) : ImportForm.read(proposal, fields);
    }

    private ZoneId zone() {
        return desk.clock().getZone();
    }

    /** Whether nothing stands against looking at what would be kept. */
    public boolean isSound() {
        return form.isSound();
    }

    /** How many questions are open and choices wrong. */
    public int open() {
        return form.mapping().questions().size() + form.faults().size();
    }

    /** A text that is another for other choices. */
    public String choices() {
        return Integer.toHexString(MappingText.write(form.mapping()).hashCode());
    }

    /** Takes the sheet in, or says why not; nothing is written. */
    public Taking taking() throws UnusableSheet {
        try {
            return sheet.drafts(form.mapping(), view.entry().id(), rows -> {});
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /**
     * The sheet for its page.
     *
     * @param taking what would come of it; null where that is not asked yet
     */
    public ImportPage.Sheet shown(@Nullable Taking taking, UnitSystem units) throws UnusableSheet {
        Mapping mapping = proposal.mapping();
        try {
            ImportPreview preview = null;
            if (taking != null) {
                Preview counted = sheet.preview(form.mapping(), view.entry().id());
                String tally = taking instanceof Taking.Taken taken
                        ? ImportTally.of(desk, view.entry().id(), taken).words()
                        : "";
                preview = ImportPreview.of(counted, taking, tally, desk.clock().instant(), zone(), units);
            }
            List<String> tanks = mapping.rows().column() == 0
                    ? List.of()
                    : sheet.texts(mapping.layout(), mapping.rows().column(), MOST_TANKS);
            return ImportPage.sheet(
                    name,
                    parcel,
                    taking == null ? "" : choices(),
                    proposal,
                    sheet.firstRows(mapping.layout(), FIRST_ROWS),
                    tanks,
                    form,
                    preview,
                    taking);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
