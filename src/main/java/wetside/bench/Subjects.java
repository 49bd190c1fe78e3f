package wetside.bench;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;
import wetside.casework.Installed;
import wetside.kind.Kinds;
import wetside.machine.Installation;
import wetside.machine.MachineFile;
import wetside.shop.RegisteredMachine;

/** Finds the machine a page is about by its address, and keeps what was read. */
final class Subjects {
    /** Addresses of machines, before what is shown of them. */
    static final List<String> ADDRESSES = List.of("/machines/{id}", "/machines/file/{name}");

    private static final int KEPT = 64;

    private final Workshop workshop;
    private final Kept<String, Subject> kept = new Kept<>(KEPT);

    Subjects(Workshop workshop) {
        this.workshop = workshop;
    }

    /** Of an address made of one of {@link #ADDRESSES}. */
    Subject of(Context context) {
        if (context.pathParamMap().containsKey("name")) {
            return file(context.pathParam("name"), context.queryParam("revision"));
        }
        String id = context.pathParam("id");
        if (!id.matches("\\d{1,15}")) {
            throw new NotFoundResponse();
        }
        return workshop.register().machines().stream()
                .filter(m -> m.id() == Long.parseLong(id))
                .findFirst()
                .map(this::registered)
                .orElseThrow(NotFoundResponse::new);
    }

    /** By the address of its page, as {@link Subject#address} gave it. */
    Subject at(String address) {
        for (RegisteredMachine m : workshop.register().machines()) {
            if (address.equals("/machines/" + m.id())) {
                return registered(m);
            }
        }
        for (String name : MachineFile.names()) {
            if (address.equals("/machines/file/" + name)) {
                return file(name, null);
            }
        }
        throw new NotFoundResponse();
    }

    Subject file(String name, String revision) {
        if (!MachineFile.names().contains(name)) {
            throw new NotFoundResponse();
        }
        return kept.of(name + "|" + revision, () -> {
            MachineFile file = MachineFile.bundled(name, Kinds.declarations());
            String making = revision == null ? file.newestRevision() : revision;
            if (!file.revisionNames().contains(making)) {
                throw new NotFoundResponse();
            }
            Installed installed = Installed.of(file.machine(making), Installation.UNKNOWN);
            return new Subject("/machines/file/" + name, name + "|" + making, file, installed, null);
        });
    }

    Subject registered(RegisteredMachine m) {
        String key = String.join(
                "|",
                m.file(),
                m.revision(),
                m.supply(),
                m.fedFrom(),
                "" + m.supplyPressure(),
                "" + m.waterConductivity(),
                "" + m.voltage(),
                "" + m.altitude(),
                "" + m.ambient());
        return kept.of(m.id() + "|" + m.version() + "|" + key, () -> {
            MachineFile file = MachineFile.find(m.file(), Kinds.declarations());
            return new Subject("/machines/" + m.id(), key, file, Models.installed(m), m);
        });
    }
}
