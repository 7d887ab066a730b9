package rungwork.solve;

import java.util.ArrayList;
import java.util.List;
import rungwork.fault.ModelException;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Node;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * The nodes that carry one item together, and the rule by which they share its wrench: as a rigid
 * body on equal springs would (the elastic vector method of bolt groups).
 *
 * <pre>
 *   F_i = F/n + ω × r_i,     Σ (r_i² 1 − r_i r_iᵀ) ω = M,     r_i from the carriers' middle
 * </pre>
 *
 * <p>A moment about an axis that all carriers lie on cannot be carried by forces: its part goes to
 * the nodes as moments in equal shares; one carrier alone takes all. The shares always do the same
 * to a rigid body as the wrench. How real mounts share is indeterminate: {@link #oneByOne} gives
 * the bounds.
 */
public final class Carriers {
  /** Carriers this thin, square of width over length, count as lying on one line [1]. */
  private static final double THIN = 1e-6;

  private final List<Node> nodes;
  private final Point middle;

  /**
   * Carriers that share.
   *
   * @param nodes the nodes, at least one, none twice
   */
  public Carriers(List<Node> nodes) {
    this.nodes = List.copyOf(nodes);
    if (nodes.isEmpty()) {
      throw new ModelException("nothing carries the load: name one carrier at least");
    }
    if (nodes.stream().distinct().count() < nodes.size()) {
      throw new ModelException("a carrier is named twice: " + names(nodes));
    }
    middle = middle(nodes);
  }

  /**
   * Carriers by their names.
   *
   * @param frame the frame they belong to
   * @param names names of nodes, at least one, none twice
   * @return the carriers
   */
  public static Carriers of(Frame frame, List<String> names) {
    return new Carriers(names.stream().map(frame::node).toList());
  }

  /**
   * Shares a wrench by the rule.
   *
   * @param wrench force and moment in vehicle axes
   * @param at where it acts
   * @return a load at each carrier, in their order
   */
  public List<Load.AtNode> share(Wrench wrench, Point at) {
    Wrench there = wrench.moved(at, middle);
    TurnTensor.Answer answer = spread().answer(new double[] {there.mx(), there.my(), there.mz()});
    List<Load.AtNode> shares = new ArrayList<>();
    for (Node node : nodes) {
      double[] turn = cross(answer.turn(), arm(node));
      double each = 1.0 / nodes.size();
      Wrench force = Wrench.force(there.fx() * each, there.fy() * each, there.fz() * each);
      Wrench couple = Wrench.force(turn[0], turn[1], turn[2]);
      double[] rest = answer.rest();
      Wrench moment = Wrench.moment(rest[0] * each, rest[1] * each, rest[2] * each);
      shares.add(new Load.AtNode(node.name(), force.plus(couple).plus(moment)));
    }
    return shares;
  }

  /**
   * Bounds of the sharing: the whole wrench on each carrier alone, in turn.
   *
   * @param wrench force and moment in vehicle axes
   * @param at where it acts
   * @return one load for each carrier, in their order; they do not act together
   */
  public List<Load.AtNode> oneByOne(Wrench wrench, Point at) {
    return nodes.stream()
        .map(node -> new Load.AtNode(node.name(), wrench.moved(at, node.at())))
        .toList();
  }

  private TurnTensor spread() {
    TurnTensor spread = new TurnTensor(THIN);
    nodes.forEach(node -> spread.addPoint(1, arm(node)));
    return spread;
  }

  private double[] arm(Node node) {
    return new double[] {
      node.at().x() - middle.x(), node.at().y() - middle.y(), node.at().z() - middle.z()
    };
  }

  private static Point middle(List<Node> nodes) {
    return new Point(
        nodes.stream().mapToDouble(node -> node.at().x()).average().orElseThrow(),
        nodes.stream().mapToDouble(node -> node.at().y()).average().orElseThrow(),
        nodes.stream().mapToDouble(node -> node.at().z()).average().orElseThrow());
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static String names(List<Node> nodes) {
    return String.join(", ", nodes.stream().map(Node::name).toList());
  }

  @Override
  public String toString() {
    return "carried by " + names(nodes);
  }
}
