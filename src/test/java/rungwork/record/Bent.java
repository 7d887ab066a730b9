package rungwork.record;

import static rungwork.quantity.Quantities.mm;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rungwork.frame.Point;
import rungwork.record.Reading.Kind;
import rungwork.vehicle.Ladder;
import rungwork.vehicle.Side;

/** A ladder whose marks were moved by known amounts, and what a perfect tape reads on it. */
final class Bent {
  private final Inspection plain;
  private final Map<String, Point> moved = new HashMap<>();

  Bent(Ladder ladder) {
    plain = Inspection.of(ladder);
  }

  /** Moves a mark, in millimetres. */
  Bent move(Side side, String station, double ahead, double left, double up) {
    Point at = plain.mark(side, station);
    moved.put(side + station, at.plus(ahead / 1000, left / 1000, up / 1000));
    return this;
  }

  Point at(Side side, String station) {
    return moved.getOrDefault(side + station, plain.mark(side, station));
  }

  double distance(Side a, String from, Side b, String to) {
    return 1000 * at(a, from).distance(at(b, to));
  }

  /** Everything read without an error. */
  Inspection measured() {
    Inspection all = plain;
    for (Reading place : plain.readings()) {
      if (place.side() == Side.LEFT) {
        all = add(all, place.kind(), place.from(), place.to());
      }
    }
    return all;
  }

  private Inspection add(Inspection to, Kind kind, String from, String rear) {
    Side left = Side.LEFT;
    Side right = Side.RIGHT;
    return switch (kind) {
      case LENGTH ->
          to.length(
              from,
              rear,
              mm(distance(left, from, left, rear)),
              mm(distance(right, from, right, rear)));
      case WIDTH -> to.width(from, mm(distance(left, from, right, from)));
      case DIAGONAL ->
          to.diagonal(
              from,
              rear,
              mm(distance(left, from, right, rear)),
              mm(distance(right, from, left, rear)));
      case HEIGHT -> to.height(from, mm(1000 * at(left, from).z()), mm(1000 * at(right, from).z()));
      case BOW -> to.bow(from, mm(bow(left, from)), mm(bow(right, from)));
    };
  }

  private double bow(Side side, String station) {
    List<String> all = plain.stations();
    Point front = at(side, all.get(0));
    Point rear = at(side, all.get(all.size() - 1));
    double part = (plain.mark(side, station).x() - plain.mark(side, all.get(all.size() - 1)).x());
    part /= plain.mark(side, all.get(0)).x() - plain.mark(side, all.get(all.size() - 1)).x();
    double string = rear.y() + part * (front.y() - rear.y());
    return 1000 * side.sign() * (at(side, station).y() - string);
  }
}
