package rungwork.record;

import java.util.List;
import rungwork.material.Source;
import rungwork.record.Reading.Limit;

/**
 * Published tolerances. Those of repair say what a frame may be off its drawing; sources differ, so
 * all stand here, the tightest first. That of welded work says how far a frame may have been off
 * when it was new.
 */
final class Tolerances {
  /** Upper ends of the nominal sizes of ISO 13920, tables 1 and 3, from 120 mm on [m]. */
  private static final double[] UP_TO = {0.120, 0.400, 1.0, 2.0, 4.0, 8.0, 12.0, 16.0, 20.0};

  /** Table 1, class B, by nominal size; the last beyond the last size [m]. */
  private static final double[] LENGTHS_B = {
    0.002, 0.002, 0.003, 0.004, 0.006, 0.008, 0.010, 0.012, 0.014, 0.016
  };

  /** Table 3, class F [m]. */
  private static final double[] STRAIGHTNESS_F = {
    0.001, 0.0015, 0.003, 0.0045, 0.006, 0.008, 0.010, 0.012, 0.014, 0.016
  };

  private static final Limit ARMY_DISTANCE =
      new Limit(0.003, read("US Army TM 9-2320-289-34, para. 9-3, frame measurement"));

  private static final Limit SEPARATE_FRAME =
      new Limit(
          0.005,
          read(
              "New Zealand Transport Agency, vehicle inspection requirements, light vehicle repair"
                  + " 8-1, body over frame without tolerances of its maker"));

  /** A distance, a width, a height, an offset from the centre line. */
  static final List<Limit> DISTANCE = List.of(ARMY_DISTANCE, SEPARATE_FRAME);

  /** The difference of a pair of diagonals. */
  static final List<Limit> DIAGONALS =
      List.of(
          new Limit(0.005, read("US Army TM 9-2320-289-34, para. 9-3, diagonals the same")),
          new Limit(0.006, read("US Army TM 9-2320-280-34, para. 21-4, diagonals differ")));

  /** A rail's bow to the side. */
  static final List<Limit> BOW =
      List.of(
          ARMY_DISTANCE,
          new Limit(
              0.006,
              read("US Army TM 9-2320-387-24-2, frame, horizontal bow, left against right")));

  private Tolerances() {}

  /** How far off welded work of this length may be: ISO 13920, class B. */
  static Limit length(double nominal) {
    return new Limit(of(LENGTHS_B, nominal), iso("table 1, class B"));
  }

  /** How far from straight or flat welded work of this length may be: ISO 13920, class F. */
  static Limit straightness(double nominal) {
    return new Limit(of(STRAIGHTNESS_F, nominal), iso("table 3, class F"));
  }

  private static double of(double[] row, double nominal) {
    int size = 0;
    while (size < UP_TO.length && nominal > UP_TO[size]) {
      size++;
    }
    return row[size];
  }

  private static Source iso(String place) {
    return new Source("ISO 13920, " + place + ", edition not stated", Source.Tag.SECOND_HAND);
  }

  private static Source read(String reference) {
    return new Source(reference, Source.Tag.READ);
  }
}
