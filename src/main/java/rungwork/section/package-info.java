/**
 * Cross-sections: shapes, their properties and their stress points. Thin; grows.
 *
 * <p>This room must not know materials.
 */
package rungwork.section;
