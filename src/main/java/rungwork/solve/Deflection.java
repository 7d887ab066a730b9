package rungwork.solve;

/**
 * The deflected shape of one member: the cubic through its end motions (Hermite), exact for a
 * prismatic beam without load between its ends, plus what the clamped beam does under its load.
 */
final class Deflection {
  private final Member member;
  private final double[] ends;
  private final double[] line;

  Deflection(Member member, double[] ends, double[] line) {
    this.member = member;
    this.ends = ends;
    this.line = line;
  }

  /** The motion of the line of centroids at a fraction of the length, six values, frame axes. */
  double[] at(double fraction) {
    double[] extra = member.clampedMotion(line, fraction * member.length());
    double alongX = straight(0, fraction) + extra[0];
    double turnX = straight(3, fraction) + extra[3];
    double[] y = bent(new double[] {ends[1], ends[5], ends[7], ends[11]}, fraction);
    double[] z = bent(new double[] {ends[2], -ends[4], ends[8], -ends[10]}, fraction);
    double alongZ = z[0] + extra[2] - member.offset() * turnX;
    double[] move = member.toFrame(alongX, y[0] + extra[1], alongZ);
    double[] turn = member.toFrame(turnX, -z[1] + extra[4], y[1] + extra[5]);
    return new double[] {move[0], move[1], move[2], turn[0], turn[1], turn[2]};
  }

  private double straight(int motion, double s) {
    return (1 - s) * ends[motion] + s * ends[motion + 6];
  }

  /** Deflection and slope of the cubic through deflection and slope at both ends. */
  private double[] bent(double[] v, double s) {
    double length = member.length();
    double rise = v[2] - v[0];
    double cubic = (v[1] + v[3]) * length - 2 * rise;
    double square = 3 * rise - (2 * v[1] + v[3]) * length;
    return new double[] {
      v[0] + s * (v[1] * length + s * (square + s * cubic)),
      v[1] + s * (2 * square + 3 * s * cubic) / length
    };
  }
}
