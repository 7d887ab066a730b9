package rungwork.vehicle;

import rungwork.fault.Guard;
import rungwork.frame.Point;

/**
 * A point where something is fastened to the ladder, joined by a rigid arm to the line of the
 * member that carries it.
 *
 * @param name unique among the ladder's features
 * @param member the member that carries it: {@code left rail}, {@code right rail} or a
 *     crossmember's part name
 * @param at the fastening point in vehicle axes
 */
public record Mount(String name, String member, Point at) {
  /** Refuses a mount without a name. */
  public Mount {
    name = Guard.name("mount", name);
    member = Guard.name("member that carries mount " + name, member);
  }
}
