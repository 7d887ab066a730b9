package rungwork.report;

import java.util.List;
import java.util.stream.Collectors;

/**
 * A drawing being made: real text, classes of the one style sheet, a title on every part. It grows
 * with what is drawn, so that nothing is cut off.
 */
final class Canvas {
  /** Free room around everything [px]. */
  private static final double MARGIN = 12;

  private final Markup markup = new Markup();
  private Box box = Box.EMPTY;

  /** A straight line. */
  void line(String css, Spot from, Spot to) {
    shape("line", css, "x1", px(from.x()), "y1", px(from.y()), "x2", px(to.x()), "y2", px(to.y()));
    cover(from, to);
  }

  /** A circle. */
  void circle(String css, Spot middle, double radius) {
    shape("circle", css, "cx", px(middle.x()), "cy", px(middle.y()), "r", px(radius));
    cover(middle.plus(-radius, -radius), middle.plus(radius, radius));
  }

  /** A closed shape with straight edges. */
  void polygon(String css, List<Spot> corners) {
    shape("polygon", css, "points", points(corners));
    corners.forEach(this::cover);
  }

  /** An open line through many places. */
  void polyline(String css, List<Spot> places) {
    shape("polyline", css, "points", points(places));
    places.forEach(this::cover);
  }

  /** Several closed loops as one shape, so that inner ones are holes. */
  void loops(String css, List<List<Spot>> loops) {
    String path =
        loops.stream()
            .map(loop -> "M" + points(loop).replace(" ", " L") + " Z")
            .collect(Collectors.joining(" "));
    shape("path", css, "d", path);
    loops.forEach(loop -> loop.forEach(this::cover));
  }

  /** A rectangle. */
  void rectangle(String css, Box area) {
    polygon(
        css,
        List.of(
            new Spot(area.left(), area.top()),
            new Spot(area.right(), area.top()),
            new Spot(area.right(), area.bottom()),
            new Spot(area.left(), area.bottom())));
  }

  /** Words. */
  void label(Label label) {
    markup.leaf(
        "text",
        label.words(),
        "x",
        px(label.at().x()),
        "y",
        px(label.at().y()),
        "text-anchor",
        label.anchor().svg(),
        "class",
        label.css());
    box = box.and(label.box());
  }

  /** A part with a title, which a reader sees when pointing at it. */
  void part(String title, Runnable inside) {
    markup.element(
        "g",
        () -> {
          markup.leaf("title", title);
          inside.run();
        });
  }

  /** What has been covered so far. */
  Box box() {
    return box;
  }

  /**
   * Ends the drawing.
   *
   * @param title what it shows
   * @return an {@code svg} element that needs nothing around it
   */
  String done(String title) {
    Box area = box.grown(MARGIN);
    String view =
        String.join(" ", px(area.left()), px(area.top()), px(area.width()), px(area.height()));
    Markup whole = new Markup();
    whole.element(
        "svg",
        () -> {
          whole.leaf("title", title).leaf("style", Look.drawingStyle());
          whole.raw(paper(area)).raw(markup.done());
        },
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "rw",
        "role",
        "img",
        "viewBox",
        view,
        "width",
        px(area.width()),
        "height",
        px(area.height()));
    return whole.done();
  }

  private static String paper(Box area) {
    return new Markup()
        .leaf(
            "rect",
            "",
            "class",
            "paper",
            "x",
            px(area.left()),
            "y",
            px(area.top()),
            "width",
            px(area.width()),
            "height",
            px(area.height()))
        .done();
  }

  private void shape(String tag, String css, String... attributes) {
    String[] all = new String[attributes.length + 2];
    all[0] = "class";
    all[1] = css;
    System.arraycopy(attributes, 0, all, 2, attributes.length);
    markup.leaf(tag, "", all);
  }

  private void cover(Spot... spots) {
    for (Spot spot : spots) {
      box = box.and(spot);
    }
  }

  private static String points(List<Spot> spots) {
    return spots.stream().map(s -> px(s.x()) + "," + px(s.y())).collect(Collectors.joining(" "));
  }

  /** A number of pixels with at most two decimals, the same on every machine. */
  private static String px(double value) {
    long hundredths = Math.round(value * 100);
    String sign = hundredths < 0 ? "-" : "";
    long whole = Math.abs(hundredths) / 100;
    long rest = Math.abs(hundredths) % 100;
    return sign + whole + (rest == 0 ? "" : "." + (rest < 10 ? "0" : "") + rest);
  }
}
