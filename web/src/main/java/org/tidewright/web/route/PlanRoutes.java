package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpStatus;
import java.io.StringWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.tidewright.plan.fault.Fault;
import org.tidewright.plan.text.PlanReading;
import org.tidewright.plan.text.PlanText;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SaveResult;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.Pages;
import org.tidewright.web.page.Reader;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** The plan as text: read, checked while it is typed, saved. */
public final class PlanRoutes {
    private static final Logger LOG = LoggerFactory.getLogger(PlanRoutes.class);
    private static final JsonFactory JSON = new JsonFactory();

    private final Desk desk;
    private final Pages pages;
    private final Assets assets;
    private final FormToken token;

    public PlanRoutes(Desk desk, Pages pages, Assets assets, FormToken token) {
        this.desk = desk;
        this.pages = pages;
        this.assets = assets;
        this.token = token;
    }

    public void register(RoutesConfig routes) {
        routes.get("/systems/{id}/plan", this::show);
        routes.get("/systems/{id}/plan.yaml", this::file);
        routes.post("/systems/{id}/plan", this::save);
        routes.post("/systems/{id}/plan/check", this::check);
    }

    private void show(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        Answers.html(ctx, pages.plan(view, token.of(ctx), saved(ctx), Readers.of(ctx, assets)));
    }

    private static @Nullable Integer saved(Context ctx) {
        String saved = ctx.queryParam("saved");
        return saved != null && saved.matches("\\d{1,9}") ? Integer.valueOf(saved) : null;
    }

    private void file(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        ctx.header(
                "Content-Disposition", "attachment; filename=\"" + view.entry().id() + ".yaml\"");
        ctx.contentType("application/yaml; charset=utf-8");
        ctx.result(view.text());
    }

    private void save(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        FormBody form = FormBody.read(ctx);
        Reader reader = Readers.of(ctx, assets);
        String text = form.text("text");
        int basedOn = form.number("based_on");
        String id = view.entry().id();
        if (!token.isGood(form.field("token"), ctx)) {
            ctx.status(HttpStatus.FORBIDDEN);
            Answers.html(ctx, pages.planStale(view, token.of(ctx), basedOn, text, reader));
            return;
        }
        SaveResult result;
        try {
            result = desk.save(id, basedOn, text);
        } catch (RuntimeException unwritable) {
            LOG.error("A revision of {} could not be kept", id, unwritable);
            ctx.status(HttpStatus.INTERNAL_SERVER_ERROR);
            Answers.html(ctx, pages.planUnkept(view, token.of(ctx), basedOn, text, reader));
            return;
        }
        if (result instanceof SaveResult.Saved saved) {
            ctx.redirect("/systems/" + id + "/plan?saved=" + saved.revision(), HttpStatus.SEE_OTHER);
        } else if (result instanceof SaveResult.Faulty faulty) {
            ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
            Answers.html(ctx, pages.planFaulty(view, token.of(ctx), basedOn, text, faulty.faults(), reader));
        } else if (result instanceof SaveResult.Conflict conflict) {
            ctx.status(HttpStatus.CONFLICT);
            Answers.html(
                    ctx,
                    pages.planConflict(
                            view, token.of(ctx), basedOn, text, conflict.revision(), conflict.text(), reader));
        }
    }

    /** The faults of a text, while it is typed. */
    private void check(Context ctx) {
        SystemRoutes.system(desk, ctx);
        FormBody form = FormBody.read(ctx);
        if (!token.isGood(form.field("token"), ctx)) {
            throw new ForbiddenResponse("This page was opened before the program was last started: load it again.");
        }
        PlanReading reading = PlanText.read(form.text("text"));
        ctx.contentType("application/json; charset=utf-8");
        ctx.result(json(reading instanceof PlanReading.Faulty faulty ? faulty.faults() : List.of()));
    }

    private static String json(List<Fault> faults) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartObject();
            json.writeArrayPropertyStart("faults");
            for (Fault fault : faults) {
                json.writeStartObject();
                json.writeNumberProperty("line", fault.line());
                json.writeNumberProperty("column", fault.column());
                json.writeStringProperty("where", fault.where());
                json.writeStringProperty("found", fault.found());
                json.writeStringProperty("expected", fault.expected());
                json.writeStringProperty("mend", fault.mend());
                json.writeStringProperty("sentence", fault.sentence());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.toString();
    }
}
