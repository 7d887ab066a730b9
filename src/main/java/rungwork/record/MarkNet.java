package rungwork.record;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.ejml.data.DMatrixRMaj;
import rungwork.frame.Point;
import rungwork.record.Reading.Kind;
import rungwork.vehicle.Side;

/**
 * Marks somewhere in plan, joined by the distances that were read between them: what a tape would
 * read where they are, and how that changes when they move. A mark's number counts the stations
 * from the front, left before right.
 */
final class MarkNet {
  private final Taken taken;
  private final Marks marks;
  private final Levelling levelling;
  private final double[] x;
  private final double[] y;

  /** The marks where the true frame has them. */
  MarkNet(Taken taken, Levelling levelling) {
    this.taken = taken;
    this.levelling = levelling;
    marks = taken.marks();
    x = new double[2 * marks.stations().size()];
    y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = truth(i).x();
      y[i] = truth(i).y();
    }
  }

  int count() {
    return x.length;
  }

  Side side(int mark) {
    return Side.values()[mark % 2];
  }

  String station(int mark) {
    return marks.stations().get(mark / 2);
  }

  int mark(Side side, String station) {
    return 2 * marks.stations().indexOf(station) + side.ordinal();
  }

  /** Where the true frame has a mark. */
  Point truth(int mark) {
    return marks.at(side(mark), station(mark));
  }

  /** Where a mark is now [m]. */
  double x(int mark) {
    return x[mark];
  }

  /** Where a mark is now [m]. */
  double y(int mark) {
    return y[mark];
  }

  /** Moves all marks: x and y in turn [m]. */
  void move(DMatrixRMaj change) {
    for (int i = 0; i < x.length; i++) {
      x[i] += change.get(2 * i, 0);
      y[i] += change.get(2 * i + 1, 0);
    }
  }

  /** By how much a mark stands higher than true, if that was read [m]. */
  OptionalDouble up(int mark) {
    String station = station(mark);
    return taken
        .at(Kind.HEIGHT, side(mark), station, station)
        .map(one -> one.measured().orElseThrow() - levelling.truth(side(mark), station))
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  /** What a tape would read where the marks are [m]. */
  double now(Reading one) {
    int a = from(one);
    if (one.kind() == Kind.BOW) {
      double part = part(one);
      return one.side().sign() * (y[a] - part * y[front(one)] - (1 - part) * y[rear(one)]);
    }
    int b = to(one);
    return Math.sqrt(square(x[a] - x[b]) + square(y[a] - y[b]) + square(height(a) - height(b)));
  }

  /** How that changes with each coordinate, x and y in turn. */
  DMatrixRMaj slope(Reading one) {
    DMatrixRMaj slope = new DMatrixRMaj(2 * x.length, 1);
    int a = from(one);
    if (one.kind() == Kind.BOW) {
      slope.set(2 * a + 1, 0, one.side().sign());
      slope.set(2 * front(one) + 1, 0, -one.side().sign() * part(one));
      slope.set(2 * rear(one) + 1, 0, -one.side().sign() * (1 - part(one)));
      return slope;
    }
    int b = to(one);
    double length = now(one);
    slope.set(2 * a, 0, (x[a] - x[b]) / length);
    slope.set(2 * a + 1, 0, (y[a] - y[b]) / length);
    slope.set(2 * b, 0, (x[b] - x[a]) / length);
    slope.set(2 * b + 1, 0, (y[b] - y[a]) / length);
    return slope;
  }

  /** The mark at which a reading begins. */
  int from(Reading one) {
    return mark(one.side(), one.from());
  }

  /** The mark at which a distance ends. */
  int to(Reading one) {
    return mark(one.kind() == Kind.LENGTH ? one.side() : one.side().other(), one.to());
  }

  private double height(int mark) {
    return truth(mark).z() + up(mark).orElse(0);
  }

  private int front(Reading one) {
    return mark(one.side(), marks.foremost());
  }

  private int rear(Reading one) {
    return mark(one.side(), marks.rearmost());
  }

  /** How far along the string from its rear end [1]. */
  private double part(Reading one) {
    double behind = truth(rear(one)).x();
    return (truth(from(one)).x() - behind) / (truth(front(one)).x() - behind);
  }

  private static double square(double value) {
    return value * value;
  }

  /** Where a part's true marks went as one piece. */
  Pose pose(List<String> stations) {
    int[] held =
        stations.stream()
            .flatMapToInt(station -> Stream.of(Side.values()).mapToInt(side -> mark(side, station)))
            .toArray();
    return Pose.of(this, held);
  }
}
