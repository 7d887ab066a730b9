package rungwork.frame;

/** What one end of a beam cannot pass on to its node, in the beam's own axes. */
public enum Release {
  /** No in-plane bending moment Mz: a hinge whose pin is normal to the frame. */
  IN_PLANE_BENDING,
  /** No out-of-plane bending moment My: a hinge whose pin lies in the frame. */
  OUT_OF_PLANE_BENDING,
  /** No torque T. */
  TORSION
}
