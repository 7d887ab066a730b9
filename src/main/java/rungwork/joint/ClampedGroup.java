package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.LimitState;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A bolt group that is tightened and asked not to slip, besides everything else that is asked of
 * it.
 *
 * @param group the group
 * @param preload clamping force of each bolt [N], above zero, at most the proof load
 * @param friction between the plates [1], above zero
 */
record ClampedGroup(BoltGroup group, double preload, double friction) implements Joint {
  private static final Symbol FV = Letters.force("Fv", "shear on the bolt");
  private static final Symbol FT = Letters.force("Ft", "tension in the bolt");
  private static final Symbol FP = Letters.force("Fp", "clamping force");
  private static final Symbol MU = Letters.ratio("μ", "friction between the plates");
  private static final Symbol GAMMA_M3 = Letters.ratio("γM3", "partial factor on slip");
  private static final Formula SLIP =
      new Formula(
          Letters.UTILISATION,
          "{γ}·({γM3}·{Fv}/({μ}·{Fp}) + 0.8·{Ft}/{Fp})",
          List.of(Letters.GAMMA, GAMMA_M3, FV, MU, FP, FT),
          "EN 1993-1-8:2005, 3.9.1 and 3.9.2, one friction face, ks = 1, solved for the load",
          in -> in[0] * (in[1] * in[2] / (in[3] * in[4]) + 0.8 * in[5] / in[4]));
  private static final String SCATTER =
      "The clamping force is what the user states; tightening by torque scatters by a third either"
          + " way, and paint between the plates takes the friction away.";

  ClampedGroup {
    Guard.positive("clamping force of " + group.name(), preload, Scale.KN);
    Guard.positive("friction of " + group.name(), friction, Scale.NUMBER);
    if (preload > group.bolt().proofLoad()) {
      throw new ModelException(
          "clamping force "
              + Scale.KN.show(preload)
              + " of "
              + group.name()
              + " is above the proof load of "
              + group.bolt()
              + ", "
              + Scale.KN.show(group.bolt().proofLoad()));
    }
  }

  @Override
  public String name() {
    return group.name();
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    List<Check> checks = new ArrayList<>(group.checks(load));
    List<Double> tensions = group.tensions(load);
    Basis basis =
        new Basis(
            LimitState.ULTIMATE,
            "γM3 = "
                + Scale.NUMBER.number(load.factors().gammaM2(), 3)
                + " and "
                + load.factors().design());
    if (tensions.isEmpty()) {
      checks.add(
          Question.of("slip between the plates", name(), load)
              .open(basis, "the tension in the bolts is not known", SLIP.source()));
      return checks;
    }
    List<Double> shears = group.shears(load);
    Step worst = slip(load, shears.get(0), tensions.get(0));
    int bolt = 1;
    for (int i = 1; i < shears.size(); i++) {
      Step here = slip(load, shears.get(i), tensions.get(i));
      if (here.result() > worst.result()) {
        worst = here;
        bolt = i + 1;
      }
    }
    checks.add(
        Finding.ratio(worst)
            .answers(
                Question.of("slip between the plates", name(), load)
                    .at("bolt " + bolt)
                    .with(SCATTER),
                basis));
    return checks;
  }

  private Step slip(FaceLoad load, double shear, double tension) {
    Factors factors = load.factors();
    return SLIP.with(
        factors.design().value(), factors.gammaM2(), shear, friction, preload, tension);
  }
}
