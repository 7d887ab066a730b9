/** The composition root. */
package rungwork.notebook;
