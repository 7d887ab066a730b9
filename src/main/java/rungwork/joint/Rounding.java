package rungwork.joint;

/** How near two numbers count as equal. */
final class Rounding {
  /** A limit met to this share counts as met: lengths come from decimals of a millimetre. */
  static final double TOLERANCE = 1e-9;

  private Rounding() {}
}
