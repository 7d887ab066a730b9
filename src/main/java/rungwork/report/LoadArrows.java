package rungwork.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import rungwork.fault.Scale;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
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
 * The loads of a load case on their frame, as arrows with values: forces end where they act;
 * moments, drawn apart, are arrows with two heads along their axis (right-hand rule).
 *
 * @param frame the loaded frame
 * @param loadCase its loads
 */
public record LoadArrows(Frame frame, LoadCase loadCase) implements Shown {
  private static final Scale PERCENT = new Scale("%", 0.01);
  private static final Scale KELVIN = new Scale("K", 1);
  private static final Scale GRADIENT = new Scale("K/m", 1);
  private static final Scale TURN = new Scale("mrad", 1e-3);
  private static final double WIDTH = 720;
  private static final double LONGEST = 92;
  private static final double SHORTEST = 16;

  /** A smaller part of the largest is listed but not drawn. */
  private static final double DRAWN = 0.03;

  /** A smaller part of the largest is listed as 0. */
  private static final double LISTED = 1e-4;

  /** A longer table is folded. */
  private static final int SEEN = 20;

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
   * The drawing of the forces alone.
   *
   * @param units the reader's units
   * @return the picture
   */
  public Picture forces(Units units) {
    return draw("Forces: ", Kind.FORCE, largest(Acting::force), units);
  }

  /**
   * The drawing of the moments alone.
   *
   * @param units the reader's units
   * @return the picture
   */
  public Picture moments(Units units) {
    return draw("Moments: ", Kind.MOMENT, largest(Acting::moment), units);
  }

  private double largest(ToDoubleFunction<Acting> size) {
    return loads().stream().mapToDouble(size).max().orElse(0);
  }

  private Picture draw(String what, Kind kind, double largest, Units units) {
    Canvas canvas = new Canvas();
    Sight sight = Sight.fitting(frame, WIDTH);
    FrameLines.draw(canvas, frame, sight);
    Labels labels = new Labels(canvas);
    for (Acting load : loads()) {
      if (load.size(kind) > DRAWN * largest) {
        arrow(canvas, labels, load.drawn(kind, sight, largest), load.value(kind, units));
      }
    }
    Box box = canvas.box();
    String note =
        (kind == Kind.FORCE
                ? "Forces end where they act"
                : "Moments turn right-handed about their arrow")
            + "; up to "
            + units.scale(kind).show(DRAWN * largest, 2)
            + " they are too small to draw.";
    canvas.label(Label.at(new Spot(box.left(), box.bottom() + 26), note).css("small"));
    FrameLines.front(canvas, sight);
    String title = what + loadCase.name();
    return new Picture(title, canvas.done(title), note);
  }

  private static void arrow(Canvas canvas, Labels labels, Drawn drawn, String value) {
    canvas.part(
        drawn.place() + ": " + value,
        () -> {
          if (drawn.turning()) {
            drawn.arrow().drawDouble(canvas, "force", "head-of-force");
          } else {
            drawn.arrow().draw(canvas, "force", "head-of-force");
          }
        });
    labels.put(beyond(drawn.free(), drawn.held(), value));
  }

  /** Places for a value beyond an arrow's free end. */
  private static List<Label> beyond(Spot free, Spot held, String words) {
    double down = Math.signum(free.y() - held.y());
    List<Label> places = new ArrayList<>();
    for (int row = 0; row < 5; row++) {
      double y = down < 0 ? -5 - 14 * row : 14 + 14 * row;
      places.add(Label.middle(free.plus(0, y), words).css("small on"));
      places.add(Label.at(free.plus(5, y - 5), words).css("small on"));
      places.add(Label.end(free.plus(-5, y - 5), words).css("small on"));
    }
    return places;
  }

