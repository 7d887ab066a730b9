package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.section.Section;
import rungwork.section.StressPoint;
import rungwork.section.Wall;

/**
 * A cross-section to scale, seen along the beam's x, which goes away from the reader: y to the
 * left, z up; its overall dimensions, its stress points numbered, centroid and shear centre marked.
 */
final class SectionDrawing {
  /** Longer side of the section on the drawing [px]. */
  private static final double SIZE = 300;

  /** Nearer than this, centroid and shear centre share one mark [px]. */
  private static final double ONE_MARK = 3;

  /** Directions in which a place for a point's number is looked for. */
  private static final int DIRECTIONS = 16;

  /** Farther than this, a line leads from a point to its number [px]. */
  private static final double NEAR = 15;

  /** Half the size of a number [px]. */
  private static final double NUMBER = 7;

  private static final Pattern SIDE = Pattern.compile("\\b(top|bottom|left|right) ");

  private final Section section;
  private final Units units;
  private final Canvas canvas = new Canvas();
  private final Labels labels = new Labels(canvas);
  private final double scale;
  private final List<List<Spot>> loops;

  private SectionDrawing(Section section, Units units) {
    this.section = section;
    this.units = units;
    Box inMetres = Outlines.around(Outlines.loops(section, 1));
    scale = SIZE / Math.max(inMetres.width(), inMetres.height());
    loops = Outlines.loops(section, scale);
  }

  /** Draws a section that has an outline. */
  static Picture of(Section section, Units units) {
    return new SectionDrawing(section, units).draw();
  }

  private Picture draw() {
    canvas.part(section.name(), () -> canvas.loops("steel", loops));
    Box box = Outlines.around(loops);
    axes(box);
    if (SectionProperties.leans(section)) {
      principalAxes(box);
    }
    keepFree();
    points();
    centres();
    dimensions(box);
    canvas.label(
        Label.at(new Spot(canvas.box().left(), canvas.box().bottom() + 22), note()).css("small"));
    String title = section.name() + " to scale, " + units.scale(Kind.LENGTH).unit();
    return new Picture(title, canvas.done(title), words(box));
  }

  /** The unit, and how thick the walls are: one figure for all, or each part with its own. */
  private String note() {
    List<Double> walls = section.walls().stream().map(Wall::thickness).distinct().toList();
    String unit = "dimensions [" + units.scale(Kind.LENGTH).unit() + "]";
    return switch (walls.size()) {
      case 0 -> unit;
      case 1 -> unit + "; wall " + length(walls.get(0));
      default -> unit + "; thickness of " + String.join(", ", thicknesses());
    };
  }

  private List<String> thicknesses() {
    return section.walls().stream()
        .map(wall -> SIDE.matcher(wall.name()).replaceAll("") + " " + length(wall.thickness()))
        .distinct()
        .toList();
  }

  /** The strong axis u and the weak axis v where y and z are no principal axes. */
  private void principalAxes(Box box) {
    double angle = section.properties().principalAngle();
    double reach = Math.min(Math.hypot(box.width(), box.height()) / 2, SIZE / 2) + 18;
    principalAxis("u", new Spot(-Math.cos(angle), -Math.sin(angle)), reach);
    principalAxis("v", new Spot(Math.sin(angle), -Math.cos(angle)), reach);
  }

  private void principalAxis(String name, Spot direction, double reach) {
    Spot centre = place(0, 0);
    Spot end = centre.plus(reach * direction.x(), reach * direction.y());
    Spot start = centre.plus(-reach * direction.x(), -reach * direction.y());
    canvas.part(
        "principal axis " + name,
        () -> {
          canvas.line("dotted", start, end);
          Spot beyond = end.plus(9 * direction.x(), 9 * direction.y() + 4);
          canvas.label(Label.middle(beyond, name).css("small strong on"));
        });
    labels.keepFree(Box.EMPTY.and(end).grown(14));
  }

  private void axes(Box box) {
    Spot centre = place(0, 0);
    Box reach = box.grown(22);
    Spot left = new Spot(reach.left(), centre.y());
    Spot top = new Spot(centre.x(), reach.top());
    canvas.line("axis", new Spot(reach.right(), centre.y()), left);
    canvas.line("axis", new Spot(centre.x(), reach.bottom()), top);
    canvas.label(Label.end(left.plus(-3, 4), "y").css("small"));
    canvas.label(Label.middle(top.plus(0, -4), "z").css("small"));
  }

