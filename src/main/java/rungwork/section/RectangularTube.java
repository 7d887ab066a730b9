package rungwork.section;

import java.util.List;
import java.util.stream.IntStream;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A rectangular tube with rounded corners.
 *
 * @param height along z, outside [m]
 * @param width along y, outside [m]
 * @param wall t [m]
 * @param outer outside corner radius [m]
 * @param inner inside corner radius [m]
 */
record RectangularTube(double height, double width, double wall, double outer, double inner) {
  /** Lets a wall that was given in inches or as 6.000 mm count as 6 mm [m]. */
  private static final double ROUNDING = 1e-9;

  RectangularTube {
    Guard.positive("tube height", height, Scale.MM);
    Guard.positive("tube width", width, Scale.MM);
    Guard.positive("tube wall", wall, Scale.MM);
    Guard.positive("outside corner radius", outer, Scale.MM);
    Guard.notNegative("inside corner radius", inner, Scale.MM);
    double half = Math.min(height, width) / 2;
    String tube = "a tube of %s by %s".formatted(Scale.MM.show(height), Scale.MM.show(width));
    if (wall >= half) {
      throw new ModelException(
          "wall %s leaves no bore in %s; the wall must stay below %s"
              .formatted(Scale.MM.show(wall), tube, Scale.MM.show(half)));
    }
    if (Math.max(outer, wall + inner) > half + ROUNDING) {
      String corners = Scale.MM.show(outer) + " outside and " + Scale.MM.show(inner);
      throw new ModelException(
          "corners of %s inside radius do not fit %s with a wall of %s; state an outside radius up to %s"
              .formatted(corners, tube, Scale.MM.show(wall), Scale.MM.show(half)));
    }
  }

  /**
   * A cold-formed tube with the corners that its standard's properties are computed with: outside
   * radius 2.0 t up to 6 mm, 2.5 t up to 10 mm, 3.0 t above; inside one wall less (EN 10219-2:2006,
   * Annex B).
   */
  static RectangularTube coldFormed(double height, double width, double wall) {
    double times = wall <= 6e-3 + ROUNDING ? 2 : wall <= 10e-3 + ROUNDING ? 2.5 : 3;
    return new RectangularTube(height, width, wall, times * wall, (times - 1) * wall);
  }

  /** A hot-finished tube: outside radius 1.5 t, inside 1.0 t (EN 10210-2:2006, from memory). */
  static RectangularTube hotFinished(double height, double width, double wall) {
    return new RectangularTube(height, width, wall, 1.5 * wall, wall);
  }

  /** A tube with a stated outside radius; the inside radius is one wall less, not below zero. */
  static RectangularTube cornered(double height, double width, double wall, double outer) {
    return new RectangularTube(height, width, wall, outer, Math.max(0, outer - wall));
  }

  /**
   * The tube as drawn. Torsion constant by EN 10219-2:2006, Annex B: It = t³h'/3 + 2·K·Ah, that is
   * the walls' own and Bredt's term on centre lines with corners of radius (outer + inner)/2.
   */
  ThinShape shape() {
    List<Segment> edge = Pen.roundedRectangle(height, width, outer);
    List<Segment> bore = Pen.roundedRectangle(height - 2 * wall, width - 2 * wall, inner);
    List<Segment> centre = Pen.roundedRectangle(height - wall, width - wall, (outer + inner) / 2);
    return new ThinShape(
        Label.sized(height == width ? "SHS" : "RHS", height, width, wall),
        new Outline(List.of(edge, Outline.bore(bore))),
        centre.stream().map(piece -> new Strip(piece, wall)).toList(),
        marks(edge),
        flats(),
        Torsion.CLOSED);
  }

  private static List<Mark> marks(List<Segment> edge) {
    return IntStream.range(0, edge.size())
        .boxed()
        .flatMap(i -> Marks.outside(part(edge.get(i)), edge.get(i), i))
        .toList();
  }

  private static String part(Segment piece) {
    return piece instanceof Arc ? "corner" : "wall";
  }

  private List<Wall> flats() {
    double y = (width - wall) / 2;
    double z = (height - wall) / 2;
    double upright = height - 3 * wall;
    double level = width - 3 * wall;
    return List.of(
        flat(upright, new Spot(y, -upright / 2), new Spot(y, upright / 2)),
        flat(level, new Spot(level / 2, z), new Spot(-level / 2, z)),
        flat(upright, new Spot(-y, upright / 2), new Spot(-y, -upright / 2)),
        flat(level, new Spot(-level / 2, -z), new Spot(level / 2, -z)));
  }

  private Wall flat(double width, Spot from, Spot to) {
    return Wall.between("wall", wall, Wall.Edge.INTERNAL, new Line(from, to));
  }
}
