package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.quantity.Kind;

/**
 * The plate where it meets the face, bent by the load above it in its own plane and across it, and
 * the plate as a strut when the load pushes on it. Strength of materials; buckling by EN
 * 1993-1-1:2005, 6.3.1, curve c, as a cantilever of twice the height.
 */
final class TabFoot {
  private static final String STRENGTH =
      "strength of materials; torsion of a rectangle by Budynas & Nisbett, Shigley's Mechanical"
          + " Engineering Design, eq. 3-40";
  private static final String BUCKLING = "EN 1993-1-1:2005, 6.3.1, curve c; length 2·h";
  private static final Symbol W = Letters.length("w", "width of the foot");
  private static final Symbol H = Letters.length("h", "height of the hole over the face");
  private static final Symbol N = Letters.number("n", "number of plates");
  private static final Symbol MX = Letters.moment("Mx", "moment that bends the plate sideways");
  private static final Symbol MY = Letters.moment("My", "moment in the plate's plane");
  private static final Symbol MZ = Letters.moment("Mz", "torque on the plate");
  private static final Symbol E = new Symbol("E", Kind.MODULUS, "modulus");

  private static final Formula NORMAL =
      new Formula(
          FootYield.SIGMA,
          "(|{Fz}|/({w}·{t}) + 6·|{My}|/({t}·{w}²) + 6·|{Mx}|/({w}·{t}²))/{n}",
          List.of(Letters.FZ, W, Letters.T, MY, MX, N),
          STRENGTH,
          in ->
              (Math.abs(in[0]) / (in[1] * in[2])
                      + 6 * Math.abs(in[3]) / (in[2] * in[1] * in[1])
                      + 6 * Math.abs(in[4]) / (in[1] * in[2] * in[2]))
                  / in[5]);
  private static final Formula SHEAR =
      new Formula(
          FootYield.TAU,
          "(√({Fx}² + {Fy}²)/({w}·{t}) + (3 + 1.8·{t}/{w})·|{Mz}|/({w}·{t}²))/{n}",
          List.of(Letters.FX, Letters.FY_LATERAL, W, Letters.T, MZ, N),
          STRENGTH,
          in ->
              (Math.hypot(in[0], in[1]) / (in[2] * in[3])
                      + (3 + 1.8 * in[3] / in[2]) * Math.abs(in[4]) / (in[2] * in[3] * in[3]))
                  / in[5]);
  private static final Formula PUSH =
      new Formula(
          Letters.force("N", "push on one plate"),
          "max(−{Fz}, 0)/{n}",
          List.of(Letters.FZ, N),
          "statics",
          in -> Math.max(-in[0], 0) / in[1]);
  private static final Formula SLENDERNESS =
      new Formula(
          Buckling.SLENDERNESS,
          "2·{h}·√12/({t}·π)·√({fyw}/{E})",
          List.of(H, Letters.T, FootYield.FYW, E),
          BUCKLING,
          in -> 2 * in[0] * Math.sqrt(12) / (in[1] * Math.PI) * Math.sqrt(in[2] / in[3]));
  private static final Formula RESISTANCE =
      new Formula(
          Letters.force("Nb,Rd", "buckling resistance of one plate"),
          "{χ}·{w}·{t}·{fyw}/{γ}",
          List.of(Buckling.REDUCTION, W, Letters.T, FootYield.FYW, Letters.GAMMA),
          BUCKLING,
          in -> in[0] * in[1] * in[2] * in[3] / in[4]);

  private final Tab tab;
  private final FaceLoad load;
  private final Wrench wrench;

  TabFoot(Tab tab, FaceLoad load) {
    this.tab = tab;
    this.load = load;
    wrench = load.about(new Point(0, 0, 0));
  }

  List<Check> checks() {
    List<Check> checks = new ArrayList<>(List.of(bending()));
    if (wrench.fz() < 0) {
      checks.add(buckling());
    }
    return checks;
  }

  private Check bending() {
    Tab.Plate plate = tab.plate();
    int count = plate.count().plates();
    Step normal =
        NORMAL.with(wrench.fz(), plate.foot(), plate.thickness(), wrench.my(), wrench.mx(), count);
    Step shear =
        SHEAR.with(wrench.fx(), wrench.fy(), plate.foot(), plate.thickness(), wrench.mz(), count);
    return FootYield.of(normal, shear, tab.material(), load.factors())
        .answers(asks("bending at the foot"), load.factors().yield());
  }

  private Check buckling() {
    Tab.Plate plate = tab.plate();
    double modulus = tab.material().elasticity().youngsModulus();
    Step push = PUSH.with(wrench.fz(), plate.count().plates());
    Step slenderness = SLENDERNESS.with(plate.height(), plate.thickness(), weldedYield(), modulus);
    List<Step> reduction = Buckling.reduction(slenderness.result());
    Step resistance =
        RESISTANCE.with(
            reduction.get(1).result(), plate.foot(), plate.thickness(), weldedYield(), gamma());
    Finding finding = Finding.compare(push, resistance).after(reduction).after(slenderness);
    return finding.answers(
        asks("buckling of the plate")
            .with("A sideways load bends it besides; that is asked at the foot, without growth."),
        load.factors().yield());
  }

  private Question asks(String what) {
    return Question.of(what, tab.name(), load).at("foot");
  }

  private double weldedYield() {
    return tab.material().strength().weldedYield();
  }

  private double gamma() {
    return load.factors().design().value();
  }
}
