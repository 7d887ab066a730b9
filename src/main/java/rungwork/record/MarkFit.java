package rungwork.record;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import rungwork.frame.Point;
import rungwork.record.Inspection.Moved;
import rungwork.record.Reading.Kind;
import rungwork.vehicle.Side;

/**
 * Where the marks lie in plan, from all distances read: least squares, as a surveyor adjusts a net,
 * by Gauss and Newton's steps. What the readings leave open stays as near to the true frame as it
 * can.
 */
final class MarkFit {
  /** How freely a mark may leave its true place before that counts like a reading [m]. */
  private static final double LOOSE = 1.0;

  private static final int STEPS = 12;

  /** A reading off the others by more of its own deviations than this is called misread. */
  private static final double SUSPECT = 3;

  /** An accuracy either way is taken for so many standard deviations. */
  private static final double DEVIATIONS = 2;

  /** Suspects within this part of the greatest cannot be told apart. */
  private static final double ALIKE = 0.95;

  /** Less than this part of a reading is free to disagree: nothing checks it. */
  private static final double UNCHECKED = 1e-3;

  private final Taken taken;
  private final Marks marks;
  private final List<String> stations;
  private final double deviation;
  private final Levelling levelling;
  private final List<Reading> used;
  private final double[] x;
  private final double[] y;

  MarkFit(Taken taken, double accuracy, Levelling levelling) {
    this.taken = taken;
    this.levelling = levelling;
    deviation = accuracy / DEVIATIONS;
    marks = taken.marks();
    stations = marks.stations();
    used = taken.readings().stream().filter(one -> one.kind() != Kind.HEIGHT).toList();
    x = new double[2 * stations.size()];
    y = new double[2 * stations.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = truth(i).x();
      y[i] = truth(i).y();
    }
    for (int step = 0; step < STEPS && !used.isEmpty(); step++) {
      improve();
    }
  }

  private Point truth(int mark) {
    return marks.at(Side.values()[mark % 2], stations.get(mark / 2));
  }

  private int mark(Side side, String station) {
    return 2 * stations.indexOf(station) + side.ordinal();
  }

  private void improve() {
    int n = x.length;
    DMatrixRMaj right = new DMatrixRMaj(2 * n, 1);
    for (int i = 0; i < n; i++) {
      right.set(2 * i, 0, (truth(i).x() - x[i]) / (LOOSE * LOOSE));
      right.set(2 * i + 1, 0, (truth(i).y() - y[i]) / (LOOSE * LOOSE));
    }
    for (Reading one : used) {
      CommonOps_DDRM.addEquals(right, missing(one) / (deviation * deviation), slope(one));
    }
    DMatrixRMaj change = new DMatrixRMaj(2 * n, 1);
    CommonOps_DDRM.solve(normal(), right, change);
    for (int i = 0; i < n; i++) {
      x[i] += change.get(2 * i, 0);
      y[i] += change.get(2 * i + 1, 0);
    }
  }

  private DMatrixRMaj normal() {
    DMatrixRMaj normal = CommonOps_DDRM.identity(2 * x.length);
    CommonOps_DDRM.scale(1 / (LOOSE * LOOSE), normal);
    for (Reading one : used) {
      DMatrixRMaj slope = slope(one);
      CommonOps_DDRM.multAddTransB(1 / (deviation * deviation), slope, slope, normal);
    }
    return normal;
  }

  /** What a reading has more than the marks where they are [m]. */
  private double missing(Reading one) {
    return one.measured().orElseThrow() - now(one);
  }

  private double now(Reading one) {
    if (one.kind() == Kind.BOW) {
      int at = mark(one.side(), one.from());
      double part = part(one);
      return one.side().sign() * (y[at] - part * y[front(one)] - (1 - part) * y[rear(one)]);
    }
    int a = mark(one.side(), one.from());
    int b = other(one);
    return Math.sqrt(square(x[a] - x[b]) + square(y[a] - y[b]) + square(rise(a, b)));
  }

  private int other(Reading one) {
    return mark(one.kind() == Kind.LENGTH ? one.side() : one.side().other(), one.to());
  }

  private double rise(int a, int b) {
    return height(a) - height(b);
  }

  private double height(int mark) {
    return truth(mark).z() + up(Side.values()[mark % 2], stations.get(mark / 2)).orElse(0);
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
    return (truth(mark(one.side(), one.from())).x() - behind) / (truth(front(one)).x() - behind);
  }

