package org.tidewright.web.route;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tidewright.husbandry.journal.Photos;
import org.tidewright.husbandry.journal.Photos.Photo;
import org.tidewright.husbandry.journal.PictureKind;
import org.tidewright.web.desk.Desk;
import org.tidewright.web.desk.SystemView;
import org.tidewright.web.page.LogForm;

/** The pictures of a system's log, each at an address of its own that never shows anything else. */
public final class PhotoRoutes {
    /** A picture twice as large as may be kept is still read, so that what was typed beside it is not lost. */
    static final int LARGEST_BODY = 2 * Photos.LARGEST_BYTES;

    static final String TOO_LARGE =
            "A photo may have up to 20 MB. Go back, where your line still stands, and choose a" + " smaller one.";

    private final Desk desk;

    public PhotoRoutes(Desk desk) {
        this.desk = desk;
    }

    public void register(RoutesConfig routes) {
        routes.get("/systems/{id}/photos/{name}", this::serve);
    }

    private void serve(Context ctx) {
        SystemView view = SystemRoutes.system(desk, ctx);
        Photo photo = desk.photos()
                .find(view.entry().id(), ctx.pathParam("name"))
                .orElseThrow(() -> new NotFoundResponse("No photo goes by that address."));
        ctx.contentType(photo.mediaType());
        // Named by the hash of its bytes; private, since a log is nobody else's.
        ctx.header("Cache-Control", "private, max-age=31536000, immutable");
        ctx.header("Content-Disposition", "inline");
        ctx.result(photo.bytes());
    }

    /**
     * The line with the picture that came with it, which is kept at once: it still stands there where the line is refused
     * for its words.
     */
    static LogForm attached(Desk desk, SystemView view, FormBody body, LogForm form) throws LogForm.Refused {
        if (body.field("photo_off") != null) {
            return form.with("");
        }
        FormBody.@Nullable File file = body.file("photo_file");
        if (file != null) {
            return form.with(kept(desk, view, file, form));
        }
        if (!form.photo().isEmpty()
                && desk.photos().find(view.entry().id(), form.photo()).isEmpty()) {
            throw new LogForm.Refused(form.with("").refused("The photo is not here any more: choose it once more."));
        }
        return form;
    }

    private static String kept(Desk desk, SystemView view, FormBody.File file, LogForm form) throws LogForm.Refused {
        Optional<PictureKind> kind = PictureKind.of(file.bytes());
        if (file.bytes().length > Photos.LARGEST_BYTES) {
            throw new LogForm.Refused(form.refused("The photo “" + file.name() + "” has "
                    + (file.bytes().length + 999_999) / 1_000_000
                    + " MB; expected up to 20 MB. Make it smaller, or send the line without it."));
        } else if (kind.isEmpty()) {
            throw new LogForm.Refused(form.refused("“" + file.name()
                    + "” is no JPEG, PNG or WebP by its first bytes; expected a photo in one of these."));
        }
        return desk.photos().keep(view.entry().id(), new Photo(kind.get().mediaType(), file.bytes()));
    }
}
