package wetside.judging;

import java.util.List;

/**
 * A job that could not be played to its end by every policy, and so counts for none: all are held against each other over the
 * same jobs.
 *
 * @param number of the job; with the seed it is the same job again
 * @param truth  positions of the hidden causes; empty when it failed before any was drawn
 * @param by     who was playing; empty when there was no job yet
 * @param reason what could not be run, and what went wrong in it
 */
public record NotPlayed(int number, List<Integer> truth, String by, String reason) {}
