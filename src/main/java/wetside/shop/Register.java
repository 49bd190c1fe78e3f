package wetside.shop;

import java.util.List;
import java.util.Optional;

/** Owners and their machines. */
public final class Register {
    private final Shop shop;

    public Register(Shop shop) {
        this.shop = shop;
    }

    /** Enters an owner and says its id. */
    public long owner(String name, String phone, String email, String address) {
        return shop.change(h -> {
            long id = h.createUpdate("INSERT INTO owner (name, phone, email, address)"
                            + " VALUES (:name, :phone, :email, :address)")
                    .bind("name", name)
                    .bind("phone", phone)
                    .bind("email", email)
                    .bind("address", address)
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            Words.write(h, "owner", id, name, phone + " " + email + " " + address);
            return id;
        });
    }

    /** Enters a machine (its id and version are not looked at) and says its id. */
    public long machine(RegisteredMachine m) {
        return shop.change(h -> {
            long id = h.createUpdate("INSERT INTO machine (serial, file, revision, supply, owner_id, fed_from,"
                            + " supply_pressure, water_conductivity, voltage, altitude, ambient, bought, note)"
                            + " VALUES (:serial, :file, :revision, :supply, :ownerId, :fedFrom, :supplyPressure,"
                            + " :waterConductivity, :voltage, :altitude, :ambient, :bought, :note)")
                    .bindMethods(m)
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            Words.write(h, "machine", id, m.serial(), m.file().replace('-', ' ') + " " + m.note());
            return id;
        });
    }

    public Optional<RegisteredMachine> bySerial(String serial) {
        return shop.read(h -> h.createQuery("SELECT * FROM machine WHERE serial = :serial")
                .bind("serial", serial)
                .map(Rows.of(RegisteredMachine.class))
                .findOne());
    }

    public RegisteredMachine machine(long id) {
        return shop.read(h -> h.createQuery("SELECT * FROM machine WHERE id = :id")
                .bind("id", id)
                .map(Rows.of(RegisteredMachine.class))
                .one());
    }

    public Owner owner(long id) {
        return shop.read(h -> h.createQuery("SELECT * FROM owner WHERE id = :id")
                .bind("id", id)
                .map(Rows.of(Owner.class))
                .one());
    }

    /** By serial. */
    public List<RegisteredMachine> machines() {
        return shop.read(h -> h.createQuery("SELECT * FROM machine ORDER BY serial")
                .map(Rows.of(RegisteredMachine.class))
                .list());
    }

    /** Machines of a model nobody has said of when they were bought, by serial. */
    public List<RegisteredMachine> undated(String file, int most) {
        return shop.read(h -> h.createQuery(
                        "SELECT * FROM machine WHERE file = :file AND bought = '' ORDER BY serial LIMIT :most")
                .bind("file", file)
                .bind("most", most)
                .map(Rows.of(RegisteredMachine.class))
                .list());
    }

    /** Says when a machine was bought: "2021", "2021-05" or "2021-05-17". */
    public void bought(long id, String date) {
        shop.change(h -> h.createUpdate("UPDATE machine SET bought = :date, version = version + 1 WHERE id = :id")
                .bind("date", date)
                .bind("id", id)
                .execute());
    }

    /** Machines with jobs, the one that was touched last first. */
    public List<RegisteredMachine> lately(int most) {
        return shop.read(
                h -> h.createQuery("SELECT m.* FROM machine m JOIN (SELECT machine_id, MAX(moved) AS moved FROM"
                                + " (SELECT machine_id, moved FROM job ORDER BY number DESC LIMIT 1000) GROUP BY machine_id) j"
                                + " ON j.machine_id = m.id ORDER BY j.moved DESC LIMIT :most")
                        .bind("most", most)
                        .map(Rows.of(RegisteredMachine.class))
                        .list());
    }

    /** Machines of an owner, by serial. */
    public List<RegisteredMachine> ofOwner(long owner) {
        return shop.read(h -> h.createQuery("SELECT * FROM machine WHERE owner_id = :owner ORDER BY serial LIMIT 20")
                .bind("owner", owner)
                .map(Rows.of(RegisteredMachine.class))
                .list());
    }

    public Optional<Owner> ownerCalled(String name) {
        return shop.read(h -> h.createQuery("SELECT * FROM owner WHERE name = :name ORDER BY id LIMIT 1")
                .bind("name", name)
                .map(Rows.of(Owner.class))
                .findFirst());
    }
}
