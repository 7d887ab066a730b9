package rungwork.kernel;

/** Why a kernel stopped serving. */
public enum KernelEnd {
  /** A client asked for it. */
  SHUT_DOWN,
  /** A cell could not be stopped; the process has to end so that it can be started again. */
  GIVEN_UP,
  /** A thread that carries the messages died; no client can be told any more. */
  CUT_OFF
}
