package rungwork.joint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * The straight lines of a weld's runs: laid through corners, shortened, and what they must not be.
 */
final class WeldLines {
  private WeldLines() {}

  /** Lines from corner to corner. */
  static List<Pattern.Line> through(List<Spot> corners) {
    List<Pattern.Line> lines = new ArrayList<>();
    for (int i = 1; i < corners.size(); i++) {
      lines.add(new Pattern.Line(corners.get(i - 1), corners.get(i)));
    }
    return lines;
  }

  /** Corners on a circle about the origin, the last on the first. */
  static List<Spot> circle(double radius, int count) {
    List<Spot> corners = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * i / count;
      corners.add(new Spot(radius * Math.cos(angle), radius * Math.sin(angle)));
    }
    corners.add(corners.get(0));
    return corners;
  }

  /** What is left of lines in a row without a length at either end. */
  static List<Pattern.Line> shortened(List<Pattern.Line> lines, double length) {
    return reversed(cut(reversed(cut(lines, length)), length));
  }

  static void refuseTwice(String weld, List<WeldGroup.Run> runs) {
    Set<Set<Spot>> seen = new HashSet<>();
    for (WeldGroup.Run run : runs) {
      for (Pattern.Line line : run.lines()) {
        if (!seen.add(Set.of(line.from(), line.to()))) {
          throw new ModelException("two lines of weld " + weld + " lie on one another; keep one");
        }
      }
    }
  }

  static void refuseShort(String weld, WeldGroup.Run run, double deduction) {
    if (!run.closed() && run.length() <= 2 * deduction) {
      throw new ModelException(
          "a run of weld "
              + weld
              + " is "
              + Scale.MM.show(run.length())
              + " long; start and stop take "
              + Scale.MM.show(2 * deduction)
              + " and nothing is left");
    }
  }

  private static List<Pattern.Line> cut(List<Pattern.Line> lines, double length) {
    List<Pattern.Line> left = new ArrayList<>(lines);
    double more = length;
    while (!left.isEmpty() && left.get(0).length() <= more) {
      more -= left.remove(0).length();
    }
    if (!left.isEmpty() && more > 0) {
      Pattern.Line first = left.get(0);
      left.set(0, new Pattern.Line(first.at(more / first.length()), first.to()));
    }
    return left;
  }

  private static List<Pattern.Line> reversed(List<Pattern.Line> lines) {
    List<Pattern.Line> back = new ArrayList<>();
    lines.forEach(line -> back.add(0, new Pattern.Line(line.to(), line.from())));
    return back;
  }
}
