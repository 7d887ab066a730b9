/**
 * The engine: direct stiffness for flat frames. Thin; grows.
 *
 * <p>This room must not know checks or text.
 */
package rungwork.solve;
