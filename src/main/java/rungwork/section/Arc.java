package rungwork.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import rungwork.fault.Guard;

/**
 * A circular piece of an outline or of a wall's centre line.
 *
 * @param centre centre of its circle
 * @param radius r [m]
 * @param from direction from the centre to its start, from y towards z [rad]
 * @param angle the angle that it runs through, positive from y towards z [rad]
 */
public record Arc(Spot centre, double radius, double from, double angle) implements Segment {
  /** Refuses what is not finite. */
  public Arc {
    Guard.finite("radius of an arc", radius);
    Guard.finite("beginning of an arc", from);
    Guard.finite("angle of an arc", angle);
  }

  private static final double QUARTER = Math.PI / 2;

  @Override
  public Spot start() {
    return at(0);
  }

  @Override
  public Spot end() {
    return at(1);
  }

  @Override
  public double length() {
    return radius * Math.abs(angle);
  }

  @Override
  public Spot at(double fraction) {
    return centre.plus(Spot.polar(radius, from + fraction * angle));
  }

  @Override
  public Spot direction(double fraction) {
    return Spot.polar(Math.signum(angle), from + fraction * angle + QUARTER);
  }

  @Override
  public Spot lineMoment(double fraction) {
    double to = from + fraction * angle;
    double r2 = radius * radius * Math.signum(angle);
    Spot aboutCentre =
        new Spot(r2 * (Math.sin(to) - Math.sin(from)), r2 * (Math.cos(from) - Math.cos(to)));
    return centre.times(fraction * length()).plus(aboutCentre);
  }

  @Override
  public double sweep(double fraction) {
    return centre.cross(at(fraction).minus(start())) + radius * radius * fraction * angle;
  }

  @Override
  public Moments moments() {
    Moments beyondChord =
        Moments.discSegment(radius, angle / 2).turned(from + angle / 2).moved(centre);
    return Moments.triangle(start(), end()).plus(beyondChord);
  }

  @Override
  public Half above(double level) {
    double height = centre.z() - level;
    double[] cuts = cuts(-height / radius);
    Half sum = Half.NONE;
    for (int i = 1; i < cuts.length; i++) {
      double middle = (cuts[i - 1] + cuts[i]) / 2;
      if (height + radius * Math.sin(middle) > 0) {
        sum = sum.plus(whole(height, cuts[i - 1], cuts[i]));
      }
    }
    return sum;
  }

  /** The directions of its start, of its crossings of a level and of its end, in its order. */
  private double[] cuts(double sine) {
    if (Math.abs(sine) >= 1) {
      return new double[] {from, from + angle};
    }
    double rising = Math.asin(sine);
    DoubleStream crossings =
        DoubleStream.concat(directions(rising), directions(Math.PI - rising)).sorted();
    double[] sorted =
        DoubleStream.concat(DoubleStream.of(from, from + angle), crossings).sorted().toArray();
    if (angle < 0) {
      for (int i = 0, j = sorted.length - 1; i < j; i++, j--) {
        double kept = sorted[i];
        sorted[i] = sorted[j];
        sorted[j] = kept;
      }
    }
    return sorted;
  }

  /** A direction, and its equals by whole turns, as far as this arc passes them. */
  private DoubleStream directions(double direction) {
    double low = Math.min(from, from + angle);
    double high = Math.max(from, from + angle);
    double turn = 2 * Math.PI;
    double first = direction + turn * Math.ceil((low - direction) / turn);
    return DoubleStream.iterate(first, d -> d < high, d -> d + turn);
  }

  /** The share of an arc that lies wholly above the level, its centre at a height [m] over it. */
  private Half whole(double height, double t1, double t2) {
    double sin = Math.cos(t1) - Math.cos(t2);
    double sin2 = (t2 - t1) / 2 - (Math.sin(2 * t2) - Math.sin(2 * t1)) / 4;
    double sin3 = sin + (Math.pow(Math.cos(t2), 3) - Math.pow(Math.cos(t1), 3)) / 3;
    double r = radius;
    return new Half(
        r * (height * sin + r * sin2),
        r / 2 * (height * height * sin + 2 * height * r * sin2 + r * r * sin3));
  }

  @Override
  public List<Spot> reaches() {
    List<Spot> spots = new ArrayList<>(List.of(start(), end()));
    for (int quarter = 0; quarter < 4; quarter++) {
      directions(quarter * QUARTER).forEach(d -> spots.add(centre.plus(Spot.polar(radius, d))));
    }
    return spots;
  }

  @Override
  public Segment aside(double right) {
    return new Arc(centre, radius + Math.signum(angle) * right, from, angle);
  }

  @Override
  public Segment backwards() {
    return new Arc(centre, radius, from + angle, -angle);
  }

  @Override
  public Segment moved(Spot by) {
    return new Arc(centre.plus(by), radius, from, angle);
  }

  @Override
  public Segment turned(Turn turn) {
    Spot outward = turn.of(Spot.polar(1, from));
    double start = Math.atan2(outward.z(), outward.y());
    return new Arc(turn.of(centre), radius, start, Math.signum(turn.handedness()) * angle);
  }
}
