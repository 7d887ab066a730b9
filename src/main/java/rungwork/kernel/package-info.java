/** Runs Java cells. */
package rungwork.kernel;
