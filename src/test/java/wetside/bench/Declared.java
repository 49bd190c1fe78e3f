package wetside.bench;

import io.javalin.Javalin;
import io.javalin.http.HandlerType;
import java.util.List;

/** The addresses a bench answers. */
public final class Declared {
    private Declared() {}

    /** Those that are looked at, as its rooms declared them: "/jobs/{number}". */
    public static List<String> looks(Bench bench) {
        try {
            var server = Bench.class.getDeclaredField("server");
            server.setAccessible(true);
            return ((Javalin) server.get(bench))
                    .unsafe.internalRouter.allHttpHandlers().stream()
                            .filter(e -> e.endpoint.method.equals(HandlerType.GET))
                            .map(e -> e.endpoint.path)
                            .distinct()
                            .toList();
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
