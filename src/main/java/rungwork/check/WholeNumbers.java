package rungwork.check;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungwork.frame.Beam;
import rungwork.frame.Stock;
import rungwork.quantity.Units;
import rungwork.solve.InternalForces;

/** The numbers of a member of any section, by making its checks whole: right, but slow. */
final class WholeNumbers implements MemberChecks.Numbers {
  /** Numbers of a cut: its fraction and six forces. */
  static final int CUT = 7;

  private final Member member;
  private final List<Beam> beams;
  private final double[] lengths;
  private final Stock stock;
  private final Set<String> doubts = new LinkedHashSet<>();
  private String what = "";

  /**
   * Prepares a member.
   *
   * @param member the member
   * @param beams its beams with their lengths [m], in order
   * @param stock what it is cut from
   */
  WholeNumbers(Member member, Map<Beam, Double> beams, Stock stock) {
    this.member = member;
    this.stock = stock;
    this.beams = List.copyOf(beams.keySet());
    lengths = beams.values().stream().mapToDouble(Double::doubleValue).toArray();
  }

  Member member() {
    return member;
  }

  Stock stock() {
    return stock;
  }

  /** The length of one of its beams [m]. */
  double length(int beam) {
    return lengths[beam];
  }

  @Override
  public double utilisation(double[][] cuts, int[] counts, MemberChecks.Asked asked) {
    double highest = 0;
    what = "";
    for (Check check : MemberChecks.all(loaded(cuts, counts, asked.factor()))) {
      if (!check.made()) {
        doubts.add(check.what() + ": " + check.verdict().reason(Units.METRIC));
      }
      double utilisation = check.utilisation().orElse(0);
      if (CheckSheet.canGovern(check) && utilisation > highest) {
        highest = utilisation;
        what = check.what();
      }
    }
    return highest;
  }

  @Override
  public boolean canExceed(double[] bounds, int at, int stride, MemberChecks.Asked asked) {
    return true;
  }

  private LoadedMember loaded(double[][] cuts, int[] counts, DesignFactor factor) {
    List<Cut> all = new ArrayList<>();
    double offset = 0;
    for (int beam = 0; beam < counts.length; beam++) {
      for (int i = 0; i < counts[beam]; i++) {
        all.add(cut(beam, cuts[beam], CUT * i, offset));
      }
      offset += lengths[beam];
    }
    return new LoadedMember(member, "", stock, stock.section(), all, factor);
  }

  private Cut cut(int beam, double[] from, int at, double offset) {
    InternalForces forces =
        new InternalForces(
            from[at + 1], from[at + 2], from[at + 3], from[at + 4], from[at + 5], from[at + 6]);
    double along = offset + from[at] * lengths[beam];
    return new Cut(beams.get(beam), stock.section(), from[at], along, forces);
  }

  @Override
  public String what() {
    return what;
  }

  @Override
  public List<String> doubts() {
    return List.copyOf(doubts);
  }

  @Override
  public void forget() {
    doubts.clear();
  }
}
