package rungwork.vehicle;

import static java.util.Comparator.comparingDouble;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwork.check.Member.Ends;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.frame.Release;
import rungwork.frame.Stock;

/** Where a ladder's features become nodes, and its members beams between them. */
final class Layout {
  /** Features of one member closer than this share a node [m]; the arms stay exact. */
  static final double SAME_PLACE = 1e-3;

  private final Ladder ladder;
  private final Map<String, String> nodeOf = new LinkedHashMap<>();
  private final Map<String, Point> places = new LinkedHashMap<>();
  private final Map<Side, List<String>> railNodes = new LinkedHashMap<>();
  private final Map<String, List<String>> crossmemberNodes = new LinkedHashMap<>();

  Layout(Ladder ladder) {
    this.ladder = ladder;
    for (Side side : Side.values()) {
      railNodes.put(side, new ArrayList<>());
      layRail(side);
      railNodes.get(side).sort(comparingDouble(name -> -places.get(name).x()));
    }
    ladder.crossmembers().forEach(this::layCrossmember);
  }

  /** The node that a feature sits on. */
  Optional<String> node(String feature) {
    return Optional.ofNullable(nodeOf.get(feature));
  }

  /** All features in the order they were laid. */
  Set<String> features() {
    return nodeOf.keySet();
  }

  /** The nodes of a rail from front to rear. */
  List<String> railNodes(Side side) {
    return List.copyOf(railNodes.get(side));
  }

  /** The nodes of a crossmember from left to right. */
  List<String> crossmemberNodes(String crossmember) {
    return List.copyOf(crossmemberNodes.get(crossmember));
  }

  /** Whether a node is a rail's tip or tail with nothing else there. */
  boolean isFreeEnd(String node) {
    boolean alone = nodeOf.values().stream().filter(node::equals).count() == 1;
    return alone && (node.endsWith(" tip") || node.endsWith(" tail"));
  }

  /** A node's place. */
  Point place(String node) {
    return places.get(node);
  }

  /** The frame: left rail running forward, right rail rearward, crossmembers left to right. */
  Frame frame(Joints joints) {
    return frame(joints, Ends.FREE);
  }

  /** The frame with what the ends of its bays do to the warping of open sections. */
  Frame frame(Joints joints, Ends warping) {
    Frame.Builder frame =
        ladder.kickUps().isEmpty() ? Frame.in(Plane.PLAN) : Frame.rising(Plane.PLAN);
    places.forEach(frame::node);
    for (Side side : Side.values()) {
      List<String> nodes = railNodes.get(side);
      for (int i = 0; i + 1 < nodes.size(); i++) {
        frame.beam(railBeam(side, i, warping));
      }
    }
    for (Crossmember crossmember : ladder.crossmembers()) {
      Joints.Ends ends = joints.ends(crossmember.name());
      int last = crossmemberNodes.get(crossmember.name()).size() - 2;
      for (int i = 0; i <= last; i++) {
        frame.beam(
            crossmemberBeam(crossmember, i, warping)
                .released(
                    i == 0 ? ends.left() : Set.<Release>of(),
                    i == last ? ends.right() : Set.<Release>of()));
      }
    }
    return frame.build();
  }

  /** The name of a member's piece, counted from the front or the left. */
  static String beamName(String part, int index) {
    return part + " " + (index + 1);
  }

  private Beam railBeam(Side side, int index, Ends warping) {
    String front = railNodes.get(side).get(index);
    String rear = railNodes.get(side).get(index + 1);
    String name = beamName(Ladder.railPart(side), index);
    Stock stock =
        warping.stiffened(ladder.rail(side).stockAheadOf(places.get(rear).x()), bay(side, index));
    return side == Side.LEFT
        ? Beam.rigid(name, rear, front, stock)
        : Beam.rigid(name, front, rear, stock);
  }

