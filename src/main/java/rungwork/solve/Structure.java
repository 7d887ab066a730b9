package rungwork.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungwork.frame.Frame;
import rungwork.frame.Freedom;
import rungwork.frame.Node;
import rungwork.frame.Support;

/** A frame with its places counted: node i has the motions 6i to 6i + 5 in frame axes. */
final class Structure {
  private final Frame frame;
  private final List<Node> nodes;
  private final List<Member> members;
  private final Map<String, Integer> nodeIndex;
  private final Map<String, Integer> memberIndex;
  private final int[][] places;
  private final boolean[] held;
  private final double[] springs;
  private final double size;
  private final int[] order;

  /**
   * Counts a frame.
   *
   * @param frame the frame
   * @param supports what holds it: its own supports, or others that only remove its free motion
   */
  Structure(Frame frame, List<Support> supports) {
    this.frame = frame;
    nodes = frame.nodes();
    members = frame.beams().stream().map(beam -> new Member(frame, beam)).toList();
    nodeIndex = new HashMap<>();
    memberIndex = new HashMap<>();
    nodes.forEach(node -> nodeIndex.put(node.name(), nodeIndex.size()));
    members.forEach(member -> memberIndex.put(member.beam().name(), memberIndex.size()));
    places = members.stream().map(this::places).toArray(int[][]::new);
    held = new boolean[6 * nodes.size()];
    springs = new double[6 * nodes.size()];
    supports.forEach(this::hold);
    size = nodes.stream().mapToDouble(n -> n.at().distance(nodes.get(0).at())).max().orElse(0);
    order = numbering().order();
  }

  private Structure(Structure unloaded, List<Member> members) {
    frame = unloaded.frame;
    nodes = unloaded.nodes;
    this.members = members;
    nodeIndex = unloaded.nodeIndex;
    memberIndex = unloaded.memberIndex;
    places = unloaded.places;
    held = unloaded.held;
    springs = unloaded.springs;
    size = unloaded.size;
    order = unloaded.order;
  }

  /**
   * The same frame with its members under normal forces.
   *
   * @param normalForces one for each member, tension positive [N]
   */
  Structure under(double[] normalForces) {
    List<Member> loaded = new ArrayList<>();
    for (int i = 0; i < normalForces.length; i++) {
      loaded.add(members.get(i).under(normalForces[i]));
    }
    return new Structure(this, loaded);
  }

  private void hold(Support support) {
    List<Freedom> motions = frame.plane().motions();
    int first = 6 * node(support.node());
    support.held().forEach(freedom -> held[first + motions.indexOf(freedom)] = true);
    support
        .springs()
        .forEach((freedom, stiffness) -> springs[first + motions.indexOf(freedom)] += stiffness);
  }

  Frame frame() {
    return frame;
  }

  /** The actions that its motions fall into. */
  List<Action> actions() {
    return Action.of(frame);
  }

  List<Node> nodes() {
    return nodes;
  }

  List<Member> members() {
    return members;
  }

  /** Motions of all nodes together. */
  int motions() {
    return held.length;
  }

  boolean held(int motion) {
    return held[motion];
  }

  /** Whether a support may take force there: not where a motion is held only to remove it. */
  boolean supported(int motion) {
    return held[motion] && !isFree();
  }

  /** Whether the frame itself has no support. */
  boolean isFree() {
    return frame.supports().isEmpty();
  }

  /** Stiffness of the spring against a motion; zero where there is none [N/m or N·m/rad]. */
  double spring(int motion) {
    return springs[motion];
  }

  /** Distance of the node that is farthest from the first one [m]: it makes moments forces. */
  double size() {
    return size;
  }

  int node(String name) {
    return nodeIndex.get(frame.node(name).name());
  }

  int member(String name) {
    return memberIndex.get(frame.beam(name).name());
  }

  /** Where each of a member's 12 motions stands among those of all nodes. */
  int[] places(int member) {
    return places[member];
  }

  /** The nodes in an order of numbering that keeps the band of the equations narrow. */
  int[] order() {
    return order;
  }

  private Numbering numbering() {
    double[][] at =
        nodes.stream()
            .map(node -> frame.plane().toFrame(node.at().x(), node.at().y(), node.at().z()))
            .toArray(double[][]::new);
    int longer = extent(at, 0) >= extent(at, 1) ? 0 : 1;
    return new Numbering(column(at, longer), column(at, 1 - longer), neighbours());
  }

  private static double extent(double[][] at, int axis) {
    DoubleSummaryStatistics all = Arrays.stream(column(at, axis)).summaryStatistics();
    return all.getMax() - all.getMin();
  }

  private static double[] column(double[][] at, int axis) {
    return Arrays.stream(at).mapToDouble(place -> place[axis]).toArray();
  }

  private int[][] neighbours() {
    List<List<Integer>> joined =
        Stream.generate(() -> (List<Integer>) new ArrayList<Integer>())
            .limit(nodes.size())
            .toList();
    for (int[] ends : places) {
      joined.get(ends[0] / 6).add(ends[6] / 6);
      joined.get(ends[6] / 6).add(ends[0] / 6);
    }
    return joined.stream()
        .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
        .toArray(int[][]::new);
  }

  private int[] places(Member member) {
    int start = 6 * nodeIndex.get(member.beam().start());
    int end = 6 * nodeIndex.get(member.beam().end());
    int[] places = new int[Member.MOTIONS];
    for (int i = 0; i < 6; i++) {
      places[i] = start + i;
      places[6 + i] = end + i;
    }
    return places;
  }
}
