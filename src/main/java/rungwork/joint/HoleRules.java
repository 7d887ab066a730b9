package rungwork.joint;

import java.util.List;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Verdict.Measured;
import rungwork.quantity.Kind;

/**
 * Rules on where a hole may be and how wide: EN 1993-1-8:2005, table 3.3 (from memory) and ISO 273.
 * They are limits on proportion: an edge nearer than them is outside what the strength rules know.
 */
final class HoleRules {
  /** Smallest distance of a hole's centre from an edge, in hole diameters. */
  static final double EDGE = 1.2;

  /** Smallest distance of two holes across the load, in hole diameters; along it 2.2 would do. */
  static final double DISTANCE = 2.4;

  private static final String TABLE = "EN 1993-1-8:2005, table 3.3";

  private static final Formula LEAST_EDGE = least("e,min", "1.2·{d₀}", EDGE);
  private static final Formula LEAST_DISTANCE = least("p,min", "2.4·{d₀}", DISTANCE);

  private HoleRules() {}

  /** The distance from a hole's centre to an edge. */
  static Check edge(Question question, double hole, double edge) {
    return limit(List.of(LEAST_EDGE.with(hole)), EDGE * hole, edge, TABLE).answers(question);
  }

  /** The distance of two holes, taken as across the load, the stricter rule. */
  static Check distance(Question question, double hole, double distance) {
    return limit(List.of(LEAST_DISTANCE.with(hole)), DISTANCE * hole, distance, TABLE)
        .answers(question);
  }

  /** The hole's width against the coarse series of ISO 273, where the bolt has one. */
  static List<Check> width(Question question, Bolt bolt, double hole) {
    return bolt.size().holes().stream()
        .map(holes -> limit(List.of(), hole, holes.coarse(), "ISO 273, coarse series"))
        .map(finding -> finding.answers(question))
        .toList();
  }

  /** A length that must not exceed another. */
  static Finding limit(List<Step> working, double asked, double given, String source) {
    return new Finding(working, new Measured(asked, given, Kind.LENGTH), source, List.of());
  }

  private static Formula least(String letter, String text, double times) {
    return new Formula(
        Letters.length(letter, "smallest distance"),
        text,
        List.of(Letters.D0),
        TABLE,
        in -> times * in[0]);
  }
}
