package rungwork.joint;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.LimitState;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.joint.BoltGroupStrength.Share;

/**
 * Whether a bolted plate stays where it is clamped: friction under each bolt, its clamping force
 * less what pulls on it. AISC 360-16, J3.8, in standard holes with one slip plane, its ratio Du of
 * mean to least clamping force taken as 1.
 *
 * @param group the bolts and their plate
 * @param preload clamping force of each bolt [N], above zero, at most its proof load
 * @param friction coefficient of the faces [1]
 */
record SlipResistance(BoltGroup group, double preload, double friction) implements Joint {
  private static final String SOURCE = "AISC 360-16, J3.8; Du = 1";
  private static final String SCATTER =
      "Tightening by torque scatters the clamping force by a third either way; paint, oil and"
          + " settling lower friction and force.";
  private static final Symbol MU = Letters.ratio("μ", "friction of the faces");
  private static final Symbol FP = Letters.force("Fp", "clamping force of the bolt");
  private static final Symbol FT = Letters.force("Ft", "tension in the bolt from the load");
  private static final Formula SLIP =
      new Formula(
          Letters.force("Fs", "force that slips"),
          "{μ}·max({Fp} − {Ft}, 0)/{γ}",
          List.of(MU, FP, FT, Letters.GAMMA),
          SOURCE,
          in -> in[0] * Math.max(in[1] - in[2], 0) / in[3]);

  private static final Formula CLAMPED =
      new Formula(
          Letters.force("F", "pull that lifts the plate off"),
          "{Fp}",
          List.of(FP),
          "statics",
          in -> in[0]);

  /** Refuses a force that the bolt cannot keep, and a friction that no steel has. */
  SlipResistance {
    Guard.positive("clamping force of " + group.name(), preload, Scale.KN);
    if (preload > group.bolt().proofLoad()) {
      throw new ModelException(
          "clamping force "
              + Scale.KN.show(preload)
              + " of "
              + group.name()
              + " is above the proof load of its bolt "
              + group.bolt()
              + ", "
              + Scale.KN.show(group.bolt().proofLoad()));
    }
    if (!(friction > 0 && friction < 1)) {
      throw new ModelException(
          "friction "
              + Scale.NUMBER.show(friction)
              + " under "
              + group.name()
              + " is outside above 0 to below 1");
    }
  }

  @Override
  public String name() {
    return group.name() + ", slip";
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    Basis basis =
        new Basis(LimitState.YIELD, load.factors().design() + " on friction; φ = 1 of J3.8");
    Question question = Question.of("slip", group.name(), load).with(SCATTER);
    Optional<String> open = Pattern.ofBolts(group.spots()).cannotTake(load);
    if (open.isPresent()) {
      return List.of(question.open(basis, open.get(), SOURCE));
    }
    return List.of(worst(load, question, basis));
  }

  private Check worst(FaceLoad load, Question question, Basis basis) {
    double gamma = load.factors().design().value();
    Share worst =
        new BoltGroupStrength(group, load)
            .shares().stream().max(Comparator.comparingDouble(this::use)).orElseThrow();
    Question at = question.at("bolt " + worst.number());
    if (worst.tension().result() >= preload) {
      return Finding.compare(worst.tension(), CLAMPED.with(preload)).answers(at, basis);
    }
    Step slip = SLIP.with(friction, preload, worst.tension().result(), gamma);
    return Finding.compare(worst.shear(), slip)
        .after(worst.tension())
        .after(worst.lines())
        .answers(at, basis);
  }

  private double use(Share share) {
    double left = preload - share.tension().result();
    return left > 0 ? share.shear().result() / left : Double.POSITIVE_INFINITY;
  }
}
