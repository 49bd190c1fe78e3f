package wetside.machine;

import java.util.List;

/**
 * Which machine of a file is meant.
 *
 * @param revision state of making
 * @param supply   what it was built for, "" where the file knows only one supply
 */
record Making(String revision, String supply) {
    /** Where something is there: in these revisions, built for these supplies. */
    record Presence(List<String> revisions, List<String> supplies) {
        boolean in(Making making) {
            return revisions.contains(making.revision()) && supplies.contains(making.supply());
        }
    }

    /** Written out, as it is asked for before anything of a start has been compiled. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Making m && m.revision.equals(revision) && m.supply.equals(supply);
    }

    @Override
    public int hashCode() {
        return 31 * revision.hashCode() + supply.hashCode();
    }

    /** As messages say it. */
    @Override
    public String toString() {
        return supply.isEmpty() ? revision : revision + " for " + supply;
    }
}
