package rungwork.material;

import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A material whose minimum strength somebody guarantees: the standard, or the user who states it. A
 * stated strength shows in the name, so that no output loses it.
 *
 * @param name the grade's name; ends in {@code (strength stated by the user)} when the source says
 *     so
 * @param elasticity stiffness and density
 * @param strength minimum strengths
 * @param source where the figures come from
 */
public record RatedMaterial(String name, Elasticity elasticity, Strength strength, Source source)
    implements Material {
  private static final String STATED = " (strength stated by the user)";

  /** Refuses a material without a name. */
  public RatedMaterial {
    name = Guard.name("material", name);
    if (source.tag() == Source.Tag.STATED_BY_USER && !name.endsWith(STATED)) {
      name = name + STATED;
    }
  }

  /**
   * Minimum strengths.
   *
   * @param yield fy [Pa], above zero
   * @param ultimate fu [Pa], at least fy
   * @param weldedYield fy within 25 mm of a weld [Pa], above zero and at most fy
   * @param elongation elongation after fracture [1]
   */
  public record Strength(double yield, double ultimate, double weldedYield, double elongation) {
    /** Refuses strengths that contradict each other. */
    public Strength {
      Guard.positive("yield strength", yield, Scale.MPA);
      Guard.positive("welded-zone yield strength", weldedYield, Scale.MPA);
      Guard.notNegative("elongation", elongation, Scale.NUMBER);
      Guard.finite("ultimate strength", ultimate);
      if (ultimate < yield) {
        throw new ModelException(
            "ultimate strength "
                + Scale.MPA.show(ultimate)
                + " is below the yield strength "
                + Scale.MPA.show(yield));
      }
      if (weldedYield > yield) {
        throw new ModelException(
            "welded-zone yield strength "
                + Scale.MPA.show(weldedYield)
                + " is above the yield strength "
                + Scale.MPA.show(yield));
      }
    }
  }

  @Override
  public String toString() {
    return name
        + ": yield "
        + Scale.MPA.show(strength.yield, 3)
        + ", beside welds "
        + Scale.MPA.show(strength.weldedYield, 3)
        + ", ultimate "
        + Scale.MPA.show(strength.ultimate, 3)
        + ", E "
        + new Scale("GPa", 1e9).show(elasticity.youngsModulus(), 3)
        + "; "
        + source;
  }
}
