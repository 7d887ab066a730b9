package rungwork.frame;

import java.util.Set;

/**
 * One of the six internal forces, where an end of a beam does not pass it on to its node. In the
 * order of N, Vy, Vz, T, My, Mz.
 */
public enum Release {
  /** No normal force N: a sliding joint along the beam. */
  NORMAL_FORCE("normal force"),
  /** No shear force Vy: a sliding joint across the beam, in the frame's plane. */
  IN_PLANE_SHEAR("in-plane shear force"),
  /** No shear force Vz: a sliding joint along the frame's normal. */
  OUT_OF_PLANE_SHEAR("out-of-plane shear force"),
  /** No torque T. */
  TORSION("torque"),
  /** No out-of-plane bending moment My: a hinge whose pin lies in the frame. */
  OUT_OF_PLANE_BENDING("out-of-plane bending moment"),
  /** No in-plane bending moment Mz: a hinge whose pin is normal to the frame. */
  IN_PLANE_BENDING("in-plane bending moment");

  /** The three moments: a ball joint passes forces on and none of these. */
  public static final Set<Release> MOMENTS =
      Set.of(TORSION, OUT_OF_PLANE_BENDING, IN_PLANE_BENDING);

  private final String force;

  Release(String force) {
    this.force = force;
  }

  /**
   * The internal force in words.
   *
   * @return for example {@code torque}
   */
  public String force() {
    return force;
  }
}
