package rungwork.solve;

/**
 * The deflected shape of one member, from the motions and the forces at its start (method of
 * initial parameters): exact for a prismatic beam.
 */
final class Deflection {
  private final Member member;
  private final double[] start;
  private final Span span;

  /**
   * A shape.
   *
   * @param member the member
   * @param start the motions of its start in its own axes, joints open, 6
   * @param span what acts on it, forces at its start included
   */
  Deflection(Member member, double[] start, Span span) {
    this.member = member;
    this.start = start;
    this.span = span;
  }

  /** Places strictly between the ends where its polynomials begin anew, in rising order. */
  double[] breaks() {
    return span.breaks();
  }

  /** The motion of the line of centroids at a fraction of the length, six values, frame axes. */
  double[] at(double fraction) {
    double x = fraction * member.length();
    double[] by = span.at(fraction, member);
    double alongY = start[1] + start[5] * x + by[Span.V];
    double alongZ = start[2] - start[4] * x + by[Span.W];
    double turnX = start[3] + by[Span.TURN_X] - member.axes().lean() * alongZ;
    double[] move =
        member.axes().toFrame(start[0] + by[Span.U], alongY, alongZ - member.offset() * turnX);
    double[] turn =
        member.axes().toFrame(turnX, start[4] + by[Span.TURN_Y], start[5] + by[Span.TURN_Z]);
    return new double[] {move[0], move[1], move[2], turn[0], turn[1], turn[2]};
  }
}
