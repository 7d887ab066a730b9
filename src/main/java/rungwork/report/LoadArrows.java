package rungwork.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Point;
import rungwork.frame.Wrench;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.solve.Response;

/**
 * The loads of a load case on their frame, as arrows with values: forces end where they act,
 * moments are arrows with two heads along their axis (right-hand rule).
 *
 * @param frame the loaded frame
 * @param loadCase its loads
 */
public record LoadArrows(Frame frame, LoadCase loadCase) implements Shown {
  private static final double WIDTH = 640;
  private static final double LONGEST = 92;
  private static final double SHORTEST = 16;

  /** A smaller part of the largest is listed but not drawn. */
  private static final double DRAWN = 0.03;

  /**
   * The loads behind a response.
   *
   * @param response what the frame did
   * @return its loads
   */
  public static LoadArrows of(Response response) {
    return new LoadArrows(response.frame(), response.loadCase());
  }

  /**
   * The drawing alone.
   *
   * @param units the reader's units
   * @return the picture
   */
  public Picture picture(Units units) {
    Canvas canvas = new Canvas();
    Sight sight = Sight.fitting(frame, WIDTH);
    FrameLines.draw(canvas, frame, sight);
    Labels labels = new Labels(canvas);
    List<Acting> loads = loads();
    double force = DRAWN * loads.stream().mapToDouble(Acting::force).max().orElse(0);
    double moment = 3 * DRAWN * loads.stream().mapToDouble(Acting::moment).max().orElse(0);
    for (Acting load : loads) {
      if (load.force() > force) {
        Arrow arrow = load.arrow(sight, force / DRAWN);
        force(canvas, labels, arrow, load.place() + ": " + load.force(units));
      }
      if (load.moment() > moment) {
        Arrow arrow = load.twist(sight, moment / DRAWN / 3);
        moment(canvas, labels, arrow, load.place() + ": " + load.moment(units));
      }
    }
    Box box = canvas.box();
    String note = note(force, moment, units);
    canvas.label(Label.at(new Spot(box.left(), box.bottom() + 26), note).css("small"));
    FrameLines.front(canvas, sight);
    String title = "Loads: " + loadCase.name();
    return new Picture(title, canvas.done(title), note);
  }

  private static String note(double force, double moment, Units units) {
    return "Single heads: forces; double heads: moments about the arrow's line. Too small to draw: "
        + "forces up to "
        + units.scale(Kind.FORCE).show(force, 2)
        + ", moments up to "
        + units.scale(Kind.MOMENT).show(moment, 2)
        + ".";
  }

  private static void force(Canvas canvas, Labels labels, Arrow arrow, String title) {
    canvas.part(title, () -> arrow.draw(canvas, "force", "head-of-force"));
    value(labels, arrow.tail(), arrow, title);
  }

  private static void moment(Canvas canvas, Labels labels, Arrow arrow, String title) {
    canvas.part(title, () -> arrow.drawDouble(canvas, "edge", "solid"));
    value(labels, arrow.tip(), arrow, title);
  }

  /** The value beyond the arrow's free end. */
  private static void value(Labels labels, Spot end, Arrow arrow, String title) {
    String words = title.substring(title.lastIndexOf(": ") + 2);
    Spot other = end.equals(arrow.tip()) ? arrow.tail() : arrow.tip();
    double down = Math.signum(end.y() - other.y());
    List<Label> places = new ArrayList<>();
    for (int row = 0; row < 4; row++) {
      double y = down < 0 ? -5 - 14 * row : 14 + 14 * row;
      places.add(Label.middle(end.plus(0, y), words).css("small on"));
      places.add(Label.at(end.plus(5, y / 2), words).css("small on"));
      places.add(Label.end(end.plus(-5, y / 2), words).css("small on"));
    }
    labels.put(places);
  }

  @Override
  public Page page(Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Loads: " + loadCase.name()));
    blocks.add(new Block.Paragraph("Source: " + loadCase.source()));
    blocks.add(new Block.Figure(picture(units)));
    if (!loadCase.assumptions().isEmpty()) {
      blocks.add(new Block.Remarks(loadCase.assumptions()));
    }
    blocks.add(table(units));
    return new Page(blocks);
  }