  /** How a reading changes with each coordinate, x and y in turn. */
  private DMatrixRMaj slope(Reading one) {
    DMatrixRMaj slope = new DMatrixRMaj(2 * x.length, 1);
    int a = mark(one.side(), one.from());
    if (one.kind() == Kind.BOW) {
      slope.set(2 * a + 1, 0, one.side().sign());
      slope.set(2 * front(one) + 1, 0, -one.side().sign() * part(one));
      slope.set(2 * rear(one) + 1, 0, -one.side().sign() * (1 - part(one)));
      return slope;
    }
    int b = other(one);
    double length = now(one);
    slope.set(2 * a, 0, (x[a] - x[b]) / length);
    slope.set(2 * a + 1, 0, (y[a] - y[b]) / length);
    slope.set(2 * b, 0, (x[b] - x[a]) / length);
    slope.set(2 * b + 1, 0, (y[b] - y[a]) / length);
    return slope;
  }

  /**
   * Readings that the others contradict: the difference of each beside the deviation that it should
   * have (Baarda's test, from memory). Where too little was measured to say which, all that may be.
   */
  List<Reading> suspects() {
    DMatrixRMaj known = normal();
    CommonOps_DDRM.invert(known);
    double[] off = used.stream().mapToDouble(one -> off(one, known)).toArray();
    double most = Arrays.stream(off).max().orElse(0);
    return most <= SUSPECT
        ? List.of()
        : IntStream.range(0, off.length)
            .filter(i -> off[i] >= ALIKE * most)
            .mapToObj(used::get)
            .toList();
  }

  private double off(Reading one, DMatrixRMaj known) {
    DMatrixRMaj slope = slope(one);
    DMatrixRMaj carried = new DMatrixRMaj(slope.numRows, 1);
    CommonOps_DDRM.mult(known, slope, carried);
    double free = 1 - CommonOps_DDRM.dot(slope, carried) / (deviation * deviation);
    return free < UNCHECKED ? 0 : Math.abs(missing(one)) / (deviation * Math.sqrt(free));
  }

  /** Every mark, told from a part of the frame that is held for straight. */
  List<Moved> moved(List<String> straight) {
    double[] pose = pose(straight);
    List<Moved> all = new ArrayList<>();
    for (int i = 0; i < x.length; i++) {
      Side side = Side.values()[i % 2];
      String station = stations.get(i / 2);
      boolean settled = readingsAt(i) >= 2;
      OptionalDouble up = up(side, station);
      double cos = Math.cos(pose[2]);
      double sin = Math.sin(pose[2]);
      double ahead = cos * (x[i] - pose[0]) + sin * (y[i] - pose[1]) - truth(i).x();
      double left = cos * (y[i] - pose[1]) - sin * (x[i] - pose[0]) - truth(i).y();
      all.add(
          new Moved(
              side,
              station,
              settled ? ahead : 0,
              settled ? left : 0,
              up.orElse(0),
              settled,
              up.isPresent()));
    }
    return all;
  }

  private OptionalDouble up(Side side, String station) {
    return taken
        .at(Kind.HEIGHT, side, station, station)
        .map(
            one -> OptionalDouble.of(one.measured().orElseThrow() - levelling.truth(side, station)))
        .orElse(OptionalDouble.empty());
  }

  private long readingsAt(int mark) {
    return used.stream()
        .filter(one -> one.kind() != Kind.BOW)
        .flatMap(one -> Stream.of(mark(one.side(), one.from()), other(one)))
        .filter(one -> one == mark)
        .count();
  }

  /** Where the straight part's true marks went as one piece: shift x, shift y, turn. */
  private double[] pose(List<String> straight) {
    List<Integer> held = new ArrayList<>();
    straight.forEach(
        station -> Stream.of(Side.values()).forEach(side -> held.add(mark(side, station))));
    double x0 = held.stream().mapToDouble(i -> truth(i).x()).average().orElse(0);
    double y0 = held.stream().mapToDouble(i -> truth(i).y()).average().orElse(0);
    double x1 = held.stream().mapToDouble(i -> x[i]).average().orElse(0);
    double y1 = held.stream().mapToDouble(i -> y[i]).average().orElse(0);
    double cross = 0;
    double dot = 0;
    for (int i : held) {
      double a = truth(i).x() - x0;
      double b = truth(i).y() - y0;
      cross += a * (y[i] - y1) - b * (x[i] - x1);
      dot += a * (x[i] - x1) + b * (y[i] - y1);
    }
    double turn = Math.atan2(cross, dot);
    return new double[] {
      x1 - Math.cos(turn) * x0 + Math.sin(turn) * y0,
      y1 - Math.sin(turn) * x0 - Math.cos(turn) * y0,
      turn
    };
  }

  private static double square(double value) {
    return value * value;
  }
}
