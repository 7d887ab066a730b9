package rungwork.vehicle;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Stock;

/**
 * One rail in plan, from its tip (front) to its tail (rear): straight reaches, each of one stock.
 *
 * @param x of its tip, forward [m]
 * @param y of its tip, to the left [m]
 * @param reaches its straight parts, from front to rear
 */
public record Rail(double x, double y, List<Reach> reaches) {
  /** Refuses a rail that turns back forward. */
  public Rail {
    Guard.finite("x of the rail's tip", x);
    Guard.finite("y of the rail's tip", y);
    reaches = List.copyOf(reaches);
    double front = x;
    for (Reach reach : reaches) {
      if (reach.x >= front) {
        throw new ModelException(
            "the rail runs from x "
                + Scale.MM.show(front)
                + " to x "
                + Scale.MM.show(reach.x)
                + "; give its points from front to rear");
      }
      front = reach.x;
    }
  }

  /**
   * A straight part of a rail, from where the part before it ended.
   *
   * @param x of its rear end [m]
   * @param y of its rear end [m]
   * @param stock what it is cut from
   */
  public record Reach(double x, double y, Stock stock) {
    /** Refuses a place that is not finite. */
    public Reach {
      Guard.finite("x of the rail's point", x);
      Guard.finite("y of the rail's point", y);
    }
  }

  /**
   * Starts a rail at its tip.
   *
   * @param x forward
   * @param y to the left
   * @return the rail, still without length
   */
  public static Rail from(Quantity<Length> x, Quantity<Length> y) {
    return new Rail(si("x of the rail's tip", x), si("y of the rail's tip", y), List.of());
  }

  /**
   * This rail carried on rearwards.
   *
   * @param toX where the new part ends, forward
   * @param toY where the new part ends, to the left
   * @param stock what the new part is cut from
   * @return the longer rail
   */
  public Rail to(Quantity<Length> toX, Quantity<Length> toY, Stock stock) {
    List<Reach> longer = new ArrayList<>(reaches);
    longer.add(
        new Reach(si("x of the rail's point", toX), si("y of the rail's point", toY), stock));
    return new Rail(x, y, longer);
  }

  /**
   * The rail on the other side of the vehicle.
   *
   * @return this rail with y turned over
   */
  public Rail mirrored() {
    return new Rail(x, -y, reaches.stream().map(r -> new Reach(r.x, -r.y, r.stock)).toList());
  }

  /**
   * The same line in another stock.
   *
   * @param stock what all of it is cut from
   * @return the rail
   */
  public Rail of(Stock stock) {
    return new Rail(x, y, reaches.stream().map(r -> new Reach(r.x, r.y, stock)).toList());
  }

  /**
   * The place of its rear end.
   *
   * @return x of its tail [m]
   */
  public double tail() {
    return reaches.isEmpty() ? x : reaches.get(reaches.size() - 1).x;
  }

  /**
   * Whether the rail passes a station.
   *
   * @param station x [m]
   * @return true between its tip and its tail, both included
   */
  public boolean reaches(double station) {
    return station <= x && station >= tail();
  }

  /**
   * How far to the left the rail is at a station.
   *
   * @param station x between tip and tail [m]
   * @return y [m]
   */
  public double yAt(double station) {
    Guard.finite("station", station);
    double frontX = x;
    double frontY = y;
    for (Reach reach : reaches) {
      if (station >= reach.x) {
        return frontY + (reach.y - frontY) * (frontX - station) / (frontX - reach.x);
      }
      frontX = reach.x;
      frontY = reach.y;
    }
    return frontY;
  }

  /**
   * What the rail is cut from just ahead of a station.
   *
   * @param station x behind the tip, to the tail [m]
   * @return the stock there
   */
  Stock stockAheadOf(double station) {
    return reaches.stream()
        .filter(reach -> station >= reach.x)
        .findFirst()
        .orElse(reaches.get(reaches.size() - 1))
        .stock;
  }
}
