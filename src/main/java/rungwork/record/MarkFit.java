package rungwork.record;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import rungwork.record.Inspection.Moved;
import rungwork.record.Reading.Kind;

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

  private final double deviation;
  private final List<Reading> used;
  private final MarkNet net;

  MarkFit(Taken taken, double accuracy, Levelling levelling) {
    deviation = accuracy / DEVIATIONS;
    used = taken.readings().stream().filter(one -> one.kind() != Kind.HEIGHT).toList();
    net = new MarkNet(taken, levelling);
    for (int step = 0; step < STEPS && !used.isEmpty(); step++) {
      improve();
    }
  }

  private void improve() {
    DMatrixRMaj right = new DMatrixRMaj(2 * net.count(), 1);
    for (int i = 0; i < net.count(); i++) {
      right.set(2 * i, 0, (net.truth(i).x() - net.x(i)) / (LOOSE * LOOSE));
      right.set(2 * i + 1, 0, (net.truth(i).y() - net.y(i)) / (LOOSE * LOOSE));
    }
    for (Reading one : used) {
      CommonOps_DDRM.addEquals(right, missing(one) / (deviation * deviation), net.slope(one));
    }
    DMatrixRMaj change = new DMatrixRMaj(2 * net.count(), 1);
    CommonOps_DDRM.solve(normal(), right, change);
    net.move(change);
  }

  private DMatrixRMaj normal() {
    DMatrixRMaj normal = CommonOps_DDRM.identity(2 * net.count());
    CommonOps_DDRM.scale(1 / (LOOSE * LOOSE), normal);
    for (Reading one : used) {
      DMatrixRMaj slope = net.slope(one);
      CommonOps_DDRM.multAddTransB(1 / (deviation * deviation), slope, slope, normal);
    }
    return normal;
  }

  /** What a reading has more than the marks where they are [m]. */
  private double missing(Reading one) {
    return one.measured().orElseThrow() - net.now(one);
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
    DMatrixRMaj slope = net.slope(one);
    DMatrixRMaj carried = new DMatrixRMaj(slope.numRows, 1);
    CommonOps_DDRM.mult(known, slope, carried);
    double free = 1 - CommonOps_DDRM.dot(slope, carried) / (deviation * deviation);
    return free < UNCHECKED ? 0 : Math.abs(missing(one)) / (deviation * Math.sqrt(free));
  }

  /** Every mark, told from a part of the frame that is held for straight. */
  List<Moved> moved(List<String> straight) {
    Pose pose = net.pose(straight);
    return IntStream.range(0, net.count()).mapToObj(mark -> moved(mark, pose)).toList();
  }

  private Moved moved(int mark, Pose pose) {
    boolean settled = readingsAt(mark) >= 2;
    double ahead = pose.ahead(net.x(mark), net.y(mark)) - net.truth(mark).x();
    double left = pose.left(net.x(mark), net.y(mark)) - net.truth(mark).y();
    OptionalDouble up = net.up(mark);
    return new Moved(
        net.side(mark),
        net.station(mark),
        settled ? ahead : 0,
        settled ? left : 0,
        up.orElse(0),
        settled,
        up.isPresent());
  }

  private long readingsAt(int mark) {
    return used.stream()
        .filter(one -> one.kind() != Kind.BOW)
        .flatMap(one -> Stream.of(net.from(one), net.to(one)))
        .filter(one -> one == mark)
        .count();
  }
}
