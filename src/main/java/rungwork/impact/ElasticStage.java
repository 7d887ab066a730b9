package rungwork.impact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rungwork.check.Member;
import rungwork.check.Member.Ends;
import rungwork.check.MemberChecks;
import rungwork.check.MemberChecks.Growth;
import rungwork.check.MemberChecks.Onset;
import rungwork.check.WallLimits;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;
import rungwork.solve.Buckling;
import rungwork.solve.CriticalLoad;
import rungwork.solve.Response;
import rungwork.solve.Solver;
import rungwork.solve.YieldSurface;
import rungwork.vehicle.Balance;
import rungwork.vehicle.Joints;
import rungwork.vehicle.Ladder;

/**
 * A frontal hit while the frame is elastic: when each member first yields, buckles as a column or
 * is fully plastic, under every assumption on joints, on warping and on how masses are shared. The
 * 1 g of standing is there all along; the hit grows.
 */
final class ElasticStage {
  private final Ladder ladder;
  private final Balance balance;
  private final double reference;
  private final TwoStrengths strength;
  private final Map<String, MemberOnsets> members = new LinkedHashMap<>();
  private final MemberOnsets whole = new MemberOnsets("frame");
  private final List<Double> critical = new ArrayList<>();
  private Optional<String> unfollowed = Optional.empty();
  private final Map<String, YieldSurface> surfaces = new HashMap<>();

  /**
   * Runs everything.
   *
   * @param balance of a hit
   * @param strength both strengths
   */
  ElasticStage(Balance balance, TwoStrengths strength) {
    this.balance = balance;
    reference = balance.deceleration();
    this.strength = strength;
    ladder = balance.ladder();
    for (Joints joints : ladder.joints()) {
      for (Ends ends : ladder.warping().cases()) {
        run(joints, ends);
      }
    }
  }

  /** A hit's name without its deceleration, which is no result. */
  static String words(String loadCase) {
    return loadCase.replaceFirst(", [0-9.]+ g(?=$|,)", "");
  }

  private void run(Joints joints, Ends ends) {
    Frame frame = ladder.frame(joints, ends);
    Solver solver = Solver.unsupported(frame);
    List<Member> ended = ladder.members().stream().map(one -> one.with(ends)).toList();
    Map<CrushTube.Strength, MemberOnsets.Pair> buckling = new LinkedHashMap<>();
    for (Balance.Growth loads : balance.growing()) {
      Growth both = new Growth(solver.solve(loads.standing()), solver.solve(loads.impact()));
      String words = words(both.growing().loadCase().name()) + ", " + joints.words();
      for (Member member : ended) {
        members
            .computeIfAbsent(member.part(), MemberOnsets::new)
            .add(words, onsets(member, both, which -> pair(member, both, which)));
      }
      if (buckling.isEmpty()) {
        Response anchored = Solver.of(frame.on(balance.anchors())).solve(loads.impact());
        buckling.putAll(buckling(ended, both, anchored));
      }
      whole.add(joints.words() + ", masses on all their mounts", buckling);
    }
  }

  /** The frame as a whole: the first of the members that take part in its buckling. */
  private Map<CrushTube.Strength, MemberOnsets.Pair> buckling(
      List<Member> ended, Growth both, Response anchored) {
    Map<CrushTube.Strength, MemberOnsets.Pair> first = new LinkedHashMap<>();
    try {
      Optional<CriticalLoad> lowest = Buckling.of(anchored).lowest();
      Optional<String> weak = lowest.flatMap(CriticalLoad::withoutWarping);
      if (weak.isPresent()) {
        unfollowed = weak;
        return none(weak.get());
      }
      lowest.ifPresent(one -> critical.add(one.factor() * reference));
      for (Member member : ended) {
        OptionalDouble force = criticalForce(member, both, lowest);
        if (force.isPresent()) {
          onsets(member, both, which -> column(member, both, which, force))
              .forEach((which, pair) -> first.merge(which, pair, MemberOnsets.Pair::earlier));
        }
      }
    } catch (ModelException unfit) {
      return none(unfit.getMessage());
    }
    return first.isEmpty() ? none("no part of the frame is compressed") : first;
  }

