package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.check.Verdict.Measured;
import rungwork.fault.Scale;
import rungwork.frame.Wrench;
import rungwork.quantity.Kind;

/**
 * A tab that holds a belt, by the figures of student-competition rules: at least 60 mm² in tension
 * and in shear, at least 1.6 mm thick, never in bending. They are limits on shape for harnesses of
 * such vehicles, no strength.
 *
 * @param tab the tab
 */
record HarnessTab(Tab tab) implements Joint {
  private static final double LEAST_AREA = 60e-6;
  private static final double LEAST_THICKNESS = 1.6e-3;

  /** Off its line by less than this part of the force is no bending [1]: rounding. */
  private static final double IN_LINE = 1e-6;

  private static final String RULES =
      "student-competition rules: harness tabs, 60 mm² in shear and tension, 1.6 mm, no bending";
  private static final Symbol W = Letters.length("w", "width at the hole");
  private static final Symbol E = Letters.length("e", "end distance");
  private static final Symbol N = Letters.number("n", "number of plates");
  private static final Formula TENSION =
      new Formula(
          Letters.area("At", "area in tension"),
          "{n}·({w} − {d₀})·{t}",
          List.of(N, W, Letters.D0, Letters.T),
          RULES,
          in -> in[0] * (in[1] - in[2]) * in[3]);
  private static final Formula SHEAR =
      new Formula(
          Letters.area("Av", "area in shear"),
          "{n}·2·({e} − {d₀}/2)·{t}",
          List.of(N, E, Letters.D0, Letters.T),
          RULES,
          in -> in[0] * 2 * (in[1] - in[2] / 2) * in[3]);

  @Override
  public String name() {
    return tab.name() + ", harness rules";
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    Tab.Plate plate = tab.plate();
    int count = plate.count().plates();
    Step tension = TENSION.with(count, plate.width(), tab.eye().hole(), plate.thickness());
    Step shear = SHEAR.with(count, tab.eye().end(), tab.eye().hole(), plate.thickness());
    List<Check> checks = new ArrayList<>();
    checks.add(least(tension).answers(asks("harness tab, area in tension", load)));
    checks.add(least(shear).answers(asks("harness tab, area in shear", load)));
    checks.add(
        HoleRules.limit(List.of(), LEAST_THICKNESS, plate.thickness(), RULES)
            .answers(asks("harness tab, thickness", load)));
    bending(load, checks);
    return checks;
  }

  private static Finding least(Step area) {
    Measured numbers = new Measured(LEAST_AREA, area.result(), Kind.AREA);
    return new Finding(List.of(area), numbers, RULES, List.of());
  }

  private void bending(FaceLoad load, List<Check> checks) {
    Wrench w = load.wrench();
    double off = Math.hypot(w.fx(), w.fy());
    if (off > IN_LINE * Math.abs(w.fz()) || w.fz() < 0) {
      double angle = Math.toDegrees(Math.atan2(off, w.fz()));
      checks.add(
          asks("harness tab, in line with its belt", load)
              .open(
                  Factors.proportion(),
                  "the rules allow no bending; the load is "
                      + Scale.NUMBER.show(angle)
                      + "° off the tab's line: turn the tab towards its belt",
                  RULES));
    }
  }

  private Question asks(String what, FaceLoad load) {
    return Question.of(what, tab.name(), load).at("hole");
  }
}
