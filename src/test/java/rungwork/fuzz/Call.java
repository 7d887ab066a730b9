package rungwork.fuzz;

/**
 * One call as it is made.
 *
 * @param entry what is called
 * @param receiver on what; the entry itself where it needs nothing
 * @param arguments with what
 * @param hostile whether hostile values are among them
 * @param withNull whether a null is among them
 */
record Call(Entry entry, Object receiver, Object[] arguments, boolean hostile, boolean withNull) {}
