package wetside.bench;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import wetside.shop.Job;

/** Numbers in addresses; what is none is not there. */
final class Numbers {
    private Numbers() {}

    static long of(String text) {
        if (!text.matches("\\d{1,15}")) {
            throw new NotFoundResponse();
        }
        return Long.parseLong(text);
    }

    /** The job an address names. */
    static Job job(Workshop workshop, Context context) {
        return workshop.jobs().byNumber(of(context.pathParam("number"))).orElseThrow(NotFoundResponse::new);
    }
}
