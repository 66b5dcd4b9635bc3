package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Instant;
import java.time.YearMonth;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tidewright.husbandry.spreadsheet.Taking;
import org.tidewright.husbandry.spreadsheet.UnusableSheet;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.ImportPage;
import org.tidewright.web.page.ImportSteps;
import org.tidewright.web.page.ImportTally;
import org.tidewright.web.page.Pages;
import org.tidewright.web.page.Reader;

/** A keeper's spreadsheet taken into the log: chosen, looked at, previewed, kept. Its bytes travel in the page. */
public final class ImportRoutes {
    private static final Logger LOG = LoggerFactory.getLogger(ImportRoutes.class);

    /** Room for a file that does not shrink at all, as text, and the choices. */
    private static final int LARGEST_BODY = 12_000_000;

    private static final String TOO_LARGE = "A spreadsheet may have up to 8 MB here, which are five columns each five"
            + " minutes for more than a year. Split it by years, or take it in with the command “tidewright import”,"
            + " which reads files of any length.";
    private static final String START =
            "Choose the spreadsheet you kept your log in, saved as CSV. It is shown what each"
                    + " column is taken for; nothing is kept before you say so, and then all of it or nothing.";
    private static final String STALE =
            "This page was opened before the program was last started, so nothing was done.";
    private static final String UNKEPT = "Nothing was kept: the program could not write; its log says why. Your choices"
            + " still stand here: keep it again once there is room.";
    private static final String CHANGED =
            "Look once more, then keep it: a choice was changed since this was shown. Nothing" + " is kept yet.";

    private final Desk desk;
    private final Pages pages;
    private final Assets assets;
    private final FormToken token;

    public ImportRoutes(Desk desk, Pages pages, Assets assets, FormToken token) {
        this.desk = desk;
        this.pages = pages;
        this.assets = assets;
        this.token = token;
    }

    /** Before the routes of the log, one of which takes whatever follows it for a line. */
    public void register(RoutesConfig routes) {
        routes.get("/systems/{id}/log/import", this::start);
        routes.post("/systems/{id}/log/import", this::step);
    }

    private void start(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        String lines = number(ctx, "lines");
        String there = number(ctx, "there");
        String values = number(ctx, "values");
        if (lines == null || there == null || values == null) {
            show(ctx, view, START, "", null, null);
            return;
        }
        String month = ctx.queryParam("month");
        boolean known = month != null && month.matches("\\d{4}-\\d{2}");
        show(ctx, view, ImportTally.kept(lines, there, values), "", known ? "?month=" + month : "", null);
    }

    private static @Nullable String number(Context ctx, String name) {
        String text = ctx.queryParam(name);
        return text != null && text.matches("\\d{1,9}") ? text : null;
    }

    private void step(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        FormBody body = FormBody.read(ctx, LARGEST_BODY, TOO_LARGE);
        FormBody.File file = body.file("sheet");
        String parcel = body.field("parcel");
        if (file == null && (parcel == null || parcel.isEmpty())) {
            refused(
                    ctx,
                    view,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    "No file was chosen; expected a spreadsheet saved as CSV.");
            return;
        } else if (file != null && file.bytes().length > SheetParcel.LARGEST) {
            refused(ctx, view, HttpStatus.CONTENT_TOO_LARGE, told(file.name()) + TOO_LARGE);
            return;
        }
        boolean good = token.isGood(body.field("token"), ctx);
        if (file != null && !good) {
            refused(ctx, view, HttpStatus.FORBIDDEN, STALE + " Choose the file once more.");
            return;
        }
        byte[] bytes = file != null ? file.bytes() : SheetParcel.open(String.valueOf(parcel));
        String name = file != null
                ? file.name()
                : FormBody.File.of(Objects.requireNonNullElse(body.field("name"), ""), new byte[0])
                        .name();
        try {
            ImportSteps steps = new ImportSteps(
                    desk,
                    view,
                    name,
                    bytes,
                    file != null ? SheetParcel.pack(bytes) : String.valueOf(parcel),
                    file != null ? null : body::field);
            if (!good) {
                ctx.status(HttpStatus.FORBIDDEN);
                show(ctx, view, STALE + " Your choices still stand here: send them once more.", steps, null);
            } else if (file != null) {
                show(ctx, view, looked(steps), steps, null);
            } else {
                chosen(ctx, view, body, steps);
            }
        } catch (UnusableSheet unusable) {
            refused(
                    ctx,
                    view,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    told(name) + "Nothing can be taken from it: " + unusable.getMessage() + ".");
        }
    }