  @Override
  public Page page(Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Loads: " + loadCase.name()));
    blocks.add(new Block.Paragraph("Source: " + loadCase.source()));
    blocks.add(new Block.Figure(forces(units)));
    if (loads().stream().anyMatch(load -> load.moment() > 0)) {
      blocks.add(new Block.Folded("The moments drawn", List.of(new Block.Figure(moments(units)))));
    }
    List<String> remarks = new ArrayList<>(strains(units));
    remarks.addAll(loadCase.assumptions());
    if (!remarks.isEmpty()) {
      blocks.add(new Block.Remarks(remarks));
    }
    Table table = table(units);
    blocks.add(
        table.rows().size() <= SEEN
            ? table
            : new Block.Folded(table.rows().size() + " loads in figures", List.of(table)));
    return new Page(blocks);
  }

  /** What strains the frame without a force, in words. */
  private List<String> strains(Units units) {
    return loadCase.loads().stream().flatMap(load -> strain(load, units)).toList();
  }

  private static Stream<String> strain(Load load, Units units) {
    Scale length = units.scale(Kind.LENGTH);
    if (load instanceof Load.Warmth warmth) {
      return Stream.of(
          "%s warmed by %s, across y by %s, across z by %s"
              .formatted(
                  warmth.beam(),
                  KELVIN.show(warmth.rise()),
                  GRADIENT.show(warmth.acrossY()),
                  GRADIENT.show(warmth.acrossZ())));
    } else if (load instanceof Load.Misfit misfit) {
      return Stream.of(
          "%s made too long by %s, twisted by %s, bowed by %s along y and %s along z"
              .formatted(
                  misfit.beam(),
                  length.show(misfit.tooLong()),
                  TURN.show(misfit.twisted()),
                  length.show(misfit.bowY()),
                  length.show(misfit.bowZ())));
    } else if (load instanceof Load.Settlement settled) {
      boolean moves = settled.motion().ordinal() < Freedom.RX.ordinal();
      return Stream.of(
          "support at %s forced, %s, by %s"
              .formatted(
                  settled.node(),
                  settled.motion().motion(),
                  (moves ? length : TURN).show(settled.amount())));
    }
    return Stream.empty();
  }

  private Table table(Units units) {
    List<Column> columns = new ArrayList<>(List.of(Column.words("at")));
    for (String one : List.of("Fx", "Fy", "Fz")) {
      columns.add(Column.number(one, units.scale(Kind.FORCE).unit()));
    }
    for (String one : List.of("Mx", "My", "Mz")) {
      columns.add(Column.number(one, units.scale(Kind.MOMENT).unit()));
    }
    double force = largest(Acting::force);
    double moment = largest(Acting::moment);
    return new Table(
        columns, loads().stream().map(load -> load.row(force, moment, units)).toList());
  }

  /** The loads summed at each node, and those along each beam as their resultant. */
  private List<Acting> loads() {
    Map<String, Acting> sums = new LinkedHashMap<>();
    for (Load load : loadCase.loads()) {
      acting(load).ifPresent(one -> sums.merge(one.place(), one, Acting::plus));
    }
    return List.copyOf(sums.values());
  }

  /** What a load does where it acts; nothing for what only strains the frame. */
  private Optional<Acting> acting(Load load) {
    if (load instanceof Load.AtNode node) {
      return Optional.of(new Acting(node.node(), frame.node(node.node()).at(), node.wrench()));
    } else if (load instanceof Load.OnBeam on) {
      String place = "on %s at %s".formatted(on.beam(), part(on.beam(), on.from()));
      return Optional.of(new Acting(place, along(on.beam(), on.from()), on.wrench()));
    } else if (load instanceof Load.AlongBeam along) {
      double length = frame.length(frame.beam(along.beam()));
      Wrench sum = Wrench.force(along.wx(), along.wy(), along.wz()).times(length);
      return Optional.of(new Acting("along " + along.beam(), along(along.beam(), length / 2), sum));
    } else if (load instanceof Load.AlongPart part) {
      return Optional.of(acting(part));
    }
    return Optional.empty();
  }

