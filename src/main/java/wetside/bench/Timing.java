package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Locale;

/**
 * Says with every answer how long it took here, in the header browsers show beside their own times (W3C, Server Timing); what
 * a page owes to the bench and what to the computer around it can so be told apart.
 */
final class Timing implements Routes {
    static final String HEADER = "Server-Timing";
    private static final String BEGAN = "began";

    @Override
    public void routes(RoutesConfig routes) {
        routes.before(context -> context.attribute(BEGAN, System.nanoTime()));
        routes.after(Timing::tell);
    }

    private static void tell(Context context) {
        long took = System.nanoTime() - context.<Long>attribute(BEGAN);
        context.header(HEADER, String.format(Locale.ROOT, "bench;dur=%.1f", took / 1e6));
    }
}
