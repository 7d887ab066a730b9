package rungwork.check;

/**
 * The buckling curves of EN 1993-1-1:2005, 6.3.1.2, table 6.1: how much the imperfection of a real
 * column costs. Steel of grades S235 to S460.
 */
public enum ColumnCurve {
  /** Hot-finished hollow sections of S460. */
  A0(0.13),
  /** Hot-finished hollow sections of S235 to S420. */
  A(0.21),
  /** Angles; welded box sections. */
  B(0.34),
  /** Cold-formed hollow sections; channels, T-sections and solid bars. */
  C(0.49),
  /** Heavily welded and thick sections. */
  D(0.76);

  private final double imperfection;

  ColumnCurve(double imperfection) {
    this.imperfection = imperfection;
  }

  /**
   * The imperfection factor α of table 6.1.
   *
   * @return α [1]
   */
  public double imperfection() {
    return imperfection;
  }
}
