package rungwork.solve;

import rungwork.frame.Beam;
import rungwork.frame.End;
import rungwork.frame.Frame;
import rungwork.frame.Point;

/**
 * How a beam lies in its frame: x along it, y square to the frame's normal, z = x × y, which is the
 * normal itself where the beam lies in the frame's plane; and the rigid arms from its nodes to its
 * ends.
 *
 * <pre>
 *   y = n × x / |n × x|        a motion u, θ of a node moves the far end of its arm r by u + θ × r
 * </pre>
 *
 * @param length distance between its ends [m]
 * @param turn x, y and z in frame axes, 3 × 3
 * @param arms from each node to the beam's end, in frame axes, 2 × 3 [m]
 * @param offset distance of the line of shear centres from the line of centroids along y [m]
 * @param lean how much a deflection of the line of shear centres along z counts as a twist, while a
 *     normal force acts off it: see {@link Eccentric} [rad/m]
 */
record BeamAxes(double length, double[][] turn, double[][] arms, double offset, double lean) {
  static BeamAxes of(Frame frame, Beam beam) {
    Point from = frame.startOf(beam);
    Point to = frame.endOf(beam);
    double[] run = frame.plane().toFrame(to.x() - from.x(), to.y() - from.y(), to.z() - from.z());
    double[][] arms = {arm(frame, beam.atStart().arm()), arm(frame, beam.atEnd().arm())};
    double level = Math.hypot(run[0], run[1]);
    // What a flat frame takes for flat is flat: its two actions do not touch by rounding either.
    double rise = frame.isFlat() ? 0 : run[2];
    double length = Math.hypot(level, rise);
    double cosine = run[0] / level;
    double sine = run[1] / level;
    double[][] turn = {
      {run[0] / length, run[1] / length, rise / length},
      {-sine, cosine, 0},
      {-cosine * rise / length, -sine * rise / length, level / length}
    };
    return new BeamAxes(length, turn, arms, beam.section().properties().shearCentreY(), 0);
  }

  /** The same beam while a normal force acts off its shear centres. */
  BeamAxes leaning(double share) {
    return new BeamAxes(length, turn, arms, offset, share);
  }

  private static double[] arm(Frame frame, End.Arm arm) {
    double[] along = frame.plane().toFrame(arm.x(), arm.y(), arm.z());
    return frame.isFlat() ? new double[] {along[0], along[1], 0} : along;
  }

  /** Turns the 12 motions of the nodes from frame axes into its ends', in its own axes. */
  double[] toOwn(double[] nodes) {
    double[] own = new double[nodes.length];
    for (int i = 0; i < own.length; i += 6) {
      double[] arm = arms[i / 6];
      double p = nodes[i] + nodes[i + 4] * arm[2] - nodes[i + 5] * arm[1];
      double q = nodes[i + 1] + nodes[i + 5] * arm[0] - nodes[i + 3] * arm[2];
      double n = nodes[i + 2] + nodes[i + 3] * arm[1] - nodes[i + 4] * arm[0];
      for (int j = 0; j < 3; j++) {
        own[i + j] = turn[j][0] * p + turn[j][1] * q + turn[j][2] * n;
        own[i + 3 + j] =
            turn[j][0] * nodes[i + 3] + turn[j][1] * nodes[i + 4] + turn[j][2] * nodes[i + 5];
      }
      own[i + 2] += offset * own[i + 3];
      own[i + 3] += lean * own[i + 2];
    }
    return own;
  }

  /** Turns what is done to its ends, 12 forces in its own axes, into the nodes', in frame axes. */
  double[] toNodes(double[] ends) {
    double[] nodes = new double[ends.length];
    for (int i = 0; i < nodes.length; i += 6) {
      double[] arm = arms[i / 6];
      double across = ends[i + 2] + lean * ends[i + 3];
      double[] force = toFrame(ends[i], ends[i + 1], across);
      double[] moment = toFrame(ends[i + 3] + offset * across, ends[i + 4], ends[i + 5]);
      for (int j = 0; j < 3; j++) {
        nodes[i + j] = force[j];
      }
      nodes[i + 3] = moment[0] + arm[1] * force[2] - arm[2] * force[1];
      nodes[i + 4] = moment[1] + arm[2] * force[0] - arm[0] * force[2];
      nodes[i + 5] = moment[2] + arm[0] * force[1] - arm[1] * force[0];
    }
    return nodes;
  }

  /** Turns a vector from its own axes into frame axes. */
  double[] toFrame(double x, double y, double z) {
    double[] result = new double[3];
    for (int j = 0; j < 3; j++) {
      result[j] = turn[0][j] * x + turn[1][j] * y + turn[2][j] * z;
    }
    return result;
  }

  /**
   * Forces and moments in its own axes.
   *
   * @param load forces along p, q, n and moments about them, on the line of centroids
   * @return forces along x, y, z, the torque about the line of shear centres, moments about y, z;
   *     the force along z less what the torque does to a leaning beam
   */
  double[] ofLoad(double[] load) {
    double[] own = new double[6];
    for (int j = 0; j < 3; j++) {
      own[j] = turn[j][0] * load[0] + turn[j][1] * load[1] + turn[j][2] * load[2];
      own[3 + j] = turn[j][0] * load[3] + turn[j][1] * load[4] + turn[j][2] * load[5];
    }
    own[3] -= offset * own[2];
    own[2] -= lean * own[3];
    return own;
  }
}
