package rungwork.vehicle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import rungwork.check.Member;
import rungwork.check.Member.BucklingLengths;
import rungwork.check.Member.Ends;
import rungwork.check.Member.Sway;
import rungwork.check.Member.Warping;
import rungwork.check.Member.Weld;
import rungwork.frame.Point;
import rungwork.frame.Stock;

/** A ladder's members as a builder sees them: crossmembers, and rails from one to the next. */
final class Members {
  /** Directions closer than this count as straight on [rad]: rounding. */
  private static final double STRAIGHT = 1e-9;

  private final Ladder ladder;
  private final Layout layout;
  private final Sway sway;

  /** The members, the sway of free ends counted in their lengths or in their moments. */
  Members(Ladder ladder, Sway sway) {
    this.ladder = ladder;
    this.sway = sway;
    layout = ladder.layout();
  }

  List<Member> all() {
    List<Member> members = new ArrayList<>();
    ladder.crossmembers().forEach(crossmember -> members.add(crossmember(crossmember)));
    for (Side side : Side.values()) {
      members.addAll(rail(side));
    }
    return members;
  }

  private Member crossmember(Crossmember crossmember) {
    List<String> nodes = layout.crossmemberNodes(crossmember.name());
    List<String> beams =
        IntStream.range(0, nodes.size() - 1)
            .mapToObj(i -> Layout.beamName(crossmember.part(), i))
            .toList();
    double length = place(nodes.get(0)).distance(place(nodes.get(nodes.size() - 1)));
    BucklingLengths buckling =
        new BucklingLengths(length, length, "from rail to rail (K = 1), its ends taken as hinged");
    return new Member(
        crossmember.part(), beams, buckling, welds(nodes), new Warping(Ends.UNKNOWN, length));
  }

  private List<Member> rail(Side side) {
    List<String> nodes = layout.railNodes(side);
    List<Integer> cuts = new ArrayList<>(List.of(0));
    List<String> names = new ArrayList<>(List.of("tip"));
    for (Crossmember crossmember : ladder.crossmembers()) {
      int at = nodes.indexOf(ladder.node(crossmember.name() + " " + side.word()).name());
      if (at == 0) {
        names.set(0, crossmember.name());
      } else {
        cuts.add(at);
        names.add(crossmember.name());
      }
    }
    if (cuts.get(cuts.size() - 1) < nodes.size() - 1) {
      cuts.add(nodes.size() - 1);
      names.add("tail");
    }
    List<Member> members = new ArrayList<>();
    for (int i = 0; i + 1 < cuts.size(); i++) {
      String name = Ladder.railPart(side) + ", " + names.get(i) + " to " + names.get(i + 1);
      members.addAll(bay(side, name, cuts.get(i), cuts.get(i + 1)));
    }
    return members;
  }

  /** A rail between two crossmembers, or beyond the last: one member, or one for each stock. */
  private List<Member> bay(Side side, String name, int from, int to) {
    List<String> nodes = layout.railNodes(side);
    double length =
        IntStream.range(from, to)
            .mapToDouble(i -> place(nodes.get(i)).distance(place(nodes.get(i + 1))))
            .sum();
    boolean overhang = name.endsWith(" to tail") || name.contains(", tip to ");
    BucklingLengths buckling = overhang ? overhang(length) : between(length);
    List<Integer> starts = new ArrayList<>(List.of(from));
    for (int i = from + 1; i < to; i++) {
      if (breaksAt(side, i)) {
        starts.add(i);
      }
    }
    starts.add(to);
    List<Member> members = new ArrayList<>();
    for (int i = 0; i + 1 < starts.size(); i++) {
      String part = starts.size() == 2 ? name : name + ", part " + (i + 1);
      members.add(piece(side, part, starts.get(i), starts.get(i + 1), buckling));
    }
    return members;
  }

  private static BucklingLengths between(double length) {
    return new BucklingLengths(
        length, length, "crossmember spacing (K = 1), hinged and held at both ends");
  }

  private BucklingLengths overhang(double length) {
    return sway == Sway.IN_LENGTHS
        ? new BucklingLengths(
            2 * length, 2 * length, 2 * length, "twice the overhang (K = 2), its end free", sway)
        : new BucklingLengths(
            length, length, "the overhang (K = 1), the sway of its free end in the moments");
  }

  private Member piece(Side side, String part, int from, int to, BucklingLengths buckling) {
    List<String> nodes = new ArrayList<>(layout.railNodes(side).subList(from, to + 1));
    List<String> beams =
        new ArrayList<>(
            IntStream.range(from, to)
                .mapToObj(i -> Layout.beamName(Ladder.railPart(side), i))
                .toList());
    if (side == Side.LEFT) {
      Collections.reverse(nodes);
      Collections.reverse(beams);
    }
    Warping warping = new Warping(Ends.UNKNOWN, layout.bay(side, from));
    return new Member(part, beams, buckling, welds(nodes), warping);
  }

  private boolean breaksAt(Side side, int node) {
    List<String> nodes = layout.railNodes(side);
    Point before = place(nodes.get(node - 1));
    Point here = place(nodes.get(node));
    Point after = place(nodes.get(node + 1));
    Stock ahead = ladder.rail(side).stockAheadOf(here.x());
    Stock behind = ladder.rail(side).stockAheadOf(after.x());
    return !ahead.equals(behind) || turn(before, here, after) > STRAIGHT;
  }

  /** The larger of the turns that a rail takes at a node in plan and seen from the side [rad]. */
  private static double turn(Point before, Point here, Point after) {
    double ahead = before.x() - here.x();
    double behind = here.x() - after.x();
    double inPlan =
        Math.atan2(here.y() - before.y(), ahead) - Math.atan2(after.y() - here.y(), behind);
    double fromTheSide =
        Math.atan2(here.z() - before.z(), ahead) - Math.atan2(after.z() - here.z(), behind);
    return Math.max(Math.abs(inPlan), Math.abs(fromTheSide));
  }

  /** Welds at every node, a crossmember's middle included, but not at a rail's free end. */
  private List<Weld> welds(List<String> nodes) {
    Point start = place(nodes.get(0));
    return nodes.stream()
        .filter(node -> !layout.isFreeEnd(node))
        .map(node -> new Weld(node, start.distance(place(node))))
        .toList();
  }

  private Point place(String node) {
    return layout.place(node);
  }
}
