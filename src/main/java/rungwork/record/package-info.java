/**
 * The design record: what is built and for whom, how well its data are known, what was decided and
 * why, what was assumed, and what was not checked. It ends a notebook: an engineer can sign it and
 * a builder can read it.
 *
 * <pre>
 *   DesignRecord.of("New front end of the Curlew")
 *       .building("two rails and a front crossmember").forWhom("its owner").on("2026-11-25")
 *       .vehicle(curlew).ladder(ladder)
 *       .measured("tape, both sides", "wheelbase", "front track")
 *       .decision(Decision.on("Which front crossmember?").among(comparison)
 *           .choose("80 × 40 × 3", "lightest that meets the checks made")
 *           .mustAgree("the inspector", "a new crossmember"))
 *       .with(assessment, comparison, orderOfFailure)
 * </pre>
 *
 * <p>Conventions:
 *
 * <ul>
 *   <li>An entry is data: a datum with its origin, a decision, a piece of evidence, a sentence of
 *       the author. A record is a head and a list of entries; each step gives a new record. Dates
 *       are given by the user; nothing reads a clock.
 *   <li>A measured value stands beside the calculated one and never overwrites it. A datum of which
 *       nobody says where it comes from counts as guessed.
 *   <li>What was not checked is listed as fully as what was. Rear and side impact, roll-over,
 *       corrosion allowance and weld quality are always on that list, the screening caution always
 *       among the cautions, the stronger ones wherever evidence is about an impact.
 *   <li>Every analysis enters as one thing, {@link rungwork.record.Evidence}: its checks, its
 *       assumptions, what it leaves open, its cautions. A study's checks of designs that were not
 *       chosen do not enter. Evidence is known by its place, {@code E1}, {@code E2} and so on; a
 *       sentence that several pieces say stands once, with all who say it.
 * </ul>
 *
 * <p>Reading order: {@link rungwork.record.DesignRecord}, {@link rungwork.record.Entry} and its
 * kinds {@link rungwork.record.Datum} (with {@link rungwork.record.Origin}), {@link
 * rungwork.record.Decision} and {@link rungwork.record.Evidence}; then {@code Readings}, which
 * reads each kind of analysis, {@code DesignData}, which lists what a vehicle and a frame were
 * given, and {@code Gathered}, which puts what all say together as {@link
 * rungwork.record.Statement}s.
 *
 * <p><b>Measured after a crash.</b> {@link rungwork.record.Inspection} holds what a tape reads on a
 * bent ladder beside the true one: each {@link rungwork.record.Reading} with published tolerances,
 * each {@link rungwork.record.Distortion} (diamond, twist, sag, side bow, shortening) with its
 * working, and where the marks went ({@code MarkFit} of a {@code MarkNet}); {@link
 * rungwork.record.RepairRule} says what is used again. Axes as everywhere: x forward, y to the
 * left, z up; heights stand above a datum whose offset, pitch and roll the part held for straight
 * tells ({@code Levelling}).
 *
 * <p>This room must not know pages: {@code rungwork.report} draws it.
 */
package rungwork.record;
