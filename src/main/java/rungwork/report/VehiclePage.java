package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rungwork.frame.Mass;
import rungwork.frame.Point;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.vehicle.Axle;
import rungwork.vehicle.Vehicle;
import rungwork.vehicle.Wheel;

/** A vehicle's card: mass, centre of mass, what axles and wheels carry, and its masses. */
final class VehiclePage {
  private VehiclePage() {}

  static Page of(Vehicle vehicle, Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Vehicle " + vehicle.name()));
    blocks.add(new Block.Paragraph(summary(vehicle, units)));
    blocks.add(new Block.Heading("Standing on level ground"));
    blocks.add(loads(vehicle, units));
    blocks.add(new Block.Heading("Masses"));
    List<Mass> pieces = vehicle.frameMasses();
    List<Mass> carried = vehicle.masses().subList(0, vehicle.masses().size() - pieces.size());
    blocks.add(masses(carried, units));
    if (!pieces.isEmpty()) {
      blocks.add(new Block.Folded(summary(pieces, units), List.of(masses(pieces, units))));
    }
    return new Page(blocks);
  }

  private static String summary(List<Mass> pieces, Units units) {
    double kilograms = pieces.stream().mapToDouble(Mass::kilograms).sum();
    return "and the frame itself: "
        + units.show(Kind.MASS, kilograms)
        + " in "
        + pieces.size()
        + " pieces";
  }

  private static String summary(Vehicle vehicle, Units units) {
    Point centre = vehicle.centreOfMass();
    return "Mass "
        + units.show(Kind.MASS, vehicle.massTotal())
        + "; wheelbase "
        + length(vehicle.wheelbase(), units)
        + "; track "
        + length(vehicle.track(Axle.FRONT), units)
        + " front, "
        + length(vehicle.track(Axle.REAR), units)
        + " rear. Centre of mass "
        + about(-centre.x(), units)
        + " behind the front axle, "
        + about(centre.y(), units)
        + " to the left, "
        + about(centre.z(), units)
        + " above the ground.";
  }

  /** A computed place, as fine as a tape measure reads. */
  private static String about(double metres, Units units) {
    double figure = metres / units.scale(Kind.LENGTH).inSi();
    return Numbers.decimals(figure, units == Units.METRIC ? 0 : 1)
        + " "
        + units.scale(Kind.LENGTH).unit();
  }

  private static String length(double metres, Units units) {
    return Numbers.dimension(metres, units) + " " + units.scale(Kind.LENGTH).unit();
  }

  private static Table loads(Vehicle vehicle, Units units) {
    List<Row> rows = new ArrayList<>();
    Map<Wheel, Double> wheels = vehicle.wheelLoads();
    for (Map.Entry<Axle, Double> axle : vehicle.axleLoads().entrySet()) {
      rows.add(load(axle.getKey().word() + " axle", axle.getValue(), vehicle, units));
    }
    wheels.forEach((wheel, load) -> rows.add(load(wheel.name(), load, vehicle, units)));
    return new Table(
        List.of(
            Column.words("on"),
            Column.number("load", units.scale(Kind.FORCE).unit()),
            Column.number("share", "%")),
        rows);
  }

  private static Row load(String name, double newtons, Vehicle vehicle, Units units) {
    return Row.of(
        name,
        units.scale(Kind.FORCE).number(newtons, 4),
        Numbers.decimals(100 * newtons / vehicle.weight(), 1));
  }

  private static Table masses(List<Mass> masses, Units units) {
    String unit = units.scale(Kind.LENGTH).unit();
    List<Row> rows = masses.stream().map(mass -> row(mass, units)).toList();
    return new Table(
        List.of(
            Column.words("mass"),
            Column.number("size", units.scale(Kind.MASS).unit()),
            Column.number("x", unit),
            Column.number("y", unit),
            Column.number("z", unit),
            Column.number("amplification"),
            Column.sentence("carried by")),
        rows);
  }

  private static Row row(Mass mass, Units units) {
    return Row.of(
        mass.name(),
        units.scale(Kind.MASS).number(mass.kilograms(), 4),
        Numbers.dimension(mass.at().x(), units),
        Numbers.dimension(mass.at().y(), units),
        Numbers.dimension(mass.at().z(), units),
        Numbers.decimals(mass.amplification(), 2),
        String.join(", ", mass.carriers()));
  }
}
