package wetside.bench;

/**
 * How sharp signatures are.
 *
 * @param drawn   draws of every cause there are
 * @param standing what they stand on, in words
 * @param causes  that have any draws yet, of {@code all}
 * @param minutes still to go, to the first draws of all causes or else to all that is wanted; NaN when nobody can say
 * @param paused  somebody has stopped it and goes on with what is there
 * @param broken  the twin failed; there will be no more
 */
record Sharpness(
        int drawn,
        int wanted,
        String standing,
        int causes,
        int all,
        long done,
        long total,
        double minutes,
        boolean paused,
        boolean broken) {
    /** Nothing changes any more unless somebody says so. */
    boolean isOver() {
        return drawn >= wanted || paused || broken;
    }

    long percent() {
        return Math.min(100, Math.round(100.0 * done / Math.max(1, total)));
    }

    String words() {
        if (broken) {
            return "The twin of this machine failed; the log says more.";
        }
        if (drawn == 0) {
            String some = Math.max(causes, done * all / Math.max(1, total)) + " of " + all + " causes";
            return paused ? "Stopped after " + some : some + left(minutes);
        }
        String from = "From " + drawn + " simulated machines for each cause";
        if (drawn >= wanted) {
            return "From " + standing;
        }
        return paused
                ? from + "; stopped there"
                : from + ", getting sharper: " + percent() + " % of " + wanted + left(minutes);
    }

    private static String left(double minutes) {
        if (Double.isNaN(minutes)) {
            return "";
        }
        long seconds = Math.max(5, 5 * Math.round(minutes * 12));
        return minutes < 2 ? ", about " + seconds + " s left" : ", about " + Math.round(minutes) + " min left";
    }
}
