package rungwork.check;

import java.util.List;
import java.util.Optional;
import rungwork.check.Verdict.NotChecked;
import rungwork.section.StressPoint;
import rungwork.section.Torsion;

/** The twist of an open section: never checked here, because its warping stress is not bounded. */
final class OpenTorsion {
  private static final String WHAT = "torsion of an open section";

  private OpenTorsion() {}

  /** That it is not checked, if the member is open and carries twist. */
  static Optional<Finding> of(LoadedMember member) {
    if (member.stock().section().torsion() != Torsion.OPEN) {
      return Optional.empty();
    }
    double torque = member.largest(forces -> Math.abs(forces.t()));
    double perTorque =
        member.stock().section().points().stream()
            .map(StressPoint::perT)
            .mapToDouble(Math::abs)
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    if (torque == 0 || torque * perTorque <= member.negligibleStress()) {
      return Optional.empty();
    }
    Step twist = StressFormulas.TWIST.with(torque, 1 / perTorque);
    return Optional.of(
        new Finding(
            WHAT,
            Finding.WHOLE,
            new NotChecked(
                "it carries twist, and the stress of its warping is not bounded here; the working"
                    + " shows the shear stress for ends that are free to warp; a section that has"
                    + " to carry twist and is not checked for it cannot be named the choice"),
            List.of(twist),
            "strength of materials; V. Z. Vlasov's warping is not worked out here"));
  }
}
