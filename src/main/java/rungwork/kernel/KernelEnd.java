package rungwork.kernel;

/** Why a kernel stopped serving. */
public enum KernelEnd {
  /** A client asked for it. */
  SHUT_DOWN,
  /** A cell could not be stopped; the process has to end so that it can be started again. */
  GIVEN_UP
}
