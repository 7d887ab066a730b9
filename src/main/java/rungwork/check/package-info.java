/**
 * The check sheet: what was asked of each part, and what was found. Thin; grows.
 *
 * <p>Reading order: {@link rungwork.check.Check}, {@link rungwork.check.Verdict}, {@link
 * rungwork.check.Basis}, {@link rungwork.check.Formula}, {@link rungwork.check.Step}.
 *
 * <p>This room must not know pages or pictures.
 */
package rungwork.check;
