package rungwork.loadpath;

import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.mm;

import rungwork.frame.Point;
import rungwork.loadpath.Seating.Belt;
import rungwork.loadpath.Seating.Chair;
import rungwork.loadpath.Seating.End;
import rungwork.vehicle.Mount;

/** Seats whose belts run in planes along the vehicle, so that their forces are found by hand. */
public final class Belts {
  private Belts() {}

  public static Point at(double x, double y, double z) {
    return Point.at(mm(x), mm(y), mm(z));
  }

  public static Mount mount(String name, double x, double y, double z) {
    return new Mount(name, "left rail", at(x, y, z));
  }

  /** Both ends run forward and up from the floor, 400 mm apart. */
  public static Belt lap(String seat, double y, double forward, double up) {
    return new Belt(
        seat + " lap belt",
        End.fixed(mount(seat + " outer lap", -1200, y, 300), at(-1200 + forward, y, 300 + up)),
        End.fixed(
            mount(seat + " inner lap", -1200, y - 400, 300),
            at(-1200 + forward, y - 400, 300 + up)));
  }

  public static Chair chair(String seat, double y) {
    return Chair.of(
        kg(12),
        at(-1000, y - 200, 600),
        mount(seat + " seat front", -800, y - 200, 330),
        mount(seat + " seat rear", -1200, y - 200, 330));
  }

  /** A lap belt at 45°. */
  public static Seating lapOnly(String seat, double y) {
    return Seating.lapBelt(seat, lap(seat, y, 200, 200), chair(seat, y));
  }

  /** With a shoulder belt: a loop level behind the shoulder, its reel straight below. */
  public static Seating threePoints(String seat, double y) {
    Belt shoulder =
        new Belt(
            seat + " shoulder belt",
            End.loop(mount(seat + " loop", -1300, y, 1000), at(-1100, y, 1000), at(-1300, y, 350)),
            End.fixed(mount(seat + " inner lap", -1200, y - 400, 300), at(-900, y - 400, 700)));
    return lapOnly(seat, y).withShoulder(shoulder);
  }
}
