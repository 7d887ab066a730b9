package rungwork.section;

/**
 * A thin wall of one thickness along a centre line, the part from which thin-walled sections are
 * put together. Walls whose ends coincide are joined there.
 *
 * @param path its centre line
 * @param thickness t [m]
 */
record Strip(Segment path, double thickness) {
  double area() {
    return path.length() * thickness;
  }

  /** ∫y dA and ∫z dA over its first part [m³]. */
  Spot areaMoment(double fraction) {
    return path.lineMoment(fraction).times(thickness);
  }
}
