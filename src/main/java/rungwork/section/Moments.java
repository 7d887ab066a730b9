package rungwork.section;

/**
 * Integrals over an area, about the axes that it is drawn in.
 *
 * @param area ∫dA [m²]
 * @param y ∫y dA [m³]
 * @param z ∫z dA [m³]
 * @param yy ∫y² dA [m⁴]
 * @param zz ∫z² dA [m⁴]
 * @param yz ∫yz dA [m⁴]
 */
record Moments(double area, double y, double z, double yy, double zz, double yz) {
  static final Moments NONE = new Moments(0, 0, 0, 0, 0, 0);

  /**
   * The triangle between the origin and two spots, negative when they turn from z to y.
   *
   * @param a second corner
   * @param b third corner
   * @return its integrals, exact
   */
  static Moments triangle(Spot a, Spot b) {
    double twice = a.cross(b);
    return new Moments(
        twice / 2,
        twice / 6 * (a.y() + b.y()),
        twice / 6 * (a.z() + b.z()),
        twice / 12 * (a.y() * a.y() + a.y() * b.y() + b.y() * b.y()),
        twice / 12 * (a.z() * a.z() + a.z() * b.z() + b.z() * b.z()),
        twice / 24 * (a.y() * b.z() + b.y() * a.z() + 2 * a.y() * a.z() + 2 * b.y() * b.z()));
  }

  /**
   * The part of a disc between an arc and its chord, the disc's centre at the origin, the arc's
   * middle on the y axis.
   *
   * @param radius r [m]
   * @param half half the arc's angle a [rad]; negative for an arc that runs from z to y
   * @return its integrals: r²(a − sin a cos a), 2/3 r³ sin³a, r⁴/4 (a − sin a cos a + 2 sin³a cos
   *     a), r⁴/12 (3a − 3 sin a cos a − 2 sin³a cos a) (from memory; half a disc gives πr⁴/8)
   */
  static Moments discSegment(double radius, double half) {
    double s = Math.sin(half);
    double sc = s * Math.cos(half);
    double r2 = radius * radius;
    return new Moments(
        r2 * (half - sc),
        2.0 / 3 * r2 * radius * s * s * s,
        0,
        r2 * r2 / 4 * (half - sc + 2 * s * s * sc),
        r2 * r2 / 12 * (3 * half - 3 * sc - 2 * s * s * sc),
        0);
  }

  Moments plus(Moments o) {
    return new Moments(area + o.area, y + o.y, z + o.z, yy + o.yy, zz + o.zz, yz + o.yz);
  }

  /** The same area turned about the origin from y towards z by an angle [rad]. */
  Moments turned(double angle) {
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    return new Moments(
        area,
        c * y - s * z,
        s * y + c * z,
        c * c * yy - 2 * s * c * yz + s * s * zz,
        s * s * yy + 2 * s * c * yz + c * c * zz,
        s * c * (yy - zz) + (c * c - s * s) * yz);
  }

  /** The same area moved. */
  Moments moved(Spot by) {
    double dy = by.y();
    double dz = by.z();
    return new Moments(
        area,
        y + area * dy,
        z + area * dz,
        yy + 2 * dy * y + area * dy * dy,
        zz + 2 * dz * z + area * dz * dz,
        yz + dy * z + dz * y + area * dy * dz);
  }

  Spot centroid() {
    return new Spot(y / area, z / area);
  }
}
