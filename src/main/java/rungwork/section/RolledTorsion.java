package rungwork.section;

/**
 * Terms of the torsion constant of rolled and welded open shapes: a third of b·t³ of each wall,
 * less what its free ends lack, and the bulge at each junction, a factor times the fourth power of
 * the largest circle there (W. W. Trayer and H. W. March, NACA report 334, 1930; factors of I. S.
 * El Darwish and B. G. Johnston, Torsion of structural shapes, Journal of the Structural Division,
 * ASCE 91 ST1, 1965; from memory). Tables of European channels print the same. A rounded end lacks
 * a third of t² times the area that its rounding takes.
 *
 * <p>Against Saint-Venant's torsion solved on the exact outline a channel or a T is right to 2 %,
 * an angle up to 2.5 % high. The stress that follows is that of the flat walls; its peak in a
 * fillet is not counted: steel yields there.
 *
 * @param web thickness of the wall that ends at the junction [m]
 * @param flange thickness there of the wall that passes it, or of the other leg [m]
 * @param root radius of the fillets [m]
 */
record RolledTorsion(double web, double flange, double root) {
  /** A third of ∫t³ ds of a wall that thins out evenly from one thickness to another [m⁴]. */
  static double wall(double length, double from, double to) {
    return length * (from + to) * (from * from + to * to) / 12;
  }

  /** What a square end lacks, where the thickness falls by a slope towards it; negative: rises. */
  static double end(double thickness, double slope) {
    double s = -slope;
    double factor = 0.10504 + s * (0.1 + s * (0.0848 + s * (0.06746 + s * 0.0515)));
    return factor * Math.pow(thickness, 4);
  }

  /** What the rounding of one edge of an end takes. */
  static double rounding(double radius, double thickness) {
    return (1 - Math.PI / 4) * radius * radius * thickness * thickness / 3;
  }

  /**
   * The bulge where two walls meet in a corner.
   *
   * @param fillet centre of the fillet, from the corner's outer point [m]
   */
  double corner(Spot fillet) {
    double sum = fillet.y() + fillet.z() + root;
    double square = fillet.y() * fillet.y() + fillet.z() * fillet.z() - root * root;
    double diameter = 2 * (sum - Math.sqrt(sum * sum - square));
    double w = web / flange;
    double r = root / flange;
    double factor = -0.0908 + 0.2621 * w + 0.1231 * r - 0.0752 * w * r - 0.0945 * w * w;
    return factor * Math.pow(diameter, 4);
  }

  /** The bulge where a web meets the middle of a flange. */
  double tee() {
    double diameter = (Math.pow(flange + root, 2) + (root + web / 4) * web) / (2 * root + flange);
    double w = web / flange;
    double r = root / flange;
    double factor = -0.042 + 0.2204 * w + 0.1355 * r - 0.0865 * w * r - 0.0725 * w * w;
    return factor * Math.pow(diameter, 4);
  }
}
