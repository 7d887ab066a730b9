package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.check.Check;
import rungwork.check.Step;
import rungwork.check.Verdict.Amount;
import rungwork.check.Verdict.Reason;
import rungwork.frame.Wrench;
import rungwork.quantity.Kind;

/** A bolt through a tab under a load: what it takes, and its checks. */
final class LoadedPivot {
  /** A moment below this is rounding [N·m]. */
  private static final double NOTHING = 1e-6;

  private static final String UNCLAMPED =
      "Counts no preload: a tight, well-clamped stack bends the bolt less, a loose one does not.";

  private final Pivot pivot;
  private final Tab tab;
  private final FaceLoad load;
  private final BoltStrength strength;
  private final Step across;
  private final Step shear;
  private final Step along;
  private final Step moment;

  LoadedPivot(Pivot pivot, FaceLoad load) {
    this.pivot = pivot;
    tab = pivot.tab();
    this.load = load;
    strength = new BoltStrength(tab.eye().bolt(), pivot.threads(), load.factors());
    Wrench wrench = load.wrench();
    across = PivotFormulas.ACROSS.with(wrench.fx(), wrench.fz());
    shear = PivotFormulas.SHEAR.with(across.result(), tab.plate().count().plates());
    along = PivotFormulas.ALONG.with(wrench.fy());
    moment = bending(across.result());
  }

  /** The bending moment of the bolt [N·m]. */
  double bendingMoment() {
    return moment.result();
  }

  List<Check> checks() {
    List<Check> checks = new ArrayList<>();
    checks.add(shear());
    checks.add(shearSecond());
    checks.add(bearing());
    checks.add(yielding());
    turning().ifPresent(checks::add);
    if (tab.plate().count() == Tab.Count.PAIR) {
      checks.add(pin());
    }
    if (along.result() > 0) {
      checks.add(tension());
      checks.add(combined());
    }
    return checks;
  }

  private Step bending(double force) {
    double thickness = tab.plate().thickness();
    double gap = pivot.stack().gap();
    double centre = pivot.stack().centre();
    return switch (tab.plate().count()) {
      case SINGLE -> PivotFormulas.SINGLE_BENDING.with(force, thickness, gap, centre);
      case PAIR -> PivotFormulas.DOUBLE_BENDING.with(force, centre, gap, thickness);
    };
  }

  private Check shear() {
    return Finding.compare(shear, strength.shear())
        .after(across)
        .outside(strength.outside())
        .answers(asks("bolt shear"), load.factors().ultimate());
  }

  private Check shearSecond() {
    return Finding.compare(shear, strength.americanShear())
        .after(across)
        .answers(asks("bolt shear, second opinion"), load.factors().american());
  }

  private Check bearing() {
    BoltStrength.Hole hole =
        new BoltStrength.Hole(
            tab.eye().hole(), tab.edge(), tab.plate().thickness(), tab.ultimateAtHole());
    Question question = Question.of("bearing of the tab", tab.name(), load).at("hole");
    Optional<Reason> tooNear = hole.tooNear();
    if (tooNear.isPresent()) {
      return question.open(load.factors().ultimate(), tooNear.get(), "EN 1993-1-8:2005, table 3.4");
    }
    List<Step> steps =
        tab.plate().count() == Tab.Count.SINGLE
            ? strength.bearingOfSingleLap(hole)
            : strength.bearing(hole);
    return Finding.compare(shear, steps.get(2))
        .after(steps.subList(0, 2))
        .after(across)
        .outside(strength.outside())
        .answers(question, load.factors().ultimate());
  }

  private Check yielding() {
    Step modulus = PivotFormulas.MODULUS.with(strength.barDiameter());
    Step stress =
        PivotFormulas.STRESS.with(
            moment.result(), modulus.result(), along.result(), strength.area(), shear.result());
    return Finding.compare(stress, strength.yield())
        .after(across, shear, along, moment)
        .after(modulus)
        .answers(asks("bolt bending, first yield").with(UNCLAMPED), load.factors().yield());
  }

  private Check pin() {
    Step modulus = PivotFormulas.MODULUS.with(strength.barDiameter());
    double yield = strength.bolt().strength().nominalYield();
    Step resistance =
        PivotFormulas.PIN_BENDING.with(modulus.result(), yield, load.factors().design().value());
    Step resisted = strength.shear();
    Step together =
        PivotFormulas.PIN.with(
            moment.result(), resistance.result(), shear.result(), resisted.result());
    return Finding.ratio(together)
        .after(modulus, resistance, resisted)
        .after(across, shear, along, moment)
        .outside(strength.outside())
        .answers(asks("bolt as a pin").with(UNCLAMPED), load.factors().ultimate());
  }

  /** A ball or a free bush gives the bolt forces only; anything else is more than is asked here. */
  private Optional<Check> turning() {
    Wrench wrench = load.about(tab.hole());
    double turn = Math.hypot(Math.hypot(wrench.mx(), wrench.my()), wrench.mz());
    return turn <= NOTHING
        ? Optional.empty()
        : Optional.of(
            asks("moment on the bolt")
                .open(
                    load.factors().yield(),
                    Reason.of(
                        "the load turns the bolt with {} besides its force; only a force at the"
                            + " hole is checked",
                        new Amount(Kind.MOMENT, turn)),
                    "statics"));
  }

  private Check tension() {
    return Finding.compare(along, strength.tension())
        .outside(strength.outside())
        .answers(asks("bolt tension").with("Counts no preload."), load.factors().ultimate());
  }

  private Check combined() {
    Step together = strength.combined(shear.result(), along.result());
    return Finding.ratio(together)
        .after(shear, along, strength.shear(), strength.tension())
        .outside(strength.outside())
        .answers(asks("bolt shear and tension"), load.factors().ultimate());
  }

  private Question asks(String what) {
    return Question.of(what, pivot.name(), load);
  }
}
