package wetside.bench;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wetside.casework.Answers;
import wetside.casework.Asking;
import wetside.casework.Casework;
import wetside.diagnosis.Observation;
import wetside.diagnosis.Observations;
import wetside.diagnosis.Who;
import wetside.shop.Answered;
import wetside.shop.Job;
import wetside.shop.RegisteredMachine;

/**
 * What faults are found on, and what is known so far: a job, or a machine nobody has brought.
 *
 * @param address   of the page
 * @param fields    what every link and form of the page carries on; a job needs nothing, its answers are in the shop
 * @param machine   as registered, or as it would be
 * @param complaint in the owner's words, "" for none
 * @param known     in the order it was said
 * @param earlier   what it read when it left here well
 * @param narrowed  whether that is taken for this machine's normal
 * @param job       null for none
 * @param rates     how often causes are in this shop
 * @param place     where it stands, to be filled in; null for a job
 */
public record FaultCase(
        String address,
        List<Field> fields,
        RegisteredMachine machine,
        Plate plate,
        String complaint,
        List<Known> known,
        List<Earlier> earlier,
        boolean narrowed,
        Job job,
        ShopRates rates,
        FaultView.Place place) {
    /** A name and value of a form or a link. */
    public record Field(String name, String value) {}

    /**
     * An answer in words.
     *
     * @param calledAbout it is the sign there is a job for
     */
    public record Known(String asked, String said, boolean calledAbout) {
        Known(String asked, String said) {
            this(asked, said, false);
        }
    }

    /** An earlier reading in words, and when it was taken. */
    public record Earlier(String asked, String said, Instant at) {}

    static final String STILL_BAD = Answered.STILL_BAD;

    /** Stands for the case while the bench runs. */
    String id() {
        return job == null ? ground().key() : "job " + job.id();
    }

    public String link(String... more) {
        List<Field> all = new ArrayList<>(fields);
        for (int i = 0; i < more.length; i += 2) {
            all.add(new Field(more[i], more[i + 1]));
        }
        return linked(address, all);
    }

    static String linked(String address, List<Field> fields) {
        StringBuilder link = new StringBuilder(address);
        char next = '?';
        for (Field f : fields) {
            link.append(next).append(f.name()).append('=').append(URLEncoder.encode(f.value(), StandardCharsets.UTF_8));
            next = '&';
        }
        return link.toString();
    }

    /** The same as if this shop had closed nothing. */
    FaultCase byShippedRates() {
        ShopRates shipped = new ShopRates(rates.practice(), rates.complaint(), false, rates.now());
        return new FaultCase(address, fields, machine, plate, complaint, known, earlier, narrowed, job, shipped, place);
    }

    /** What is known, as the inference takes it; what this machine cannot be asked (any more) says nothing. */
    Observations observations(Casework casework) {
        return Observations.of(
                known.stream().flatMap(k -> observation(casework, k).stream()).toList());
    }

    /** None where this machine cannot be asked, or the procedure has changed since: listed, but it says nothing. */
    static Optional<Observation> observation(Casework casework, Known k) {
        Asking asking = casework.asking(k.asked()).orElse(null);
        if (asking == null) {
            return k.said().equals(STILL_BAD) ? Optional.of(Observation.stillBad(k.asked())) : Optional.empty();
        }
        try {
            Observation o = Answers.parse(asking, k.said());
            return Optional.of(k.calledAbout() ? o.complaint() : o);
        } catch (Answers.NotAnAnswer e) {
            return Optional.empty();
        }
    }

    /** This machine's normal, as the inference takes it: only numbers say anything of tolerances. */
    Observations normal(Casework casework) {
        List<Observation> all = new ArrayList<>();
        for (Earlier e : earlier) {
            try {
                casework.asking(e.asked())
                        .map(a -> Answers.parse(a, e.said()))
                        .filter(o -> o.kind() == Observation.Kind.NUMBER)
                        .ifPresent(all::add);
            } catch (Answers.NotAnAnswer notAnyMore) {
                // the procedure has changed since
                continue;
            }
        }
        return Observations.of(all);
    }

    /** What it goes by, told by whoever is at the machine. */
    Knowledge knowledge(Casework casework, Who who) {
        return new Knowledge(observations(casework), narrowed ? normal(casework) : Observations.none(), who, rates);
    }

    /** Jobs on the same machine in the same kind of place share what the twin has found out. */
    Libraries.Place ground() {
        return Libraries.Place.of(machine);
    }
}
