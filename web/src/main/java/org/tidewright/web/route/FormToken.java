package org.tidewright.web.route;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.jspecify.annotations.Nullable;

/**
 * Proof that a form was served by this server to this browser: a keyed hash of a random cookie that other sites can
 * neither read nor send.
 */
public final class FormToken {
    private static final String COOKIE = "tidewright_visit";
    private static final Base64.Encoder TEXT = Base64.getUrlEncoder().withoutPadding();

    private final SecureRandom random = new SecureRandom();
    private final byte[] key = new byte[32];

    public FormToken() {
        random.nextBytes(key);
    }

    /** The token for a form in this answer; sets the cookie where the browser has none. */
    public String of(Context ctx) {
        String visit = ctx.cookie(COOKIE);
        if (visit == null || !visit.matches("[A-Za-z0-9_-]{22}")) {
            byte[] bytes = new byte[16];
            random.nextBytes(bytes);
            visit = TEXT.encodeToString(bytes);
            Cookie cookie = new Cookie(COOKIE, visit);
            cookie.setPath("/");
            cookie.setHttpOnly(true);
            cookie.setSameSite(SameSite.STRICT);
            ctx.cookie(cookie);
        }
        return TEXT.encodeToString(hash(visit));
    }

    /** Whether a token belongs to the browser that sent it. */
    public boolean isGood(@Nullable String token, Context ctx) {
        String visit = ctx.cookie(COOKIE);
        return token != null
                && visit != null
                && MessageDigest.isEqual(
                        TEXT.encodeToString(hash(visit)).getBytes(StandardCharsets.US_ASCII),
                        token.getBytes(StandardCharsets.UTF_8));
    }

    private byte[] hash(String visit) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            return mac.doFinal(visit.getBytes(StandardCharsets.UTF_8));
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException("every Java has HmacSHA256", missing);
        }
    }
}
