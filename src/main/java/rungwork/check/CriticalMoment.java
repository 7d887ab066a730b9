package rungwork.check;

import java.util.List;
import rungwork.material.Elasticity;
import rungwork.quantity.Kind;

/**
 * The elastic critical moment of a beam that is symmetric about its bending axis, loaded at its
 * shear centre, its ends held against twist and free to warp.
 *
 * @param elasticity of its material
 * @param weak second moment about the weak axis [m⁴]
 * @param it torsion constant [m⁴]
 * @param iw warping constant [m⁶]
 * @param length between places that hold it sideways and against twist [m]
 */
record CriticalMoment(Elasticity elasticity, double weak, double it, double iw, double length) {
  static final Symbol MCR = new Symbol("Mcr", Kind.MOMENT, "elastic critical moment");

  private static final Formula FORMULA =
      new Formula(
          MCR,
          "{C₁}·π/{L}·√({E}·{I₂}·({G}·{It} + π²·{E}·{Iw}/{L}²))",
          List.of(
              new Symbol("C₁", Kind.RATIO, "shape of the moment's diagram"),
              new Symbol("L", Kind.LENGTH, "between places held sideways and against twist"),
              Letters.E,
              new Symbol("I₂", Kind.SECOND_MOMENT, "about the weak axis"),
              Letters.G,
              Letters.IT,
              new Symbol("Iw", Kind.WARPING_CONSTANT, "warping constant")),
          "Timoshenko & Gere, Theory of Elastic Stability, 2nd ed., ch. 6: ends held against twist,"
              + " free to warp; C₁ as ECCS and ENV 1993-1-1, annex F",
          CriticalMoment::moment);

  private static double moment(double[] in) {
    double perLength = Math.PI / in[1];
    double torsion = in[4] * in[5] + perLength * perLength * in[2] * in[6];
    return in[0] * perLength * Math.sqrt(in[2] * in[3] * torsion);
  }

  /** The critical moment for a shape of the moment's diagram. */
  Step step(double shape) {
    return FORMULA.with(
        shape, length, elasticity.youngsModulus(), weak, elasticity.shearModulus(), it, iw);
  }
}
