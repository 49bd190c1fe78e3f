package wetside.bench;

import io.javalin.http.Context;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import wetside.shop.Answer;
import wetside.shop.Job;
import wetside.shop.Outcomes;
import wetside.shop.RegisteredMachine;

/** What a request is about: a job by its number, or a machine and a place by the fields of the address. */
final class FaultCases {
    static final String KNOWN = "known";
    /** Field of a link that goes by the shipped rates. */
    static final String RATES = "rates";

    static final String SHIPPED = "shipped";
    static final int LONGEST = 200;
    private static final char BETWEEN = '~';
    /** How long a reading says what is normal for a machine: scale and wear change it. Assumed. */
    private static final Duration STILL_NORMAL = Duration.ofDays(2 * 365);

    private final Workshop workshop;

    FaultCases(Workshop workshop) {
        this.workshop = workshop;
    }

    FaultCase ofJob(Context context) {
        Job job = Numbers.job(workshop, context);
        RegisteredMachine machine = workshop.register().machine(job.machineId());
        Outcomes.Wanted wanted = workshop.outcomes().wanted(job.id());
        List<FaultCase.Known> known = known(workshop.answered().standing(job.id()), wanted.complaint());
        String complaint = known.stream().anyMatch(k -> k.asked().equals(wanted.complaint())) ? "" : wanted.complaint();
        boolean narrowed = !given(context, FaultNormal.FIELD).equals(FaultNormal.WITHOUT);
        return new FaultCase(
                "/jobs/" + job.number() + "/fault",
                narrowed ? List.of() : List.of(new FaultCase.Field(FaultNormal.FIELD, FaultNormal.WITHOUT)),
                machine,
                Plate.of(workshop, job, Frame.units(context)),
                job.complaint(),
                known,
                earlier(job),
                narrowed,
                job,
                rates(machine, complaint, wanted.shopRates()),
                null);
    }

    private List<FaultCase.Earlier> earlier(Job job) {
        return workshop
                .readings()
                .whenWell(job.machineId(), job.id(), workshop.clock().instant().minus(STILL_NORMAL))
                .stream()
                .map(r -> new FaultCase.Earlier(r.asked(), r.said(), r.at()))
                .toList();
    }

    private ShopRates rates(RegisteredMachine machine, String complaint, boolean on) {
        return new ShopRates(
                workshop.ledger().of(machine.file()),
                complaint,
                on,
                workshop.clock().instant());
    }

    /** Called about is the first of them that answers the sign: asked again after a repair it is a reading like others. */
    private static List<FaultCase.Known> known(List<Answer> answers, String sign) {
        List<FaultCase.Known> known = new ArrayList<>();
        for (Answer a : answers) {
            boolean first = known.stream().noneMatch(FaultCase.Known::calledAbout);
            known.add(
                    new FaultCase.Known(a.asked(), a.said(), first && a.asked().equals(sign)));
        }
        return known;
    }

    FaultCase free(Context context) {
        FaultPlace place = FaultPlace.of(context);
        List<FaultCase.Field> fields = new ArrayList<>(place.carried());
        boolean on = !given(context, RATES).equals(SHIPPED);
        if (!on) {
            fields.add(new FaultCase.Field(RATES, SHIPPED));
        }
        List<FaultCase.Known> known = new ArrayList<>();
        for (String pair : all(context)) {
            int at = pair.lastIndexOf(BETWEEN);
            if (at > 0 && pair.length() < 2 * LONGEST) {
                known.add(new FaultCase.Known(pair.substring(0, at), pair.substring(at + 1)));
                fields.add(new FaultCase.Field(KNOWN, pair));
            }
        }
        return new FaultCase(
                "/fault",
                fields,
                place.machine(),
                place.plate(Frame.units(context)),
                "",
                known,
                List.of(),
                false,
                null,
                rates(place.machine(), "", on),
                place.form());
    }

    /** The fields of a free case without the last answer to something. */
    static List<FaultCase.Field> without(FaultCase about, String asked) {
        return without(about, asked, 0);
    }

    /** The same without an answer given since the last repair: what was before it stays. */
    static List<FaultCase.Field> asking(FaultCase about, String asked) {
        List<FaultCase.Field> fields = about.fields();
        int since = fields.size();
        while (since > 0 && !isRepair(fields.get(since - 1))) {
            since--;
        }
        return without(about, asked, since);
    }

    private static List<FaultCase.Field> without(FaultCase about, String asked, int since) {
        List<FaultCase.Field> fields = new ArrayList<>(about.fields());
        for (int i = fields.size() - 1; i >= since; i--) {
            if (fields.get(i).name().equals(KNOWN) && fields.get(i).value().startsWith(asked + BETWEEN)) {
                fields.remove(i);
                break;
            }
        }
        return fields;
    }

    private static boolean isRepair(FaultCase.Field field) {
        return field.name().equals(KNOWN) && field.value().endsWith(BETWEEN + FaultCase.STILL_BAD);
    }

    static FaultCase.Field answer(String asked, String said) {
        return new FaultCase.Field(KNOWN, asked + BETWEEN + said);
    }

    static String given(Context context, String field) {
        String form = context.formParam(field);
        String query = context.queryParam(field);
        return form != null ? form.strip() : query == null ? "" : query.strip();
    }

    private static List<String> all(Context context) {
        return context.formParams(KNOWN).isEmpty() ? context.queryParams(KNOWN) : context.formParams(KNOWN);
    }
}
