package rungwork.impact;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import rungwork.check.MemberChecks;
import rungwork.check.MemberChecks.Onset;

/** What one member did in all runs. */
final class MemberOnsets {
  private final String part;
  private final List<Run> runs = new ArrayList<>();

  MemberOnsets(String part) {
    this.part = part;
  }

  /**
   * When a member gives way.
   *
   * @param first at its first yield, or as a column if that comes before
   * @param ultimate when a section of it is fully plastic
   */
  record Pair(Onset first, Onset ultimate) {
    static Pair notChecked(String reason) {
      Onset none =
          new Onset(
              "first yield", "whole part", Double.POSITIVE_INFINITY, List.of(), List.of(reason));
      return new Pair(none, none);
    }

    Pair earlier(Pair other) {
      return other.first.factor() < first.factor() ? other : this;
    }
  }

  /**
   * One run.
   *
   * @param words the load case with its assumptions
   * @param at both strengths
   */
  record Run(String words, Map<CrushTube.Strength, Pair> at) {
    double factor(CrushTube.Strength which, Function<Pair, Onset> stage) {
      return stage.apply(at.get(which)).factor();
    }
  }

  static boolean isColumn(Onset first) {
    return first.what().equals(MemberChecks.COLUMN);
  }

  void add(String words, Map<CrushTube.Strength, Pair> at) {
    runs.add(new Run(words, at));
  }

  String part() {
    return part;
  }

  List<Run> runs() {
    return runs;
  }

  /** The run in which it gives way first at the low strength. */
  Run worst() {
    return runs.stream()
        .min(Comparator.comparingDouble(run -> run.factor(CrushTube.Strength.LOW, Pair::first)))
        .orElseThrow();
  }

  /** The least at the low strength, of the reference deceleration. */
  double low(Function<Pair, Onset> stage) {
    return runs.stream()
        .mapToDouble(run -> run.factor(CrushTube.Strength.LOW, stage))
        .min()
        .orElseThrow();
  }

  /** The most at the high strength. */
  double high(Function<Pair, Onset> stage) {
    return runs.stream()
        .mapToDouble(run -> run.factor(CrushTube.Strength.HIGH, stage))
        .max()
        .orElseThrow();
  }

  /** What was left out in any run. */
  List<String> doubts() {
    Set<String> all = new LinkedHashSet<>();
    runs.forEach(run -> run.at.values().forEach(pair -> all.addAll(pair.first.doubts())));
    return List.copyOf(all);
  }
}
