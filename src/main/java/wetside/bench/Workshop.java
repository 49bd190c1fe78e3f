package wetside.bench;

import java.time.Clock;
import wetside.shop.Jobs;
import wetside.shop.Register;
import wetside.shop.Shop;
import wetside.shop.Words;

/** The shop's data as pages ask for it. */
record Workshop(Shop shop, Clock clock, Jobs jobs, Register register, Words words) {
    Workshop(Shop shop, Clock clock) {
        this(shop, clock, new Jobs(shop, clock), new Register(shop), new Words(shop));
    }
}
