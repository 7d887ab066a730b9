package rungwork.section;

/**
 * What a section's walls give beyond its outline.
 *
 * @param it torsion constant, free to warp [m⁴]
 * @param warping its resistance to uneven warping
 * @param shear shear areas along y and z [m²]
 * @param centre shear centre, in the axes of the outline [m]
 */
record ShearTorsion(double it, Resistance warping, Spot shear, Spot centre) {
  /**
   * Resistance to uneven warping.
   *
   * @param iw warping constant of the walls' centre lines [m⁶]
   * @param across what the walls' thickness adds to it [m⁶]
   */
  record Resistance(double iw, double across) {
    /** A solid bar or a round tube: none that counts. */
    static final Resistance NONE = new Resistance(0, 0);
  }
}
