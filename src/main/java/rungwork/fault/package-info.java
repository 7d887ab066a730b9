/**
 * What can go wrong, and how it is worded.
 *
 * <p>Two exceptions, both unchecked: {@link rungwork.fault.ModelException} says that the input is
 * wrong, {@link rungwork.fault.SolveException} that the numbers failed. A failed strength check is
 * neither: it is a verdict.
 *
 * <p>Every message says what was wrong, its value with a unit, and what would do: <em>wall 13.00 mm
 * leaves no bore in a tube of 25.00 mm outside diameter; the wall must stay below 12.50 mm</em>.
 *
 * <p>Reading order: {@link rungwork.fault.ModelException}, {@link rungwork.fault.SolveException},
 * {@link rungwork.fault.Scale} (how a number with its unit is written), {@link
 * rungwork.fault.Guard} (the common refusals).
 *
 * <p>This room knows no other room.
 */
package rungwork.fault;
