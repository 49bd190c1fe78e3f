package wetside.bench;

import io.javalin.config.RoutesConfig;

/** Some addresses and what answers there. */
interface Routes {
    void routes(RoutesConfig routes);
}
