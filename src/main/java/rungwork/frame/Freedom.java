package rungwork.frame;

/** One of the six ways in which a node can move, in vehicle axes. */
public enum Freedom {
  /** Moving forward. */
  UX("moving along x"),
  /** Moving to the left. */
  UY("moving along y"),
  /** Moving up. */
  UZ("moving along z"),
  /** Turning about x. */
  RX("turning about x"),
  /** Turning about y. */
  RY("turning about y"),
  /** Turning about z. */
  RZ("turning about z");

  private final String motion;

  Freedom(String motion) {
    this.motion = motion;
  }

  /**
   * The motion in words.
   *
   * @return for example {@code turning about z}
   */
  public String motion() {
    return motion;
  }
}
