package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.check.MemberChecks.Onset;
import rungwork.impact.OrderOfFailure.Part;
import rungwork.impact.OrderOfFailure.Zone;
import rungwork.quantity.Kind;

/** Runs of a hit at 100 m/s²; factors made up. */
class FramePartTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  private static Onset onset(String what, double factor, String... doubts) {
    return new Onset(what, "at its front end", factor, List.of(), List.of(doubts));
  }

  private static Map<CrushTube.Strength, MemberOnsets.Pair> run(
      double lowFirst, double lowLast, double highFirst, double highLast, String... doubts) {
    Map<CrushTube.Strength, MemberOnsets.Pair> both = new EnumMap<>(CrushTube.Strength.class);
    both.put(
        CrushTube.Strength.LOW,
        new MemberOnsets.Pair(onset("first yield", lowFirst, doubts), onset("plastic", lowLast)));
    both.put(
        CrushTube.Strength.HIGH,
        new MemberOnsets.Pair(onset("yields late", highFirst), onset("plastic", highLast)));
    return both;
  }

  private static MemberOnsets left() {
    MemberOnsets left = new MemberOnsets("left rail");
    left.add("run 1", run(0.5, 0.9, 1.1, 1.8));
    left.add("run 2", run(0.7, 0.8, 1.3, 1.7, "corners"));
    return left;
  }

  private static MemberOnsets right() {
    MemberOnsets right = new MemberOnsets("right rail");
    right.add("run 1", run(0.6, 0.7, 1.2, 1.9));
    right.add("run 2", run(0.4, 0.95, 1.0, 1.6, "corners", "holes"));
    return right;
  }

  private static FramePart part(String name, MemberOnsets... sides) {
    return new FramePart(name, Zone.RAIL, 0.2, Arrays.asList(sides), 100);
  }

  private static FramePart rail() {
    return part("rail", left()).and(new FramePart("rail", Zone.RAIL, 0.3, List.of(right()), 100));
  }

  @Test
  void in_each_run_the_worse_side_counts() {
    assertArrayEquals(new double[] {50, 40}, rail().first(CrushTube.Strength.LOW), 1e-9);
    assertArrayEquals(new double[] {110, 100}, rail().first(CrushTube.Strength.HIGH), 1e-9);
    assertEquals(0.3, rail().station(), "the foremost of both");
    assertEquals("rail", rail().name());
  }

  @Test
  void a_row_says_where_the_worst_run_gives_way_and_between_what() {
    Part row = rail().part();
    assertEquals(40, row.first().orElseThrow().low(), 1e-9);
    assertEquals(110, row.first().orElseThrow().high(), 1e-9);
    assertEquals(70, row.ultimate().orElseThrow().low(), 1e-9);
    assertEquals(180, row.ultimate().orElseThrow().high(), 1e-9);
    assertEquals("first yield", row.detail().begins());
    assertEquals("right rail at its front end; run 2", row.detail().where());
    assertEquals(List.of("corners", "holes"), row.detail().notes());
    assertEquals(1, row.detail().working().size());
    assertEquals(40, row.detail().working().get(0).result(), 1e-9);
    assertEquals(
        "linear: the hit grows in proportion", row.detail().working().get(0).formula().source());
    assertEquals(Zone.RAIL, row.zone());
    assertEquals(0.3, row.station());
  }

  @Test
  void what_never_gives_way_is_cut_at_a_thousand_g() {
    MemberOnsets tail = new MemberOnsets("left rail");
    tail.add("run 1", run(NEVER, NEVER, NEVER, NEVER));
    Part row = part("tail", tail).part();
    double most = 1000 * 9.80665;
    assertEquals(Optional.of(Range.exactly(Kind.ACCELERATION, most)), row.first());
    assertEquals(Optional.of(Range.exactly(Kind.ACCELERATION, most)), row.ultimate());
  }

  @Test
  void what_was_not_checked_has_its_reasons_and_no_figures() {
    MemberOnsets none = new MemberOnsets("left rail");
    none.add("run 1", run(NEVER, NEVER, NEVER, NEVER, "no metal", "no wall"));
    Part row = part("rail", none).part();
    assertEquals(Optional.empty(), row.first());
    assertEquals(Optional.empty(), row.ultimate());
    assertEquals(
        new OrderOfFailure.Detail("", "", List.of(), List.of("no metal", "no wall")), row.detail());
    assertEquals(0.2, row.station());
  }

  private static MemberOnsets one(double low, double high) {
    MemberOnsets only = new MemberOnsets("left rail");
    only.add("run 1", run(low, 9, high, 9));
    return only;
  }

  /** Run by run: low behind over high in front 40/110 and …, high behind over low in front. */
  @Test
  void parts_of_the_frame_are_compared_in_the_same_run() {
    MemberOnsets behind = new MemberOnsets("left rail");
    behind.add("run 1", run(0.8, 9, 2.2, 9));
    behind.add("run 2", run(0.9, 9, 1.2, 9));
    FramePart rear = part("rear", behind);
    Margins margins = new Margins(List.of(rail(), rear));
    Range margin = margins.of(rail().part(), rear.part());
    assertEquals(0.8 / 1.1, margin.low(), 1e-9);
    assertEquals(2.2 / 0.5, margin.high(), 1e-9);
  }

  @Test
  void with_a_part_from_elsewhere_the_ends_are_compared() {
    FramePart frame = part("frame", one(0.4, 0.9));
    Part mount =
        new Part(
            "mount",
            Zone.FRONT_MOUNTS,
            0,
            Optional.of(new Range(Kind.ACCELERATION, 20, 60)),
            Optional.empty(),
            frame.part().detail());
    Margins margins = new Margins(List.of(frame));
    assertEquals(new Range(Kind.RATIO, 40.0 / 60, 90.0 / 20), margins.of(mount, frame.part()));
    assertEquals(20.0 / 90, margins.of(frame.part(), mount).low(), 1e-12);
    assertEquals(60.0 / 40, margins.of(frame.part(), mount).high(), 1e-12);
  }

  @Test
  void a_margin_says_no_more_beyond_a_thousand() {
    FramePart weak = part("weak", one(0.001, 0.002));
    Part strong =
        new Part(
            "strong",
            Zone.RAIL,
            0,
            Optional.of(new Range(Kind.ACCELERATION, 100, 200.1)),
            Optional.empty(),
            weak.part().detail());
    Range margin = new Margins(List.of(weak)).of(weak.part(), strong);
    assertEquals(500, margin.low(), 1e-9);
    assertEquals(1000, margin.high(), 1e-9);
    Part unknown = Part.unknown("mount", Zone.FRONT_MOUNTS, 0);
    Refused.with(
        "part mount is not checked; it has no margin",
        () -> new Margins(List.of(weak)).of(strong, unknown));
  }
}
