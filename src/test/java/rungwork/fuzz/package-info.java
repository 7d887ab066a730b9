/**
 * Random and hostile input at every public entry of the engineering rooms.
 *
 * <p>{@link rungwork.fuzz.Entries} finds the public constructors and methods in the compiled
 * classes, so that a new one is covered by itself. {@link rungwork.fuzz.Draw} makes arguments: from
 * values that {@link rungwork.fuzz.Samples} and earlier calls gave ({@link rungwork.fuzz.Pool}), or
 * hostile ones ({@link rungwork.fuzz.Hostile}). {@link rungwork.fuzz.Fuzzer} calls, {@link
 * rungwork.fuzz.Inspection} reads the results. An entry returns finite numbers or throws a {@code
 * ModelException} or {@code SolveException} that says something; a null given to it may also be
 * refused by a {@code NullPointerException}.
 */
package rungwork.fuzz;
