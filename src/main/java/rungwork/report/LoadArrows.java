package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import rungwork.frame.Frame;
import rungwork.frame.LoadCase;
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
  private static final double WIDTH = 720;

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
    return draw("Forces: ", Kind.FORCE, largest(ActingLoad::force), units);
  }

  /**
   * The drawing of the moments alone.
   *
   * @param units the reader's units
   * @return the picture
   */
  public Picture moments(Units units) {
    return draw("Moments: ", Kind.MOMENT, largest(ActingLoad::moment), units);
  }

  private double largest(ToDoubleFunction<ActingLoad> size) {
    return loads().stream().mapToDouble(size).max().orElse(0);
  }

  private Picture draw(String what, Kind kind, double largest, Units units) {
    Canvas canvas = new Canvas();
    Sight sight = Sight.fitting(frame, WIDTH);
    FrameLines.draw(canvas, frame, sight);
    Labels labels = new Labels(canvas);
    for (ActingLoad load : loads()) {
      if (load.size(kind) > DRAWN * largest) {
        LoadArrow.of(load, kind, sight, largest).draw(canvas, labels, load.value(kind, units));
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

  @Override
  public Page page(Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Loads: " + loadCase.name()));
    blocks.add(new Block.Paragraph("Source: " + loadCase.source()));
    blocks.add(new Block.Figure(forces(units)));
    if (loads().stream().anyMatch(load -> load.moment() > 0)) {
      blocks.add(new Block.Folded("The moments drawn", List.of(new Block.Figure(moments(units)))));
    }
    List<String> remarks = new ArrayList<>();
    loadCase.loads().stream().flatMap(new StrainWords(units)::of).forEach(remarks::add);
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

  private Table table(Units units) {
    List<Column> columns = new ArrayList<>(List.of(Column.words("at")));
    for (String one : List.of("Fx", "Fy", "Fz")) {
      columns.add(Column.number(one, units.scale(Kind.FORCE).unit()));
    }
    for (String one : List.of("Mx", "My", "Mz")) {
      columns.add(Column.number(one, units.scale(Kind.MOMENT).unit()));
    }
    double force = largest(ActingLoad::force);
    double moment = largest(ActingLoad::moment);
    return new Table(
        columns, loads().stream().map(load -> row(load, force, moment, units)).toList());
  }

  private static Row row(ActingLoad load, double force, double moment, Units units) {
    return Row.of(
        load.place(),
        number(load.wrench().fx(), force, Kind.FORCE, units),
        number(load.wrench().fy(), force, Kind.FORCE, units),
        number(load.wrench().fz(), force, Kind.FORCE, units),
        number(load.wrench().mx(), moment, Kind.MOMENT, units),
        number(load.wrench().my(), moment, Kind.MOMENT, units),
        number(load.wrench().mz(), moment, Kind.MOMENT, units));
  }

  private static String number(double value, double largest, Kind kind, Units units) {
    return Math.abs(value) < LISTED * largest ? "0" : Numbers.beside(value, largest, kind, units);
  }

  private List<ActingLoad> loads() {
    return new ActingLoads(frame, loadCase).all();
  }

  @Override
  public String toString() {
    return page(Units.METRIC).text();
  }
}
