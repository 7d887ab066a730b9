package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.check.Verdict.Reason;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * A pair of tabs closed on both sides into a box: bent as one closed section where it meets the
 * face. Strength of materials; torsion of a closed section by Bredt.
 *
 * @param tab the pair
 * @param across outside width of the box along the pin [m]
 */
record BoxedTab(Tab tab, double across) implements Joint {
  /** Widest inner part that reaches yield, in ε: EN 1993-1-1:2005, table 5.2 (from memory). */
  private static final double SLENDER = 42;

  private static final String SOURCE =
      "strength of materials: first yield of a closed section, strength beside a weld; torsion by"
          + " Bredt, Budynas & Nisbett, Shigley's Mechanical Engineering Design, 3-12";
  private static final Symbol B = Letters.length("b", "box along the foot");
  private static final Symbol D = Letters.length("d", "box along the pin");
  private static final Symbol AREA = Letters.area("A", "area of the box");
  private static final Symbol WX = Letters.modulus("Wx", "modulus against bending sideways");
  private static final Symbol WY = Letters.modulus("Wy", "modulus in the plates' plane");
  private static final Symbol MX = Letters.moment("Mx", "moment that bends the box sideways");
  private static final Symbol MY = Letters.moment("My", "moment in the plates' plane");
  private static final Symbol MZ = Letters.moment("Mz", "torque on the box");

  private static final Formula BOX_AREA =
      new Formula(
          AREA,
          "{b}·{d} − ({b} − 2·{t})·({d} − 2·{t})",
          List.of(B, D, Letters.T),
          SOURCE,
          in -> in[0] * in[1] - (in[0] - 2 * in[2]) * (in[1] - 2 * in[2]));
  private static final Formula SIDEWAYS = modulus(WX, "b", "d", B, D);
  private static final Formula IN_PLANE = modulus(WY, "d", "b", D, B);
  private static final Formula NORMAL =
      new Formula(
          FootYield.SIGMA,
          "|{Fz}|/{A} + |{Mx}|/{Wx} + |{My}|/{Wy}",
          List.of(Letters.FZ, AREA, MX, WX, MY, WY),
          SOURCE,
          in -> Math.abs(in[0]) / in[1] + Math.abs(in[2]) / in[3] + Math.abs(in[4]) / in[5]);
  private static final Formula SHEAR =
      new Formula(
          FootYield.TAU,
          "|{Fx}|/(2·{b}·{t}) + |{Fy}|/(2·{d}·{t}) + |{Mz}|/(2·({b} − {t})·({d} − {t})·{t})",
          List.of(Letters.FX, B, Letters.T, Letters.FY_LATERAL, D, MZ),
          SOURCE,
          in ->
              Math.abs(in[0]) / (2 * in[1] * in[2])
                  + Math.abs(in[3]) / (2 * in[4] * in[2])
                  + Math.abs(in[5]) / (2 * (in[1] - in[2]) * (in[4] - in[2]) * in[2]));

  /** Refuses a single plate, and a box narrower than its plates. */
  BoxedTab {
    if (tab.plate().count() == Tab.Count.SINGLE) {
      throw new ModelException(
          "tab " + tab.name() + " is one plate; only a pair can be closed into a box");
    }
    if (across <= 2 * tab.plate().thickness()) {
      throw new ModelException(
          "box "
              + Scale.MM.show(across)
              + " along the pin of tab "
              + tab.name()
              + " leaves no room between plates of "
              + Scale.MM.show(tab.plate().thickness()));
    }
  }

  @Override
  public String name() {
    return tab.name();
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    List<Check> checks = new ArrayList<>(tab.holeChecks(load));
    checks.add(bending(load));
    return checks;
  }

  private Check bending(FaceLoad load) {
    Wrench w = load.about(new Point(0, 0, 0));
    double b = tab.plate().foot();
    double t = tab.plate().thickness();
    Step area = BOX_AREA.with(b, across, t);
    Step sideways = SIDEWAYS.with(b, across, t);
    Step inPlane = IN_PLANE.with(across, b, t);
    Step normal =
        NORMAL.with(w.fz(), area.result(), w.mx(), sideways.result(), w.my(), inPlane.result());
    Step shear = SHEAR.with(w.fx(), b, t, w.fy(), across, w.mz());
    return FootYield.of(normal, shear, tab.material(), load.factors())
        .after(area, sideways, inPlane)
        .outside(slender(b, t))
        .answers(
            Question.of("bending of the box at the foot", tab.name(), load).at("foot"),
            load.factors().yield());
  }

  private List<Reason> slender(double b, double t) {
    double epsilon = Math.sqrt(235e6 / tab.material().strength().weldedYield());
    double widest = Math.max(b, across) / t - 2;
    return widest > SLENDER * epsilon * (1 + Rounding.TOLERANCE)
        ? List.of(
            Reason.of(
                "outside EN 1993-1-1, table 5.2: width over thickness "
                    + Scale.NUMBER.show(widest)
                    + " is over "
                    + Scale.NUMBER.show(SLENDER * epsilon)))
        : List.of();
  }

  private static Formula modulus(
      Symbol result, String wide, String deep, Symbol first, Symbol second) {
    String text =
        "({w}·{h}³ − ({w} − 2·{t})·({h} − 2·{t})³)/(6·{h})"
            .replace("{w}", "{" + wide + "}")
            .replace("{h}", "{" + deep + "}");
    return new Formula(
        result,
        text,
        List.of(first, second, Letters.T),
        SOURCE,
        in ->
            (in[0] * Math.pow(in[1], 3) - (in[0] - 2 * in[2]) * Math.pow(in[1] - 2 * in[2], 3))
                / (6 * in[1]));
  }
}
