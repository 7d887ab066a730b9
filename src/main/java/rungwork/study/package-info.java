/**
 * Studies: the same question asked of many variants. So far the comparison of candidates for one
 * member, and a shortlist of sections out of tables and own lists; sweeps, sensitivity and scatter
 * come later.
 *
 * <p><b>A choice is named with its limits.</b> It reads <em>lightest meeting the checks made</em>,
 * and the same line lists what was not checked. A candidate of which something asked was not
 * checked is not eligible, however good its numbers look; one that cannot be modelled stays in the
 * comparison with the reason.
 *
 * <p>Reading order: {@link rungwork.study.Candidate}, {@link rungwork.study.Comparison}, {@link
 * rungwork.study.Outcome}, {@link rungwork.study.Choice}; by itself {@link
 * rungwork.study.Shortlist}, which looks at sizes only and checks nothing. SI units inside; tables
 * carry the reader's units in their heads.
 *
 * <p>This room must not know pages.
 */
package rungwork.study;
