package rungwork.loadpath;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.Column;
import rungwork.check.ColumnCurve;
import rungwork.check.DesignFactor;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.check.Verdict;
import rungwork.frame.Stock;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.section.Properties;

/**
 * Strength of suspension links and arms: a bar pulled or pushed along its line, an arm bent where a
 * bar stands on it. Its welds, ends and joints are questions of their own.
 *
 * @param part the part's name
 * @param loadCase the load case's name
 * @param stock what it is cut from
 * @param design what its yield strength is divided by
 */
record MemberStrength(String part, String loadCase, Stock stock, DesignFactor design) {
  private static final String STRENGTH = "strength of materials; strength beside a weld";
  private static final String BUCKLING = "EN 1993-1-1:2005, 6.3.1, curve c; hinged at both ends";
  private static final String ARM_LEFT_OUT =
      "Welds of the arm, its ends and its ball joint are not seen; the moment counts about the"
          + " section's weaker axis.";
  private static final Symbol N = new Symbol("N", Kind.FORCE, "force along the part");
  private static final Symbol A = new Symbol("A", Kind.AREA, "area");
  private static final Symbol M = new Symbol("M", Kind.MOMENT, "bending moment");
  private static final Symbol W = new Symbol("Wel", Kind.SECTION_MODULUS, "elastic modulus");
  private static final Symbol CHI = new Symbol("χ", Kind.RATIO, "reduction for buckling");
  private static final Symbol FY = new Symbol("fy", Kind.STRESS, "yield strength");
  private static final Symbol GAMMA = new Symbol("γ", Kind.RATIO, "design factor");
  private static final Symbol SIGMA = new Symbol("σ", Kind.STRESS, "normal stress");

  private static final Formula DIRECT =
      new Formula(SIGMA, "{N}/{A}", List.of(N, A), STRENGTH, in -> in[0] / in[1]);
  private static final Formula BENT =
      new Formula(
          SIGMA,
          "{M}/{Wel} + {N}/{A}",
          List.of(M, W, N, A),
          STRENGTH,
          in -> in[0] / in[1] + in[2] / in[3]);
  private static final Formula YIELD =
      new Formula(
          new Symbol("fyd", Kind.STRESS, "yield strength divided by the factor"),
          "{fy}/{γ}",
          List.of(FY, GAMMA),
          STRENGTH,
          in -> in[0] / in[1]);
  private static final Formula PUSH =
      new Formula(
          new Symbol("NEd", Kind.FORCE, "push on the bar"),
          "{N}",
          List.of(N),
          "statics",
          in -> in[0]);
  private static final Formula RESISTANCE =
      new Formula(
          new Symbol("Nb,Rd", Kind.FORCE, "buckling resistance"),
          "{χ}·{A}·{fy}/{γ}",
          List.of(CHI, A, FY, GAMMA),
          BUCKLING,
          in -> in[0] * in[1] * in[2] / in[3]);

  /** A bar of a length [m] under a force, tension positive [N]. */
  List<Check> bar(double force, double length) {
    if (!(stock.material() instanceof RatedMaterial rated)) {
      return List.of(open("strength of the bar"));
    }
    double size = Math.abs(force);
    Step stress = DIRECT.with(size, properties().area());
    List<Check> checks = new ArrayList<>();
    checks.add(
        answer(
            "pull or push along the bar", stress, fyd(rated), List.of(), "Its ends are not seen."));
    if (force < 0) {
      checks.add(buckling(size, length, rated));
    }
    return checks;
  }

  /** An arm under a moment [N·m] and a force along it [N], both without sign. */
  Check arm(double moment, double along) {
    if (!(stock.material() instanceof RatedMaterial rated)) {
      return open("bending where a bar stands on the arm");
    }
    double modulus = Math.min(properties().wely(), properties().welz());
    Step stress = BENT.with(moment, modulus, along, properties().area());
    return answer(
        "bending where a bar stands on the arm", stress, fyd(rated), List.of(), ARM_LEFT_OUT);
  }

  private Check buckling(double push, double length, RatedMaterial rated) {
    double least = Math.min(properties().iy(), properties().iz());
    Column column =
        new Column(rated.elasticity().youngsModulus(), properties().area(), least, length);
    List<Step> steps = column.reduction(ColumnCurve.C, rated.strength().yield());
    double chi = steps.get(steps.size() - 1).result();
    Step resistance =
        RESISTANCE.with(chi, properties().area(), rated.strength().yield(), design.value());
    return answer(
        "buckling of the bar", PUSH.with(push), resistance, steps, "A bent bar buckles sooner.");
  }

  private Check answer(String what, Step demand, Step capacity, List<Step> before, String caution) {
    List<Step> working = new ArrayList<>(before);
    working.addAll(List.of(demand, capacity));
    Kind kind = capacity.formula().result().kind();
    Verdict verdict = new Verdict.Measured(demand.result(), capacity.result(), kind);
    String source = capacity.formula().source();
    return new Check(what, part, "", loadCase, basis(), verdict, working, source, caution);
  }

  private Check open(String what) {
    Verdict verdict =
        new Verdict.NotChecked(
            "material " + stock.material().name() + " guarantees no yield strength");
    return new Check(what, part, "", loadCase, basis(), verdict, List.of(), STRENGTH, "");
  }

  private Step fyd(RatedMaterial rated) {
    return YIELD.with(rated.strength().weldedYield(), design.value());
  }

  private Basis basis() {
    return design.onYield();
  }

  private Properties properties() {
    return stock.section().properties();
  }
}