  /** The length of the rail's bay, from joint to joint or to its free end, that a piece is of. */
  double bay(Side side, int index) {
    List<String> nodes = railNodes.get(side);
    int from = index;
    while (from > 0 && !isJoint(nodes.get(from), side)) {
      from--;
    }
    int to = index + 1;
    while (to < nodes.size() - 1 && !isJoint(nodes.get(to), side)) {
      to++;
    }
    return length(nodes.subList(from, to + 1));
  }

  private boolean isJoint(String node, Side side) {
    return ladder.crossmembers().stream()
        .anyMatch(one -> nodeOf.get(one.name() + " " + side.word()).equals(node));
  }

  private double length(List<String> nodes) {
    double sum = 0;
    for (int i = 1; i < nodes.size(); i++) {
      sum += places.get(nodes.get(i - 1)).distance(places.get(nodes.get(i)));
    }
    return sum;
  }

  private Beam crossmemberBeam(Crossmember crossmember, int index, Ends warping) {
    List<String> nodes = crossmemberNodes.get(crossmember.name());
    String name = beamName(crossmember.part(), index);
    Stock stock = warping.stiffened(crossmember.stock(), length(nodes));
    return Beam.rigid(name, nodes.get(index), nodes.get(index + 1), stock);
  }

  private void layRail(Side side) {
    Rail rail = ladder.rail(side);
    for (Crossmember crossmember : ladder.crossmembers()) {
      layOnRail(side, crossmember.name() + " " + side.word(), crossmember.x());
    }
    layOnRail(side, side.word() + " tip", rail.x());
    layOnRail(side, side.word() + " tail", rail.tail());
    for (int i = 0; i < rail.reaches().size() - 1; i++) {
      layOnRail(side, Ladder.railPart(side) + " point " + (i + 1), rail.reaches().get(i).x());
    }
    for (Ladder.KickUp kickUp : ladder.kickUps()) {
      layOnRail(side, kickUp.feature(side, "foot"), kickUp.foot());
      layOnRail(side, kickUp.feature(side, "head"), kickUp.head());
    }
    ladder.mounts().stream()
        .filter(mount -> mount.member().equals(Ladder.railPart(side)))
        .forEach(mount -> layOnRail(side, mount.name(), mount.at().x()));
  }

  private void layOnRail(Side side, String feature, double x) {
    Point place = new Point(x, ladder.rail(side).yAt(x), ladder.heightAt(x));
    lay(railNodes.get(side), feature, place);
  }

  private void layCrossmember(Crossmember crossmember) {
    String left = nodeOf.get(crossmember.name() + " left");
    String right = nodeOf.get(crossmember.name() + " right");
    double middle = (places.get(left).y() + places.get(right).y()) / 2;
    List<String> nodes = new ArrayList<>(List.of(left, right));
    crossmemberNodes.put(crossmember.name(), nodes);
    layAcross(crossmember, crossmember.name() + " middle", middle);
    ladder.mounts().stream()
        .filter(mount -> mount.member().equals(crossmember.part()))
        .forEach(mount -> layAcross(crossmember, mount.name(), mount.at().y()));
    nodes.sort(comparingDouble(name -> -places.get(name).y()));
  }

  private void layAcross(Crossmember crossmember, String feature, double y) {
    Point place = new Point(crossmember.x(), y, ladder.heightAt(crossmember.x()));
    lay(crossmemberNodes.get(crossmember.name()), feature, place);
  }

  private void lay(List<String> line, String feature, Point place) {
    String node =
        line.stream()
            .filter(name -> places.get(name).distance(place) < SAME_PLACE)
            .findFirst()
            .orElse(feature);
    if (nodeOf.putIfAbsent(feature, node) != null) {
      throw new ModelException(
          "ladder " + ladder.name() + " has two features named " + feature + "; rename one");
    }
    if (node.equals(feature)) {
      places.put(node, place);
      line.add(node);
    }
  }
}
