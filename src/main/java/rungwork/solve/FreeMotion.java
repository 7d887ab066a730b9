package rungwork.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Node;
import rungwork.frame.Support;

/**
 * The six motions that a frame has as a rigid body, and the holds that remove just them. The holds
 * are statically determinate, so loads in balance leave them without force.
 */
final class FreeMotion {
  /** A node nearer to a line than this part of its length does not stop a turn about it [1]. */
  private static final double ON_LINE = 1e-3;

  private final Frame frame;
  private final Node first;
  private final Node second;
  private final Node third;

  FreeMotion(Frame frame) {
    this.frame = frame;
    Node any = frame.nodes().get(0);
    first = farthest(node -> node.at().distance(any.at()));
    second = farthest(node -> node.at().distance(first.at()));
    third = farthest(this::distanceFromLine);
  }

  private Node farthest(ToDoubleFunction<Node> distance) {
    return frame.nodes().stream().max(Comparator.comparingDouble(distance)).orElseThrow();
  }

  /** Holds of the six motions, none of which is held twice. */
  List<Support> holds() {
    List<Freedom> motions = frame.plane().motions();
    double[] line = run(second);
    boolean alongP = Math.abs(line[0]) > Math.abs(line[1]);
    List<Support> holds = new ArrayList<>();
    holds.add(Support.holding(first.name(), motions.get(0), motions.get(1), motions.get(2)));
    holds.add(Support.holding(second.name(), motions.get(alongP ? 1 : 0), motions.get(2)));
    holds.add(
        distanceFromLine(third) > ON_LINE * Math.hypot(line[0], line[1])
            ? Support.holding(third.name(), motions.get(2))
            : Support.holding(first.name(), motions.get(alongP ? 3 : 4)));
    return holds;
  }

  private double distanceFromLine(Node node) {
    double[] line = run(second);
    double[] to = run(node);
    return Math.abs(line[0] * to[1] - line[1] * to[0]) / Math.hypot(line[0], line[1]);
  }

  private double[] run(Node node) {
    return frame
        .plane()
        .toFrame(
            node.at().x() - first.at().x(),
            node.at().y() - first.at().y(),
            node.at().z() - first.at().z());
  }
}
