package rungwork.solve;

import java.util.List;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * A force and moment from outside the vehicle, such as a tyre's or a barrier's.
 *
 * @param name what it comes from
 * @param wrench force and moment in vehicle axes
 * @param at where it acts
 * @param carriers names of the nodes that take it, at least one
 */
public record AppliedWrench(String name, Wrench wrench, Point at, List<String> carriers) {
  /** Refuses a wrench that nothing takes. */
  public AppliedWrench {
    name = Guard.name("applied force", name);
    carriers = List.copyOf(carriers);
    if (carriers.isEmpty()) {
      throw new ModelException("applied force " + name + " is taken by no node; name one at least");
    }
  }
}
