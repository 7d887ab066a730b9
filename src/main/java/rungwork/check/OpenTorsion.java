package rungwork.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rungwork.check.Member.Ends;
import rungwork.check.Verdict.Measured;
import rungwork.check.Verdict.NotChecked;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.section.StressPoint;
import rungwork.section.Torsion;

/**
 * The twist of an open section. Free to warp, all of it is Saint-Venant's shear, which the combined
 * stress holds. Held, its warping's normal stress adds to that of bending; it is looked at where it
 * is largest. Nothing is checked where the frame was not solved with the ends stated.
 *
 * <p>Left out: the shear stress of held warping (where σω is largest it is nil; it nowhere raises
 * the equivalent stress by more than 2 %), bimoments of forces that enter off the shear centre or
 * along a flange, and the growth of twist under bending.
 */
final class OpenTorsion {
  static final String WHAT = "torsion of an open section";
  private static final String SOURCE =
      "V. Z. Vlasov, Thin-Walled Elastic Beams; EN 1993-1-1:2005, 6.2.7(4) and 6.2.1(5)";

  private OpenTorsion() {}

  /** What there is to say, if the member is open and carries twist that matters. */
  static Optional<Finding> of(LoadedMember member) {
    if (!arises(member)) {
      return Optional.empty();
    }
    RestrainedWarping restrained = RestrainedWarping.of(member);
    Ends ends = member.member().warping().ends();
    if (!restrained.known() || ends == Ends.UNKNOWN) {
      return Optional.of(unknown(member, restrained));
    }
    if (!restrained.held() || !(member.stock().material() instanceof RatedMaterial rated)) {
      return Optional.empty();
    }
    return Optional.of(held(member, rated));
  }

  private static boolean arises(LoadedMember member) {
    if (member.stock().section().torsion() != Torsion.OPEN) {
      return false;
    }
    double torque = torque(member);
    return torque > 0 && !(torque / modulus(member) <= member.negligibleStress());
  }

  /** Whether the stress of warping is left out of what the other checks say. */
  static boolean leftOut(Finding finding) {
    return finding.verdict() instanceof NotChecked;
  }

  private static Finding held(LoadedMember member, RatedMaterial material) {
    PointStress worst = PointStress.worst(member.cuts(), Twist.heldEnd(member)).orElseThrow();
    List<Step> working = new ArrayList<>(List.of(RestrainedWarping.of(member).stiffening()));
    working.addAll(worst.working());
    double demand = working.get(working.size() - 1).result();
    Step capacity = capacity(material, member.factor().value());
    working.add(capacity);
    return new Finding(
        WHAT,
        worst.cut().place()
            + ", "
            + worst.point().name()
            + "; warping "
            + member.member().warping().ends().words()
            + ", the largest torque of the bay taken all along",
        new Measured(demand, capacity.result(), Kind.STRESS),
        working,
        SOURCE);
  }

  /** An end that holds the warping is welded. */
  private static Step capacity(RatedMaterial material, double gamma) {
    double yield = material.strength().yield();
    double welded = material.strength().weldedYield();
    return welded == yield
        ? StressFormulas.DESIGN_STRENGTH.with(yield, gamma)
        : StressFormulas.WELDED_STRENGTH.with(welded, gamma);
  }

  private static Finding unknown(LoadedMember member, RestrainedWarping restrained) {
    List<Step> working = new ArrayList<>();
    working.add(StressFormulas.TWIST.with(torque(member), modulus(member)));
    boolean stressed = restrained.known() && !member.stock().section().points().isEmpty();
    if (stressed) {
      working.add(restrained.decay());
      working.add(restrained.stiffening());
      working.add(restrained.stress(torque(member), farthest(member)));
    }
    String reason =
        stressed
            ? "it carries twist, and nothing says how far its ends hold the warping; the working"
                + " shows the shear stress for free ends and the warping stress for held ends, both"
                + " for the torque of a frame whose ends are free; a frame with held ends carries"
                + " more"
            : "it carries twist, and the section is known by its properties alone, without its"
                + " warping; the working shows the shear stress for ends that are free to warp";
    return new Finding(
        WHAT,
        Finding.WHOLE,
        new NotChecked(
            reason
                + "; a section that has to carry twist and is not checked for it cannot be named"
                + " the choice"),
        working,
        SOURCE);
  }

  private static StressPoint farthest(LoadedMember member) {
    return member.stock().section().points().stream()
        .max(Comparator.comparingDouble(point -> Math.abs(point.sectorial())))
        .orElseThrow();
  }

  private static double torque(LoadedMember member) {
    return member.largest(forces -> Math.abs(forces.t()));
  }

  /** Torque over the largest shear stress for free ends [m³]; nil where no point tells it. */
  private static double modulus(LoadedMember member) {
    double perTorque =
        member.stock().section().points().stream()
            .map(StressPoint::perT)
            .mapToDouble(Math::abs)
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    return 1 / perTorque;
  }
}
