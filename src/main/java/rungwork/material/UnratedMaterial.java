package rungwork.material;

import static rungwork.quantity.Quantities.si;

import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import rungwork.fault.Guard;
import rungwork.fault.Scale;

/**
 * A material that is sold without a guaranteed strength, such as plain electric-welded tube. It has
 * a stiffness; a strength only when the user states one.
 *
 * @param name the grade's name
 * @param elasticity stiffness and density
 * @param source where the figures come from, and why there is no strength
 */
public record UnratedMaterial(String name, Elasticity elasticity, Source source)
    implements Material {
  /** Refuses a material without a name. */
  public UnratedMaterial {
    name = Guard.name("material", name);
  }

  /**
   * The material with a strength that the user states, for instance from a mill certificate. Every
   * output then says that the user stated it.
   *
   * @param yield minimum yield strength, also used beside welds
   * @param ultimate minimum ultimate strength
   * @param evidence what the user bases it on, such as {@code mill certificate 1234}
   * @return the rated material
   */
  public RatedMaterial stating(
      Quantity<Pressure> yield, Quantity<Pressure> ultimate, String evidence) {
    double fy = si("stated yield strength of " + name, yield);
    double fu = si("stated ultimate strength of " + name, ultimate);
    Source stated =
        new Source(Guard.name("statement of strength", evidence), Source.Tag.STATED_BY_USER);
    return new RatedMaterial(name, elasticity, new RatedMaterial.Strength(fy, fu, fy, 0), stated);
  }

  @Override
  public String toString() {
    return name
        + ": no guaranteed strength, E "
        + new Scale("GPa", 1e9).show(elasticity.youngsModulus(), 3)
        + "; "
        + source;
  }
}
