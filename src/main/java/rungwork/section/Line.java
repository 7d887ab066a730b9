package rungwork.section;

import java.util.List;
import rungwork.fault.Guard;

/**
 * A straight piece of an outline or of a wall's centre line.
 *
 * @param start where it starts
 * @param end where it ends
 */
public record Line(Spot start, Spot end) implements Segment {
  @Override
  public double length() {
    return end.minus(start).size();
  }

  @Override
  public Spot at(double fraction) {
    return start.plus(end.minus(start).times(fraction));
  }

  @Override
  public Spot direction(double fraction) {
    return end.minus(start).times(1 / length());
  }

  @Override
  public Spot lineMoment(double fraction) {
    return start.plus(at(fraction)).times(fraction * length() / 2);
  }

  @Override
  public double sweep(double fraction) {
    return start.cross(at(fraction));
  }

  @Override
  public Moments moments() {
    return Moments.triangle(start, end);
  }

  @Override
  public Half above(double level) {
    Guard.finite("level", level);
    double a = start.z() - level;
    double b = end.z() - level;
    double run = end.y() - start.y();
    if (a * b < 0) {
      run *= Math.max(a, b) / Math.abs(a - b);
    }
    a = Math.max(a, 0);
    b = Math.max(b, 0);
    return new Half(-run * (a + b) / 2, -run * (a * a + a * b + b * b) / 6);
  }

  @Override
  public List<Spot> reaches() {
    return List.of(start, end);
  }

  @Override
  public Segment aside(double right) {
    Spot along = direction(0);
    return moved(new Spot(along.z(), -along.y()).times(right));
  }

  @Override
  public Segment backwards() {
    return new Line(end, start);
  }

  @Override
  public Segment moved(Spot by) {
    return new Line(start.plus(by), end.plus(by));
  }

  @Override
  public Segment turned(Turn turn) {
    return new Line(turn.of(start), turn.of(end));
  }
}
