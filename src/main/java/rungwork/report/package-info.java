/**
 * Pages and pictures: any value of the rooms above as plain text, HTML and SVG, in the reader's
 * units. Pure functions: values in, strings out.
 *
 * <p><b>One source of words.</b> A value becomes a {@link rungwork.report.Page}, which writes
 * itself as HTML and as plain text from the same words; so the two cannot disagree, and a caution
 * that is in one is in the other.
 *
 * <p><b>The look.</b> {@link rungwork.report.Look} holds the one style sheet. Drawings are SVG with
 * real text, classes and a title on every part; their colours follow the page's theme; they call
 * nothing from outside and run nothing. Whatever has a colour has its number too.
 *
 * <p>This room must not know the notebook's kernel.
 */
package rungwork.report;
