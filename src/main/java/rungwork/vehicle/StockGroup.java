package rungwork.vehicle;

import java.util.ArrayList;
import java.util.List;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.frame.Stock;
import rungwork.solve.RigidAcceleration;

/**
 * The beams of a ladder that are cut from one stock: both rails, or one crossmember.
 *
 * @param name of the part
 * @param beams names of its beams
 * @param first the stock that it was planned with
 * @param mass all of its own mass with that stock, as one body
 */
record StockGroup(String name, List<String> beams, Stock first, Mass mass) {
  /** The groups of a ladder: its rails, then each crossmember in the ladder's order. */
  static List<StockGroup> of(Ladder ladder) {
    Frame frame = ladder.frame(Joints.RIGID);
    List<StockGroup> groups = new ArrayList<>();
    List<String> rails = new ArrayList<>();
    for (Side side : Side.values()) {
      rails.addAll(beams(ladder, Ladder.railPart(side)));
    }
    groups.add(of("rails", rails, ladder, frame));
    for (Crossmember crossmember : ladder.crossmembers()) {
      groups.add(of(crossmember.part(), beams(ladder, crossmember.part()), ladder, frame));
    }
    return groups;
  }

  private static List<String> beams(Ladder ladder, String part) {
    return ladder.frame(Joints.RIGID).beams().stream()
        .map(beam -> beam.name())
        .filter(beam -> beam.startsWith(part + " "))
        .toList();
  }

  private static StockGroup of(String name, List<String> beams, Ladder ladder, Frame frame) {
    Stock stock =
        new Stock(frame.beam(beams.get(0)).section(), frame.beam(beams.get(0)).material());
    List<Mass> own = ladder.masses().stream().filter(mass -> beams.contains(mass.name())).toList();
    return new StockGroup(name, beams, stock, together(name, own));
  }

  /** Several masses as one body about their common centre (parallel axes). */
  private static Mass together(String name, List<Mass> masses) {
    double kilograms = masses.stream().mapToDouble(Mass::kilograms).sum();
    double[] centre = new double[3];
    for (Mass mass : masses) {
      double part = mass.kilograms() / kilograms;
      centre[0] += part * mass.at().x();
      centre[1] += part * mass.at().y();
      centre[2] += part * mass.at().z();
    }
    double[] sum = new double[6];
    for (Mass mass : masses) {
      double m = mass.kilograms();
      double x = mass.at().x() - centre[0];
      double y = mass.at().y() - centre[1];
      double z = mass.at().z() - centre[2];
      sum[0] += mass.own().xx() + m * (y * y + z * z);
      sum[1] += mass.own().yy() + m * (x * x + z * z);
      sum[2] += mass.own().zz() + m * (x * x + y * y);
      sum[3] += mass.own().xy() + m * x * y;
      sum[4] += mass.own().yz() + m * y * z;
      sum[5] += mass.own().zx() + m * z * x;
    }
    Mass.Inertia own = new Mass.Inertia(sum[0], sum[1], sum[2], sum[3], sum[4], sum[5]);
    Point at = new Point(centre[0], centre[1], centre[2]);
    return new Mass("all of the " + name, kilograms, at, own, masses.get(0).carriers(), 1);
  }

  /** How many times as heavy a metre of a stock is as a metre of the first one. */
  double weight(Stock stock) {
    return perMetre(stock) / perMetre(first);
  }

  private static double perMetre(Stock stock) {
    return stock.material().elasticity().density() * stock.section().properties().area();
  }

  /** Its mass when it is so many times as heavy. */
  Mass mass(double weight) {
    return new Mass(
        mass.name(),
        mass.kilograms() * weight,
        mass.at(),
        mass.own().times(weight),
        mass.carriers(),
        1);
  }

  /** Its first stock's inertia along its beams. */
  List<Load> inertia(RigidAcceleration acceleration, Ladder ladder) {
    return ladder.inertia(acceleration).stream()
        .filter(load -> load instanceof Load.AlongPart part && beams.contains(part.beam()))
        .toList();
  }
}
