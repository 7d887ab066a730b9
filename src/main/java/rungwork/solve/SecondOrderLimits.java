package rungwork.solve;

import java.util.Set;
import java.util.function.Predicate;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Beam;
import rungwork.frame.End;
import rungwork.frame.Release;

/** What a normal force does to some beams and the second order does not follow: refused by name. */
final class SecondOrderLimits {
  private static final Set<Release> SHEARS =
      Set.of(Release.IN_PLANE_SHEAR, Release.OUT_OF_PLANE_SHEAR);

  /** Pull over EI/L² from which a beam hangs like a rope: √150 waves lose six digits [1]. */
  private static final double ROPE = 150;

  private SecondOrderLimits() {}

  /** Refuses sliding ends and rigid arms where a normal force acts. */
  static void refuseUnfit(Structure structure, double[] normalForces) {
    refuse(
        structure,
        normalForces,
        member -> slides(member.beam().atStart()) || slides(member.beam().atEnd()),
        "slides across at an end, and the second order does not follow a force across a sliding"
            + " joint; let the joint pass the shear force on");
    refuse(
        structure,
        normalForces,
        member -> armed(member.beam()),
        "ends at a rigid arm, which would turn under the force; model the arm as a stiff beam");
  }

  /** Refuses a pull so strong that it leaves bending to the ends of the beam. */
  static void refuseRopes(Structure structure, double[] normalForces) {
    for (int i = 0; i < normalForces.length; i++) {
      Member member = structure.members().get(i);
      Member.Rigidity rigidity = member.rigidity();
      double bending = Math.min(rigidity.bendingY(), rigidity.bendingZ());
      double most = ROPE * bending / (member.length() * member.length());
      if (normalForces[i] > most) {
        throw new ModelException(
            "beam %s is so slender that a pull of %s makes a rope of it, above %s; cut it into shorter beams"
                .formatted(
                    member.beam().name(), Scale.KN.show(normalForces[i]), Scale.KN.show(most)));
      }
    }
  }

  private static boolean slides(End end) {
    return end.released().stream().anyMatch(SHEARS::contains)
        || end.springs().keySet().stream().anyMatch(SHEARS::contains);
  }

  private static boolean armed(Beam beam) {
    return !beam.atStart().arm().equals(End.Arm.NONE) || !beam.atEnd().arm().equals(End.Arm.NONE);
  }

  private static void refuse(
      Structure structure, double[] normalForces, Predicate<Member> unfit, String why) {
    for (int i = 0; i < normalForces.length; i++) {
      Member member = structure.members().get(i);
      if (normalForces[i] != 0 && unfit.test(member)) {
        throw new ModelException(
            "beam %s carries a normal force of %s and %s"
                .formatted(member.beam().name(), Scale.KN.show(normalForces[i]), why));
      }
    }
  }
}
