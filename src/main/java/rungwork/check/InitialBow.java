package rungwork.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;

/**
 * A member that is not straight: the other way to check a column. Its bow stands for all
 * imperfections in an analysis of second order, and then its section is checked and nothing more
 * (EN 1993-1-1:2005, 5.2.2(7)a and 5.3.2(3)b with table 5.1, elastic analysis; from memory).
 *
 * @param member the member
 * @param curve its buckling curve
 */
record InitialBow(Member member, ColumnCurve curve) {
  /** The directions in which it may stand out of its chord: along y and z, either way. */
  private static final double[][] DIRECTIONS = {{1, 0}, {-1, 0}, {0, 1}, {0, -1}};

  /** Refuses lengths that have the sway of the frame inside already. */
  InitialBow {
    if (member.buckling().sway() == Member.Sway.IN_LENGTHS) {
      throw new ModelException(
          "part %s is to be bowed in second order, but its effective lengths have the frame's sway inside (%s); never both: give lengths between held ends (K at most 1)"
              .formatted(member.part(), member.buckling().reason()));
    }
  }

  /** The loads with the member bowed in each direction in turn. */
  List<LoadCase> cases(LoadCase loads, Frame frame) {
    List<LoadCase> cases = new ArrayList<>();
    for (double[] direction : DIRECTIONS) {
      cases.add(bowed(loads, frame, direction));
    }
    return cases;
  }

  /** An arc over all beams of the member: each stands out by its part of the curvature. */
  private LoadCase bowed(LoadCase loads, Frame frame, double[] direction) {
    List<Beam> beams = member.beams().stream().map(frame::beam).toList();
    double whole = beams.stream().mapToDouble(frame::length).sum();
    double middle = curve.bow() * whole;
    List<Load> all = new ArrayList<>(loads.loads());
    for (Beam beam : beams) {
      double out = middle * Math.pow(frame.length(beam) / whole, 2);
      all.add(new Load.Misfit(beam.name(), 0, 0, out * direction[0], out * direction[1]));
    }
    String words =
        "%s bowed by %s along %s"
            .formatted(member.part(), Scale.MM.show(middle, 3), letter(direction));
    List<String> assumptions =
        Stream.concat(loads.assumptions().stream(), Stream.of(words)).toList();
    return new LoadCase(loads.name() + ", " + words, loads.source(), assumptions, all);
  }

  private static String letter(double[] direction) {
    double amount = direction[0] + direction[1];
    return (amount > 0 ? "+" : "−") + (direction[0] == 0 ? "z" : "y");
  }
}
