package rungwork.joint;

import java.util.List;
import java.util.Optional;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.LimitState;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.frame.Wrench;

/**
 * The second opinion on a lug under a force at any angle in its plane, by the way of the aircraft
 * handbooks (Melcon &amp; Hoblit; Stress Analysis Manual, AFFDL-TR-69-42, chapter 9; from memory):
 * a strength along the plate, one across it, and {@code Ra^1.6 + Rtr^1.6 = 1} between them.
 *
 * <p>The handbooks read their efficiency factors from charts, which are not at hand. Closed forms
 * on the safe side stand in for them: shearing out on planes at 40° to the force (from memory), the
 * net section at 0.9 of its strength (from memory) with the effective width of ASME BTH-1. Across
 * the plate a statically possible way of the force, on the safe side by the lower-bound theorem of
 * plasticity: a strut at 45° from the pin into the plate's body, as broad as the plate beside the
 * hole allows, and the loop round the pin, which takes the strut's other part like a pull along the
 * plate.
 */
final class ObliqueLug {
  private static final String HANDBOOK =
      "aircraft handbooks: Melcon & Hoblit; AFFDL-TR-69-42, chapter 9 (from memory)";
  private static final String CAUTION =
      "Closed forms on the safe side stand in for the handbooks' charts, which may allow a quarter"
          + " more along the plate and twice as much across it (from memory).";
  private static final Symbol N = Letters.number("n", "number of plates");
  private static final Symbol W = Letters.length("w", "width at the hole");
  private static final Symbol E = Letters.length("e", "hole's centre to the free end");
  private static final Symbol L = Letters.length("l", "length of one shear plane at 40°");
  private static final Symbol ALONG = Letters.force("Fa", "pull along one plate");
  private static final Symbol ACROSS = Letters.force("Ftr", "force across one plate");
  private static final Symbol NET = Letters.force("Pnu", "strength of the net section");
  private static final Symbol SHEAR = Letters.force("Pbru", "strength against shearing out");
  private static final Symbol STRUT = Letters.force("Ps", "force across that the strut takes");
  private static final Symbol LEAST = Letters.force("Pa", "strength along the plate");
  private static final Symbol TRANSVERSE = Letters.force("Ptr", "strength across the plate");

  private static final Formula PULL =
      new Formula(
          ALONG,
          "max({Fz}, 0)/{n}",
          List.of(Letters.FZ, N),
          "statics",
          in -> Math.max(in[0], 0) / in[1]);
  private static final Formula PUSH =
      new Formula(
          ACROSS, "|{Fx}|/{n}", List.of(Letters.FX, N), "statics", in -> Math.abs(in[0]) / in[1]);
  private static final Formula PLANE =
      new Formula(
          L,
          "{e}·√(1 − ({d₀}·sin 40°/{w})²) − {d₀}/2·cos 40°",
          List.of(E, Letters.D0, W),
          HANDBOOK + "; to the ellipse that fits into the end",
          in -> planeAt40(in[0], in[1], in[2]));
  private static final Formula SHEARING_OUT =
      new Formula(
          SHEAR,
          "2·0.6·{fu}·{l}·{t}/{γ}",
          List.of(Letters.FU, L, Letters.T, Letters.GAMMA),
          HANDBOOK,
          in -> 2 * 0.6 * in[0] * in[1] * in[2] / in[3]);
  private static final Formula NET_SECTION =
      new Formula(
          NET,
          "0.9·{fu}·2·{be}·{t}/{γ}",
          List.of(Letters.FU, TabEye.BE, Letters.T, Letters.GAMMA),
          HANDBOOK + "; effective width of ASME BTH-1",
          in -> 0.9 * in[0] * 2 * in[1] * in[2] / in[3]);
  private static final Formula AXIAL =
      new Formula(
          LEAST, "min({Pnu}, {Pbru})", List.of(NET, SHEAR), HANDBOOK, in -> Math.min(in[0], in[1]));
  private static final Formula STRUTTED =
      new Formula(
          STRUT,
          "{fy}·({w} − {d₀})/2·{t}/{γ}",
          List.of(Letters.FY, W, Letters.D0, Letters.T, Letters.GAMMA),
          "a strut at 45°; lower-bound theorem of plasticity",
          in -> in[0] * (in[1] - in[2]) / 2 * in[3] / in[4]);
  private static final Formula SIDEWAYS =
      new Formula(
          TRANSVERSE,
          "min({Ps}, {Pa})",
          List.of(STRUT, LEAST),
          "strut and loop round the pin; lower-bound theorem of plasticity",
          in -> Math.min(in[0], in[1]));
  private static final Formula INTERACTION =
      new Formula(
          Letters.UTILISATION,
          "(({Fa}/{Pa})^1.6 + ({Ftr}/{Ptr})^1.6)^0.625",
          List.of(ALONG, LEAST, ACROSS, TRANSVERSE),
          HANDBOOK,
          in -> Math.pow(Math.pow(in[0] / in[1], 1.6) + Math.pow(in[2] / in[3], 1.6), 0.625));

  private final PinnedPlate plate;

  ObliqueLug(PinnedPlate plate) {
    this.plate = plate;
  }

  /** The interaction; nothing under a force straight towards the face, which only bears. */
  Optional<Check> check() {
    Wrench w = plate.load().wrench();
    int plates = plate.plates();
    Step along = PULL.with(w.fz(), plates);
    Step across = PUSH.with(w.fx(), plates);
    if (along.result() == 0 && across.result() == 0) {
      return Optional.empty();
    }
    List<Step> lines = strengths();
    double axial = lines.get(4).result();
    double transverse = lines.get(6).result();
    Step use = INTERACTION.with(along.result(), axial, across.result(), transverse);
    return Optional.of(
        Finding.ratio(use)
            .after(lines)
            .after(along, across)
            .answers(plate.asks("force at an angle, second opinion").with(CAUTION), basis()));
  }

  /** Shearing out, net section, along; strut, across. */
  private List<Step> strengths() {
    double hole = plate.hole();
    double width = plate.width();
    double t = plate.thickness();
    double fu = plate.fu();
    Step plane = PLANE.with(plate.tab().eye().end(), hole, width);
    Step shear = SHEARING_OUT.with(fu, plane.result(), t, plate.gamma());
    Step beside = LiftingLug.WIDTH.with(t, (width - hole) / 2, fu, plate.fy(), hole);
    Step net = NET_SECTION.with(fu, beside.result(), t, plate.gamma());
    Step axial = AXIAL.with(net.result(), shear.result());
    Step strut = STRUTTED.with(plate.fy(), width, hole, t, plate.gamma());
    Step transverse = SIDEWAYS.with(strut.result(), axial.result());
    return List.of(plane, shear, beside, net, axial, strut, transverse);
  }

  private Basis basis() {
    return new Basis(
        LimitState.ULTIMATE,
        "interaction of the aircraft handbooks and " + plate.load().factors().design());
  }

  private static double planeAt40(double end, double hole, double width) {
    double angle = Math.toRadians(40);
    double aside = hole * Math.sin(angle) / width;
    return end * Math.sqrt(1 - aside * aside) - hole / 2 * Math.cos(angle);
  }
}
