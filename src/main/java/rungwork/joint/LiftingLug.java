package rungwork.joint;

import java.util.List;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.LimitState;
import rungwork.check.Step;
import rungwork.check.Symbol;

/**
 * The second opinion on the plate round a hole: ASME BTH-1, 3-3.3.1, pinned connections of lifting
 * lugs, read in worked sheets. Its own 1.20 is inside, its Nd is not.
 */
final class LiftingLug {
  private static final String BTH = "ASME BTH-1, 3-3.3.1";
  private static final Symbol CR = Letters.ratio("Cr", "reduction for a loose hole");
  private static final Symbol PLANE = Letters.length("l", "length of one shear plane");

  private static final Formula LOOSE =
      new Formula(
          CR,
          "1 − 0.275·√(1 − {d}²/{d₀}²)",
          List.of(Letters.D, Letters.D0),
          BTH,
          in -> 1 - 0.275 * Math.sqrt(1 - in[0] * in[0] / (in[1] * in[1])));
  static final Formula WIDTH =
      new Formula(
          TabEye.BE,
          "min(4·{t}, 0.6·{b}·{fu}/{fy}·√({d₀}/{b}), {b})",
          List.of(Letters.T, TabEye.B, Letters.FU, Letters.FY, Letters.D0),
          BTH,
          in ->
              Math.min(
                  Math.min(4 * in[0], in[1]),
                  0.6 * in[1] * in[2] / in[3] * Math.sqrt(in[4] / in[1])));
  private static final Formula TEAR =
      new Formula(
          Letters.force("Pt", "strength against tearing beside the hole"),
          "{Cr}·{fu}/1.2·2·{t}·{be}/{γ}",
          List.of(CR, Letters.FU, Letters.T, TabEye.BE, Letters.GAMMA),
          BTH,
          in -> in[0] * in[1] / 1.2 * 2 * in[2] * in[3] / in[4]);
  private static final Formula SHEAR_PLANE =
      new Formula(
          PLANE,
          "{a} + {d}/2·(1 − cos(55°·{d}/{d₀}))",
          List.of(TabEye.A, Letters.D, Letters.D0),
          BTH,
          in -> in[0] + in[1] / 2 * (1 - Math.cos(Math.toRadians(55) * in[1] / in[2])));
  private static final Formula DOUBLE_SHEAR =
      new Formula(
          Letters.force("Pv", "strength against shearing out"),
          "0.7·{fu}/1.2·2·{l}·{t}/{γ}",
          List.of(Letters.FU, PLANE, Letters.T, Letters.GAMMA),
          BTH,
          in -> 0.7 * in[0] / 1.2 * 2 * in[1] * in[2] / in[3]);
  private static final Formula SPLIT =
      new Formula(
          Letters.force("Pb", "strength against splitting of the end"),
          "{Cr}·{fu}/1.2·(1.13·{a} + 0.92·{b}/(1 + {b}/{d₀}))·{t}/{γ}",
          List.of(CR, Letters.FU, TabEye.A, TabEye.B, Letters.D0, Letters.T, Letters.GAMMA),
          BTH,
          in ->
              in[0]
                  * in[1]
                  / 1.2
                  * (1.13 * in[2] + 0.92 * in[3] / (1 + in[3] / in[4]))
                  * in[5]
                  / in[6]);

  private final PinnedPlate plate;
  private final Step force;
  private final EdgeDistances direction;

  LiftingLug(PinnedPlate plate, Step force, EdgeDistances direction) {
    this.plate = plate;
    this.force = force;
    this.direction = direction;
  }

  List<Check> checks() {
    return List.of(tearing(), shearingOut(), splitting());
  }

  private Check tearing() {
    double hole = plate.hole();
    Step loose = LOOSE.with(plate.pin(), hole);
    Step width = WIDTH.with(plate.thickness(), direction.across(), plate.fu(), plate.fy(), hole);
    Step strength =
        TEAR.with(loose.result(), plate.fu(), plate.thickness(), width.result(), plate.gamma());
    return Finding.compare(force, strength)
        .after(loose, width)
        .answers(plate.asks("tearing beside the hole, second opinion"), basis());
  }

  private Check shearingOut() {
    Step plane = SHEAR_PLANE.with(direction.along(), plate.pin(), plate.hole());
    Step strength = DOUBLE_SHEAR.with(plate.fu(), plane.result(), plate.thickness(), plate.gamma());
    return Finding.compare(force, strength)
        .after(plane)
        .answers(plate.asks("shearing out of the hole, second opinion"), basis());
  }

  /** Hoop tension beyond the hole, on the one plane in the force's line. */
  private Check splitting() {
    double hole = plate.hole();
    Step loose = LOOSE.with(plate.pin(), hole);
    Step strength =
        SPLIT.with(
            loose.result(),
            plate.fu(),
            direction.along(),
            direction.across(),
            hole,
            plate.thickness(),
            plate.gamma());
    return Finding.compare(force, strength)
        .after(loose)
        .answers(plate.asks("splitting of the end (hoop), second opinion"), basis());
  }

  private Basis basis() {
    return new Basis(
        LimitState.ULTIMATE,
        "1.20 of ASME BTH-1, without its Nd, and " + plate.load().factors().design());
  }
}
