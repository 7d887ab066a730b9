package rungwork.check;

import java.util.List;
import java.util.Optional;
import rungwork.section.StressPoint;

/**
 * How a part carries its torque where its stress is looked at: by Saint-Venant's shear stress, by
 * the normal stress of held warping, or by some of both.
 *
 * <p>Along a bay that holds its warping one gives way to the other; where one is largest the other
 * is nothing, and between them the equivalent stress stays below the larger of both but for 2 %.
 *
 * @param held the bay that holds its warping; nothing where all torque twists the walls
 * @param torque the largest torque along the bay, counted positive [N·m]
 * @param place whether it is looked at where warping is held, or where it is freest
 */
record Twist(Optional<RestrainedWarping> held, double torque, Place place) {
  /** All torque twists the walls: closed cells, solid bars, and open sections free to warp. */
  static final Twist FREE = new Twist(Optional.empty(), 0, Place.FREEST);

  /** Where along a bay. */
  enum Place {
    /** Where Saint-Venant's part of the torque is largest. */
    FREEST,
    /** At an end that holds the warping. */
    HELD_END
  }

  /** Where held warping leaves most of the torque to Saint-Venant. */
  static Twist freest(LoadedMember member) {
    RestrainedWarping restrained = RestrainedWarping.of(member);
    return restrained.held()
        ? new Twist(Optional.of(restrained), largest(member), Place.FREEST)
        : FREE;
  }

  /** Where warping is held. */
  static Twist heldEnd(LoadedMember member) {
    return new Twist(Optional.of(RestrainedWarping.of(member)), largest(member), Place.HELD_END);
  }

  private static double largest(LoadedMember member) {
    return member.largest(forces -> Math.abs(forces.t()));
  }

  /** The normal stress with that of warping [Pa]. */
  double withWarping(double normal, StressPoint point) {
    return place == Place.FREEST
        ? normal
        : StressFormulas.WITH_WARPING.value(normal, warping(point).result());
  }

  /** The lines of the normal stress; it is the last. */
  List<Step> normal(Formula plain, double[] forces, StressPoint point) {
    if (place == Place.FREEST) {
      return List.of(plain.with(forces));
    }
    Step bending = StressFormulas.withoutWarping(plain).with(forces);
    Step warping = warping(point);
    return List.of(
        bending,
        held.orElseThrow().decay(),
        warping,
        StressFormulas.WITH_WARPING.with(bending.result(), warping.result()));
  }

  /** The shear stress of the torque. */
  Step shear(double here, StressPoint point) {
    double modulus = 1 / point.perT();
    if (held.isEmpty()) {
      return StressFormulas.TWIST.with(here, modulus);
    }
    double part = place == Place.FREEST ? held.get().twistingPart().result() : 0;
    return StressFormulas.PART_TWIST.with(part, Math.copySign(torque, here), modulus);
  }

  /** The bare shear stress of the torque, for searching [Pa]. */
  double shearStress(double here, StressPoint point) {
    return held.isEmpty()
        ? StressFormulas.TWIST.value(here, 1 / point.perT())
        : shear(here, point).result();
  }

  private Step warping(StressPoint point) {
    return held.orElseThrow().stress(torque, point);
  }
}
