package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Thin walls for tests, without an outline. */
final class Walls {
  private Walls() {}

  static Strip strip(Spot from, Spot to, double thickness) {
    return new Strip(new Line(from, to), thickness);
  }

  /** A chain of three to six straight walls, each of its own thickness. */
  static List<Strip> open(Random random) {
    List<Strip> walls = new ArrayList<>();
    Spot at = Spot.ORIGIN;
    double heading = 0;
    int count = 3 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      Spot next = at.plus(Spot.polar(0.02 + 0.06 * random.nextDouble(), heading));
      walls.add(strip(at, next, 0.001 + 0.003 * random.nextDouble()));
      heading += 0.4 + random.nextDouble();
      at = next;
    }
    return walls;
  }

  /** Two cells side by side with a fin, no two walls alike. */
  static List<Strip> twoCells(Random random) {
    double t = 0.001 + 0.002 * random.nextDouble();
    Spot a = new Spot(0, 0);
    Spot b = new Spot(0.04 + 0.02 * random.nextDouble(), 0.005);
    Spot c = new Spot(0.11, -0.01 * random.nextDouble());
    Spot d = new Spot(0.1, 0.05 + 0.02 * random.nextDouble());
    Spot e = new Spot(0.05, 0.06);
    Spot f = new Spot(0.005, 0.04);
    return List.of(
        strip(a, b, t),
        strip(b, c, 1.5 * t),
        strip(c, d, t),
        strip(d, e, 0.7 * t),
        strip(e, f, t),
        strip(f, a, 1.2 * t),
        strip(b, e, 0.9 * t),
        strip(d, new Spot(0.13, 0.08), t));
  }

  /**
   * A closed rectangle of centre lines: {@code th} on its upright walls, {@code tb} on the others.
   */
  static List<Strip> rectangle(double h, double b, double th, double tb) {
    Spot one = new Spot(b / 2, -h / 2);
    Spot two = new Spot(b / 2, h / 2);
    Spot three = new Spot(-b / 2, h / 2);
    Spot four = new Spot(-b / 2, -h / 2);
    return List.of(
        strip(one, two, th), strip(two, three, tb), strip(three, four, th), strip(four, one, tb));
  }

  /** The same with one thickness and a slit in the middle of its left wall. */
  static List<Strip> slitRectangle(double h, double b, double t, double slit) {
    List<Strip> walls = new ArrayList<>(rectangle(h, b, t, t).subList(1, 4));
    Spot low = new Spot(b / 2, -h / 2);
    Spot high = new Spot(b / 2, h / 2);
    walls.add(strip(low, new Spot(b / 2, -slit / 2), t));
    walls.add(0, strip(new Spot(b / 2, slit / 2), high, t));
    return walls;
  }

  /** Every wall cut in two unequal parts. */
  static List<Strip> halved(List<Strip> strips) {
    List<Strip> halves = new ArrayList<>();
    for (Strip strip : strips) {
      halves.add(new Strip(part(strip.path(), 0, 0.3), strip.thickness(), strip.filled()));
      halves.add(new Strip(part(strip.path(), 0.3, 1), strip.thickness(), strip.filled()));
    }
    return halves;
  }

  static Segment part(Segment piece, double from, double to) {
    if (piece instanceof Arc arc) {
      return new Arc(
          arc.centre(), arc.radius(), arc.from() + from * arc.angle(), (to - from) * arc.angle());
    }
    return new Line(piece.at(from), piece.at(to));
  }
}
