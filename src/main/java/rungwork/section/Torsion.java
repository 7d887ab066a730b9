package rungwork.section;

/** How a section carries twist, and so whether its torsion can be checked. */
public enum Torsion {
  /** A closed cell: shear flow runs around it; warping adds little. */
  CLOSED,
  /** A solid bar: Saint-Venant torsion; warping adds little. */
  SOLID,
  /**
   * Thin open walls: stress and stiffness depend on how far the ends hold the warping, which the
   * section alone does not know. A closed shape with a slit counts as open, however narrow the
   * slit.
   */
  OPEN;

  /** Whether stress and stiffness in torsion are known from the section alone. */
  public boolean known() {
    return this != OPEN;
  }
}
