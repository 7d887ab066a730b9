/**
 * Numbers with units: typed at the door, SI doubles inside, the reader's units on the way out.
 *
 * <p>What a person types is a JSR 385 quantity, made by {@link rungwork.quantity.Quantities}:
 * {@code mm(50)}, {@code inch("3/16")}, {@code kN(4)}, {@code MPa(355)}, {@code g(3)}. A length
 * where a stress belongs does not compile. Inside, every number is an SI double whose {@link
 * rungwork.quantity.Kind} says what it measures. {@link rungwork.quantity.Units} writes it in
 * metric workshop or inch-pound units.
 *
 * <p>Reading order: {@code Quantities}, {@code Kind}, {@code Units}.
 *
 * <p>This room knows only {@code rungwork.fault}; no engineering.
 */
package rungwork.quantity;
