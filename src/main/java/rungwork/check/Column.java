package rungwork.check;

import java.util.List;
import rungwork.fault.Guard;
import rungwork.fault.Scale;

/**
 * A straight column of one section under a central force, bending about one axis.
 *
 * <p>Everything comes out as {@link Step}, so that the number and its working are one. Covered:
 * buckling by bending. Not covered: by twisting, or by bending and twisting together.
 *
 * @param youngsModulus E [Pa], above zero
 * @param area A [m²], above zero
 * @param secondMoment I about the axis that it bends about [m⁴], above zero
 * @param length the effective length Lcr, hinge to hinge of the buckled shape [m], above zero
 * @param axis how the letters of its working are told from another axis's
 */
public record Column(
    double youngsModulus, double area, double secondMoment, double length, Axis axis) {
  /** Refuses a column of nothing. */
  public Column {
    Guard.positive("Young's modulus of a column", youngsModulus, new Scale("GPa", 1e9));
    Guard.positive("area of a column", area, Scale.MM2);
    Guard.positive("second moment of a column", secondMoment, new Scale("mm⁴", 1e-12));
    Guard.positive("effective length of a column", length, Scale.MM);
  }

  /**
   * A column that bends about its only axis of interest.
   *
   * @param youngsModulus E [Pa]
   * @param area A [m²]
   * @param secondMoment I [m⁴]
   * @param length the effective length [m]
   */
  public Column(double youngsModulus, double area, double secondMoment, double length) {
    this(youngsModulus, area, secondMoment, length, Axis.ONLY);
  }

  /**
   * The force at which a perfect elastic column becomes unstable: Ncr = π²·E·I/L² (Euler 1757).
   *
   * @return Ncr [N]
   */
  public Step critical() {
    return axis.formulas.critical.with(youngsModulus, secondMoment, length);
  }

  /**
   * The relative slenderness λ̄ = √(A·fy/Ncr) (EN 1993-1-1:2005, eq. 6.50).
   *
   * @param yield fy [Pa]
   * @return λ̄ [1]
   */
  public Step slenderness(double yield) {
    return axis.formulas.slenderness.with(area, yield, critical().result());
  }

  /**
   * The reduction factor χ of a real, imperfect column (EN 1993-1-1:2005, eq. 6.49), for steel.
   *
   * @param curve its buckling curve
   * @param yield fy [Pa]
   * @return the steps Ncr, λ̄, Φ and, last, χ
   */
  public List<Step> reduction(ColumnCurve curve, double yield) {
    Step critical = critical();
    Step slenderness = slenderness(yield);
    Step phi = axis.formulas.phi.with(curve.imperfection(), slenderness.result());
    Step chi = axis.formulas.chi.with(phi.result(), slenderness.result());
    return List.of(critical, slenderness, phi, chi);
  }

  /**
   * The short-column parabola of J. B. Johnson, or Euler's force beyond λ̄ = √2, where both meet.
   * It knows no imperfection: for comparison only, never as a capacity.
   *
   * @param yield fy [Pa]
   * @return N [N]
   */
  public Step johnson(double yield) {
    double slenderness = slenderness(yield).result();
    Formula formula = slenderness <= Math.sqrt(2) ? axis.formulas.parabola : axis.formulas.beyond;
    return formula.with(area, yield, slenderness);
  }

  AxisFormulas formulas() {
    return axis.formulas;
  }

  /** Tells the letters of two axes in one working apart. */
  public enum Axis {
    /** One axis only. */
    ONLY(""),
    /** The axis of the larger second moment; y in EN 1993-1-1. */
    STRONG("₁"),
    /** The axis of the smaller second moment; z in EN 1993-1-1. */
    WEAK("₂");

    private final AxisFormulas formulas;

    Axis(String index) {
      formulas = new AxisFormulas(index);
    }
  }
}
