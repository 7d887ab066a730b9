package rungwork.solve;

import rungwork.frame.Release;

/**
 * The deflected shape of one member: the chord between its ends, the cubic by which its ends turn
 * against the chord, and what the clamped beam does under its uniform load. Together exact for a
 * prismatic beam.
 */
final class Deflection {
  private final Member member;
  private final double[] nodes;
  private final double[] deformations;
  private final double[] line;

  /**
   * A shape.
   *
   * @param member the member
   * @param nodes the motions of its nodes in its own axes, 12
   * @param deformations how it really deforms, releases let go
   * @param line its line load as from {@link Member#lineLoad}
   */
  Deflection(Member member, double[] nodes, double[] deformations, double[] line) {
    this.member = member;
    this.nodes = nodes;
    this.deformations = deformations;
    this.line = line;
  }

  /** The motion of the line of centroids at a fraction of the length, six values, frame axes. */
  double[] at(double fraction) {
    Member.Rigidity rigidity = member.rigidity();
    double hump = fraction * (1 - fraction) * member.length() * member.length() / 2;
    double alongX = nodes[0] + fraction * deformations[0] + line[0] * hump / rigidity.stretching();
    double turnX = startTurn() + fraction * deformations[1] + line[3] * hump / rigidity.twisting();
    double[] y = bent(1, 2, 1, fraction);
    double[] z = bent(2, 4, -1, fraction);
    double[] move = member.toFrame(alongX, y[0], z[0] - member.offset() * turnX);
    double[] turn = member.toFrame(turnX, -z[1], y[1]);
    return new double[] {move[0], move[1], move[2], turn[0], turn[1], turn[2]};
  }

  private double startTurn() {
    return member.beam().startReleases().contains(Release.TORSION)
        ? nodes[9] - deformations[1]
        : nodes[3];
  }

  /**
   * Deflection and slope across one axis.
   *
   * @param move which motion of the start is the deflection
   * @param bend which deformation is the turn of the start
   * @param turn 1 where a turn is a slope, −1 where it is a slope turned
   * @param s fraction of the length
   */
  private double[] bent(int move, int bend, int turn, double s) {
    double length = member.length();
    double rest = 1 - s;
    double rise = nodes[move + 6] - nodes[move];
    double start = turn * deformations[bend];
    double end = turn * deformations[bend + 1];
    double rigidity = turn > 0 ? member.rigidity().bendingZ() : member.rigidity().bendingY();
    double load = line[move] * Math.pow(length, 3) / rigidity;
    double deflection =
        nodes[move]
            + s * rise
            + length * s * rest * (rest * start - s * end)
            + load * length * s * s * rest * rest / 24;
    double slope =
        rise / length
            + rest * (1 - 3 * s) * start
            - s * (2 - 3 * s) * end
            + load * s * rest * (rest - s) / 12;
    return new double[] {deflection, slope};
  }
}
