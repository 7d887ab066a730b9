/**
 * Studies: the same question asked of many variants.
 *
 * <ul>
 *   <li>Which of these? {@link rungwork.study.Survey}: any variants against any measures. {@link
 *       rungwork.study.Comparison}: candidates for one member, with a choice.
 *   <li>Which is the lightest of very many? {@link rungwork.study.Search}: from the lightest on,
 *       until three are found. {@link rungwork.study.Screening}: of hundreds of thousands, by
 *       numbers alone, what passes confirmed by a search. {@link rungwork.study.Shortlist}: sizes
 *       only, nothing checked.
 *   <li>What matters, how sure is it, where is it best? {@link rungwork.study.Study}: a model built
 *       anew from uncertain inputs.
 * </ul>
 *
 * <pre>
 *   Input + Spread ──┐
 *                    ├── Setting ── model ── Measure ──┬── Sensitivity   each input low and high
 *   Input + Spread ──┘                                 ├── Scatter       many settings drawn
 *                                                      └── Family        one input in steps
 * </pre>
 *
 * <p><b>A choice is named with its limits.</b> It reads <em>lightest meeting the checks made</em>,
 * and the same line lists what was not checked. A candidate of which something asked was not
 * checked is not eligible, however good its numbers look; one that cannot be modelled stays with
 * the reason and stops nothing. A share of a scatter is no probability of survival, and says so.
 *
 * <p><b>Many at a time.</b> Work runs on all cores and looks for an interruption between any two
 * variants; what is done then is kept and says that it is not all. Answers depend on the seed, not
 * on the number of threads.
 *
 * <p>Reading order: {@link rungwork.study.Measure}, {@link rungwork.study.Survey}, {@link
 * rungwork.study.Candidate}, {@link rungwork.study.Comparison}, {@link rungwork.study.Outcome},
 * {@link rungwork.study.Search}, {@link rungwork.study.Screening}; {@link rungwork.study.Input},
 * {@link rungwork.study.Spread}, {@link rungwork.study.Setting}, {@link rungwork.study.Study},
 * {@link rungwork.study.Sensitivity}, {@link rungwork.study.Scatter}, {@link
 * rungwork.study.Family}; {@link rungwork.study.Study.Progress}; inside, {@code Answers} by {@code
 * Work}, {@code Draw}; {@code LightestFirst} runs a search for what meets its {@code Demands};
 * {@code ScreeningRun} goes through a screening's combinations and notes what it {@code Found}. SI
 * units inside; tables carry the reader's units in their heads.
 *
 * <p>This room must not know pages.
 */
package rungwork.study;
