package wetside.bench;

import java.time.Clock;
import wetside.department.Ledger;
import wetside.shop.Closing;
import wetside.shop.Jobs;
import wetside.shop.MachineWaters;
import wetside.shop.Outcomes;
import wetside.shop.Photos;
import wetside.shop.Readings;
import wetside.shop.Register;
import wetside.shop.Shelf;
import wetside.shop.Shop;
import wetside.shop.Words;

/** The shop's data as pages ask for it, and what is computed of its machines. */
record Workshop(
        Shop shop,
        Clock clock,
        Jobs jobs,
        Register register,
        Words words,
        Readings readings,
        Shelf shelf,
        Photos photos,
        Closing closing,
        MachineWaters waters,
        Outcomes outcomes,
        Ledger ledger,
        Models models) {
    Workshop(Shop shop, Clock clock) {
        this(shop, clock, new Outcomes(shop, clock));
    }

    private Workshop(Shop shop, Clock clock, Outcomes outcomes) {
        this(
                shop,
                clock,
                new Jobs(shop, clock),
                new Register(shop),
                new Words(shop),
                new Readings(shop, clock),
                new Shelf(shop, clock),
                new Photos(shop, clock),
                new Closing(shop, clock),
                new MachineWaters(shop, clock),
                outcomes,
                new Ledger(outcomes),
                new Models());
    }
}
