package rungwork.impact;

import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import rungwork.check.Step;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Point;
import rungwork.loadpath.ChainSheet;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.vehicle.Balance;
import rungwork.vehicle.Event;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.SeatDeceleration;
import rungwork.vehicle.Vehicle;

/**
 * At what deceleration of the vehicle each part gives way in a frontal hit, from the bumper to the
 * passenger bay, on one basis: nothing divided by a factor, low and high strength. Immutable.
 *
 * <p>The frame's own parts come from its elastic stage; the others are given, such as from the
 * chain of a mount. A part of which nothing is known stays in the table as not checked. Only what
 * something begins at is ranked: a crush element counts with its peak, never with its mean force.
 */
public final class OrderOfFailure {
  /** The hit's deceleration in the frame's runs; the answer is in proportion [m/s²]. */
  private static final Quantity<Acceleration> REFERENCE = g(10);

  private final FrameParts frame;
  private final List<Part> given;
  private final Set<Zone> absent;

  /** Where in the vehicle, from the front. */
  public enum Zone {
    /** What touches first. */
    TYRE_AND_BUMPER("tyre and bumper"),
    /** Something that crushes in front of the rails. */
    CRUSH_ELEMENT("crush element"),
    /** The rails ahead of the foremost crossmember. */
    RAIL_TIP("rail tips"),
    /** Mounts of the front suspension. */
    FRONT_MOUNTS("front mounts"),
    /** Mounts of the steering gear. */
    STEERING_GEAR("steering gear mounts"),
    /** Mounts of the motor. */
    MOTOR_MOUNTS("motor mounts"),
    /** A crossmember. */
    CROSSMEMBER("crossmember"),
    /** The rails where they rise. */
    KICK_UP("rail at the kick-up"),
    /** The rails elsewhere. */
    RAIL("rail"),
    /** Anchorages of belts and seats. */
    BELT_ANCHORS("belt anchors"),
    /** The frame's plastic collapse. */
    WHOLE_FRAME("whole frame");

    private final String words;

    Zone(String words) {
      this.words = words;
    }

    /**
     * In words.
     *
     * @return for example {@code motor mounts}
     */
    public String words() {
      return words;
    }

    /**
     * Whether it is the frame itself.
     *
     * @return true of rails, crossmembers and the whole frame
     */
    public boolean ofFrame() {
      return this == RAIL_TIP
          || this == CROSSMEMBER
          || this == KICK_UP
          || this == RAIL
          || this == WHOLE_FRAME;
    }

    /** Where a part of which nothing is known stands in the table [m]. */
    double usualPlace() {
      return switch (this) {
        case TYRE_AND_BUMPER, CRUSH_ELEMENT -> Double.POSITIVE_INFINITY;
        case BELT_ANCHORS, WHOLE_FRAME -> Double.NEGATIVE_INFINITY;
        default -> 0;
      };
    }
  }

  /**
   * A row of the table.
   *
   * @param name the part
   * @param zone where it belongs
   * @param station x of its front end; without end where nobody knows [m]
   * @param first the vehicle's deceleration when it first gives way [m/s²]; empty if not checked
   * @param ultimate the same when it carries no more [m/s²]; empty if not checked
   * @param detail what begins, where, and how that was found
   */
  public record Part(
      String name,
      Zone zone,
      double station,
      Optional<Range> first,
      Optional<Range> ultimate,
      Detail detail) {
    /** Refuses a part that gives way for good before it first gives way. */
    public Part {
      name = Guard.name("part", name);
      if (first.isPresent() && ultimate.isPresent() && ultimate.get().low() < first.get().low()) {
        throw new ModelException(
            "part "
                + name
                + " carries no more at "
                + ultimate.get()
                + ", before it first gives way at "
                + first.get()
                + "; look at both figures again");
      }
    }

    /**
     * Begins a part that the frame does not know.
     *
     * @param name its name
     * @param zone where it belongs
     * @param station its x
     * @return the part, still without figures
     */
    public static Part named(String name, Zone zone, Quantity<Length> station) {
      double x = si("station of " + name, station);
      return unknown(name, zone, x);
    }

    static Part unknown(String name, Zone zone, double station) {
      Detail nothing = new Detail("", "", List.of(), List.of("no figures given"));
      return new Part(name, zone, station, Optional.empty(), Optional.empty(), nothing);
    }

    /**
     * When it first gives way.
     *
     * @param low at its low strength
     * @param high at its high strength
     * @param source where the figures come from
     * @return the part with them
     */
    public Part yields(Quantity<Acceleration> low, Quantity<Acceleration> high, String source) {
      return at(Optional.of(range(low, high)), ultimate, "first yield", source);
    }

    /**
     * When it carries no more.
     *
     * @param low at its low strength
     * @param high at its high strength
     * @return the part with them
     */
    public Part breaks(Quantity<Acceleration> low, Quantity<Acceleration> high) {
      return new Part(name, zone, station, first, Optional.of(range(low, high)), detail);
    }

    /**
     * What it carries where its load is in proportion to the deceleration.
     *
     * @param perG its load when the vehicle decelerates by 1 g, above zero
     * @param low its low strength at first yield
     * @param high its high strength
     * @param source where the figures come from
     * @return the part with them
     */
    public Part carries(
        Quantity<Force> perG, Quantity<Force> low, Quantity<Force> high, String source) {
      double load = Guard.positive("load of " + name + " at 1 g", si("load", perG), Scale.KN);
      double unit = Scale.G.inSi() / load;
      Range force = new Range(Kind.FORCE, si("low strength", low), si("high strength", high));
      Range yield = force.kindOf(Kind.ACCELERATION).times(unit);
      return at(Optional.of(yield), ultimate, "first yield", source);
    }

    /**
     * What the chain of a mount says, its loads found at a deceleration: every utilisation is taken
     * as in proportion to it, the high strength as 1.4 times the minimum and a wall 10 % thick. A
     * check that divides by a factor or was not made counts as nothing.
     *
     * @param sheet the mount under the hit, unfactored
     * @param at the deceleration that its loads belong to, above zero
     * @return the part with the weakest check on yield and on rupture
     */
    public Part from(ChainSheet sheet, Quantity<Acceleration> at) {
      return ChainFigures.of(this, sheet, si("deceleration of the chain's loads", at));
    }

    private Part at(Optional<Range> yields, Optional<Range> breaks, String begins, String source) {
      Detail from = new Detail(begins, "", List.of(), List.of("given: " + source));
      return new Part(name, zone, station, yields, breaks, from);
    }

    private Range range(Quantity<Acceleration> low, Quantity<Acceleration> high) {
      return new Range(
          Kind.ACCELERATION, si("low end of " + name, low), si("high end of " + name, high));
    }
  }

