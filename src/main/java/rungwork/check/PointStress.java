package rungwork.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rungwork.section.Properties;
import rungwork.section.Section;
import rungwork.section.StressPoint;
import rungwork.solve.InternalForces;

/**
 * The stress at one point of one cut.
 *
 * @param cut the cut
 * @param point the point of its section
 * @param twist how the section carries its torque there
 * @param equivalent von Mises stress [Pa]
 */
record PointStress(Cut cut, StressPoint point, Twist twist, double equivalent) {
  /** A shear stress that is rounding only [Pa]. */
  private static final double NOTHING = 1;

  /** Flat factors and formulas differ by rounding alone; places this near are asked by both [1]. */
  private static final double ROUNDING = 1e-9;

  /** The most stressed point of several cuts; nothing where a section has no stress points. */
  static Optional<PointStress> worst(List<Cut> cuts, Twist twist) {
    Optional<PointStress> worst = Optional.empty();
    double most = Double.NEGATIVE_INFINITY;
    for (Cut cut : twist.held().isEmpty() ? mostStressed(cuts) : cuts) {
      for (StressPoint point : cut.section().points()) {
        PointStress here = PointStress.of(cut, point, twist);
        if (here.equivalent > most) {
          most = here.equivalent;
          worst = Optional.of(here);
        }
      }
    }
    return worst;
  }

  /** Of cuts through one section, those as highly stressed as any, in their order. */
  private static List<Cut> mostStressed(List<Cut> cuts) {
    StressFactors factors = StressFactors.of(cuts.get(0).section());
    double[] highest = new double[cuts.size()];
    double most = 0;
    for (int i = 0; i < highest.length; i++) {
      InternalForces f = cuts.get(i).forces();
      double[] forces = {f.n(), f.vy(), f.vz(), f.t(), f.my(), f.mz()};
      highest[i] = factors.highest(forces, 0);
      most = Math.max(most, highest[i]);
    }
    List<Cut> near = new ArrayList<>();
    for (int i = 0; i < highest.length; i++) {
      if (!(highest[i] < most * (1 - ROUNDING))) {
        near.add(cuts.get(i));
      }
    }
    return near;
  }

  private static PointStress of(Cut cut, StressPoint point, Twist twist) {
    InternalForces f = cut.forces();
    double sigma = twist.withWarping(normalStress(cut, point), point);
    double tau =
        StressFormulas.SHEAR_SUM.value(
            StressFormulas.SHEAR_Y.value(f.vy(), 1 / point.perVy()),
            StressFormulas.SHEAR_Z.value(f.vz(), 1 / point.perVz()),
            twist.shearStress(f.t(), point));
    return new PointStress(cut, point, twist, StressFormulas.VON_MISES.value(sigma, tau));
  }

  /** Of force and bending alone, without warping [Pa]. */
  static double normalStress(Cut cut, StressPoint point) {
    return normalStress(cut.section(), cut.forces(), point);
  }

  /** Of force and bending alone, of a section under six forces [Pa]. */
  static double normalStress(Section section, InternalForces forces, StressPoint point) {
    return formula(section).value(normal(section, forces, point));
  }

  /** From normal and shear stress to the equivalent one, which is last. */
  List<Step> working() {
    InternalForces f = cut.forces();
    List<Step> steps = new ArrayList<>(net().map(List::of).orElse(List.of()));
    steps.addAll(twist.normal(formula(cut.section()), normal(cut.section(), f, point), point));
    double sigma = steps.get(steps.size() - 1).result();
    Step tau =
        StressFormulas.SHEAR_SUM.with(
            shear(StressFormulas.SHEAR_Y.with(f.vy(), 1 / point.perVy()), steps),
            shear(StressFormulas.SHEAR_Z.with(f.vz(), 1 / point.perVz()), steps),
            shear(twist.shear(f.t(), point), steps));
    steps.add(tau);
    steps.add(StressFormulas.VON_MISES.with(sigma, tau.result()));
    return steps;
  }

  /**
   * A net section brings its forces to its own axes; any other is asked by its product of inertia.
   */
  private static Formula formula(Section section) {
    return section.net().isPresent()
        ? StressFormulas.NORMAL
        : StressFormulas.normal(section.properties());
  }

  /** What holes take off the area, if there are any. */
  private Optional<Step> net() {
    Section section = cut.section();
    double gross = section.properties().area();
    return section.net().map(net -> StressFormulas.NET.with(gross, gross - net.area()));
  }

  private static double[] normal(Section section, InternalForces f, StressPoint point) {
    Properties p = section.properties();
    if (section.net().isPresent()) {
      return normal(section.net().get(), f, point);
    }
    double[] plain = {
      f.n(), p.area(), f.my(), point.z(), p.iy(), f.mz(), point.y(), p.iz(), p.iyz()
    };
    return StressFormulas.isSymmetric(p) ? Arrays.copyOf(plain, plain.length - 1) : plain;
  }

  private static double[] normal(Section.Net net, InternalForces f, StressPoint point) {
    double[] moments = net.moments(f.n(), f.my(), f.mz());
    double y = point.y() - net.centroid().y();
    double z = point.z() - net.centroid().z();
    return new double[] {f.n(), net.area(), moments[0], z, net.iy(), moments[1], y, net.iz()};
  }

  /** A share of the shear stress; where the point has none of it, no line is added. */
  private static double shear(Step step, List<Step> steps) {
    if (Math.abs(step.result()) < NOTHING) {
      return 0;
    }
    steps.add(step);
    return step.result();
  }
}
