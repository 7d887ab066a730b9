package rungwork.frame;

import java.util.List;
import rungwork.fault.Guard;

/**
 * Loads that act together.
 *
 * @param name the case's name
 * @param source where its factors come from
 * @param assumptions what was assumed to make it
 * @param loads the loads
 */
public record LoadCase(String name, String source, List<String> assumptions, List<Load> loads) {
  /** Copies its lists. */
  public LoadCase {
    name = Guard.name("load case", name);
    assumptions = List.copyOf(assumptions);
    loads = List.copyOf(loads);
  }

  /**
   * A case of the user's own.
   *
   * @param name the case's name
   * @param loads the loads
   * @return the case, its source given as the user's own
   */
  public static LoadCase of(String name, Load... loads) {
    return new LoadCase(name, "stated by the user", List.of(), List.of(loads));
  }
}
