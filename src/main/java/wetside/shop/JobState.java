package wetside.shop;

/** Where a job stands; each state asks something of somebody. */
public enum JobState {
    ASKED("asked", "to answer"),
    WAITING_FOR_MACHINE("waiting for the machine", "owner brings it"),
    ON_BENCH("on the bench", "panels off"),
    WAITING_FOR_PART("waiting for a part", "ordered"),
    TO_PROVE("to prove", "repaired, not yet proved"),
    DONE("done", "");

    private final String words;
    private final String asks;

    JobState(String words, String asks) {
        this.words = words;
        this.asks = asks;
    }

    /** As people say it. */
    public String words() {
        return words;
    }

    /** What the state asks for. */
    public String asks() {
        return asks;
    }
}
