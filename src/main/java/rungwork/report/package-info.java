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
 * <p><b>Which way round.</b> A vehicle is drawn with its front to the left; in plan its left side
 * is then below; the elevation is seen from its left. Moments stand on the tension side.
 *
 * <pre>
 *   front  &lt;---  x                 z up
 *                |                  |  right side, behind
 *                v  y (left)        | /
 *              plan                 +---- x rearwards        oblique
 * </pre>
 *
 * <p>Reading order: {@link rungwork.report.Presentation} (what shows what), {@link
 * rungwork.report.Page}, {@link rungwork.report.Picture}, {@link rungwork.report.Shown}; then the
 * pictures {@link rungwork.report.LadderPlan}, {@link rungwork.report.LoadArrows}, {@link
 * rungwork.report.DeflectedShape}, {@link rungwork.report.ForceDiagrams}; a mount's page and its
 * sketch to scale, {@code MountPage} and {@code MountSketch}; a design record with its files,
 * {@link rungwork.report.RecordDocument}; a bent frame beside the true one, {@code InspectionPage},
 * and the blank sheet for it, {@code InspectionSheet}; last {@link rungwork.report.Look}. Sources:
 * the look's colours are <em>cividis</em> (Nuñez, Anderson and Renslow, PLoS ONE 13(7), 2018,
 * e0199239) and Okabe and Ito's vermilion.
 *
 * <p>This room must not know the notebook's kernel.
 */
package rungwork.report;
