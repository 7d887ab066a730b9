package rungwork.solve;

import java.util.List;
import rungwork.frame.Stock;
import rungwork.material.Elasticity;
import rungwork.material.Source;
import rungwork.material.UnratedMaterial;
import rungwork.section.Properties;
import rungwork.section.Section;

/** Members known by their stiffness only, as textbooks give them. Any consistent units. */
public final class Stocks {
  /** Steel tube, 40 × 40 × 2 or so, in SI units. */
  public static final Stock TUBE =
      new Stocks(210e9, 80.77e9).with(new Shape(294e-6, 69.5e-9, 69.5e-9, 112.8e-9));

  private final double youngs;
  private final double shear;

  /** Members of one material: E and G. */
  public Stocks(double youngs, double shear) {
    this.youngs = youngs;
    this.shear = shear;
  }

  /** A member that is as stiff both ways: A, I, I and J = 1 where it does not matter. */
  public Stock planar(double area, double inertia) {
    return with(new Shape(area, inertia, inertia, inertia));
  }

  /** A member symmetric about both axes. */
  public Stock with(Shape shape) {
    return eccentric(shape, 0);
  }

  /** A member whose shear centre lies off its centroid, in the frame's plane. */
  public Stock eccentric(Shape shape, double shearCentreY) {
    return stock(shape, shearCentreY, 0);
  }

  /** A member whose shear centre lies out of the frame's plane: no flat frame takes it. */
  public Stock outOfPlane(Shape shape, double shearCentreZ) {
    return stock(shape, 0, shearCentreZ);
  }

  private Stock stock(Shape shape, double shearCentreY, double shearCentreZ) {
    double area = shape.area();
    Properties properties =
        new Properties(
            area,
            shape.iy(),
            shape.iz(),
            0,
            shape.it(),
            0,
            0,
            1,
            1,
            1,
            1,
            1,
            area,
            area,
            shearCentreY,
            shearCentreZ);
    Section section = new Section("by stiffness", properties, List.of(), List.of());
    Elasticity elasticity = new Elasticity(youngs, youngs / (2 * shear) - 1, 7850);
    Source source = new Source("a textbook member", Source.Tag.STATED_BY_USER);
    return new Stock(section, new UnratedMaterial("elastic", elasticity, source));
  }

  /** What a section's stiffness needs. */
  public record Shape(double area, double iy, double iz, double it) {}
}
