package rungwork.record;

import java.util.List;
import java.util.OptionalDouble;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import rungwork.frame.Point;
import rungwork.record.Reading.Kind;
import rungwork.vehicle.Side;

/**
 * How the frame stood above what its heights were measured from: measured = true + offset + pitch·x
 * + roll·y, by least squares over the marks of the part held for straight; over all marks where
 * that part was not measured.
 *
 * @param marks of the true frame
 * @param offset [m]
 * @param pitch rise for a length ahead [1]
 * @param roll rise for a length to the left [1]
 * @param spread how offset, roll and pitch vary together, for readings of unit accuracy
 */
record Levelling(Marks marks, double offset, double pitch, double roll, DMatrixRMaj spread) {
  static Levelling of(Taken taken, List<String> straight) {
    List<Reading> all = taken.of(Kind.HEIGHT).toList();
    List<Reading> held = all.stream().filter(one -> straight.contains(one.from())).toList();
    List<Reading> used = held.size() > 2 ? held : all;
    if (used.isEmpty()) {
      return new Levelling(taken.marks(), 0, 0, 0, new DMatrixRMaj(3, 3));
    }
    boolean oneStation = used.stream().map(Reading::from).distinct().count() == 1;
    DMatrixRMaj places = new DMatrixRMaj(used.size(), oneStation ? 2 : 3);
    DMatrixRMaj heights = new DMatrixRMaj(used.size(), 1);
    for (int i = 0; i < used.size(); i++) {
      Reading one = used.get(i);
      Point mark = taken.marks().at(one.side(), one.from());
      places.set(i, 0, 1);
      places.set(i, 1, mark.y());
      if (!oneStation) {
        places.set(i, 2, mark.x());
      }
      heights.set(i, 0, one.measured().orElseThrow() - mark.z());
    }
    DMatrixRMaj fit = new DMatrixRMaj(places.numCols, 1);
    CommonOps_DDRM.solve(places, heights, fit);
    double pitch = oneStation ? 0 : fit.get(2, 0);
    return new Levelling(taken.marks(), fit.get(0, 0), pitch, fit.get(1, 0), spread(places));
  }

  /** The inverse of the normal equations; nothing where there is no pitch to be had. */
  private static DMatrixRMaj spread(DMatrixRMaj places) {
    DMatrixRMaj normal = new DMatrixRMaj(places.numCols, places.numCols);
    CommonOps_DDRM.multInner(places, normal);
    CommonOps_DDRM.invert(normal);
    DMatrixRMaj spread = new DMatrixRMaj(3, 3);
    CommonOps_DDRM.insert(normal, spread, 0, 0);
    return spread;
  }

  /**
   * How well a height above or below its true place is known, for readings of unit accuracy: far
   * from a short straight part much worse than the reading itself [1].
   */
  double widened(Side side, String station) {
    Point mark = marks.at(side, station);
    DMatrixRMaj at = new DMatrixRMaj(new double[][] {{1}, {mark.y()}, {mark.x()}});
    DMatrixRMaj carried = new DMatrixRMaj(3, 1);
    CommonOps_DDRM.mult(spread, at, carried);
    return Math.sqrt(1 + CommonOps_DDRM.dot(at, carried));
  }

  /** A height with the true one told above this datum; other readings as they are. */
  Reading above(Reading one) {
    if (one.kind() != Kind.HEIGHT) {
      return one;
    }
    double truth = truth(one.side(), one.from());
    OptionalDouble measured = one.measured();
    return new Reading(one.kind(), one.side(), one.from(), one.to(), truth, measured);
  }

  /** The true height of a mark above the datum [m]. */
  double truth(Side side, String station) {
    Point mark = marks.at(side, station);
    return mark.z() + offset + pitch * mark.x() + roll * mark.y();
  }
}
