package rungwork.solve;

import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Stock;

/** Small ladders in plan: two rails of three bays along x, four crossmembers. */
final class Ladders {
  static final double BAY = 0.7;
  static final double WIDTH = 0.62;

  private Ladders() {}

  /** Nodes R0 to R3 on the right rail from the front, L0 to L3 on the left. */
  static Frame.Builder of(Stock rail, Stock crossmember) {
    Frame.Builder frame = Frame.in(Plane.PLAN);
    for (int i = 0; i <= 3; i++) {
      frame.node("R" + i, new Point(0.3 - BAY * i, -WIDTH / 2, 0.25));
      frame.node("L" + i, new Point(0.3 - BAY * i, WIDTH / 2, 0.25));
      frame.beam(Beam.rigid("cross " + i, "R" + i, "L" + i, crossmember));
    }
    for (int i = 0; i < 3; i++) {
      frame.beam(Beam.rigid("right " + i, "R" + i, "R" + (i + 1), rail));
      frame.beam(Beam.rigid("left " + i, "L" + i, "L" + (i + 1), rail));
    }
    return frame;
  }
}
