package rungwork.check;

/**
 * The buckling curves of EN 1993-1-1:2005, 6.3.1.2, table 6.1: how much the imperfection of a real
 * column costs. Steel of grades S235 to S460.
 */
public enum ColumnCurve {
  /** Hot-finished hollow sections of S460. */
  A0(0.13, 350),
  /** Hot-finished hollow sections of S235 to S420. */
  A(0.21, 300),
  /** Angles; welded box sections. */
  B(0.34, 250),
  /** Cold-formed hollow sections; channels, T-sections and solid bars. */
  C(0.49, 200),
  /** Heavily welded and thick sections. */
  D(0.76, 150);

  private final double imperfection;
  private final double lengthOverBow;

  ColumnCurve(double imperfection, double lengthOverBow) {
    this.imperfection = imperfection;
    this.lengthOverBow = lengthOverBow;
  }

  /**
   * The imperfection factor α of table 6.1.
   *
   * @return α [1]
   */
  public double imperfection() {
    return imperfection;
  }

  /**
   * The initial bow that stands for the imperfection in an elastic analysis of second order (EN
   * 1993-1-1:2005, table 5.1; from memory).
   *
   * @return e₀/L [1]
   */
  public double bow() {
    return 1 / lengthOverBow;
  }
}
