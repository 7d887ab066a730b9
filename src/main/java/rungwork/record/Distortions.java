package rungwork.record;

import static java.util.Comparator.comparingDouble;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwork.check.Step;
import rungwork.record.Distortion.Form;
import rungwork.record.Reading.Kind;
import rungwork.vehicle.Side;

/**
 * Reads distortions out of what was measured.
 *
 * @param taken the readings
 * @param accuracy of each [m]
 */
record Distortions(Taken taken, double accuracy) {
  List<Distortion> all() {
    List<Distortion> all = new ArrayList<>();
    taken
        .of(Kind.DIAGONAL)
        .filter(one -> one.side() == Side.LEFT)
        .map(this::diamond)
        .forEach(all::add);
    twist().ifPresent(all::add);
    for (Side side : Side.values()) {
      sag(side).ifPresent(all::add);
    }
    sideBow().ifPresent(all::add);
    for (Side side : Side.values()) {
      mash(side).ifPresent(all::add);
    }
    return List.copyOf(all);
  }

  private Distortion diamond(Reading left) {
    String from = left.from();
    String to = left.to();
    double d1 = value(left);
    double d2 = value(taken.at(Kind.DIAGONAL, Side.RIGHT, from, to).orElseThrow());
    double width = (width(from) + width(to)) / 2;
    Step difference = DistortionFormulas.DIFFERENCE.with(d1, d2);
    Step shift = DistortionFormulas.SHIFT.with(d1, d2, length(from, to));
    Step sway = DistortionFormulas.SWAY.with(d1, d2, width);
    Step angle = DistortionFormulas.OUT_OF_SQUARE.with(shift.result(), width);
    return new Distortion(
        Form.DIAMOND,
        from + " to " + to,
        List.of(difference, shift, sway, angle),
        difference.result(),
        root(2),
        Tolerances.DIAGONALS);
  }

  /** The largest against the rearmost station measured. */
  private Optional<Distortion> twist() {
    List<String> at = levelled();
    if (at.size() < 2) {
      return Optional.empty();
    }
    String rear = at.get(at.size() - 1);
    return at.subList(0, at.size() - 1).stream()
        .map(station -> twist(station, rear))
        .max(comparingDouble(one -> Math.abs(one.value())));
  }

  private Distortion twist(String station, String rear) {
    double[] in = {
      height(Side.LEFT, station),
      height(Side.RIGHT, station),
      height(Side.LEFT, rear),
      height(Side.RIGHT, rear),
      width(station),
      width(rear)
    };
    Step twist = DistortionFormulas.TWIST.with(in);
    return new Distortion(
        Form.TWIST,
        station + " against " + rear,
        List.of(twist, DistortionFormulas.TWIST_ANGLE.with(in)),
        twist.result(),
        root(4),
        Tolerances.DISTANCE);
  }

  /** The largest below the line between the foremost and the rearmost height of a rail. */
  private Optional<Distortion> sag(Side side) {
    List<String> at = levelled();
    if (at.size() < 3) {
      return Optional.empty();
    }
    String front = at.get(0);
    String rear = at.get(at.size() - 1);
    return at.subList(1, at.size() - 1).stream()
        .map(station -> sag(side, List.of(front, station, rear)))
        .max(comparingDouble(one -> Math.abs(one.value())));
  }

  private Distortion sag(Side side, List<String> at) {
    Marks marks = taken.marks();
    double back = x(side, at.get(1)) - x(side, at.get(2));
    double ahead = x(side, at.get(0)) - x(side, at.get(1));
    double chord =
        (marks.at(side, at.get(0)).z() * back + marks.at(side, at.get(2)).z() * ahead)
            / (back + ahead);
    Step sag =
        DistortionFormulas.SAG.with(
            height(side, at.get(0)),
            back,
            height(side, at.get(2)),
            ahead,
            height(side, at.get(1)),
            chord - marks.at(side, at.get(1)).z());
    return new Distortion(
        Form.SAG,
        "%s rail at %s, between %s and %s".formatted(side.word(), at.get(1), at.get(0), at.get(2)),
        List.of(sag),
        sag.result(),
        root(2),
        Tolerances.DISTANCE);
  }

  private Optional<Distortion> sideBow() {
    return taken
        .of(Kind.BOW)
        .filter(one -> one.side() == Side.LEFT)
        .map(this::sideBow)
        .max(comparingDouble(one -> Math.abs(one.value())));
  }

  private Distortion sideBow(Reading left) {
    Reading right = taken.at(Kind.BOW, Side.RIGHT, left.from(), left.to()).orElseThrow();
    Step bow =
        DistortionFormulas.SIDE_BOW.with(
            value(left), value(right), (left.truth() - right.truth()) / 2);
    return new Distortion(
        Form.SIDE_BOW,
        "both rails at " + left.from(),
        List.of(bow),
        bow.result(),
        root(2) / 2,
        Tolerances.BOW);
  }

  /** Over all bays of a rail that were measured. */
  private Optional<Distortion> mash(Side side) {
    List<String> stations = taken.marks().stations();
    List<Reading> bays =
        taken
            .of(Kind.LENGTH)
            .filter(one -> one.side() == side)
            .filter(one -> stations.indexOf(one.to()) == stations.indexOf(one.from()) + 1)
            .toList();
    if (bays.isEmpty()) {
      return Optional.empty();
    }
    double truth = bays.stream().mapToDouble(Reading::truth).sum();
    double read = bays.stream().mapToDouble(Distortions::value).sum();
    Step shorter = DistortionFormulas.SHORTER.with(truth, read);
    String bay = bays.size() == 1 ? "1 bay" : bays.size() + " bays";
    return Optional.of(
        new Distortion(
            Form.MASH,
            side.word() + " rail over " + bay,
            List.of(shorter),
            shorter.result(),
            root(bays.size()),
            Tolerances.DISTANCE));
  }

  /** Stations whose heights were measured, from front to rear. */
  private List<String> levelled() {
    return taken.marks().stations().stream()
        .filter(station -> taken.at(Kind.HEIGHT, Side.LEFT, station, station).isPresent())
        .toList();
  }

  private double height(Side side, String station) {
    return value(taken.at(Kind.HEIGHT, side, station, station).orElseThrow());
  }

  /** As read, or else as it should be [m]. */
  private double width(String station) {
    return taken
        .at(Kind.WIDTH, Side.LEFT, station, station)
        .map(Distortions::value)
        .orElseGet(() -> taken.marks().truth(Kind.WIDTH, Side.LEFT, station, station));
  }

  /** Along the middle of the frame, less what the rails are shorter by, as far as read [m]. */
  private double length(String from, String to) {
    double truth =
        (x(Side.LEFT, from) - x(Side.LEFT, to) + x(Side.RIGHT, from) - x(Side.RIGHT, to)) / 2;
    double longer =
        Stream.of(Side.values())
            .flatMap(side -> taken.at(Kind.LENGTH, side, from, to).stream())
            .mapToDouble(one -> value(one) - one.truth())
            .average()
            .orElse(0);
    return truth + longer;
  }

  private double x(Side side, String station) {
    return taken.marks().at(side, station).x();
  }

  private static double value(Reading one) {
    return one.measured().orElseThrow();
  }

  private double root(int readings) {
    return accuracy * Math.sqrt(readings);
  }
}
