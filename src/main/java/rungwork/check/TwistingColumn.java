package rungwork.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import rungwork.material.Elasticity;
import rungwork.quantity.Kind;
import rungwork.section.Properties;

/**
 * A compressed member of an open section, which can buckle by bending and twisting at once: EN
 * 1993-1-1:2005, 6.3.1.4 (from memory) on the elastic critical force of Timoshenko and Gere, Theory
 * of Elastic Stability, 5.6: the least root of
 *
 * <pre>
 *   (N − N₁)(N − N₂)(N − NT) − N²(N − N₂)(y₀/i₀)² − N²(N − N₁)(z₀/i₀)² = 0
 *   NT = (GIt + π²EIw/LT²)/i₀²       i₀² = (Iy + Iz)/A + y₀² + z₀²
 * </pre>
 *
 * <p>N₁ and N₂ bend about the principal axes y and z, from which y₀ and z₀ place the shear centre.
 * Ends are held against twist and free to warp.
 *
 * @param elasticity of the material
 * @param section its properties about the principal axes y and z
 * @param lengths effective lengths for bending about y, about z and for twisting [m]
 */
record TwistingColumn(Elasticity elasticity, Properties section, Lengths lengths) {
  private static final String SOURCE =
      "Timoshenko & Gere, Theory of Elastic Stability, 5.6; EN 1993-1-1:2005, 6.3.1.4";
  private static final AxisFormulas TWIST = new AxisFormulas("TF");
  private static final Symbol RADIUS =
      new Symbol("i₀", Kind.LENGTH, "polar radius of gyration about the shear centre");
  private static final Symbol TORSIONAL =
      new Symbol("NT", Kind.FORCE, "elastic critical force, by twisting alone");
  private static final Symbol BOTH =
      new Symbol("NcrTF", Kind.FORCE, "elastic critical force, by bending and twisting");
  private static final Symbol ABOUT_Y =
      new Symbol("N₁", Kind.FORCE, "elastic critical force, bending about y");
  private static final Symbol ABOUT_Z =
      new Symbol("N₂", Kind.FORCE, "elastic critical force, bending about z");
  private static final Symbol OFF_Y = new Symbol("y₀", Kind.LENGTH, "shear centre along y");
  private static final Symbol OFF_Z = new Symbol("z₀", Kind.LENGTH, "shear centre along z");

  private static final Formula POLAR =
      new Formula(
          RADIUS,
          "√(({Iy} + {Iz})/{A} + {y₀}² + {z₀}²)",
          List.of(
              new Symbol("Iy", Kind.SECOND_MOMENT, "second moment about y"),
              new Symbol("Iz", Kind.SECOND_MOMENT, "second moment about z"),
              Letters.A,
              OFF_Y,
              OFF_Z),
          SOURCE,
          in -> Math.sqrt((in[0] + in[1]) / in[2] + in[3] * in[3] + in[4] * in[4]));
  private static final Formula TWISTING =
      new Formula(
          TORSIONAL,
          "({G}·{It} + π²·{E}·{Iw}/{LT}²)/{i₀}²",
          List.of(
              Letters.G,
              Letters.IT,
              Letters.E,
              new Symbol("Iw", Kind.WARPING_CONSTANT, "warping constant"),
              new Symbol("LT", Kind.LENGTH, "effective length for twisting"),
              RADIUS),
          SOURCE,
          in ->
              (in[0] * in[1] + Math.PI * Math.PI * in[2] * in[3] / (in[4] * in[4]))
                  / (in[5] * in[5]));
  private static final Formula LEAST_ROOT =
      new Formula(
          BOTH,
          "least N: (N − {N₁})(N − {N₂})(N − {NT}) = N²·[(N − {N₂})·{y₀}² + (N −"
              + " {N₁})·{z₀}²]/{i₀}²",
          List.of(ABOUT_Y, ABOUT_Z, TORSIONAL, OFF_Y, OFF_Z, RADIUS),
          SOURCE,
          TwistingColumn::leastRoot);
  private static final Formula AMERICAN =
      new Formula(
          new Symbol("NA", Kind.FORCE, "nominal force of AISC 360 for comparison"),
          "{A}·{fy}·0.658^({A}·{fy}/{NcrTF}), or 0.877·{NcrTF} where that is above 2.25·{NcrTF}",
          List.of(Letters.A, Letters.FY, BOTH),
          "AISC 360-16, E3 and E4 (from memory); comparison only",
          in -> {
            double squash = in[0] * in[1];
            return squash > 2.25 * in[2] ? 0.877 * in[2] : squash * Math.pow(0.658, squash / in[2]);
          });

  /**
   * Effective lengths.
   *
   * @param aboutY for bending about y [m]
   * @param aboutZ for bending about z [m]
   * @param twist between places that hold it against twist [m]
   */
  record Lengths(double aboutY, double aboutZ, double twist) {}

  /**
   * The reciprocals of the cubic's roots are the values of a symmetric matrix, so that the least
   * root is found however close the next one lies.
   */
  private static double leastRoot(double[] in) {
    double n1 = in[0];
    double n2 = in[1];
    double nt = in[2];
    double y = in[3] / (in[5] * Math.sqrt(n1 * nt));
    double z = in[4] / (in[5] * Math.sqrt(n2 * nt));
    double[][] softness = {{1 / n1, 0, y}, {0, 1 / n2, z}, {y, z, 1 / nt}};
    double[] values =
        new EigenDecomposition(new Array2DRowRealMatrix(softness, false)).getRealEigenvalues();
    return 1 / Arrays.stream(values).max().orElseThrow();
  }

  /** N₁, N₂, i₀, NT and, last, the elastic critical force. */
  List<Step> critical() {
    double e = elasticity.youngsModulus();
    double y = euler(e, section.iy(), lengths.aboutY());
    double z = euler(e, section.iz(), lengths.aboutZ());
    double y0 = section.shearCentreY();
    double z0 = section.shearCentreZ();
    Step polar = POLAR.with(section.iy(), section.iz(), section.area(), y0, z0);
    Step twisting =
        TWISTING.with(
            elasticity.shearModulus(),
            section.it(),
            e,
            section.iw(),
            lengths.twist(),
            polar.result());
    return List.of(
        polar, twisting, LEAST_ROOT.with(y, z, twisting.result(), y0, z0, polar.result()));
  }

  private static double euler(double e, double secondMoment, double length) {
    return Math.PI * Math.PI * e * secondMoment / (length * length);
  }

  /**
   * All lines to the reduction factor of a real column.
   *
   * @param curve its buckling curve
   * @param area what of its area counts [m²]
   * @param yield fy [Pa]
   * @return its lines; the last is χ
   */
  List<Step> reduction(ColumnCurve curve, double area, double yield) {
    List<Step> steps = new ArrayList<>(critical());
    double critical = steps.get(steps.size() - 1).result();
    Step slenderness = TWIST.slenderness.with(area, yield, critical);
    Step phi = TWIST.phi.with(curve.imperfection(), slenderness.result());
    steps.addAll(List.of(slenderness, phi, TWIST.chi.with(phi.result(), slenderness.result())));
    return steps;
  }

  /** The nominal force of AISC 360, without its resistance factor. */
  static Step american(double area, double yield, double critical) {
    return AMERICAN.with(area, yield, critical);
  }
}
