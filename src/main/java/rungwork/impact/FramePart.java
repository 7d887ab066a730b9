package rungwork.impact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import rungwork.check.Formula;
import rungwork.check.Member;
import rungwork.check.MemberChecks.Onset;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.fault.Scale;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.impact.MemberOnsets.Pair;
import rungwork.impact.OrderOfFailure.Detail;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.impact.OrderOfFailure.Zone;
import rungwork.quantity.Kind;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;

/**
 * A crossmember, or a piece of both rails: whichever side is worse counts.
 *
 * @param name without its side
 * @param zone where it belongs
 * @param station x of its front end [m]
 * @param sides its members
 * @param reference the deceleration of the runs [m/s²]
 */
record FramePart(
    String name, Zone zone, double station, List<MemberOnsets> sides, double reference) {
  /** Beyond this nothing is told apart [m/s²]: 1000 g. */
  static final double ENDLESS = 1000 * Scale.G.inSi();

  private static final Formula DECELERATION =
      new Formula(
          new Symbol("a", Kind.ACCELERATION, "deceleration of the vehicle"),
          "{k}·{a₁}",
          List.of(
              new Symbol("k", Kind.RATIO, "times the hit of the run"),
              new Symbol("a₁", Kind.ACCELERATION, "deceleration of the run")),
          "linear: the hit grows in proportion",
          in -> in[0] * in[1]);

  static FramePart of(Member member, Ladder ladder, ElasticStage stage) {
    Frame frame = ladder.frame(Joints.RIGID);
    double front =
        member.beams().stream()
            .map(frame::beam)
            .mapToDouble(beam -> Math.max(frame.startOf(beam).x(), frame.endOf(beam).x()))
            .max()
            .orElseThrow();
    Zone zone = zone(member, ladder, frame);
    String bare = member.part().replaceFirst("^(left|right) ", "");
    String name = zone == Zone.KICK_UP ? bare + " (kick-up)" : bare;
    MemberOnsets onsets = stage.members().get(member.part());
    return new FramePart(name, zone, front, List.of(onsets), stage.reference());
  }

  /** The frame buckling as a whole. */
  static FramePart whole(ElasticStage stage) {
    return new FramePart(
        "frame buckling as a whole",
        Zone.WHOLE_FRAME,
        Double.NEGATIVE_INFINITY,
        List.of(stage.whole()),
        stage.reference());
  }

  private static Zone zone(Member member, Ladder ladder, Frame frame) {
    if (member.part().endsWith(" crossmember")) {
      return Zone.CROSSMEMBER;
    }
    Beam beam = frame.beam(member.beams().get(0));
    double middle = (frame.startOf(beam).x() + frame.endOf(beam).x()) / 2;
    boolean rises =
        ladder.kickUps().stream()
            .anyMatch(
                one ->
                    middle > Math.min(one.foot(), one.head())
                        && middle < Math.max(one.foot(), one.head()));
    if (rises) {
      return Zone.KICK_UP;
    }
    return member.part().contains(" rail, tip to ") ? Zone.RAIL_TIP : Zone.RAIL;
  }

  /** The same piece of the other rail joined to it. */
  FramePart and(FramePart other) {
    List<MemberOnsets> both = new ArrayList<>(sides);
    both.addAll(other.sides);
    return new FramePart(name, zone, Math.max(station, other.station), both, reference);
  }

  /** In each run, the deceleration at which the worse side first gives way [m/s²]. */
  double[] first(CrushTube.Strength which) {
    return runs(which, Pair::first);
  }

  private double[] runs(CrushTube.Strength which, Function<Pair, Onset> stage) {
    return IntStream.range(0, sides.get(0).runs().size())
        .mapToDouble(run -> worse(run, which, stage))
        .toArray();
  }

  private double worse(int run, CrushTube.Strength which, Function<Pair, Onset> stage) {
    double least =
        sides.stream()
            .mapToDouble(side -> side.runs().get(run).factor(which, stage))
            .min()
            .orElseThrow();
    return Math.min(ENDLESS, least * reference);
  }

  private Range range(Function<Pair, Onset> stage) {
    double low = least(runs(CrushTube.Strength.LOW, stage));
    double high = most(runs(CrushTube.Strength.HIGH, stage));
    return new Range(Kind.ACCELERATION, low, high);
  }

  private static double least(double[] values) {
    return IntStream.range(0, values.length).mapToDouble(i -> values[i]).min().orElseThrow();
  }

  private static double most(double[] values) {
    return IntStream.range(0, values.length).mapToDouble(i -> values[i]).max().orElseThrow();
  }

  Part part() {
    List<String> doubts =
        sides.stream().flatMap(side -> side.doubts().stream()).distinct().toList();
    MemberOnsets side =
        sides.stream().min(Comparator.comparingDouble(one -> one.low(Pair::first))).orElseThrow();
    MemberOnsets.Run worst = side.worst();
    Onset first = worst.at().get(CrushTube.Strength.LOW).first();
    if (Double.isInfinite(first.factor()) && !doubts.isEmpty()) {
      Detail nothing = new Detail("", "", List.of(), doubts);
      return new Part(name, zone, station, Optional.empty(), Optional.empty(), nothing);
    }
    List<Step> working = new ArrayList<>(first.working());
    working.add(DECELERATION.with(first.factor(), reference));
    String where = side.part() + " " + first.where() + "; " + worst.words();
    return new Part(
        name,
        zone,
        station,
        Optional.of(range(Pair::first)),
        Optional.of(range(Pair::ultimate)),
        new Detail(first.what(), where, working, doubts));
  }
}
