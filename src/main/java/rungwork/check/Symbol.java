package rungwork.check;

import rungwork.quantity.Kind;

/**
 * A letter of a formula.
 *
 * @param letter as written, such as {@code σ}
 * @param kind what it measures
 * @param meaning in words, such as {@code normal force}
 */
public record Symbol(String letter, Kind kind, String meaning) {}
