package rungwork.vehicle;

import java.util.List;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * A force from outside on the vehicle: the ground under a wheel, or a wall.
 *
 * @param from what pushes, such as {@code ground under front left wheel}
 * @param at where it acts, in vehicle axes
 * @param wrench the force [N] and moment [N·m] there
 * @param carriers names of the ladder's features that take it up
 */
public record Push(String from, Point at, Wrench wrench, List<String> carriers) {
  /** Copies its carriers. */
  public Push {
    carriers = List.copyOf(carriers);
  }
}
