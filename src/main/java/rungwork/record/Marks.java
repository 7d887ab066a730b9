package rungwork.record;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwork.fault.ModelException;
import rungwork.frame.Point;
import rungwork.record.Reading.Kind;
import rungwork.vehicle.Crossmember;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

/**
 * The marks that a builder makes on a ladder: on each rail's middle line at each crossmember, and
 * at its tip and tail where no crossmember sits there.
 *
 * @param ladder the true frame
 */
record Marks(Ladder ladder) {
  private static final String TIP = "tip";
  private static final String TAIL = "tail";

  /** Ends nearer than this to a crossmember get no mark of their own [m]. */
  private static final double SAME_PLACE = 0.02;

  /** The stations from front to rear. */
  List<String> stations() {
    List<String> names = new ArrayList<>(crossmembers());
    Crossmember first = ladder.crossmembers().get(0);
    Crossmember last = ladder.crossmembers().get(ladder.crossmembers().size() - 1);
    if (!names.contains(TIP)
        && sides().allMatch(side -> ladder.rail(side).x() - first.x() > SAME_PLACE)) {
      names.add(0, TIP);
    }
    if (!names.contains(TAIL)
        && sides().allMatch(side -> last.x() - ladder.rail(side).tail() > SAME_PLACE)) {
      names.add(TAIL);
    }
    return names;
  }

  List<String> crossmembers() {
    return ladder.crossmembers().stream().map(Crossmember::name).toList();
  }

  private static Stream<Side> sides() {
    return Stream.of(Side.values());
  }

  /** A station's number from the front. */
  int index(String station) {
    int index = stations().indexOf(station);
    if (index < 0) {
      throw new ModelException(
          "ladder %s has no station named %s to measure at; it has %s"
              .formatted(ladder.name(), station, String.join(", ", stations())));
    }
    return index;
  }

  /** The mark on a rail at a station. */
  Point at(Side side, String station) {
    index(station);
    double x = x(side, station);
    return new Point(x, ladder.rail(side).yAt(x), ladder.heightAt(x));
  }

  private double x(Side side, String station) {
    return ladder.crossmembers().stream()
        .filter(one -> one.name().equals(station))
        .findFirst()
        .map(Crossmember::x)
        .orElseGet(() -> station.equals(TIP) ? ladder.rail(side).x() : ladder.rail(side).tail());
  }

  /** What the true frame has at the place of a reading [m]. */
  double truth(Kind kind, Side side, String from, String to) {
    return switch (kind) {
      case LENGTH -> at(side, from).distance(at(side, to));
      case WIDTH -> at(side, from).distance(at(side.other(), from));
      case DIAGONAL -> at(side, from).distance(at(side.other(), to));
      case HEIGHT -> at(side, from).z();
      case BOW -> bow(side, at(side, from));
    };
  }

  /** Outwards from the line between the rail's foremost and rearmost marks [m]. */
  private double bow(Side side, Point mark) {
    Point front = at(side, foremost());
    Point rear = at(side, rearmost());
    double part = (mark.x() - rear.x()) / (front.x() - rear.x());
    return side.sign() * (mark.y() - rear.y() - part * (front.y() - rear.y()));
  }

  String foremost() {
    return stations().get(0);
  }

  String rearmost() {
    return stations().get(stations().size() - 1);
  }
}
