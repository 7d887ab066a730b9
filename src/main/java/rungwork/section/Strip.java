package rungwork.section;

/**
 * A thin wall of one thickness along a centre line, the part from which thin-walled sections are
 * put together. Walls whose ends coincide are joined there.
 *
 * @param path its centre line
 * @param thickness t [m]
 * @param filled 1 for a wall; 0 for a weld that only passes shear on, because its length lies
 *     within the thicknesses of the walls that it joins
 */
record Strip(Segment path, double thickness, double filled) {
  Strip(Segment path, double thickness) {
    this(path, thickness, 1);
  }

  /** A weld from one wall's centre line to another's. */
  static Strip weld(Segment path, double throat) {
    return new Strip(path, throat, 0);
  }

  Strip moved(Spot by) {
    return new Strip(path.moved(by), thickness, filled);
  }

  /** The same wall after half a turn about a place. */
  Strip halfTurned(Spot about) {
    return new Strip(Outline.halfTurned(path, about), thickness, filled);
  }

  double area() {
    return filled * path.length() * thickness;
  }

  /** ∫y dA and ∫z dA over its first part [m³]. */
  Spot areaMoment(double fraction) {
    return path.lineMoment(fraction).times(filled * thickness);
  }
}