    private static String told(String name) {
        return name.isEmpty() ? "" : "“" + name + "”. ";
    }

    private static String looked(ImportSteps steps) {
        return steps.isSound()
                ? "Look at what each column was taken for, and change what is wrong. Nothing is kept yet."
                : "Answer what is asked below, and look at what each column was taken for. Nothing is kept yet.";
    }

    private void chosen(Context ctx, SystemView view, FormBody body, ImportSteps steps) throws UnusableSheet {
        if (!steps.isSound()) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            String open = steps.open() == 1 ? "One thing is" : steps.open() + " things are";
            show(ctx, view, open + " still to be answered or mended below. Nothing is kept yet.", steps, null);
            return;
        }
        Taking taking = steps.taking();
        boolean keep = "keep".equals(body.field("act"));
        if (taking instanceof Taking.Refused refused) {
            ctx.status(keep || !refused.questions().isEmpty() ? HttpStatus.UNPROCESSABLE_CONTENT : HttpStatus.OK);
            show(ctx, view, refused(refused), steps, taking);
        } else if (!keep) {
            show(ctx, view, "This is what would be kept. Look at it, then keep it.", steps, taking);
        } else if (!steps.choices().equals(body.field("shown"))) {
            ctx.status(HttpStatus.CONFLICT);
            show(ctx, view, CHANGED, steps, taking);
        } else {
            keep(ctx, view, steps, (Taking.Taken) taking);
        }
    }

    private static String refused(Taking.Refused refused) {
        if (!refused.questions().isEmpty()) {
            return "Answer what is asked below. Nothing is kept yet.";
        }
        boolean one = refused.badCount() == 1;
        return (one
                        ? "One cell or row cannot be taken as it stands."
                        : refused.badCount() + " cells or rows cannot be taken as they stand.")
                + " Mend your spreadsheet and choose it again, or say below that such cells are left out. Nothing is kept"
                + " yet.";
    }

    private void keep(Context ctx, SystemView view, ImportSteps steps, Taking.Taken taken) throws UnusableSheet {
        String system = view.entry().id();
        try {
            ImportTally tally = ImportTally.of(desk, system, taken);
            int lines = desk.bothLogs().writeAll(system, taken.drafts(), taken.values(), done -> {});
            ctx.redirect(
                    "/systems/" + system + "/log/import?lines=" + lines + "&there="
                            + (taken.drafts().size() - lines) + "&values=" + (tally.newValues() + tally.valuesChanged())
                            + last(taken).map(month -> "&month=" + month).orElse(""),
                    HttpStatus.SEE_OTHER);
        } catch (RuntimeException unwritable) {
            LOG.error("A spreadsheet could not be kept in the log of {}", system, unwritable);
            ctx.status(HttpStatus.INTERNAL_SERVER_ERROR);
            show(ctx, view, UNKEPT, steps, taken);
        }
    }

    /** The month of the newest line, where the log shows it. */
    private Optional<YearMonth> last(Taking.Taken taken) {
        return taken.drafts().stream()
                .map(draft -> draft.at().toInstant())
                .max(Instant::compareTo)
                .map(at -> YearMonth.from(at.atZone(desk.clock().getZone())));
    }

    private void refused(Context ctx, SystemView view, HttpStatus status, String fault) {
        ctx.status(status);
        show(ctx, view, START, fault, null, null);
    }

    private void show(Context ctx, SystemView view, String lead, ImportSteps steps, @Nullable Taking taking)
            throws UnusableSheet {
        Reader reader = Readers.of(ctx, assets);
        show(ctx, view, lead, "", null, steps.shown(taking, reader.units(view.entry())));
    }

    private void show(
            Context ctx,
            SystemView view,
            String lead,
            String fault,
            @Nullable String done,
            ImportPage.@Nullable Sheet sheet) {
        String log = "/systems/" + view.entry().id() + "/log";
        ImportPage page = new ImportPage(
                log + "/import", log, token.of(ctx), lead, fault, done == null ? null : log + done, sheet);
        Answers.html(ctx, pages.imported(view, page, Readers.of(ctx, assets)));
    }
}
