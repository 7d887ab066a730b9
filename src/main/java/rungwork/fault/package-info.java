/** Faults. */
package rungwork.fault;
