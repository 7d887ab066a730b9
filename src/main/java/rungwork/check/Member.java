package rungwork.check;

import java.util.List;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A straight run of beams of one stock that a builder sees as one part, such as <em>front
 * crossmember</em> or <em>left rail, station 2 to 3</em>.
 *
 * @param part the part's name
 * @param beams names of its beams, in order from its start to its end, each starting where the one
 *     before ends
 * @param buckling the lengths that it may buckle over
 * @param welds where welds sit on it
 */
public record Member(String part, List<String> beams, BucklingLengths buckling, List<Weld> welds) {
  /** Refuses a member without a beam. */
  public Member {
    part = Guard.name("part", part);
    beams = List.copyOf(beams);
    welds = List.copyOf(welds);
    if (beams.isEmpty()) {
      throw new ModelException("part " + part + " has no beam; name one at least");
    }
  }

  /**
   * Effective lengths for column buckling.
   *
   * @param inPlane for bending in the frame's plane (about the section's z) [m], above zero
   * @param outOfPlane for bending out of the frame's plane (about the section's y) [m], above zero
   * @param reason why these lengths, such as {@code the full length: ends taken as hinged}
   */
  public record BucklingLengths(double inPlane, double outOfPlane, String reason) {
    /** Refuses a length of nothing, and lengths without a reason. */
    public BucklingLengths {
      Guard.positive("buckling length in the frame's plane", inPlane, Scale.MM);
      Guard.positive("buckling length out of the frame's plane", outOfPlane, Scale.MM);
      reason = Guard.name("reason for a buckling length", reason);
    }
  }

  /**
   * A weld across or on the member; its heat lowers the strength beside it.
   *
   * @param name what is welded there, such as {@code joint to left rail}
   * @param at its place from the member's start [m], at least zero
   */
  public record Weld(String name, double at) {
    /** Half the length over which the welded-zone strength counts [m]: 25 mm (from memory). */
    public static final double ZONE = 0.025;

    /** Refuses a place before the member's start. */
    public Weld {
      name = Guard.name("weld", name);
      Guard.notNegative("place of weld " + name, at, Scale.MM);
    }
  }
}