  /**
   * How a row was found.
   *
   * @param begins what begins, such as {@code first yield}
   * @param where on the part, and under which assumptions
   * @param working the lines of the calculation
   * @param notes sources, what was left out, why nothing is known
   */
  public record Detail(String begins, String where, List<Step> working, List<String> notes) {
    /** Copies its lists. */
    public Detail {
      working = List.copyOf(working);
      notes = List.copyOf(notes);
    }
  }

  private OrderOfFailure(FrameParts frame, List<Part> given, Set<Zone> absent) {
    this.frame = frame;
    this.given = List.copyOf(given);
    this.absent = Set.copyOf(absent);
  }

  /**
   * The order in a hit whose force meets the frame at its own height.
   *
   * @param vehicle the vehicle as built, without its frame's own masses
   * @param ladder its frame
   * @param hit where it is hit
   * @return the order, of the frame's parts alone
   */
  public static OrderOfFailure of(Vehicle vehicle, Ladder ladder, Event.Hit hit) {
    return of(vehicle, ladder, Event.frontalImpact(REFERENCE, hit));
  }

  /**
   * The order in a frontal impact, such as one whose force has a height of its own. Its
   * deceleration makes no difference.
   *
   * @param vehicle the vehicle as built, without its frame's own masses
   * @param ladder its frame
   * @param impact the event
   * @return the order, of the frame's parts alone
   */
  public static OrderOfFailure of(Vehicle vehicle, Ladder ladder, Event impact) {
    Balance balance = Balance.of(impact, vehicle.on(ladder), ladder);
    return new OrderOfFailure(FrameParts.of(balance), List.of(), Set.of());
  }

  /**
   * The same with more parts.
   *
   * @param parts parts that the frame does not know
   * @return the fuller order
   */
  public OrderOfFailure with(Part... parts) {
    List<Part> more = new ArrayList<>(given);
    for (Part part : parts) {
      refuseTwin(part.name(), more);
      more.add(part);
    }
    return new OrderOfFailure(frame, more, absent);
  }

  private void refuseTwin(String name, List<Part> others) {
    if (Stream.concat(others.stream(), frame.parts().stream())
        .anyMatch(other -> other.name().equals(name))) {
      throw new ModelException("two parts are named " + name + "; rename one");
    }
  }

  /**
   * The same with crush elements in front of the rail tips. The peak of their force counts, never
   * the mean.
   *
   * @param element one of them
   * @param met how many of them the obstacle meets
   * @return the fuller order
   */
  public OrderOfFailure behind(CrushElement element, int met) {
    if (met < 1 || met > 2) {
      throw new ModelException(
          met + " crush elements " + element.name() + " are met; the rails have room for 1 or 2");
    }
    return with(frame.crush(element, met));
  }

  /**
   * The same with the frame's plastic collapse as a row: its first hinge, and the mechanism.
   *
   * @param collapse of the same ladder in the same hit
   * @return the fuller order
   * @throws ModelException when it is of another ladder or another hit
   */
  public OrderOfFailure with(Collapse collapse) {
    return with(frame.mechanism(collapse));
  }

