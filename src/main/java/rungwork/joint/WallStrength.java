package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.check.Check;
import rungwork.check.Step;
import rungwork.check.Verdict.Amount;
import rungwork.check.Verdict.Reason;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * What a tube's wall can take under a plate: its face bending (a yield line round the foot), the
 * foot punching through, the wall shearing along the foot. The yield strength is that beside a
 * weld; γM5 = 1.
 */
final class WallStrength {
  /** A force, moment or offset below this is rounding [N, N·m, m]. */
  private static final double NOTHING = 1e-9;

  private static final String OFF_CENTRE =
      "the plate stands {} off the face's centre line; EN 1993-1-8, table 7.13 covers plates on it,"
          + " and a yield line guessed for another place errs on the unsafe side: move the plate to"
          + " the centre line, or weld a bracket to two faces";
  private static final String TWISTED =
      "EN 1993-1-8, 7.5 gives no resistance of a face to a foot that is twisted on it; the weld is"
          + " asked for the torque, the wall is not";
  private static final String SIDEWAYS =
      "a plate along or through the tube bent sideways rocks the thin face; no rule with a source"
          + " is at hand: brace the tab, or weld it to two faces";

  private final PlateOnTube joint;
  private final FaceLoad load;
  private final WallRules rules;
  private final Wrench wrench;

  WallStrength(PlateOnTube joint, FaceLoad load) {
    this.joint = joint;
    this.load = load;
    rules = WallRules.of(joint, load.factors().design().value());
    wrench = load.about(new Point(0, 0, 0));
  }

  List<Check> checks() {
    List<Check> checks = new ArrayList<>(List.of(punching(), shear()));
    if (Math.abs(joint.foot().offset()) > NOTHING) {
      checks.add(
          asks("bending of the face")
              .open(
                  load.factors().yield(),
                  Reason.of(OFF_CENTRE, Amount.length(Math.abs(joint.foot().offset()))),
                  WallFormulas.TABLE));
      return checks;
    }
    checks.addAll(face());
    if (Math.abs(wrench.mz()) > NOTHING) {
      checks.add(
          asks("twisting of the foot on the face")
              .open(load.factors().yield(), TWISTED, WallFormulas.TABLE));
    }
    return checks;
  }

  private List<Check> face() {
    List<Check> checks = new ArrayList<>();
    List<Finding> bending = new ArrayList<>();
    if (Math.abs(wrench.fz()) > NOTHING) {
      pull(checks, bending);
    }
    if (Math.abs(wrench.my()) > NOTHING) {
      Finding tipping = rules.tipping(WallFormulas.TIP.with(wrench.my()));
      bending.add(tipping);
      checks.add(answered("bending of the face by the moment in the plate's plane", tipping));
    }
    if (Math.abs(wrench.mx()) > NOTHING) {
      rock(checks, bending);
    }
    if (bending.size() > 1) {
      checks.add(together(bending, checks));
    }
    return checks;
  }

  private void pull(List<Check> checks, List<Finding> bending) {
    Step demand = WallFormulas.PULL.with(wrench.fz());
    bending.add(rules.pull(demand));
    checks.add(answered("bending of the face by the pull", bending.get(0)));
    rules
        .secondPull(demand)
        .ifPresent(
            finding ->
                checks.add(answered("bending of the face by the pull, second opinion", finding)));
    rules
        .uneven(demand)
        .ifPresent(finding -> checks.add(answered("uneven support of the plate", finding)));
    rules
        .sideWalls(demand)
        .ifPresent(finding -> checks.add(answered("side walls under the foot", finding)));
  }

  private Check together(List<Finding> bending, List<Check> checks) {
    boolean open = checks.stream().anyMatch(check -> check.utilisation().isEmpty());
    List<Reason> missing =
        open
            ? List.of(Reason.of("outside EN 1993-1-8: the rocking moment is left out"))
            : List.of();
    return answered(
        "bending of the face, all together", WallRules.together(bending).outside(missing));
  }

  private void rock(List<Check> checks, List<Finding> bending) {
    Optional<Finding> rocking = rules.rocking(WallFormulas.ROCK.with(wrench.mx()));
    rocking.ifPresent(bending::add);
    checks.add(
        rocking
            .map(finding -> answered("rocking of the face", finding))
            .orElseGet(
                () ->
                    asks("rocking of the face")
                        .open(load.factors().yield(), SIDEWAYS, WallFormulas.TABLE)));
  }

  private Check punching() {
    Step demand =
        joint.foot().way() == PlateOnTube.Way.PATCH
            ? WallFormulas.PATCH_EDGE.with(
                wrench.fz(),
                joint.foot().length(),
                joint.foot().thickness(),
                wrench.my(),
                wrench.mx())
            : WallFormulas.PLATE_EDGE.with(wrench.fz(), joint.foot().length(), wrench.my());
    return answered("punching through the wall", Finding.compare(demand, rules.punching()));
  }

  private Check shear() {
    Step demand = WallFormulas.ALONG_FACE.with(wrench.fx(), wrench.fy());
    return answered("shear of the wall along the foot", Finding.compare(demand, rules.shear()));
  }

  private Check answered(String what, Finding finding) {
    return finding.answers(asks(what), load.factors().yield());
  }

  private Question asks(String what) {
    return Question.of(what, joint.name(), load).at("tube wall");
  }
}
