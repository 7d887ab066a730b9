package rungwork.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwork.joint.Pivot;
import rungwork.joint.PlateOnTube;
import rungwork.joint.Tab;
import rungwork.joint.WeldGroup;
import rungwork.loadpath.MountChain;

/**
 * What a drawing needs to know of a mount: the first part of each kind.
 *
 * @param tab the tab
 * @param pivot its bolt
 * @param welds its welds
 * @param wall the tube under it
 */
record MountParts(
    Optional<Tab> tab, Optional<Pivot> pivot, List<WeldGroup> welds, Optional<PlateOnTube> wall) {
  /** Half of the face that is drawn beside a foot when no tube is given [m]. */
  private static final double BESIDE = 0.03;

  static MountParts of(MountChain chain) {
    Optional<Pivot> pivot = all(chain, Pivot.class).findFirst();
    Optional<Tab> tab = all(chain, Tab.class).findFirst().or(() -> pivot.map(Pivot::tab));
    return new MountParts(
        tab,
        pivot,
        all(chain, WeldGroup.class).toList(),
        all(chain, PlateOnTube.class).findFirst());
  }

  private static <T> Stream<T> all(MountChain chain, Class<T> type) {
    return chain.parts().stream().filter(type::isInstance).map(type::cast);
  }

  /** The middles of the plates along the pin [m]. */
  List<Double> plates() {
    if (tab.isEmpty()) {
      return List.of();
    }
    Tab.Plate plate = tab.get().plate();
    if (plate.count() == Tab.Count.SINGLE) {
      return List.of(0.0);
    }
    double clear =
        pivot
            .map(bolt -> bolt.stack().centre() / 2 + bolt.stack().gap())
            .orElseGet(() -> apart(plate));
    double middle = clear + plate.thickness() / 2;
    return List.of(-middle, middle);
  }

  /** Half the clear distance of a pair whose bolt is not given: from its welds, or a guess. */
  private double apart(Tab.Plate plate) {
    double reach = reachOfWelds(false) - plate.thickness();
    return reach > plate.thickness() ? reach : 3 * plate.thickness();
  }

  /** How far welds reach from the origin, along the foot or along the pin [m]. */
  private double reachOfWelds(boolean alongFoot) {
    return welds.stream()
        .flatMap(weld -> weld.runs().stream())
        .flatMap(run -> run.corners().stream())
        .mapToDouble(spot -> Math.abs(alongFoot ? spot.x() : spot.y()))
        .max()
        .orElse(0);
  }

  /** Half of what the view along the pin shows of the face [m]. */
  double halfAlong() {
    double foot = tab.map(t -> Math.max(t.plate().foot(), t.plate().width()) / 2).orElse(BESIDE);
    double most = Math.max(foot, reachOfWelds(true));
    return across() ? Math.max(most, wall.orElseThrow().tube().width() / 2) : most + BESIDE / 2;
  }

  /** Half of what the view along the foot shows of the face [m]. */
  double halfAcross() {
    double plates = plates().stream().mapToDouble(Math::abs).max().orElse(0);
    double thick = tab.map(t -> t.plate().thickness() / 2).orElse(0.0);
    double most = Math.max(plates + thick, reachOfWelds(false));
    return across() || wall.isEmpty()
        ? most + BESIDE / 2
        : Math.max(most, wall.get().tube().width() / 2 + Math.abs(wall.get().foot().offset()));
  }

  /** Whether the tube runs along the pin, its section seen along it. */
  boolean across() {
    return wall.filter(w -> w.foot().way() == PlateOnTube.Way.TRANSVERSE).isPresent();
  }

  /** How much of the tube is drawn below its face [m]. */
  double depth() {
    double most = tab.map(t -> (t.plate().height() + t.eye().end()) * 0.6).orElse(BESIDE);
    return wall.map(w -> Math.min(w.tube().depth(), most)).orElse(BESIDE / 3);
  }

  /** Height of the whole over the face [m]. */
  double height() {
    return tab.map(t -> t.plate().height() + t.eye().end()).orElse(BESIDE);
  }
}
