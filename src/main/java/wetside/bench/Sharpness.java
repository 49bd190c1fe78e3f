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
}
