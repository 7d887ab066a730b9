package rungwork.check;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungwork.check.MemberChecks.Growth;
import rungwork.check.MemberChecks.Onset;
import rungwork.material.RatedMaterial;
import rungwork.section.Section;
import rungwork.section.StressPoint;
import rungwork.solve.InternalForces;
import rungwork.solve.Response;

/**
 * At how many times the growing loads a member's first fibre yields, what stands being there all
 * along. Linear: each stress is that of what stands and a multiple of the growing one, so the
 * multiple follows in closed form at every stress point of every cut. Effective widths of slender
 * walls go by the stresses of the growing loads.
 *
 * @param standing the member under what stands
 * @param growing the same cuts under the growing loads
 * @param strength of its material
 */
record FirstYield(LoadedMember standing, LoadedMember growing, RatedMaterial.Strength strength) {
  static FirstYield of(Member member, Growth loads, RatedMaterial.Strength strength) {
    LoadedMember own = LoadedMember.of(member, loads.growing(), DesignFactor.NONE);
    LoadedMember grown = cutAlike(own, loads.growing());
    Section left = EffectiveWidth.reduced(grown, strength.yield());
    return new FirstYield(
        cutAlike(own, loads.standing()).reduced(left), grown.reduced(left), strength);
  }

  private static LoadedMember cutAlike(LoadedMember own, Response response) {
    List<Cut> cuts = own.cuts().stream().map(cut -> under(cut, response)).toList();
    return new LoadedMember(
        own.member(), own.loadCase(), own.stock(), own.whole(), cuts, own.factor());
  }

  private static Cut under(Cut cut, Response response) {
    InternalForces there = response.forces(cut.beam().name()).at(cut.fraction());
    return new Cut(cut.beam(), cut.section(), cut.fraction(), cut.along(), there);
  }

  /** A stress point of a cut with its stresses and the yield strength there. */
  private record Place(Cut cut, StressPoint point, GrowingStress stress, double yield) {
    double factor() {
      return stress.firstYield(yield);
    }
  }

  Onset onset() {
    return places()
        .min(Comparator.comparingDouble(Place::factor))
        .map(this::onset)
        .orElseGet(
            () ->
                Onset.notChecked(
                    MemberChecks.FIRST_YIELD,
                    "section " + growing.stock().section().name() + " has no stress points"));
  }

  private Onset onset(Place worst) {
    String where = worst.cut.place() + ", " + worst.point.name();
    List<Step> working =
        Double.isInfinite(worst.factor()) || worst.stress.yieldsStanding(worst.yield)
            ? List.of()
            : List.of(worst.stress.working(worst.yield));
    return new Onset(MemberChecks.FIRST_YIELD, where, worst.factor(), working, doubts());
  }

  private List<String> doubts() {
    return OpenTorsion.of(growing).filter(OpenTorsion::leftOut).isPresent()
        ? List.of("the stress of warping is left out")
        : List.of();
  }

  private Stream<Place> places() {
    return IntStream.range(0, growing.cuts().size()).boxed().flatMap(this::places);
  }

  private Stream<Place> places(int cut) {
    Cut grown = growing.cuts().get(cut);
    Cut stands = standing.cuts().get(cut);
    double yield =
        CombinedStress.besideWeld(grown, growing) ? strength.weldedYield() : strength.yield();
    return grown.section().points().stream()
        .flatMap(
            point ->
                stresses(stands, grown, point).stream()
                    .map(stress -> new Place(grown, point, stress, yield)));
  }

  /** One state; of an open section whose bay holds its warping, every sign of that stress too. */
  private List<GrowingStress> stresses(Cut stands, Cut grown, StressPoint point) {
    double[] before = {PointStress.normalStress(stands, point), across(stands, point)};
    double[] then = {PointStress.normalStress(grown, point), across(grown, point)};
    double[] twist = {stands.forces().t() * point.perT(), grown.forces().t() * point.perT()};
    RestrainedWarping warping = RestrainedWarping.of(growing);
    if (!warping.held()) {
      return List.of(sum(before, then, new double[2], twist));
    }
    double perTorque = warping.stress(1, point).result();
    double part = warping.twistingPart().result();
    double[] held = {perTorque * torque(standing), perTorque * torque(growing)};
    return List.of(
        sum(before, then, held, new double[2]),
        sum(before, then, new double[] {-held[0], -held[1]}, new double[2]),
        sum(before, then, new double[2], new double[] {part * twist[0], part * twist[1]}));
  }

  /** Normal and shear stress before and then, with the stress of warping and of twist in each. */
  private static GrowingStress sum(
      double[] before, double[] then, double[] warping, double[] twist) {
    return new GrowingStress(
        before[0] + warping[0], then[0] + warping[1], before[1] + twist[0], then[1] + twist[1]);
  }

  /** The shear stress of both shear forces [Pa]. */
  private static double across(Cut cut, StressPoint point) {
    return cut.forces().vy() * point.perVy() + cut.forces().vz() * point.perVz();
  }

  private static double torque(LoadedMember member) {
    return member.largest(forces -> Math.abs(forces.t()));
  }
}
