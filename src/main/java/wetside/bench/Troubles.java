package wetside.bench;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wetside.machine.BadFile;
import wetside.run.NoSuchThing;
import wetside.shop.Conflict;
import wetside.shop.ShopTrouble;

/** What went wrong, as a page: what, and what to do; never a trace. */
public final class Troubles implements Routes {
    private static final Logger LOG = LoggerFactory.getLogger(Troubles.class);

    private final Pages pages;

    Troubles(Pages pages) {
        this.pages = pages;
    }

    /** @param back where to go on from */
    public record Trouble(String what, String todo, String back) {}

    @Override
    public void routes(RoutesConfig routes) {
        routes.exception(Conflict.class, (e, c) -> tell(c, 409, e.getMessage(), "Nothing was saved."));
        routes.exception(ShopTrouble.class, (e, c) -> {
            LOG.error(e.getMessage(), e);
            tell(c, 503, e.getMessage(), "What you typed is still there when you go back.");
        });
        routes.exception(BadFile.class, (e, c) -> tell(c, 422, e.getMessage(), "Mend the file, then try again."));
        routes.exception(NoSuchThing.class, (e, c) -> tell(c, 404, e.getMessage(), ""));
        routes.exception(BadForm.class, (e, c) -> tell(c, 422, e.getMessage(), "Go back, set it right, save again."));
        routes.exception(
                HttpResponseException.class,
                (e, c) -> tell(c, e.getStatus(), words(e.getStatus(), e.getMessage()), ""));
        routes.exception(Exception.class, (e, c) -> {
            if (tooLarge(e)) {
                tell(c, 413, words(413, ""), "Nothing was saved. Go back and send a smaller one.");
                return;
            }
            LOG.error("{} {}", c.method(), c.path(), e);
            tell(c, 500, "A fault of ours: this page could not be made.", "Nothing was lost. The log says more.");
        });
        routes.error(404, c -> {
            if (c.result() == null || c.result().isEmpty() || c.result().startsWith("Endpoint")) {
                tell(c, 404, "There is no such page.", "");
            }
        });
    }

    /** The server stops reading a form beyond its limit, and says so only in the deepest cause. */
    private static boolean tooLarge(Throwable e) {
        for (Throwable t = e; t != null; t = t.getCause()) {
            if (String.valueOf(t.getMessage()).startsWith("max length exceeded")) {
                return true;
            }
        }
        return false;
    }

    private static String words(int status, String said) {
        return switch (status) {
            case 404 -> "There is no such page.";
            case 413 -> "That is too large: photos may have 10 MB.";
            default -> said;
        };
    }

    private void tell(Context context, int status, String what, String todo) {
        context.status(status);
        pages.show(context, "trouble", "Not done", "", new Trouble(what, todo, "/jobs"));
    }
}
