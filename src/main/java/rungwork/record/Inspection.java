package rungwork.record;

import static rungwork.quantity.Quantities.si;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Point;
import rungwork.record.Reading.Kind;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

/**
 * A ladder frame measured after a crash, beside the frame as it was drawn. Immutable: each reading
 * gives a fuller inspection. With nothing measured yet it is the sheet that says where to put the
 * tape.
 *
 * <p>Marks sit on each rail's middle line, on the same face all along, at the middle of each
 * crossmember, and at the {@code tip} and {@code tail} of the rails where they reach beyond. All
 * distances are straight from mark to mark. Heights stand above any level datum; strings run from
 * each rail's foremost mark to its rearmost.
 *
 * <pre>
 *   tip     front          dash         rear
 *    o--------o--------------o------------o   right rail
 *             | \          / |            |
 *             |   diagonals  |            |   width at rear
 *             | /          \ |            |
 *    o--------o--------------o------------o   left rail
 *      length
 * </pre>
 */
public final class Inspection {
  /** What a tape on a frame tells, either way; common practice, no source [m]. */
  private static final double TAPE = 0.002;

  private final Taken taken;
  private final String date;
  private final double accuracy;

  /** From front to rear, all that lie between the two that were given. */
  private final List<String> straight;

  private Inspection(Taken taken, String date, double accuracy, List<String> straight) {
    this.taken = taken;
    this.date = date;
    this.accuracy = accuracy;
    this.straight = List.copyOf(straight);
  }

  /**
   * An inspection of which nothing is measured yet.
   *
   * @param ladder the frame as drawn, or as measured before
   * @return the inspection
   */
  public static Inspection of(Ladder ladder) {
    Marks marks = new Marks(ladder);
    List<String> rungs = marks.crossmembers();
    List<String> rear = rungs.subList(Math.max(0, rungs.size() - 2), rungs.size());
    return new Inspection(new Taken(marks, List.of()), "", TAPE, rear);
  }

  /**
   * Says when it was measured.
   *
   * @param day year, month and day, such as {@code 2026-11-20}
   * @return the inspection
   * @throws ModelException when it is no such day
   */
  public Inspection on(String day) {
    try {
      return new Inspection(taken, LocalDate.parse(day).toString(), accuracy, straight);
    } catch (DateTimeParseException e) {
      throw new ModelException(
          "the day of an inspection is \"" + day + "\"; write year, month and day as 2026-11-20");
    }
  }

  /**
   * Says how well each reading is known; without it 2 mm, common practice for a tape.
   *
   * @param eitherWay above zero
   * @return the inspection
   */
  public Inspection accuracy(Quantity<Length> eitherWay) {
    double value =
        Guard.positive("accuracy of a reading", si("accuracy of a reading", eitherWay), Scale.MM);
    return new Inspection(taken, date, value, straight);
  }

  /**
   * Says which part is held for straight: what moved is told from there, and the longer that part
   * is, the better. Without it the rearmost bay between crossmembers.
   *
   * @param front its front station
   * @param rear its rear station
   * @return the inspection
   */
  public Inspection straight(String front, String rear) {
    Marks marks = taken.marks();
    if (marks.index(front) >= marks.index(rear)) {
      throw new ModelException(
          "the straight part runs from its front station to one behind it, not from %s to %s"
              .formatted(front, rear));
    }
    List<String> held = marks.stations().subList(marks.index(front), marks.index(rear) + 1);
    return new Inspection(taken, date, accuracy, held);
  }

  /**
   * A pair of diagonals.
   *
   * @param front a station
   * @param rear another behind it
   * @param leftFront from the left rail at the front to the right rail at the rear
   * @param rightFront its twin, from the right rail at the front to the left rail at the rear
   * @return the inspection
   */
  public Inspection diagonal(
      String front, String rear, Quantity<Length> leftFront, Quantity<Length> rightFront) {
    return both(Kind.DIAGONAL, List.of(front, rear), leftFront, rightFront);
  }

  /**
   * A length along each rail.
   *
   * @param front a station
   * @param rear another behind it
   * @param left along the left rail
   * @param right along the right rail
   * @return the inspection
   */
  public Inspection length(
      String front, String rear, Quantity<Length> left, Quantity<Length> right) {
    return both(Kind.LENGTH, List.of(front, rear), left, right);
  }

  /**
   * The width from rail to rail.
   *
   * @param station where
   * @param width from mark to mark
   * @return the inspection
   */
  public Inspection width(String station, Quantity<Length> width) {
    List<String> at = List.of(station, station);
    taken.marks().index(station);
    double value = Guard.positive("width at " + station, si("width", width), Scale.MM);
    return with(taken.and(Kind.WIDTH, Side.LEFT, at, value));
  }

  /**
   * The heights of both rails above one level datum.
   *
   * @param station where
   * @param left of the left rail's mark
   * @param right of the right rail's mark
   * @return the inspection
   */
  public Inspection height(String station, Quantity<Length> left, Quantity<Length> right) {
    return both(Kind.HEIGHT, List.of(station, station), left, right);
  }

  /**
   * How far each rail stands outwards from a string between its foremost and its rearmost mark.
   *
   * @param station where
   * @param left of the left rail, inwards below zero
   * @param right of the right rail, inwards below zero
   * @return the inspection
   */
  public Inspection bow(String station, Quantity<Length> left, Quantity<Length> right) {
    List<String> at = List.of(station, station);
    taken.marks().index(station);
    return with(
        taken
            .and(Kind.BOW, Side.LEFT, at, si("left bow at " + station, left))
            .and(Kind.BOW, Side.RIGHT, at, si("right bow at " + station, right)));
  }

