package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.net.URI;
import java.util.Set;

/**
 * What every request passes. The server has no login because only this computer reaches it; so other sites that this
 * computer's browser has open must not reach it either: not by a name of their own that points here (Host), not by forms
 * and scripts of theirs (Origin).
 */
final class Guard implements Routes {
    private static final Set<String> HERE = Set.of("127.0.0.1", "localhost", "[::1]");
    private static final Set<String> HARMLESS = Set.of("GET", "HEAD");
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " font-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    @Override
    public void routes(RoutesConfig routes) {
        routes.before(Guard::look);
    }

    private static void look(Context context) {
        context.header("Content-Security-Policy", POLICY);
        context.header("X-Content-Type-Options", "nosniff");
        context.header("Referrer-Policy", "same-origin");
        context.header("Cross-Origin-Opener-Policy", "same-origin");
        context.header("Cache-Control", "no-store");
        if (!isHere(context.header("Host"))) {
            throw new ForbiddenResponse("this bench answers only to this computer");
        }
        if (!HARMLESS.contains(context.method().name()) && !sameOrigin(context)) {
            throw new ForbiddenResponse("that came from another site and was not done");
        }
    }

    private static boolean isHere(String host) {
        return host != null && HERE.contains(host.replaceFirst(":\\d+$", ""));
    }

    /** Browsers say where a form was; what says nothing is no browser and has no cookies to lend. */
    private static boolean sameOrigin(Context context) {
        String site = context.header("Sec-Fetch-Site");
        if (site != null && !site.equals("same-origin") && !site.equals("none")) {
            return false;
        }
        String origin = context.header("Origin");
        return origin == null
                || URI.create(origin).getAuthority() != null
                        && URI.create(origin).getAuthority().equals(context.header("Host"));
    }
}
