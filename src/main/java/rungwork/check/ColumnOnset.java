package rungwork.check;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rungwork.check.MemberChecks.Onset;
import rungwork.frame.Stock;
import rungwork.quantity.Kind;
import rungwork.section.Properties;

/**
 * At how many times the growing loads a member buckles as a column, its compression alone counted:
 * by the critical force that it has in the frame, or between its held ends where it takes no part
 * in the frame's buckling.
 *
 * @param member the member under the growing loads
 * @param critical the force in it when the frame buckles, if it takes part [N]
 */
record ColumnOnset(LoadedMember member, OptionalDouble critical) {
  private static final Formula REACHED =
      new Formula(
          new Symbol("k", Kind.RATIO, "times the growing loads when the column buckles"),
          "{χ}·{A}·{fy}/{N₁}",
          List.of(
              new Symbol("χ", Kind.RATIO, "reduction of an imperfect column"),
              Letters.A,
              Letters.FY,
              new Symbol("N₁", Kind.FORCE, "largest compression by the growing loads")),
          "EN 1993-1-1:2005, 6.3.1.1, no factor; bending is not in it",
          in -> in[0] * in[1] * in[2] / in[3]);

  Onset onset(double yield) {
    double force = member.largest(forces -> -forces.n());
    if (force <= 0) {
      return new Onset(
          MemberChecks.COLUMN, Finding.WHOLE, Double.POSITIVE_INFINITY, List.of(), List.of());
    }
    Column column = column();
    List<Step> working = new ArrayList<>(column.reduction(ColumnCurve.C, yield));
    double chi = working.get(working.size() - 1).result();
    Step reached = REACHED.with(chi, column.area(), yield, force);
    working.add(reached);
    return new Onset(MemberChecks.COLUMN, words(), reached.result(), working, List.of());
  }

  private String words() {
    return critical.isPresent()
        ? "by the frame's own critical load"
        : "between its ends: " + member.member().buckling().reason();
  }

  /** The column that has this critical force, or the weaker of both between its ends. */
  private Column column() {
    Stock stock = member.stock();
    Properties p = stock.section().properties();
    double modulus = stock.material().elasticity().youngsModulus();
    Column inPlane = new Column(modulus, p.area(), p.iz(), member.member().buckling().inPlane());
    Column outOfPlane =
        new Column(modulus, p.area(), p.iy(), member.member().buckling().outOfPlane());
    if (critical.isEmpty()) {
      return inPlane.critical().result() < outOfPlane.critical().result() ? inPlane : outOfPlane;
    }
    double second = Math.max(p.iy(), p.iz());
    double length = Math.PI * Math.sqrt(modulus * second / critical.getAsDouble());
    return new Column(modulus, p.area(), second, length);
  }
}
