package rungwork.check;

/**
 * What a check guards against and which factors are inside it.
 *
 * @param limitState what it guards against
 * @param factors in words, such as {@code design factor 1.5 on yield}
 */
public record Basis(LimitState limitState, String factors) {}
