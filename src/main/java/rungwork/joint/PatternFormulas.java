package rungwork.joint;

import java.util.List;
import rungwork.check.Formula;
import rungwork.check.Symbol;
import rungwork.quantity.Kind;

/** The formulas of the elastic vector method, in the measures of bolts or of lines. */
enum PatternFormulas {
  BOLTS(Kind.FORCE, Kind.NUMBER, Kind.AREA, "n"),
  LINES(Kind.LINE_LOAD, Kind.LENGTH, Kind.SECTION_MODULUS, "L");

  private static final String SOURCE =
      "elastic vector method, Budynas & Nisbett, Shigley's Mechanical Engineering Design, 9th"
          + " ed., 8-12, 9-2, 9-4";

  private final Kind share;
  private final Symbol size;
  private final Symbol polar;
  private final Formula alongX;
  private final Formula alongY;
  private final Formula outwards;
  private final Formula outOfLine;

  PatternFormulas(Kind share, Kind sizeKind, Kind second, String letter) {
    this.share = share;
    size = new Symbol(letter, sizeKind, "how much shares the load");
    polar = new Symbol("J", second, "second moment about the centroid");
    alongX = inFace("fx", "Fx", "−", "y");
    alongY = inFace("fy", "Fy", "+", "x");
    Symbol iu = new Symbol("Iu", second, "second moment along u");
    Symbol iv = new Symbol("Iv", second, "second moment along v");
    List<Symbol> line = List.of(Letters.FZ, size, pull("Bu"), at("u"), iu);
    List<Symbol> area = List.of(Letters.FZ, size, pull("Bu"), at("u"), iu, pull("Bv"), at("v"), iv);
    String text = "{Fz}/{%s} + {Bu}·{u}/{Iu}".formatted(letter);
    outOfLine = formula("fz", text, line, in -> in[0] / in[1] + in[2] * in[3] / in[4]);
    outwards =
        formula(
            "fz",
            text + " + {Bv}·{v}/{Iv}",
            area,
            in -> in[0] / in[1] + in[2] * in[3] / in[4] + in[5] * in[6] / in[7]);
  }

  /** The share along x. */
  Formula alongX() {
    return alongX;
  }

  /** The share along y. */
  Formula alongY() {
    return alongY;
  }

  /** The share out of the face. */
  Formula outwards() {
    return outwards;
  }

  /** The share out of the face where the pattern is one straight line. */
  Formula outOfLine() {
    return outOfLine;
  }

  private Formula inFace(String result, String force, String sign, String arm) {
    double side = sign.equals("+") ? 1 : -1;
    return formula(
        result,
        "{%s}/{%s} %s {Mz}·{%s}/{J}".formatted(force, size.letter(), sign, arm),
        List.of(
            Letters.force(force, "force in the face"),
            size,
            Letters.moment("Mz", "moment in the face, about the centroid"),
            at(arm),
            polar),
        in -> in[0] / in[1] + side * in[2] * in[3] / in[4]);
  }

  private Formula formula(
      String result, String text, List<Symbol> inputs, Formula.Evaluation evaluation) {
    Symbol letter = new Symbol(result, share, "share along " + result.substring(1));
    return new Formula(letter, text, inputs, SOURCE, evaluation);
  }

  private static Symbol pull(String letter) {
    return Letters.moment(letter, "moment out of the face");
  }

  private static Symbol at(String letter) {
    return Letters.length(letter, "distance from the centroid");
  }
}
