package rungwork.check;

import rungwork.check.Member.Ends;
import rungwork.material.Elasticity;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.StressPoint;

/**
 * G·It·θ' − E·Iw·θ''' = T along a bay by central differences in φ = θ', for any torque: a second
 * route to the closed forms. The start holds the warping; the end does too, or lets it happen.
 */
final class Vlasov {
  static final int NODES = 1001;

  private final Section section;
  private final Elasticity elasticity;
  private final double step;
  private final double[] torque;
  private final double[] rate;

  Vlasov(Section section, Elasticity elasticity, double length, Ends ends, double[] torque) {
    this.section = section;
    this.elasticity = elasticity;
    this.torque = torque;
    step = length / (NODES - 1);
    rate = solve(ends == Ends.BOTH_HELD);
  }

  private double bending() {
    Properties p = section.properties();
    return elasticity.youngsModulus() * (p.iw() + p.iwAcross());
  }

  private double twist() {
    return elasticity.shearModulus() * section.properties().it();
  }

  /** Thomas' elimination of a tridiagonal system. */
  private double[] solve(boolean endHeld) {
    int n = NODES;
    double off = -bending() / (step * step);
    double[] c = new double[n];
    double[] d = new double[n];
    for (int i = 1; i < n; i++) {
      boolean last = i == n - 1;
      double lower = last ? endHeld ? 0 : 2 * off : off;
      double diagonal = last && endHeld ? 1 : twist() - 2 * off;
      double right = last && endHeld ? 0 : torque[i];
      double pivot = diagonal - lower * c[i - 1];
      c[i] = last ? 0 : off / pivot;
      d[i] = (right - lower * d[i - 1]) / pivot;
    }
    double[] x = new double[n];
    for (int i = n - 1; i >= 0; i--) {
      x[i] = d[i] - (i == n - 1 ? 0 : c[i] * x[i + 1]);
    }
    return x;
  }

  /** The largest normal stress of warping at a point anywhere along the bay. */
  double stress(StressPoint point) {
    double most = 0;
    for (int i = 1; i < NODES; i++) {
      most = Math.max(most, Math.abs(rate[i] - rate[i - 1]) / step);
    }
    return elasticity.youngsModulus() * most * Math.abs(point.sectorial());
  }

  /** The largest part of the torque that twists the walls. */
  double twisting() {
    double most = 0;
    for (double one : rate) {
      most = Math.max(most, Math.abs(one) * twist());
    }
    return most;
  }

  /** Twist of free ends over its own, for a uniform torque. */
  double stiffening() {
    double sum = 0;
    for (int i = 1; i < NODES; i++) {
      sum += (rate[i] + rate[i - 1]) / 2 * step;
    }
    return torque[0] / twist() * step * (NODES - 1) / sum;
  }
}