  /** The resultant of a load that varies linearly: (last − first)·l²/12 turns about its middle. */
  private Acting acting(Load.AlongPart part) {
    double length = part.to() - part.from();
    Load.PerMetre a = part.first();
    Load.PerMetre b = part.last();
    Point middle = along(part.beam(), (part.from() + part.to()) / 2);
    Wrench force =
        Wrench.force(a.wx() + b.wx(), a.wy() + b.wy(), a.wz() + b.wz()).times(length / 2);
    Wrench rest =
        Wrench.force(b.wx() - a.wx(), b.wy() - a.wy(), b.wz() - a.wz())
            .times(length / 12)
            .moved(along(part.beam(), part.to()), along(part.beam(), part.from()));
    Wrench turn = Wrench.moment(rest.mx(), rest.my(), rest.mz());
    return new Acting(words(part), middle, force.plus(turn));
  }

  private String words(Load.AlongPart part) {
    boolean whole = part.from() == 0 && part.to() == frame.length(frame.beam(part.beam()));
    return whole
        ? "along " + part.beam()
        : "along %s, %s–%s"
            .formatted(part.beam(), part(part.beam(), part.from()), part(part.beam(), part.to()));
  }

  /** A place on a beam as a part of its length: the same in every reader's units. */
  private String part(String beam, double from) {
    return PERCENT.show(from / frame.length(frame.beam(beam)), 3);
  }

  private Point along(String name, double from) {
    Beam beam = frame.beam(name);
    Point start = frame.startOf(beam);
    Point end = frame.endOf(beam);
    double t = from / frame.length(beam);
    return start.plus(
        t * (end.x() - start.x()), t * (end.y() - start.y()), t * (end.z() - start.z()));
  }

  /** An arrow on the drawing: where it is from, its free end and its end at the frame. */
  private record Drawn(String place, Arrow arrow, Spot free, Spot held) {
    /** A moment's arrow points away from the frame. */
    boolean turning() {
      return free.equals(arrow.tip());
    }
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

    double size(Kind kind) {
      return kind == Kind.FORCE ? force() : moment();
    }

    String value(Kind kind, Units units) {
      return units.scale(kind).show(size(kind), 3);
    }

    /** A force's arrow ends where it acts, a moment's starts there. */
    Drawn drawn(Kind kind, Sight sight, double largest) {
      Spot here = sight.place(at);
      double k = length(size(kind), largest) / size(kind);
      if (kind == Kind.FORCE) {
        Spot way = unit(sight).along(wrench.fx() * k, wrench.fy() * k, wrench.fz() * k);
        Spot tail = here.plus(-way.x(), -way.y());
        return new Drawn(place, new Arrow(tail, here), tail, here);
      }
      Spot way = unit(sight).along(wrench.mx() * k, wrench.my() * k, wrench.mz() * k);
      Spot tip = here.plus(way.x(), way.y());
      return new Drawn(place, new Arrow(here, tip), tip, here);
    }

    /** From the shortest to the longest arrow. */
    private static double length(double size, double largest) {
      return SHORTEST + (LONGEST - SHORTEST) * size / largest;
    }

    /** The view without its scale. */
    private static Sight unit(Sight sight) {
      double scale = Math.max(Math.abs(sight.xx()), Math.abs(sight.zy()));
      return new Sight(
          sight.xx() / scale, sight.yx() / scale, sight.yy() / scale, sight.zy() / scale);
    }

    Row row(double force, double moment, Units units) {
      return Row.of(
          place,
          number(wrench.fx(), force, Kind.FORCE, units),
          number(wrench.fy(), force, Kind.FORCE, units),
          number(wrench.fz(), force, Kind.FORCE, units),
          number(wrench.mx(), moment, Kind.MOMENT, units),
          number(wrench.my(), moment, Kind.MOMENT, units),
          number(wrench.mz(), moment, Kind.MOMENT, units));
    }

    private static String number(double value, double largest, Kind kind, Units units) {
      return Math.abs(value) < LISTED * largest ? "0" : Numbers.beside(value, largest, kind, units);
    }
  }

  @Override
  public String toString() {
    return page(Units.METRIC).text();
  }
}