  private static Map<CrushTube.Strength, MemberOnsets.Pair> none(String reason) {
    MemberOnsets.Pair none = MemberOnsets.Pair.notChecked(reason);
    return Map.of(CrushTube.Strength.LOW, none, CrushTube.Strength.HIGH, none);
  }

  private MemberOnsets.Pair column(
      Member member, Growth loads, Case which, OptionalDouble critical) {
    double yield = strength.of(which.material, which.which).weldedYield();
    Onset column = MemberChecks.column(member, loads.growing(), yield, critical);
    return new MemberOnsets.Pair(column, column);
  }

  private static Map<CrushTube.Strength, MemberOnsets.Pair> onsets(
      Member member, Growth loads, Function<Case, MemberOnsets.Pair> stage) {
    Beam beam = loads.growing().frame().beam(member.beams().get(0));
    if (!(beam.material() instanceof RatedMaterial rated)) {
      return none(beam.material().name() + " has no guaranteed yield strength");
    }
    Map<CrushTube.Strength, MemberOnsets.Pair> both = new LinkedHashMap<>();
    for (CrushTube.Strength which : CrushTube.Strength.values()) {
      both.put(which, stage.apply(new Case(beam, rated, which)));
    }
    return both;
  }

  private record Case(Beam beam, RatedMaterial material, CrushTube.Strength which) {}

  private MemberOnsets.Pair pair(Member member, Growth loads, Case which) {
    Onset yield = MemberChecks.firstYield(member, loads, strength.of(which.material, which.which));
    Onset column = column(member, loads, which, OptionalDouble.empty()).first();
    Onset first = column.factor() < yield.factor() ? column : yield;
    return new MemberOnsets.Pair(first, ultimate(member, loads, which, first));
  }

  /** The compression in a member when the frame buckles, if it takes part. */
  private static OptionalDouble criticalForce(
      Member member, Growth loads, Optional<CriticalLoad> buckling) {
    if (buckling.isEmpty() || member.beams().stream().noneMatch(buckling.get()::takesPart)) {
      return OptionalDouble.empty();
    }
    double most =
        member.beams().stream()
            .map(loads.growing()::forces)
            .mapToDouble(forces -> -forces.smallest(f -> f.n()).value())
            .max()
            .orElse(0);
    return most > 0 ? OptionalDouble.of(most * buckling.get().factor()) : OptionalDouble.empty();
  }

  /** A section of class 3 or 4 in compression has no reserve; a column that buckles has none. */
  private Onset ultimate(Member member, Growth loads, Case which, Onset first) {
    if (MemberOnsets.isColumn(first)
        || which.beam.section().outline().loops().isEmpty()
        || which.beam.section().walls().stream()
            .anyMatch(wall -> WallLimits.classOf(wall, which.material.strength().yield()) > 2)) {
      return first;
    }
    Onset plastic = MemberChecks.fullyPlastic(member, loads, surface(which));
    // The surface that errs low may lie inside first yield where force alone acts.
    return plastic.factor() < first.factor() ? first : plastic;
  }

  private YieldSurface surface(Case which) {
    String key = which.beam.section().name() + which.material.name() + which.which;
    return surfaces.computeIfAbsent(
        key, none -> strength.surface(which.beam.section(), which.material, which.which));
  }

  /** Of each member by its part's name. */
  Map<String, MemberOnsets> members() {
    return members;
  }

  TwoStrengths strength() {
    return strength;
  }

  /** The hit's deceleration in the runs [m/s²]. */
  double reference() {
    return reference;
  }

  /**
   * The deceleration at which the frame buckles as a whole, elastic; empty where none was found, or
   * where it was not followed in some run.
   */
  Optional<Range> critical() {
    return critical.isEmpty() || unfollowed.isPresent()
        ? Optional.empty()
        : Optional.of(
            Range.spanning(Kind.ACCELERATION, critical.stream().mapToDouble(Double::doubleValue)));
  }

  /** The frame buckling as a whole; not checked where it was not followed in some run. */
  MemberOnsets whole() {
    return unfollowed.map(ElasticStage::unfollowed).orElse(whole);
  }

  private static MemberOnsets unfollowed(String reason) {
    MemberOnsets frame = new MemberOnsets("frame");
    frame.add("all runs", none(reason));
    return frame;
  }
}
