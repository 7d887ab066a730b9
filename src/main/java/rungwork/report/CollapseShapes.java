package rungwork.report;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Node;
import rungwork.frame.Point;
import rungwork.impact.Collapse;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.solve.Displacement;

/**
 * The frame's shape step by step on its way to collapse, as small pictures side by side: at each
 * hinge, and as it moves on as a mechanism. Hinges carry the numbers of the table.
 */
final class CollapseShapes {
  private static final double WIDTH = 300;
  private static final double GAP = 36;
  private static final int COLUMNS = 2;

  /** Pictures at most; of a longer way the middle is left to the table. */
  private static final int MOST = 6;

  /** The largest movement is drawn as about this part of the frame's size. */
  private static final double VISIBLE = 0.12;

  /** Level motions below this part of the upright ones are not worth a view from above [1]. */
  private static final double MOSTLY = 0.3;

  private final Collapse.Path path;
  private final Frame frame;
  private final Map<Collapse.Hinge, Integer> numbers;
  private final Units units;
  private final Canvas canvas = new Canvas();
  private double height;

  CollapseShapes(Collapse collapse, Collapse.Path path, Units units) {
    this.path = path;
    this.units = units;
    frame = collapse.ladder().frame(path.of().joints());
    numbers = numbers(path);
  }

  /** The numbers of a path's hinges, in the order in which they open. */
  static Map<Collapse.Hinge, Integer> numbers(Collapse.Path path) {
    Map<Collapse.Hinge, Integer> numbers = new LinkedHashMap<>();
    for (Collapse.Stage stage : path.stages()) {
      for (Collapse.Hinge hinge : stage.opened()) {
        numbers.putIfAbsent(hinge, numbers.size() + 1);
      }
    }
    return numbers;
  }

  Picture picture() {
    Sight sight = sight();
    height = sight.around(frame.nodes().stream().map(Node::at).toList()).height() + 110;
    List<Collapse.Stage> shown = shown();
    for (int i = 0; i < shown.size(); i++) {
      Collapse.Stage stage = shown.get(i);
      shape(sight, i, words(stage), stage, node -> path.moved(stage, node));
    }
    Collapse.Stage last = path.last();
    shape(sight, shown.size(), "mechanism: moves on so", last, path::movesOn);
    String head = "Shapes on the way to collapse, movements enlarged";
    String title = head + ": " + path.of().words();
    FrameLines.front(canvas, sight);
    canvas.label(
        Label.at(new Spot(canvas.box().left(), canvas.box().top() - 14), head).css("head"));
    return new Picture(title, canvas.done(title), text(title, shown));
  }

  /** From above unless the mechanism moves mostly up and down. */
  private Sight sight() {
    double level = Math.max(spread(Displacement::ux), spread(Displacement::uy));
    return level > MOSTLY * spread(Displacement::uz)
        ? Sight.plan(WIDTH / length())
        : Sight.fitting(frame, WIDTH);
  }

  /** By how much the nodes' motions differ. */
  private double spread(ToDoubleFunction<Displacement> motion) {
    DoubleSummaryStatistics all =
        frame.nodes().stream()
            .map(node -> path.movesOn(node.name()))
            .mapToDouble(motion)
            .summaryStatistics();
    return all.getMax() - all.getMin();
  }

  private double length() {
    return Sight.plan(1).around(frame.nodes().stream().map(Node::at).toList()).width();
  }

  private String text(String title, List<Collapse.Stage> shown) {
    StringBuilder text = new StringBuilder(title);
    shown.forEach(stage -> text.append("\n- ").append(words(stage)));
    return text.append("\n- mechanism of hinges ").append(listed(path.last())).toString();
  }

  private String words(Collapse.Stage stage) {
    String at = units.scale(Kind.ACCELERATION).show(stage.reached().deceleration(), 3);
    return at + ", hinges " + listed(stage);
  }

  private String listed(Collapse.Stage stage) {
    return String.join(
        ", ", stage.hinges().stream().map(numbers::get).sorted().map(String::valueOf).toList());
  }

  private List<Collapse.Stage> shown() {
    List<Collapse.Stage> all = path.stages().subList(1, path.stages().size());
    if (all.size() < MOST) {
      return all;
    }
    return IntStream.range(0, MOST - 1)
        .mapToObj(i -> all.get(Math.round((all.size() - 1f) * i / (MOST - 2))))
        .toList();
  }

  private void shape(
      Sight sight,
      int number,
      String words,
      Collapse.Stage stage,
      Function<String, Displacement> moves) {
    Spot shift = new Spot(number % COLUMNS * (WIDTH + GAP), number / COLUMNS * height);
    double magnification = magnification(moves);
    Function<Node, Spot> still = node -> sight.place(node.at()).plus(shift.x(), shift.y());
    Function<Node, Spot> moved =
        node -> {
          Displacement d = moves.apply(node.name()).times(magnification);
          Point there = node.at().plus(d.ux(), d.uy(), d.uz());
          return sight.place(there).plus(shift.x(), shift.y());
        };
    canvas.part(
        words,
        () -> {
          lines("faint", still);
          lines("edge", moved);
          hinges(stage, moved);
        });
    Box box = sight.around(frame.nodes().stream().map(Node::at).toList());
    Spot below = new Spot(box.left() + shift.x(), box.bottom() + shift.y() + 52);
    canvas.label(Label.at(below, words).css("small strong"));
  }

  private void lines(String css, Function<Node, Spot> place) {
    for (Beam beam : frame.beams()) {
      canvas.line(css, place.apply(frame.node(beam.start())), place.apply(frame.node(beam.end())));
    }
  }

  private void hinges(Collapse.Stage stage, Function<Node, Spot> place) {
    Labels labels = new Labels(canvas);
    for (Collapse.Hinge hinge : stage.hinges()) {
      Beam beam = frame.beam(hinge.place().beam());
      Spot at = place.apply(frame.node(hinge.place().node()));
      String other = beam.start().equals(hinge.place().node()) ? beam.end() : beam.start();
      Spot along = place.apply(frame.node(other));
      Spot dot = at.towards(along, Math.min(0.3, 7 / Math.max(1, at.distance(along))));
      canvas.circle("hollow", dot, 4);
      String number = String.valueOf(numbers.get(hinge));
      List<Label> places = new ArrayList<>();
      for (Spot off :
          List.of(new Spot(5, -6), new Spot(-11, -6), new Spot(5, 14), new Spot(-11, 14))) {
        places.add(Label.at(dot.plus(off.x(), off.y()), number).css("small on strong"));
      }
      labels.put(places);
    }
  }

  private double magnification(Function<String, Displacement> moves) {
    double largest =
        frame.nodes().stream()
            .map(node -> moves.apply(node.name()))
            .mapToDouble(d -> Math.hypot(Math.hypot(d.ux(), d.uy()), d.uz()))
            .max()
            .orElseThrow();
    List<Node> nodes = frame.nodes();
    double size =
        nodes.stream().mapToDouble(n -> n.at().distance(nodes.get(0).at())).max().orElseThrow();
    return VISIBLE * size / Math.max(largest, 1e-9 * size);
  }
}