  /**
   * The same where the vehicle has no such part at all.
   *
   * @param zones what it does not have
   * @return the order without these rows
   */
  public OrderOfFailure without(Zone... zones) {
    Set<Zone> more = EnumSet.noneOf(Zone.class);
    more.addAll(absent);
    more.addAll(List.of(zones));
    return new OrderOfFailure(frame, given, more);
  }

  /**
   * Every part from the front to the passenger bay; those not checked are among them.
   *
   * @return the rows of the table
   */
  public List<Part> parts() {
    return table().rows();
  }

  private TableOfParts table() {
    List<Part> all = new ArrayList<>(frame.parts());
    all.addAll(given);
    return TableOfParts.of(all, absent);
  }

  /**
   * The parts of which something is known, in the order in which they first give way at their low
   * strengths. Ranges that overlap may change places.
   *
   * @return the parts, the first to give way first
   */
  public List<Part> order() {
    return table().order();
  }

  /**
   * The low strength of a part over the high strength of one that ought to give way before it. Of
   * two parts of the frame, the least over all runs: both under the same assumptions.
   *
   * @param front the one that ought to give way first
   * @param behind the other
   * @return the ratio, to that of the high strength behind over the low one in front
   * @throws ModelException when of one of them nothing is known
   */
  public Range margin(Part front, Part behind) {
    return frame.margin(front, behind);
  }

  /**
   * Whether what stands in front gives way before everything behind it.
   *
   * @return the capacity design; empty where nothing is known of two parts
   */
  public Optional<CapacityDesign> capacityDesign() {
    return table().capacityDesign(this::margin);
  }

  /**
   * Capacity design in one line.
   *
   * @param front what ought to give way first
   * @param behind the weakest of all others
   * @param ratio strength behind over strength in front: low over high, to high over low [1]
   */
  public record CapacityDesign(Part front, Part behind, Range ratio) {
    /**
     * What it shows.
     *
     * @return holds from 1.6 on; does not hold when even the ends that suit it best are below 1.1
     */
    public RigidOrCrush.Order order() {
      return RigidOrCrush.Order.of(ratio);
    }

    @Override
    public String toString() {
      return "strength of "
          + behind.name()
          + " over that of "
          + front.name()
          + " in front, low over high to high over low: "
          + ratio
          + ": "
          + order().words();
    }
  }

  /**
   * The elastic stage: the hit, the frame's own first yield and critical load, what seats see.
   *
   * @return its figures
   */
  public Elastic elastic() {
    return frame.elastic();
  }

  /**
   * The frame's elastic stage.
   *
   * @param hit in words, such as {@code frontal impact, full width}
   * @param firstYield the vehicle's deceleration when the first part of the frame gives way [m/s²]
   * @param critical the same when the frame buckles as a whole, elastic; empty without one [m/s²]
   * @param pitch angular acceleration about y at first yield, positive nose down [rad/s²]
   * @param yaw the same about z, positive nose to the left [rad/s²]
   * @param seats what the vehicle does at each seat at the low end of first yield
   * @param forces the places where the obstacle pushes
   * @param centre the centre of the amplified masses
   * @param notes what was left out
   */
  public record Elastic(
      String hit,
      Range firstYield,
      Optional<Range> critical,
      double pitch,
      double yaw,
      List<SeatDeceleration> seats,
      List<Point> forces,
      Point centre,
      List<String> notes) {
    /** Refuses turning that is no number. */
    public Elastic {
      Guard.solved("turning of the vehicle", pitch + yaw);
      seats = List.copyOf(seats);
      forces = List.copyOf(forces);
      notes = List.copyOf(notes);
    }
  }

  /**
   * A range in words, cut at 1000 g: beyond that nothing is told apart.
   *
   * @param range of a part
   * @param units the reader's units
   * @return such as {@code 91.7 to over 1000 g}
   */
  public static String shown(Range range, Units units) {
    Scale scale = units.scale(range.kind());
    String most = scale.show(FramePart.ENDLESS, 4);
    if (range.low() >= FramePart.ENDLESS) {
      return "over " + most;
    }
    return range.high() >= FramePart.ENDLESS
        ? scale.number(range.low(), 3) + " to over " + most
        : range.show(units);
  }

  /**
   * The frame that it is about.
   *
   * @return the ladder
   */
  public Ladder ladder() {
    return frame.ladder();
  }

  /**
   * What was assumed.
   *
   * @return sentences
   */
  public List<String> assumptions() {
    return frame.assumptions();
  }

  /**
   * What is not checked at all, and which parts nothing is known of.
   *
   * @return sentences
   */
  public List<String> notChecked() {
    List<String> lines = new ArrayList<>(table().notChecked());
    lines.addAll(FrameParts.NOT_MADE);
    return List.copyOf(lines);
  }

  @Override
  public String toString() {
    return "Order of failure, "
        + elastic().hit()
        + ": "
        + String.join(
            "; ",
            order().stream()
                .map(part -> part.name() + " " + shown(part.first().orElseThrow(), Units.METRIC))
                .toList());
  }
}
