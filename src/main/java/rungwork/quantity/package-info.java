/**
 * Numbers with units: typed at the door, SI doubles inside, the reader's units on the way out.
 *
 * <pre>
 *   inch("3/16"), length("3/16 in")  --  Quantity&lt;Length&gt;, 4.7625 mm
 *                                              | si("wall", …)
 *                                        double, 0.0047625 [m]   inside, everywhere
 *                                              | Units.METRIC.show(Kind.LENGTH, …)
 *                                        "4.763 mm"
 * </pre>
 *
 * <p>What a person types is a JSR 385 quantity, made or read by {@link
 * rungwork.quantity.Quantities}: {@code mm(50)}, {@code inch("3/16")}, {@code kN(4)}, {@code
 * MPa(355)}, {@code g(3)}. A length where a stress belongs does not compile. Stress is {@code
 * Pressure}; the kinds that the standard lacks are interfaces of this room ({@link
 * rungwork.quantity.Moment}, {@link rungwork.quantity.LineLoad}, {@link
 * rungwork.quantity.Stiffness}, {@link rungwork.quantity.RotationalStiffness}, {@link
 * rungwork.quantity.SecondMoment}, {@link rungwork.quantity.SectionModulus}, {@link
 * rungwork.quantity.MomentOfInertia}, {@link rungwork.quantity.Density}). Every quantity made here
 * holds its metric workshop unit, so equal sizes are equal and print alike.
 *
 * <p>Inside, every number is an SI double whose {@link rungwork.quantity.Kind} says what it
 * measures. {@link rungwork.quantity.Units} writes it in metric workshop or inch-pound units, to
 * four significant digits, alike in every locale.
 *
 * <p>In these rooms {@code g} is the standard acceleration of free fall, 9.80665 m/s², never the
 * gram; {@code lb} is a mass and {@code lbf} a force.
 *
 * <p>Reading order: {@code Quantities}, {@code Kind}, {@code Units}.
 *
 * <p>This room knows only {@code rungwork.fault}; no engineering.
 */
package rungwork.quantity;
