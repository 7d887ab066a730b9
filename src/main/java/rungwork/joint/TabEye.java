package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.check.Verdict.Amount;
import rungwork.check.Verdict.Reason;
import rungwork.frame.Wrench;

/**
 * The plate round the hole under a force in the plate's plane at any angle: AISC 360-16, D5
 * (pin-connected members) as the rule, ASME BTH-1 ({@link LiftingLug}) as the second opinion, both
 * read in worked examples; the interaction of the aircraft handbooks ({@link ObliqueLug}) besides.
 * They know a force along the plate; for a force at an angle, the distances to the edges are
 * measured along and across that force, to the ellipse that fits into the plate's outline, on the
 * safe side of its corners. A force towards the face has no free edge before it: then only bearing
 * is asked.
 */
final class TabEye {
  private static final String D5 = "AISC 360-16, D5.1";

  /** The rule's width that does not grow with the plate [m]. */
  private static final double BESIDE = 0.016;

  static final Symbol BE = Letters.length("be", "effective width beside the hole");
  static final Symbol B = Letters.length("b", "width beside the hole, across the force");
  private static final Symbol C = Letters.length("c", "constant width of the rule");
  static final Symbol A = Letters.length("a", "from the hole's edge to the free edge");
  private static final Symbol ASF = Letters.area("Asf", "area in shear");
  private static final Symbol N = Letters.number("n", "number of plates");

  private static final Formula FORCE =
      new Formula(
          Letters.force("F", "force in the plate's plane, on one plate"),
          "√({Fx}² + {Fz}²)/{n}",
          List.of(Letters.FX, Letters.FZ, N),
          "statics",
          in -> Math.hypot(in[0], in[1]) / in[2]);
  private static final Formula EFFECTIVE =
      new Formula(
          BE,
          "min(2·{t} + {c}, {b})",
          List.of(Letters.T, C, B),
          D5 + "(a)",
          in -> Math.min(2 * in[0] + in[1], in[2]));
  private static final Formula RUPTURE =
      new Formula(
          Letters.force("φPn", "strength against tearing beside the hole"),
          "{φ}·2·{t}·{be}·{fu}/{γ}",
          List.of(Letters.PHI, Letters.T, BE, Letters.FU, Letters.GAMMA),
          D5 + "(a)",
          in -> in[0] * 2 * in[1] * in[2] * in[3] / in[4]);
  private static final Formula SHEAR_AREA =
      new Formula(
          ASF,
          "2·{t}·({a} + {d}/2)",
          List.of(Letters.T, A, Letters.D),
          D5 + "(b)",
          in -> 2 * in[0] * (in[1] + in[2] / 2));
  private static final Formula SHEAR_OUT =
      new Formula(
          Letters.force("φPn", "strength against shearing out"),
          "{φ}·0.6·{fu}·{Asf}/{γ}",
          List.of(Letters.PHI, Letters.FU, ASF, Letters.GAMMA),
          D5 + "(b)",
          in -> in[0] * 0.6 * in[1] * in[2] / in[3]);
  private static final Formula BEARING =
      new Formula(
          Letters.force("φRn", "strength in bearing"),
          "{φ}·1.8·{fy}·{d}·{t}/{γ}",
          List.of(Letters.PHI, Letters.FY, Letters.D, Letters.T, Letters.GAMMA),
          "AISC 360-16, J7(a)",
          in -> in[0] * 1.8 * in[1] * in[2] * in[3] / in[4]);

  private static final String DISHING =
      "A thin end may also buckle sideways (dishing) under a pull.";

  private final PinnedPlate plate;
  private final Step force;
  private final EdgeDistances direction;

  TabEye(Tab tab, FaceLoad load) {
    plate = new PinnedPlate(tab, load);
    Wrench wrench = load.wrench();
    force = FORCE.with(wrench.fx(), wrench.fz(), plate.plates());
    direction = new EdgeDistances(tab, wrench.fx(), wrench.fz());
  }

  List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    if (force.result() == 0) {
      return checks;
    }
    checks.add(bearing());
    new ObliqueLug(plate).check().ifPresent(checks::add);
    if (direction.meetsFreeEdge()) {
      checks.add(tearing());
      checks.add(shearingOut());
      checks.addAll(new LiftingLug(plate, force, direction).checks());
      if (plate.hole() > 2.5 * plate.thickness() * (1 + Rounding.TOLERANCE)) {
        checks.add(dishing());
      }
    }
    return checks;
  }

  private Check tearing() {
    Step effective = EFFECTIVE.with(plate.thickness(), BESIDE, direction.across());
    Step strength =
        RUPTURE.with(plate.phi(), plate.thickness(), effective.result(), plate.fu(), plate.gamma());
    return Finding.compare(force, strength)
        .after(effective)
        .answers(
            plate.asks("tearing beside the hole").with(DISHING), plate.load().factors().american());
  }

  private Check shearingOut() {
    Step area = SHEAR_AREA.with(plate.thickness(), direction.along(), plate.pin());
    Step strength = SHEAR_OUT.with(plate.phi(), plate.fu(), area.result(), plate.gamma());
    return Finding.compare(force, strength)
        .after(area)
        .answers(plate.asks("shearing out of the hole"), plate.load().factors().american());
  }

  private Check bearing() {
    Step strength =
        BEARING.with(plate.phi(), plate.fy(), plate.pin(), plate.thickness(), plate.gamma());
    return Finding.compare(force, strength)
        .answers(plate.asks("bearing in the hole"), plate.load().factors().american());
  }

  private Check dishing() {
    return plate
        .asks("sideways buckling of the end")
        .open(
            plate.load().factors().yield(),
            Reason.of(
                "the hole of {} is wider than 2.5 times the plate of {}, beyond the proportions of"
                    + " EN 1993-1-8, table 3.9; no formula with a source is at hand",
                Amount.length(plate.hole()),
                Amount.length(plate.thickness())),
            "EN 1993-1-8:2005, table 3.9, type B");
  }
}
