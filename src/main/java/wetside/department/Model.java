package wetside.department;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wetside.casework.Candidate;
import wetside.casework.Candidates;
import wetside.diagnosis.Cause;
import wetside.kind.Fault;
import wetside.kind.Kinds;
import wetside.kind.Words;
import wetside.machine.BadFile;
import wetside.machine.Component;
import wetside.machine.Machine;
import wetside.machine.MachineFile;

/**
 * What there is to know of a model's causes without running its twin. A cause is the same on every machine of the model and
 * in each of its revisions when part and fault have the same names.
 *
 * @param title  as people call it
 * @param causes of the newest revision, with the shipped weights
 * @param words  what people call a cause, by its id, all revisions'
 * @param proofs what shows that a cause is gone, by its id, all revisions'
 * @param rate   all shipped rates of the newest revision together [1/h of ownership]
 */
public record Model(
        String title, List<Cause> causes, Map<String, String> words, Map<String, List<String>> proofs, double rate) {
    private static final double PER_MILLION_HOURS = 1e-6;

    /** Empty when the file is gone or broken: its jobs then stand without any of this. */
    public static Optional<Model> of(String file) {
        try {
            return Optional.of(of(MachineFile.find(file, Kinds.declarations())));
        } catch (BadFile | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static Model of(MachineFile file) {
        Map<String, String> words = new HashMap<>();
        Map<String, List<String>> proofs = new HashMap<>();
        for (String revision : file.revisionNames()) {
            for (Candidate c : Candidates.of(file.machine(revision))) {
                words.put(c.cause().id(), c.cause().words());
                proofs.put(c.cause().id(), c.words().map(Words.OfFault::prove).orElse(List.of()));
            }
        }
        Machine newest = file.newest();
        double rate = 0;
        for (Component c : newest.components()) {
            rate += Kinds.of(c).faults().stream().mapToDouble(Fault::rate).sum();
        }
        List<Cause> causes =
                Candidates.of(newest).stream().map(Candidate::cause).toList();
        return new Model(newest.identity().title(), causes, words, proofs, rate * PER_MILLION_HOURS);
    }

    /** Whether what passed shows that this is gone. For "nothing was wrong" there is no such proof. */
    boolean proves(String finding, Set<String> passed) {
        for (String cause : Cause.each(finding)) {
            List<String> wanted = proofs.getOrDefault(cause, List.of());
            if (wanted.isEmpty() || !passed.containsAll(wanted)) {
                return false;
            }
        }
        return true;
    }
}
