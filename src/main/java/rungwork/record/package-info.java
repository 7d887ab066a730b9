/**
 * The design record: what was decided and why, what was assumed, what was measured, and what was
 * not checked.
 *
 * <p>This room holds no types yet. Assumptions travel with each result so far, and a study names
 * its choice with the reason. What will live here keeps them together for one vehicle, so that an
 * inspector reads the history of a design beside its figures.
 *
 * <p>Conventions for what comes:
 *
 * <ul>
 *   <li>An entry is data: its kind (decision, assumption, measurement, not checked), its subject,
 *       its text, and the date that the user gives. Nothing reads a clock.
 *   <li>A measured value stands beside the calculated one and never overwrites it.
 *   <li>What was not checked is listed as fully as what was.
 * </ul>
 *
 * <p>This room must not know pages: {@code rungwork.report} draws it.
 */
package rungwork.record;
