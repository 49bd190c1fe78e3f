package wetside.shop;

import java.time.Clock;
import java.util.Optional;

/** Which water machines are fed with. */
public final class MachineWaters {
    private final Shop shop;
    private final Clock clock;

    public MachineWaters(Shop shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /** The newest of a machine. */
    public Optional<KeptWater> of(long machine) {
        return shop.read(h -> h.createQuery("SELECT * FROM water WHERE machine_id = :machine ORDER BY id DESC LIMIT 1")
                .bind("machine", machine)
                .map(Rows.of(KeptWater.class))
                .findFirst());
    }

    /** Keeps a water; the machine's place has its conductivity [S/m] from now on. */
    public void keep(long machine, String sheet, String entered, double conductivity, String who) {
        shop.change(h -> {
            h.createUpdate("INSERT INTO water (machine_id, sheet, entered, who, at)"
                            + " VALUES (:machine, :sheet, :entered, :who, :at)")
                    .bind("machine", machine)
                    .bind("sheet", sheet)
                    .bind("entered", entered)
                    .bind("who", who)
                    .bind("at", clock.instant().toString())
                    .execute();
            return h.createUpdate("UPDATE machine SET water_conductivity = :conductivity, version = version + 1"
                            + " WHERE id = :machine")
                    .bind("conductivity", conductivity)
                    .bind("machine", machine)
                    .execute();
        });
    }
}