  private Table table(Units units) {
    String force = units.scale(Kind.FORCE).unit();
    String moment = units.scale(Kind.MOMENT).unit();
    List<Column> columns = new ArrayList<>(List.of(Column.words("at")));
    for (String one : List.of("Fx", "Fy", "Fz")) {
      columns.add(Column.number(one, force));
    }
    for (String one : List.of("Mx", "My", "Mz")) {
      columns.add(Column.number(one, moment));
    }
    return new Table(columns, loads().stream().map(load -> load.row(units)).toList());
  }

  /** The loads summed at each node, and those along each beam as their resultant. */
  private List<Acting> loads() {
    Map<String, Acting> sums = new LinkedHashMap<>();
    for (Load load : loadCase.loads()) {
      Acting one = acting(load);
      sums.merge(one.place(), one, Acting::plus);
    }
    return List.copyOf(sums.values());
  }

  private Acting acting(Load load) {
    if (load instanceof Load.AtNode node) {
      return new Acting(node.node(), frame.node(node.node()).at(), node.wrench());
    }
    Load.AlongBeam along = (Load.AlongBeam) load;
    var beam = frame.beam(along.beam());
    double length = frame.length(beam);
    Point start = frame.node(beam.start()).at();
    Point end = frame.node(beam.end()).at();
    Point middle =
        new Point((start.x() + end.x()) / 2, (start.y() + end.y()) / 2, (start.z() + end.z()) / 2);
    Wrench sum = Wrench.force(along.wx() * length, along.wy() * length, along.wz() * length);
    return new Acting("along " + along.beam(), middle, sum);
  }

  /** What acts at one place. */
  private record Acting(String place, Point at, Wrench wrench) {
    Acting plus(Acting other) {
      return new Acting(place, at, wrench.plus(other.wrench));
    }

    double force() {
      return Math.hypot(Math.hypot(wrench.fx(), wrench.fy()), wrench.fz());
    }

    double moment() {
      return Math.hypot(Math.hypot(wrench.mx(), wrench.my()), wrench.mz());
    }

    String force(Units units) {
      return units.scale(Kind.FORCE).show(force(), 3);
    }

    String moment(Units units) {
      return units.scale(Kind.MOMENT).show(moment(), 3);
    }

    Arrow arrow(Sight sight, double largest) {
      Spot tip = sight.place(at);
      double k = length(force(), largest) / force();
      Spot way = unit(sight).along(wrench.fx() * k, wrench.fy() * k, wrench.fz() * k);
      return new Arrow(tip.plus(-way.x(), -way.y()), tip);
    }

    Arrow twist(Sight sight, double largest) {
      Spot tail = sight.place(at);
      double k = length(moment(), largest) / moment();
      Spot way = unit(sight).along(wrench.mx() * k, wrench.my() * k, wrench.mz() * k);
      return new Arrow(tail, tail.plus(way.x(), way.y()));
    }

    private static double length(double size, double largest) {
      return SHORTEST + (LONGEST - SHORTEST) * size / largest;
    }

    /** The view without its scale. */
    private static Sight unit(Sight sight) {
      double scale = Math.max(Math.abs(sight.xx()), Math.abs(sight.zy()));
      return new Sight(
          sight.xx() / scale, sight.yx() / scale, sight.yy() / scale, sight.zy() / scale);
    }

    Row row(Units units) {
      return Row.of(
          place,
          number(wrench.fx(), force(), Kind.FORCE, units),
          number(wrench.fy(), force(), Kind.FORCE, units),
          number(wrench.fz(), force(), Kind.FORCE, units),
          number(wrench.mx(), moment(), Kind.MOMENT, units),
          number(wrench.my(), moment(), Kind.MOMENT, units),
          number(wrench.mz(), moment(), Kind.MOMENT, units));
    }

    private static String number(double value, double size, Kind kind, Units units) {
      return Numbers.beside(value, size, kind, units);
    }
  }

  @Override
  public String toString() {
    return page(Units.METRIC).text();
  }
}
