package rungwork.check;

/** Which edge of an outstand is compressed more. */
enum Peak {
  /** The free one. */
  FREE_EDGE,
  /** The held one. */
  HELD_EDGE
}
