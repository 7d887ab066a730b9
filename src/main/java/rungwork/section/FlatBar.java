package rungwork.section;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import rungwork.fault.Guard;
import rungwork.fault.Scale;

/**
 * A solid rectangular bar. Shear: τ = 1.5 V/A in the middle, shear area 5/6 A (parabola, any
 * textbook). At the centre both shear forces act across each other; their sum stands for it there,
 * on the safe side.
 *
 * @param height along z [m]
 * @param width along y [m]
 */
record FlatBar(double height, double width) {
  /** Terms up to this; the slowest series, 1/n² with signs in turn, is then good to 1e-7. */
  private static final int TERMS = 4001;

  FlatBar {
    Guard.positive("bar height", height, Scale.MM);
    Guard.positive("bar width", width, Scale.MM);
  }

  Section section() {
    Pen pen = Pen.at(new Spot(width / 2, -height / 2), 90);
    Outline outline =
        new Outline(
            List.of(
                pen.forward(height)
                    .turn(90)
                    .forward(width)
                    .turn(90)
                    .forward(height)
                    .turn(90)
                    .forward(width)
                    .path()));
    double area = width * height;
    Spot shear = new Spot(area * 5 / 6, area * 5 / 6);
    ShearTorsion rest =
        new ShearTorsion(torsionConstant(), ShearTorsion.Resistance.NONE, shear, Spot.ORIGIN);
    return new Section(
        Label.sized("flat", height, width),
        Properties.of(outline, rest),
        points(),
        List.of(),
        Torsion.SOLID,
        outline);
  }

  private double ratio() {
    return Math.max(height, width) / thickness();
  }

  private double thickness() {
    return Math.min(height, width);
  }

  /**
   * It = b t³ (1/3 − 64/π⁵ · t/b · Σ tanh(nπb/2t)/n⁵), n odd (S. P. Timoshenko &amp; J. N. Goodier,
   * Theory of Elasticity, torsion of a rectangular bar; from memory).
   */
  private double torsionConstant() {
    double sum = odd(n -> Math.tanh(n * Math.PI * ratio() / 2) / Math.pow(n, 5));
    double t = thickness();
    return ratio() * Math.pow(t, 4) * (1.0 / 3 - 64 / Math.pow(Math.PI, 5) / ratio() * sum);
  }

  /** The middle of the long side: G·θ'·t (1 − 8/π² Σ 1/(n² cosh(nπb/2t))); same source. */
  private double longSide() {
    double sum = odd(n -> 1 / (n * (double) n * Math.cosh(n * Math.PI * ratio() / 2)));
    return thickness() * (1 - 8 / (Math.PI * Math.PI) * sum) / torsionConstant();
  }

  /** The middle of the short side: G·θ'·t · 8/π² Σ ±tanh(nπb/2t)/n², signs in turn; same source. */
  private double shortSide() {
    double sum =
        odd(n -> (n % 4 == 1 ? 1 : -1) * Math.tanh(n * Math.PI * ratio() / 2) / (n * (double) n));
    return thickness() * 8 / (Math.PI * Math.PI) * sum / torsionConstant();
  }

  private static double odd(IntToDoubleFunction term) {
    double sum = 0;
    for (int n = 1; n < TERMS; n += 2) {
      sum += term.applyAsDouble(n);
    }
    return sum;
  }

  private List<StressPoint> points() {
    double y = width / 2;
    double z = height / 2;
    double shear = 1.5 / (width * height);
    double side = height >= width ? longSide() : shortSide();
    double top = height >= width ? shortSide() : longSide();
    return List.of(
        point(new Spot(y, 0), new Spot(0, shear), side),
        point(new Spot(y, z), Spot.ORIGIN, 0),
        point(new Spot(0, z), new Spot(-shear, 0), top),
        point(new Spot(-y, z), Spot.ORIGIN, 0),
        point(new Spot(-y, 0), new Spot(0, -shear), side),
        point(new Spot(-y, -z), Spot.ORIGIN, 0),
        point(new Spot(0, -z), new Spot(shear, 0), top),
        point(new Spot(y, -z), Spot.ORIGIN, 0),
        point(Spot.ORIGIN, new Spot(shear, shear), 0),
        point(Spot.ORIGIN, new Spot(shear, -shear), 0));
  }

  private static StressPoint point(Spot place, Spot perForce, double perT) {
    boolean onTwoSides = place.y() != 0 && place.z() != 0;
    String part = onTwoSides ? "corner" : place.equals(Spot.ORIGIN) ? "centre" : "side";
    String name = Label.sided(place, part);
    return new StressPoint(name, place.y(), place.z(), perForce.y(), perForce.z(), perT, 0);
  }
}
