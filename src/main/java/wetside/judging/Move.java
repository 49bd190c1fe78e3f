package wetside.judging;

import wetside.diagnosis.plan.Step;

/**
 * What somebody decides to do next.
 *
 * @param sort asking, repairing or handing over
 * @param id   of the question or repair; empty for handing over
 */
record Move(Step.Sort sort, String id) {
    static final Move CALL_IN = new Move(Step.Sort.CALL_IN, "");
}
