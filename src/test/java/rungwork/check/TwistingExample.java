package rungwork.check;

import rungwork.material.Elasticity;
import rungwork.section.Properties;

/** A published column of an open section, by its printed properties. */
public final class TwistingExample {
  private TwistingExample() {}

  /** The least elastic critical force of bending and twisting [N]. */
  public static double critical(Elasticity elasticity, Properties section, double[] lengths) {
    java.util.List<Step> steps =
        new TwistingColumn(
                elasticity, section, new TwistingColumn.Lengths(lengths[0], lengths[1], lengths[2]))
            .critical();
    return steps.get(steps.size() - 1).result();
  }

  /** The nominal force of the American specification [N]. */
  public static double american(double area, double yield, double critical) {
    return TwistingColumn.american(area, yield, critical).result();
  }

  /** A section by what buckling asks of it; y is the axis across its height. */
  public static Properties section(
      double area, double iy, double iz, double it, double iw, double z0) {
    return new Properties(area, iy, iz, 0, it, iw, 0, 1, 1, 1, 1, 1, area, area, 0, z0);
  }
}
