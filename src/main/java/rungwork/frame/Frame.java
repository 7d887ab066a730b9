package rungwork.frame;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rungwork.fault.ModelException;

/**
 * A frame as data: nodes, beams and supports in one plane, or, where it is so begun, leaving that
 * plane. Immutable; knows no solving.
 */
public final class Frame {
  private final Plane plane;
  private final boolean mayRise;
  private final Map<String, Node> nodes;
  private final Map<String, Beam> beams;
  private final List<Support> supports;
  private final boolean flat;

  private Frame(Builder builder) {
    plane = builder.plane;
    mayRise = builder.mayRise;
    nodes = new LinkedHashMap<>(builder.nodes);
    beams = new LinkedHashMap<>(builder.beams);
    supports = List.copyOf(builder.supports);
    FrameRules rules = new FrameRules(this, mayRise);
    rules.check();
    flat = !mayRise || rules.liesFlat();
  }

  /**
   * Starts a frame.
   *
   * @param plane the plane it lies in
   * @return a builder; {@link Builder#build()} checks all
   */
  public static Builder in(Plane plane) {
    return new Builder(plane, false);
  }

  /**
   * Starts a frame whose nodes and rigid arms may leave the plane, as a rail does at a kick-up. The
   * plane still says how sections lie: a beam's y is square to its normal. Sections are held to
   * what a flat frame asks of them.
   *
   * @param plane the plane that most of it lies in
   * @return a builder; {@link Builder#build()} checks all
   */
  public static Builder rising(Plane plane) {
    return new Builder(plane, true);
  }

  /**
   * A builder with nothing in it yet for a frame of the same kind in the same plane.
   *
   * @return the builder
   */
  public Builder anew() {
    return new Builder(plane, mayRise);
  }

  /**
   * The plane of the frame.
   *
   * @return the plane
   */
  public Plane plane() {
    return plane;
  }

  /**
   * Whether all of it lies in its plane, so that frame action and grillage action are independent.
   *
   * @return false where a node or an arm leaves the plane
   */
  public boolean isFlat() {
    return flat;
  }

  /**
   * The nodes in the order they were given.
   *
   * @return the nodes
   */
  public List<Node> nodes() {
    return List.copyOf(nodes.values());
  }

  /**
   * The beams in the order they were given.
   *
   * @return the beams
   */
  public List<Beam> beams() {
    return List.copyOf(beams.values());
  }

  /**
   * The supports in the order they were given.
   *
   * @return the supports
   */
  public List<Support> supports() {
    return supports;
  }

  /**
   * A node by its name.
   *
   * @param name its name
   * @return the node
   * @throws ModelException when there is none of that name
   */
  public Node node(String name) {
    return Optional.ofNullable(nodes.get(name))
        .orElseThrow(() -> unknown("node", name, nodes.keySet()));
  }

  /**
   * A beam by its name.
   *
   * @param name its name
   * @return the beam
   * @throws ModelException when there is none of that name
   */
  public Beam beam(String name) {
    return Optional.ofNullable(beams.get(name))
        .orElseThrow(() -> unknown("beam", name, beams.keySet()));
  }

  /**
   * Where a beam starts: at its start node, or at the end of a rigid arm from it.
   *
   * @param beam one of this frame's beams
   * @return the place
   */
  public Point startOf(Beam beam) {
    return beam.atStart().arm().from(node(beam.start()).at());
  }

  /**
   * Where a beam ends: at its end node, or at the end of a rigid arm from it.
   *
   * @param beam one of this frame's beams
   * @return the place
   */
  public Point endOf(Beam beam) {
    return beam.atEnd().arm().from(node(beam.end()).at());
  }

  /**
   * The length of a beam between its ends, rigid arms not counted.
   *
   * @param beam one of this frame's beams
   * @return its length [m]
   */
  public double length(Beam beam) {
    return startOf(beam).distance(endOf(beam));
  }

  /**
   * The same frame on other supports.
   *
   * @param others the supports
   * @return the frame on them
   */
  public Frame on(List<Support> others) {
    Builder builder = anew();
    nodes.values().forEach(builder::node);
    beams.values().forEach(builder::beam);
    others.forEach(builder::support);
    return builder.build();
  }

  /**
   * The same frame with every beam changed, for example so that shear strain counts.
   *
   * @param change what to make of a beam; its nodes must be of this frame
   * @return the changed frame
   */
  public Frame with(UnaryOperator<Beam> change) {
    Builder builder = anew();
    nodes.values().forEach(builder::node);
    beams.values().forEach(beam -> builder.beam(change.apply(beam)));
    supports.forEach(builder::support);
    return builder.build();
  }

  @Override
  public String toString() {
    return "Frame in %s, nodes: %d, beams: %d, supports: %d"
        .formatted(
            plane.name().toLowerCase(Locale.ROOT), nodes.size(), beams.size(), supports.size());
  }

  private static ModelException unknown(String what, String name, Iterable<String> known) {
    return new ModelException(
        "there is no " + what + " named " + name + "; there are " + String.join(", ", known));
  }

  /** Collects the parts of a frame. */
  public static final class Builder {
    private final Plane plane;
    private final boolean mayRise;
    private final Map<String, Node> nodes = new LinkedHashMap<>();
    private final Map<String, Beam> beams = new LinkedHashMap<>();
    private final List<Support> supports = new ArrayList<>();

    private Builder(Plane plane, boolean mayRise) {
      this.plane = plane;
      this.mayRise = mayRise;
    }

    /**
     * Adds a node.
     *
     * @param node the node
     * @return this builder
     */
    public Builder node(Node node) {
      if (nodes.putIfAbsent(node.name(), node) != null) {
        throw new ModelException("two nodes are named " + node.name());
      }
      return this;
    }

    /**
     * Adds a node.
     *
     * @param name its name
     * @param at its place in vehicle axes
     * @return this builder
     */
    public Builder node(String name, Point at) {
      return node(new Node(name, at));
    }

    /**
     * Adds a beam.
     *
     * @param beam the beam
     * @return this builder
     */
    public Builder beam(Beam beam) {
      if (beams.putIfAbsent(beam.name(), beam) != null) {
        throw new ModelException("two beams are named " + beam.name());
      }
      return this;
    }

    /**
     * Adds a beam on an arc, cut into straight pieces, between two nodes that were added before.
     *
     * @param arc the arc
     * @param stock its section and material
     * @return this builder
     */
    public Builder arc(Arc arc, Stock stock) {
      arc.addTo(this, plane, stock);
      return this;
    }

    /** The place of a node that was added before. */
    Point at(String name) {
      return Optional.ofNullable(nodes.get(name))
          .orElseThrow(() -> unknown("node", name, nodes.keySet()))
          .at();
    }

    /**
     * Adds a support.
     *
     * @param support the support
     * @return this builder
     */
    public Builder support(Support support) {
      supports.add(support);
      return this;
    }

    /**
     * Checks everything and makes the frame.
     *
     * @return the frame
     * @throws ModelException naming the part that is wrong
     */
    public Frame build() {
      return new Frame(this);
    }
  }
}
