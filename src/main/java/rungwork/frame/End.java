package rungwork.frame;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * How one end of a beam is joined to its node: stiffly, but for what is released or gives way by a
 * spring, and at the node itself or at the end of a rigid arm.
 *
 * @param released what the end does not pass on
 * @param springs stiffness of what it passes on through a spring, such as a bolted joint: [N/m] for
 *     forces, [N·m/rad] for moments; above zero
 * @param arm from the node to the beam's end
 */
public record End(Set<Release> released, Map<Release, Double> springs, Arm arm) {
  /** Passes everything on, right at the node. */
  public static final End RIGID = new End(Set.of(), Map.of(), Arm.NONE);

  /** Refuses a force both released and sprung, and a spring that does not resist. */
  public End {
    released = Set.copyOf(released);
    springs = Map.copyOf(springs);
    for (Map.Entry<Release, Double> spring : springs.entrySet()) {
      String what = "spring of a beam's end for the " + spring.getKey().force();
      Guard.positive(what, spring.getValue(), Scale.NUMBER);
      if (released.contains(spring.getKey())) {
        throw new ModelException(what + " is released as well; choose one");
      }
    }
  }

  /**
   * An end that does not pass some forces on.
   *
   * @param released what it does not pass on
   * @return the end, right at its node
   */
  public static End released(Release... released) {
    return new End(Set.copyOf(List.of(released)), Map.of(), Arm.NONE);
  }

  /**
   * This end with other releases.
   *
   * @param others what it does not pass on
   * @return the released end
   */
  public End releasing(Set<Release> others) {
    return new End(others, springs, arm);
  }

  /**
   * This end with one force passed on through a spring.
   *
   * @param force which force
   * @param stiffness [N/m] for a force, [N·m/rad] for a moment; above zero
   * @return the sprung end
   */
  public End sprung(Release force, double stiffness) {
    Map<Release, Double> more = new HashMap<>(springs);
    more.put(force, stiffness);
    return new End(released, more, arm);
  }

  /**
   * This end at a rigid arm from its node.
   *
   * @param x forward [m]
   * @param y to the left [m]
   * @param z up [m]
   * @return the end, that far from its node; a frame refuses an arm that leaves its plane
   */
  public End armed(double x, double y, double z) {
    return new End(released, springs, new Arm(x, y, z));
  }

  /**
   * A rigid arm from a node to a beam's end: half a rail's width, an eccentric seat.
   *
   * @param x forward [m]
   * @param y to the left [m]
   * @param z up [m]
   */
  public record Arm(double x, double y, double z) {
    /** The beam ends at its node. */
    public static final Arm NONE = new Arm(0, 0, 0);

    /** Refuses a component that is not finite. */
    public Arm {
      Guard.finite("rigid arm", x + y + z);
    }

    /**
     * The arm's far end.
     *
     * @param node where it starts
     * @return where the beam ends
     */
    public Point from(Point node) {
      return node.plus(x, y, z);
    }
  }
}
