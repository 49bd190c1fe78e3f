package wetside.shop;

/**
 * A machine on the register: the file, revision and supply it is of, and what is known of where it stands; null where nobody
 * has said. Measures in SI.
 */
public record RegisteredMachine(
        long id,
        String serial,
        String file,
        String revision,
        String supply,
        long ownerId,
        String fedFrom,
        Double supplyPressure,
        Double waterConductivity,
        Double voltage,
        Double altitude,
        Double ambient,
        String bought,
        String note,
        long version) {}
