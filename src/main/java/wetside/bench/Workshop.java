package wetside.bench;

import java.time.Clock;
import wetside.department.Ledger;
import wetside.shop.Answered;
import wetside.shop.Closing;
import wetside.shop.Jobs;
import wetside.shop.MachineWaters;
import wetside.shop.Outcomes;
import wetside.shop.Photos;
import wetside.shop.Readings;
import wetside.shop.Register;
import wetside.shop.Shelf;
import wetside.shop.Shop;
import wetside.shop.ShopTrouble;
import wetside.shop.Words;

/** The shop's data as pages ask for it, and what is computed of its machines. */
record Workshop(
        Shop shop,
        Clock clock,
        Jobs jobs,
        Register register,
        Words words,
        Readings readings,
        Answered answered,
        Shelf shelf,
        Photos photos,
        Closing closing,
        MachineWaters waters,
        Outcomes outcomes,
        Ledger ledger,
        Models models) {
    private static final int MANY = 1000;
    /** The first page has the computer to itself [ms]. */
    private static final int FIRST_PAGE = 2000;

    Workshop(Shop shop, Clock clock) {
        this(shop, clock, new Outcomes(shop, clock));
    }

    /** Reads the jobs of models that have many, so that whoever comes first does not wait for it. */
    void readJobs() {
        Thread reader = new Thread(this::readMany, "closed jobs");
        reader.setDaemon(true);
        reader.setPriority(Thread.MIN_PRIORITY);
        reader.start();
    }

    private void readMany() {
        try {
            Thread.sleep(FIRST_PAGE);
            ledger.models().forEach((file, jobs) -> {
                if (jobs > MANY) {
                    ledger.figures(file, clock.instant());
                }
            });
        } catch (ShopTrouble e) {
            // closed meanwhile, or told to whoever asks first
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Workshop(Shop shop, Clock clock, Outcomes outcomes) {
        this(
                shop,
                clock,
                new Jobs(shop, clock),
                new Register(shop),
                new Words(shop),
                new Readings(shop, clock),
                new Answered(shop, clock),
                new Shelf(shop, clock),
                new Photos(shop, clock),
                new Closing(shop, clock),
                new MachineWaters(shop, clock),
                outcomes,
                new Ledger(outcomes),
                new Models());
    }
}
