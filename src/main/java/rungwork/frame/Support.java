package rungwork.frame;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * What holds a node: some motions stiffly, some by springs.
 *
 * @param node name of the held node
 * @param held the motions that are held stiffly
 * @param springs stiffness of each sprung motion, [N/m] for moving and [N·m/rad] for turning; above
 *     zero
 */
public record Support(String node, Set<Freedom> held, Map<Freedom, Double> springs) {
  /** Refuses a support that holds nothing, and a motion both held and sprung. */
  public Support {
    node = Guard.name("support's node", node);
    held = Set.copyOf(held);
    springs = Map.copyOf(springs);
    if (held.isEmpty() && springs.isEmpty()) {
      throw new ModelException("the support at node " + node + " holds nothing");
    }
    for (Map.Entry<Freedom, Double> spring : springs.entrySet()) {
      String what = "spring against " + spring.getKey().motion() + " at node " + node;
      Guard.positive(what, spring.getValue(), Scale.NUMBER);
      if (held.contains(spring.getKey())) {
        throw new ModelException(what + " is held stiffly as well; choose one");
      }
    }
  }

  /**
   * Holds every motion.
   *
   * @param node name of the held node
   * @return the support
   */
  public static Support fixed(String node) {
    return new Support(node, EnumSet.allOf(Freedom.class), Map.of());
  }

  /**
   * Holds the place of a node and lets it turn.
   *
   * @param node name of the held node
   * @return the support
   */
  public static Support pinned(String node) {
    return new Support(node, EnumSet.of(Freedom.UX, Freedom.UY, Freedom.UZ), Map.of());
  }

  /**
   * Holds the named motions only, such as a roller does.
   *
   * @param node name of the held node
   * @param first a held motion
   * @param more further held motions
   * @return the support
   */
  public static Support holding(String node, Freedom first, Freedom... more) {
    return new Support(node, EnumSet.of(first, more), Map.of());
  }

  /**
   * Holds one motion by a spring.
   *
   * @param node name of the held node
   * @param motion the sprung motion
   * @param stiffness [N/m] or [N·m/rad], above zero
   * @return the support
   */
  public static Support spring(String node, Freedom motion, double stiffness) {
    return new Support(node, Set.of(), Map.of(motion, stiffness));
  }
}
