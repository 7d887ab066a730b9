package rungwork.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwork.joint.Bracket;
import rungwork.joint.Pivot;
import rungwork.joint.PlateOnTube;
import rungwork.joint.Tab;
import rungwork.joint.TubeWall;
import rungwork.joint.WeldGroup;
import rungwork.loadpath.MountChain;

/**
 * What a drawing needs to know of a mount: the first part of each kind.
 *
 * @param tab the tab
 * @param pivot its bolt
 * @param welds its welds
 * @param under the tube under it
 */
record MountParts(
    Optional<Tab> tab, Optional<Pivot> pivot, List<WeldGroup> welds, Optional<Under> under) {
  /** Half of the face that is drawn beside a foot when no tube is given [m]. */
  private static final double BESIDE = 0.03;

  static MountParts of(MountChain chain) {
    Optional<Pivot> pivot = all(chain, Pivot.class).findFirst();
    Optional<Tab> tab = all(chain, Tab.class).findFirst().or(() -> pivot.map(Pivot::tab));
    return new MountParts(
        tab,
        pivot,
        all(chain, WeldGroup.class).toList(),
        all(chain, Bracket.class)
            .map(MountParts::of)
            .findFirst()
            .or(() -> all(chain, PlateOnTube.class).map(MountParts::of).findFirst()));
  }

  /**
   * The tube under a mount.
   *
   * @param tube its walls
   * @param across whether it runs along the pin, its section seen along the pin
   * @param offset of the foot from its middle [m]
   * @param bracket what the tab stands on, if it does not stand on the tube
   */
  record Under(TubeWall tube, boolean across, double offset, Optional<Bracket> bracket) {}

  private static Under of(Bracket bracket) {
    boolean across = bracket.stand().foot() == Bracket.Foot.ACROSS_RAIL;
    return new Under(bracket.rail(), across, 0, Optional.of(bracket));
  }

  private static Under of(PlateOnTube wall) {
    boolean across = wall.foot().way() == PlateOnTube.Way.TRANSVERSE;
    return new Under(wall.tube(), across, wall.foot().offset(), Optional.empty());
  }

  /** How far a bracket reaches along the rail from its middle [m]. */
  private double reachOfBracket() {
    return bracket().map(b -> b.outline().along() / 2).orElse(0.0);
  }

  Optional<Bracket> bracket() {
    return under.flatMap(Under::bracket);
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
    return across()
        ? Math.max(most, under.orElseThrow().tube().width() / 2)
        : Math.max(most, reachOfBracket()) + BESIDE / 2;
  }

  /** Half of what the view along the foot shows of the face [m]. */
  double halfAcross() {
    double plates = plates().stream().mapToDouble(Math::abs).max().orElse(0);
    double thick = tab.map(t -> t.plate().thickness() / 2).orElse(0.0);
    double most = Math.max(plates + thick, reachOfWelds(false));
    return across() || under.isEmpty()
        ? Math.max(most, reachOfBracket()) + BESIDE / 2
        : Math.max(most, under.get().tube().width() / 2 + Math.abs(under.get().offset()));
  }

  /** How far the foot stands off the tube's middle [m]. */
  double offset() {
    return under.map(Under::offset).orElse(0.0);
  }

  /** Whether the tube runs along the pin, its section seen along it. */
  boolean across() {
    return under.filter(Under::across).isPresent();
  }

  /** How much of the tube is drawn below its face [m]. */
  double depth() {
    double most = Math.max(0.6 * height(), bracket().map(b -> 1.2 * sides(b)).orElse(0.0));
    return under.map(u -> Math.min(u.tube().depth(), most)).orElse(BESIDE / 3);
  }

  /** How far a bracket reaches down the rail's sides [m]. */
  static double sides(Bracket bracket) {
    return bracket.stand().wrap() == Bracket.Wrap.ONE_FACE ? 0 : bracket.outline().sides();
  }

  /** Height of the whole over the face [m]. */
  double height() {
    return tab.map(t -> t.plate().height() + t.eye().end()).orElse(BESIDE);
  }
}