  private void dimensions(Box box) {
    Spot bottomLeft = new Spot(box.left(), box.bottom());
    Spot bottomRight = new Spot(box.right(), box.bottom());
    Spot topRight = new Spot(box.right(), box.top());
    new Dimension(bottomLeft, bottomRight, length(box.width() / scale))
        .along(canvas, canvas.box().bottom() + 24);
    new Dimension(topRight, bottomRight, length(box.height() / scale))
        .up(canvas, canvas.box().right() + 16);
  }

  private void points() {
    for (int i = 0; i < section.points().size(); i++) {
      StressPoint point = section.points().get(i);
      Spot at = place(point.y(), point.z());
      String number = String.valueOf(i + 1);
      canvas.part(number + ": " + point.name(), () -> point(at, number));
    }
  }

  private void point(Spot at, String number) {
    canvas.circle("solid", at, 2.5);
    Label label = labels.put(around(at, number));
    Spot middle = label.at().plus(0, -4);
    if (at.distance(middle) > NEAR) {
      canvas.line("faint", at, at.towards(middle, 1 - NUMBER / at.distance(middle)));
    }
  }

  /** Places for a point's number, nearer ones first, away from the centroid first. */
  private static List<Label> around(Spot at, String number) {
    double outwards = Math.atan2(at.y(), at.x());
    List<Label> places = new ArrayList<>();
    for (double distance : new double[] {13, 19, 26, 34, 44}) {
      for (int i = 0; i < DIRECTIONS; i++) {
        int turn = i % 2 == 0 ? i / 2 : -(i + 1) / 2;
        double angle = outwards + 2 * Math.PI * turn / DIRECTIONS;
        Spot middle = at.plus(distance * Math.cos(angle), distance * Math.sin(angle));
        places.add(Label.middle(middle.plus(0, 4), number).css("small on strong"));
      }
    }
    return places;
  }

  /** Keeps numbers off the steel, the points and the mark of the centroid. */
  private void keepFree() {
    for (List<Spot> loop : loops) {
      for (int i = 0; i < loop.size(); i++) {
        Spot from = loop.get(i);
        Spot to = loop.get((i + 1) % loop.size());
        int pieces = 1 + (int) (from.distance(to) / 4);
        for (int k = 0; k < pieces; k++) {
          labels.keepFree(Box.EMPTY.and(from.towards(to, (double) k / pieces)).grown(1));
        }
      }
    }
    section.points().forEach(p -> labels.keepFree(Box.EMPTY.and(place(p.y(), p.z())).grown(3)));
    labels.keepFree(Box.EMPTY.and(place(0, 0)).grown(16));
    Spot shear = place(section.properties().shearCentreY(), section.properties().shearCentreZ());
    labels.keepFree(Box.EMPTY.and(shear).grown(6).and(shear.plus(13, 12)));
  }

  private void centres() {
    Spot centroid = place(0, 0);
    Spot shear = place(section.properties().shearCentreY(), section.properties().shearCentreZ());
    boolean one = centroid.distance(shear) < ONE_MARK;
    canvas.part(
        one ? "centroid C and shear centre S" : "centroid C",
        () -> {
          canvas.circle("hollow", centroid, 4.5);
          canvas.circle("solid", centroid, 1.5);
          canvas.label(Label.at(centroid.plus(7, 15), one ? "C, S" : "C").css("small on"));
        });
    if (!one) {
      canvas.part(
          "shear centre S",
          () -> {
            canvas.line("edge", shear.plus(-5, -5), shear.plus(5, 5));
            canvas.line("edge", shear.plus(-5, 5), shear.plus(5, -5));
            canvas.label(Label.at(shear.plus(7, 15), "S").css("small on"));
          });
    }
  }

  private String words(Box box) {
    return "Section "
        + section.name()
        + ": "
        + units.show(Kind.LENGTH, box.width() / scale)
        + " wide (y), "
        + units.show(Kind.LENGTH, box.height() / scale)
        + " deep (z), "
        + lean()
        + section.points().size()
        + " stress points.";
  }

  private String lean() {
    return SectionProperties.leans(section)
        ? "its strong axis u turned by "
            + units.show(Kind.ANGLE, section.properties().principalAngle())
            + " from y towards z, "
        : "";
  }

  private String length(double metres) {
    return Numbers.dimension(metres, units);
  }

  private Spot place(double y, double z) {
    return new Spot(-y * scale, -z * scale);
  }
}
