package rungwork.report;

import java.util.List;
import java.util.Set;
import rungwork.check.Basis;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.check.Formula;
import rungwork.check.LimitState;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.check.Verdict;
import rungwork.quantity.Kind;

/** Checks of an invented frame, for tests of how they are shown. */
final class Examples {
  static final String NASTY = "<script>alert(\"x\")</script> & 'tube' 🚗";

  private static final Formula STRESS =
      new Formula(
          new Symbol("σ", Kind.STRESS, "normal stress"),
          "{N}/{A} + {M}/{W}",
          List.of(
              new Symbol("N", Kind.FORCE, "normal force"),
              new Symbol("A", Kind.AREA, "area"),
              new Symbol("M", Kind.MOMENT, "moment"),
              new Symbol("W", Kind.SECTION_MODULUS, "modulus")),
          "mechanics of materials",
          in -> in[0] / in[1] + in[2] / in[3]);

  private Examples() {}

  static Check measured(String part, double utilisation) {
    Step step = STRESS.with(12.4e3, 6.74e-4, 860, 15.9e-6);
    Verdict verdict = new Verdict.Measured(utilisation * 200e6, 200e6, Kind.STRESS);
    return check("combined stress", part, verdict, List.of(step));
  }

  static Check outside(String part) {
    Verdict verdict =
        new Verdict.OutsideRange(
            new Verdict.Measured(0.3, 1, Kind.RATIO), "outside table 5.2: wall of class 4");
    return check("column buckling", part, verdict, List.of());
  }

  static Check open(String part) {
    Verdict verdict = new Verdict.NotChecked("torsion of an open section is not checked");
    return check("torsion", part, verdict, List.of());
  }

  static Check check(String what, String part, Verdict verdict, List<Step> working) {
    return new Check(
        what,
        part,
        "at front left",
        "bump, both front wheels",
        new Basis(LimitState.YIELD, "design factor 1.5 on yield"),
        verdict,
        working,
        "EN 1993-1-1:2005, 6.2.1(5)",
        "");
  }

  static CheckSheet sheet() {
    return new CheckSheet(
        "Curlew",
        List.of(
            measured("left rail", 0.6),
            measured("front crossmember", 1.11),
            measured("front crossmember", 0.2),
            outside("rear crossmember"),
            open("rear crossmember"),
            open("middle crossmember")),
        List.of("welds"),
        List.of("small deflections"),
        Set.of(Caution.values()));
  }
}