  private Inspection both(
      Kind kind, List<String> stations, Quantity<Length> left, Quantity<Length> right) {
    stations.forEach(taken.marks()::index);
    return with(
        taken
            .and(kind, Side.LEFT, stations, above(kind, Side.LEFT, stations, left))
            .and(kind, Side.RIGHT, stations, above(kind, Side.RIGHT, stations, right)));
  }

  private static double above(Kind kind, Side side, List<String> stations, Quantity<Length> value) {
    Reading place =
        new Reading(kind, side, stations.get(0), stations.get(1), 0, OptionalDouble.empty());
    return Guard.positive(place.where(), si(place.where(), value), Scale.MM);
  }

  private Inspection with(Taken more) {
    return new Inspection(more, date, accuracy, straight);
  }

  /**
   * The frame as drawn.
   *
   * @return the true frame
   */
  public Ladder ladder() {
    return taken.marks().ladder();
  }

  /**
   * When it was measured.
   *
   * @return year, month and day; empty where nobody said
   */
  public String date() {
    return date;
  }

  /**
   * How well each reading is known.
   *
   * @return either way [m]
   */
  public double accuracy() {
    return accuracy;
  }

  /**
   * The part that is held for straight.
   *
   * @return its stations from front to rear
   */
  public List<String> straight() {
    return straight;
  }

  /**
   * The stations at which there are marks.
   *
   * @return from front to rear
   */
  public List<String> stations() {
    return taken.marks().stations();
  }

  /**
   * A mark of the true frame.
   *
   * @param side of the rail
   * @param station one of {@link #stations()}
   * @return its place in vehicle axes
   */
  public Point mark(Side side, String station) {
    return taken.marks().at(side, station);
  }

  /**
   * Every place worth measuring, measured or not, in the order in which one walks round the frame,
   * and what else was measured. The true heights are those above the datum that was measured from,
   * told by the part that is held for straight.
   *
   * @return one reading a place
   */
  public List<Reading> readings() {
    Levelling levelling = Levelling.of(taken, straight);
    List<Reading> all = new ArrayList<>();
    List<Reading> open = new ArrayList<>(taken.readings());
    for (Reading place : Places.of(taken.marks())) {
      all.add(open.stream().filter(place::sameAs).findFirst().orElse(place));
      open.removeIf(place::sameAs);
    }
    all.addAll(open);
    return all.stream().map(levelling::above).toList();
  }

  /**
   * How well a difference from true is known.
   *
   * @param one a reading
   * @return its accuracy; for a height that of the datum is in it, told by the part held for
   *     straight [m]
   */
  public double knownTo(Reading one) {
    return one.kind() == Kind.HEIGHT
        ? accuracy * Levelling.of(taken, straight).widened(one.side(), one.from())
        : accuracy;
  }

  /**
   * What the place of a reading may be off in welded work when it is new; no tolerance for a
   * repair.
   *
   * @param one a reading
   * @return ISO 13920, class B for a distance, class F for what should be straight along the rail
   */
  public Reading.Limit asBuilt(Reading one) {
    Marks marks = taken.marks();
    boolean straightness = one.kind() == Kind.HEIGHT || one.kind() == Kind.BOW;
    return straightness
        ? Tolerances.straightness(
            marks.truth(Kind.LENGTH, one.side(), marks.foremost(), marks.rearmost()))
        : Tolerances.length(one.truth());
  }

  /**
   * What the readings mean together.
   *
   * @return diamond, twist, sag, side bow and shortening, as far as they were measured
   */
  public List<Distortion> distortions() {
    return new Distortions(taken, accuracy).all();
  }

  /**
   * Which way the frame went, in words.
   *
   * @return sentences without numbers
   */
  public List<String> meaning() {
    return new Pattern(taken, distortions()).sentences();
  }

  /**
   * Where the marks are now.
   *
   * @return one a mark, from front to rear, left before right
   */
  public List<Moved> moved() {
    return fit().moved(straight);
  }

  /**
   * Readings that do not fit the others: one of them was misread, or the mark was another.
   *
   * @return those that the others contradict; where too little was measured to tell which, all that
   *     may be
   */
  public List<Reading> suspects() {
    return fit().suspects();
  }

  private MarkFit fit() {
    return new MarkFit(taken, accuracy, Levelling.of(taken, straight));
  }

  /**
   * A mark that was moved by the crash.
   *
   * @param side of its rail
   * @param station where it is
   * @param ahead forward [m]
   * @param left to the left [m]
   * @param up [m]
   * @param inPlan whether what was measured settles it in plan
   * @param inHeight whether its height was measured
   */
  public record Moved(
      Side side,
      String station,
      double ahead,
      double left,
      double up,
      boolean inPlan,
      boolean inHeight) {
    /** Refuses a motion that is no number. */
    public Moved {
      Guard.solved("motion of " + station, ahead + left + up);
    }
  }

  /**
   * What was found, in one line.
   *
   * @return how many places stand inside and outside, and how many nobody measured
   */
  public String verdictLine() {
    return new Tally(
            Stream.concat(
                    readings().stream().map(Reading::standing),
                    distortions().stream().map(Distortion::standing))
                .toList())
        .line();
  }

  /**
   * What no tape tells.
   *
   * @return sentences
   */
  public List<String> notChecked() {
    return List.of(
        "Not checked: how true the frame was before. Welded work may have been off by as much as"
            + " the as-built column says on the day it was new.",
        "Not checked: cracks, kinks between the marks, walls dented or folded, welds, the steel"
            + " itself, suspension and steering, belts and their anchorages.",
        "Not checked: whether the marks are where the drawing has them, and how the frame rested"
            + " while it was measured.");
  }

  @Override
  public String toString() {
    String head = "Inspection of " + ladder().name() + (date.isEmpty() ? "" : ", " + date);
    return head + ": " + verdictLine();
  }
}
