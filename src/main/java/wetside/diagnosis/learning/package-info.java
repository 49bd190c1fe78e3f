/**
 * Prior weights learnt from closed jobs: how often a cause turns up, from counts and running hours.
 *
 * <p>Only conjugate forms, so that adding jobs one by one, in one batch, or taking one back comes to the same. Where the
 * jobs are kept is not known here.
 */
package wetside.diagnosis.learning;
