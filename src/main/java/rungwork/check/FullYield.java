package rungwork.check;

import java.util.Comparator;
import java.util.List;
import rungwork.check.MemberChecks.Growth;
import rungwork.check.MemberChecks.Onset;
import rungwork.quantity.Kind;
import rungwork.solve.InternalForces;
import rungwork.solve.YieldSurface;

/**
 * At how many times the growing loads a member's section is fully plastic somewhere, its forces as
 * in the elastic frame: before other members come to its help. What stands is there all along, and
 * each face of the yield surface is reached in closed form.
 *
 * @param cuts the member's cuts under the growing loads
 * @param loads both states
 * @param surface what the section carries
 */
record FullYield(List<Cut> cuts, Growth loads, YieldSurface surface) {
  private static final Formula REACHED =
      new Formula(
          new Symbol("k", Kind.RATIO, "times the growing loads when the section is fully plastic"),
          "(1 − {u₀})/{u₁}",
          List.of(
              new Symbol("u₀", Kind.RATIO, "part of the yield surface used by what stands"),
              new Symbol("u₁", Kind.RATIO, "part used by the growing loads")),
          "yield surface in N, My, Mz and T; forces of the elastic frame",
          in -> (1 - in[0]) / in[1]);

  static FullYield of(Member member, Growth loads, YieldSurface surface) {
    return new FullYield(
        LoadedMember.of(member, loads.growing(), DesignFactor.NONE).cuts(), loads, surface);
  }

  private record Reached(Cut cut, double standing, double growing) {
    double factor() {
      return growing <= 0 ? Double.POSITIVE_INFINITY : Math.max(0, (1 - standing) / growing);
    }
  }

  Onset onset() {
    Reached first =
        cuts.stream()
            .map(this::first)
            .min(Comparator.comparingDouble(Reached::factor))
            .orElseThrow();
    List<Step> working =
        first.growing <= 0 ? List.of() : List.of(REACHED.with(first.standing, first.growing));
    return new Onset(
        MemberChecks.FULLY_PLASTIC, first.cut.place(), first.factor(), working, List.of());
  }

  /** The face that a cut reaches first. */
  private Reached first(Cut cut) {
    InternalForces stands = loads.standing().forces(cut.beam().name()).at(cut.fraction());
    Reached first = new Reached(cut, 0, 0);
    for (YieldSurface.Face face : surface.faces()) {
      double growing = use(face, cut.forces());
      // Only what grows towards the face, and faster than the best so far, is worth an object.
      if (growing > 0 && first.factor() * growing > 1 - use(face, stands)) {
        first = new Reached(cut, use(face, stands), growing);
      }
    }
    return first;
  }

  private static double use(YieldSurface.Face face, InternalForces f) {
    double work = face.n() * f.n() + face.y() * f.my() + face.z() * f.mz() + face.t() * f.t();
    return work / face.reach();
  }
}
