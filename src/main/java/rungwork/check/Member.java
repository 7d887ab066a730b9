package rungwork.check;

import java.util.List;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Stock;

/**
 * A straight run of beams of one stock that a builder sees as one part, such as <em>front
 * crossmember</em> or <em>left rail, station 2 to 3</em>.
 *
 * @param part the part's name
 * @param beams names of its beams, in order from its start to its end, each starting where the one
 *     before ends
 * @param buckling the lengths that it may buckle over
 * @param welds where welds sit on it
 * @param warping what its ends do to the warping of an open section
 */
public record Member(
    String part, List<String> beams, BucklingLengths buckling, List<Weld> welds, Warping warping) {
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
   * A member of which nothing is said about the warping of its ends.
   *
   * @param part the part's name
   * @param beams names of its beams in order
   * @param buckling the lengths that it may buckle over
   * @param welds where welds sit on it
   */
  public Member(String part, List<String> beams, BucklingLengths buckling, List<Weld> welds) {
    this(part, beams, buckling, welds, new Warping(Ends.UNKNOWN, buckling.inPlane()));
  }

  /**
   * The same member with its ends as the frame was solved with.
   *
   * @param ends what they do to the warping of an open section
   * @return the member with these ends
   */
  public Member with(Ends ends) {
    return new Member(part, beams, buckling, welds, new Warping(ends, warping.length()));
  }

  /**
   * The same member with other lengths to buckle over.
   *
   * @param lengths the lengths
   * @return the member with these lengths
   */
  public Member with(BucklingLengths lengths) {
    return new Member(part, beams, lengths, welds, warping);
  }

  /** How an open section is welded to what it ends on, as far as its warping asks. */
  public enum Joint {
    /** Nobody looked. */
    UNKNOWN,
    /** By its web only, its flanges clear. */
    WEB_ONLY,
    /** By both flanges, with or without the web. */
    BOTH_FLANGES
  }

  /** What the ends of a bay do to the warping of an open section. */
  public enum Ends {
    /** Not known: it lies between all of the others. */
    UNKNOWN("not known"),
    /** Both let it happen, as a joint welded by the web only does. */
    FREE("free at both ends"),
    /** One holds it, the other lets it happen. */
    ONE_HELD("held at one end"),
    /** Both hold it, as a joint welded by web and both flanges does. */
    BOTH_HELD("held at both ends");

    private final String words;

    Ends(String words) {
      this.words = words;
    }

    /**
     * What two joints do to the warping of the bay between them: one by both flanges holds it, one
     * by the web only lets it happen. What the flanges are welded to must itself be stiff against
     * their turning in plan, such as a closed tube or a plate as wide as they are apart.
     *
     * @param start how its start is welded
     * @param end how its end is welded
     * @return the ends; not known as soon as one joint is not
     */
    public static Ends welded(Joint start, Joint end) {
      if (start == Joint.UNKNOWN || end == Joint.UNKNOWN) {
        return UNKNOWN;
      }
      boolean both = start == Joint.BOTH_FLANGES && end == Joint.BOTH_FLANGES;
      return both ? BOTH_HELD : start == end ? FREE : ONE_HELD;
    }

    /**
     * The assumption in words.
     *
     * @return for example {@code held at both ends}
     */
    public String words() {
      return words;
    }

    /**
     * The assumptions that a frame has to be solved with.
     *
     * @return itself; free, one held and both held when it is not known
     */
    public List<Ends> cases() {
      return this == UNKNOWN ? List.of(FREE, ONE_HELD, BOTH_HELD) : List.of(this);
    }

    /**
     * A stock with the torsional stiffness that these ends give a length of it.
     *
     * @param stock the stock
     * @param length from end to end [m]
     * @return the stock itself, unless it is open and an end holds it
     */
    public Stock stiffened(Stock stock, double length) {
      return RestrainedWarping.stiffened(stock, new Warping(this, length));
    }
  }

  /**
   * The warping of a bay of an open section.
   *
   * @param ends what its ends do
   * @param length of the bay from joint to joint [m], above zero
   */
  public record Warping(Ends ends, double length) {
    /** Refuses a bay without length. */
    public Warping {
      Guard.positive("length of a bay", length, Scale.MM);
    }
  }

  /** Where the sway of the frame is counted: in the lengths or in the moments, never in both. */
  public enum Sway {
    /** The lengths lie between held ends, K at most 1; any sway that matters is in the moments. */
    IN_MOMENTS,
    /** The lengths have it inside: by the frame's critical load, or with a free end. */
    IN_LENGTHS
  }

  /**
   * Effective lengths for column buckling.
   *
   * @param inPlane for bending in the frame's plane (about the section's z) [m], above zero
   * @param outOfPlane for bending out of the frame's plane (about the section's y) [m], above zero
   * @param twist between places that hold it against twist and sideways, for buckling by twisting
   *     and lateral-torsional buckling [m], above zero
   * @param reason why these lengths, such as {@code the full length: ends taken as hinged}
   * @param sway whether they have the frame's sway inside: then with moments of first order only
   */
  public record BucklingLengths(
      double inPlane, double outOfPlane, double twist, String reason, Sway sway) {
    /** Refuses a length of nothing, and lengths without a reason. */
    public BucklingLengths {
      Guard.positive("buckling length in the frame's plane", inPlane, Scale.MM);
      Guard.positive("buckling length out of the frame's plane", outOfPlane, Scale.MM);
      Guard.positive("length between places held against twist", twist, Scale.MM);
      reason = Guard.name("reason for a buckling length", reason);
    }

    /**
     * Lengths between held ends; against twist the larger one.
     *
     * @param inPlane for bending in the frame's plane [m]
     * @param outOfPlane for bending out of the frame's plane [m]
     * @param reason why these lengths
     */
    public BucklingLengths(double inPlane, double outOfPlane, String reason) {
      this(inPlane, outOfPlane, Math.max(inPlane, outOfPlane), reason, Sway.IN_MOMENTS);
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
