package rungwork.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Node;
import rungwork.frame.Point;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.solve.Displacement;
import rungwork.solve.Response;

/**
 * A frame's shape under load, dashed and magnified over the shape without load.
 *
 * @param response what the frame does
 */
public record DeflectedShape(Response response) implements Shown {
  private static final double WIDTH = 720;

  /** The largest movement is drawn as about this part of the frame's size. */
  private static final double VISIBLE = 0.08;

  /** Places along a beam. */
  private static final int STEPS = 16;

  /**
   * The shape under a response's loads.
   *
   * @param response what the frame does
   * @return its shape
   */
  public static DeflectedShape of(Response response) {
    return new DeflectedShape(response);
  }

  /**
   * The drawing alone.
   *
   * @param units the reader's units
   * @return the picture
   */
  public Picture picture(Units units) {
    Canvas canvas = new Canvas();
    Frame frame = response.frame();
    Sight sight = Sight.fitting(frame, WIDTH);
    FrameLines.draw(canvas, frame, sight);
    double magnification = magnification();
    for (Beam beam : frame.beams()) {
      canvas.part(
          beam.name() + ", deflected",
          () -> canvas.polyline("dashed", shape(beam, sight, magnification)));
    }
    Node most = movesMost();
    String value = most.name() + " moves " + units.scale(Kind.LENGTH).show(moved(most), 3);
    Spot at = sight.place(moved(most.at(), response.displacement(most.name()), magnification));
    canvas.circle("solid", at, 3);
    canvas.label(Label.at(at.plus(6, 16), value).css("small on"));
    String title = "Deflected shape: " + response.loadCase().name();
    String note =
        "Dashed: deflected, movements magnified "
            + Numbers.decimals(magnification, magnification < 1 ? 2 : 0)
            + " times; "
            + value
            + (frame.supports().isEmpty() ? ", seen from places held for the drawing only" : "");
    Box box = canvas.box();
    canvas.label(Label.at(new Spot(box.left(), box.bottom() + 26), note).css("small"));
    FrameLines.front(canvas, sight);
    return new Picture(title, canvas.done(title), note);
  }

  @Override
  public Page page(Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Deflected shape: " + response.loadCase().name()));
    blocks.add(new Block.Figure(picture(units)));
    blocks.add(new Block.Folded("Movements of all nodes", List.of(table(units))));
    return new Page(blocks);
  }

  private Table table(Units units) {
    String unit = units.scale(Kind.LENGTH).unit();
    List<Row> rows = new ArrayList<>();
    for (Node node : response.frame().nodes()) {
      Displacement d = response.displacement(node.name());
      rows.add(
          Row.of(
              node.name(),
              Numbers.place(d.ux(), units),
              Numbers.place(d.uy(), units),
              Numbers.place(d.uz(), units)));
    }
    return new Table(
        List.of(
            Column.words("node"),
            Column.number("forward", unit),
            Column.number("to the left", unit),
            Column.number("up", unit)),
        rows);
  }

  private List<Spot> shape(Beam beam, Sight sight, double magnification) {
    Point start = response.frame().startOf(beam);
    Point end = response.frame().endOf(beam);
    return IntStream.rangeClosed(0, STEPS)
        .mapToDouble(i -> (double) i / STEPS)
        .mapToObj(
            t -> moved(between(start, end, t), response.deflection(beam.name(), t), magnification))
        .map(sight::place)
        .toList();
  }

  private static Point between(Point start, Point end, double t) {
    return start.plus(
        t * (end.x() - start.x()), t * (end.y() - start.y()), t * (end.z() - start.z()));
  }

  private static Point moved(Point at, Displacement by, double magnification) {
    return at.plus(magnification * by.ux(), magnification * by.uy(), magnification * by.uz());
  }

  private Node movesMost() {
    return response.frame().nodes().stream()
        .max(Comparator.comparingDouble(this::moved))
        .orElseThrow();
  }

  private double moved(Node node) {
    Displacement d = response.displacement(node.name());
    return Math.hypot(Math.hypot(d.ux(), d.uy()), d.uz());
  }

  /** 1, 2 or 5 times a power of ten; 1 when nothing moves. */
  private double magnification() {
    double largest = moved(movesMost());
    List<Node> nodes = response.frame().nodes();
    double size =
        nodes.stream().mapToDouble(node -> node.at().distance(nodes.get(0).at())).max().orElse(0);
    if (!(largest > 1e-12 * size)) {
      return 1;
    }
    double wanted = VISIBLE * size / largest;
    double power = Math.pow(10, Math.floor(Math.log10(wanted)));
    double lead = wanted / power;
    return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
  }

  @Override
  public String toString() {
    return page(Units.METRIC).text();
  }
}
