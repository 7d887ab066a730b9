/**
 * The check sheet: what was asked of each part, what was found, and the working behind it.
 *
 * <p>A {@link rungwork.check.Check} is one question with its answer: what was checked, where, under
 * which load case, on which basis, demand, capacity, working, source, caution. A {@link
 * rungwork.check.CheckSheet} puts them in order, worst first, and never hides that something could
 * not be checked. No answer is ever "OK": the best one reads <em>meets the checks made; not
 * checked: …</em>.
 *
 * <p><b>Working.</b> A {@link rungwork.check.Formula} stands once, beside its source; a {@link
 * rungwork.check.Step} is that formula with numbers. The check's figures come from the same steps
 * that the reader sees. Text is made from them when asked for, never during a calculation.
 *
 * <p><b>Conventions.</b> SI doubles inside; signs of internal forces as in {@link rungwork.frame}.
 * Section axes y (in the frame's plane) and z (along its normal); where a rule speaks of strong and
 * weak axis, the working numbers them 1 and 2. Load factors are in the load case, the {@link
 * rungwork.check.DesignFactor} divides the capacity.
 *
 * <p>Reading order: {@link rungwork.check.Symbol}, {@link rungwork.check.Formula}, {@link
 * rungwork.check.Step}, {@link rungwork.check.Verdict}, {@link rungwork.check.Basis} with {@link
 * rungwork.check.LimitState} and {@link rungwork.check.DesignFactor}, {@link rungwork.check.Check},
 * {@link rungwork.check.CheckSheet} with {@link rungwork.check.Caution}; then {@link
 * rungwork.check.Member} and {@link rungwork.check.MemberChecks}, which asks the package's {@code
 * Question}s: {@code CombinedStress}, {@code ColumnBuckling} (with {@link rungwork.check.Column},
 * {@link rungwork.check.ColumnCurve}, {@code BeamColumn} and {@code InitialBow}), {@code
 * LateralTorsionalBuckling}, {@code SidewaysStrength} (with {@code CriticalMoment} and {@code
 * MomentShape}), {@code WallSlenderness} (with {@link rungwork.check.WallLimits}, {@code
 * AmericanLimits} and {@code EffectiveWidth}) and {@code OpenTorsion} (with {@code
 * RestrainedWarping} and {@code Twist}).
 *
 * <p>Where loads grow on top of what stands, {@link rungwork.check.MemberChecks} says at how many
 * times the growing ones a part first yields ({@code FirstYield} on {@code GrowingStress}), is
 * fully plastic ({@code FullYield}) or buckles ({@code ColumnOnset}), each in closed form.
 *
 * <p><b>Numbers alone.</b> A sweep asks {@link rungwork.check.MemberChecks.Numbers}: of closed
 * sections {@code TubeNumbers}, by the same formulas and by stresses as flat factors of the forces
 * ({@code StressFactors}); of all others, and where a wall buckles, {@code WholeNumbers}, which
 * makes the checks.
 *
 * <p><b>Sway</b> of the frame is in a column's effective lengths or in its moments, never in both:
 * {@link rungwork.check.Member.Sway} says where, and what would count it twice is refused. A column
 * may be checked by its initial bow instead, {@code MemberChecks.bowed}.
 *
 * <p><b>Sources.</b> EN 1993-1-1:2005 for stress, columns and walls of steel; outside its range a
 * number is shown and marked, or nothing is said. Strength of materials for the stresses; V. Z.
 * Vlasov's theory for the warping of open sections.
 *
 * <p>This room must not know pages or pictures.
 */
package rungwork.check;
