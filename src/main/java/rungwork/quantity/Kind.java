package rungwork.quantity;

/** What a number measures; decides the units that it is shown in. SI unit inside, in brackets. */
public enum Kind {
  /** A bare number [1]. */
  NUMBER("number"),
  /** A ratio such as a utilisation [1]. */
  RATIO("ratio"),
  /** Length, from a wall thickness to a wheelbase [m]. */
  LENGTH("length"),
  /** Area of a cross-section [m²]. */
  AREA("area"),
  /** Second moment of area or torsion constant [m⁴]. */
  SECOND_MOMENT("second moment of area"),
  /** Elastic or plastic section modulus [m³]. */
  SECTION_MODULUS("section modulus"),
  /** Warping constant [m⁶]. */
  WARPING_CONSTANT("warping constant"),
  /** Force [N]. */
  FORCE("force"),
  /** Moment or torque [N·m]. */
  MOMENT("moment"),
  /** Force on a length [N/m]. */
  LINE_LOAD("line load"),
  /** Stress or strength [Pa]. */
  STRESS("stress"),
  /** Elastic modulus [Pa]. */
  MODULUS("modulus"),
  /** Mass [kg]. */
  MASS("mass"),
  /** Mass on a length [kg/m]. */
  MASS_PER_LENGTH("mass per length"),
  /** Density [kg/m³]. */
  DENSITY("density"),
  /** Mass moment of inertia [kg·m²]. */
  INERTIA("moment of inertia"),
  /** Acceleration [m/s²]. */
  ACCELERATION("acceleration"),
  /** Angular acceleration [rad/s²]. */
  ANGULAR_ACCELERATION("angular acceleration"),
  /** Speed [m/s]. */
  SPEED("speed"),
  /** Energy [J]. */
  ENERGY("energy"),
  /** Time [s]. */
  TIME("time"),
  /** Angle [rad]. */
  ANGLE("angle"),
  /** Force for a displacement [N/m]. */
  STIFFNESS("stiffness"),
  /** Moment for an angle [N·m/rad]. */
  ROTATIONAL_STIFFNESS("rotational stiffness");

  private final String noun;

  Kind(String noun) {
    this.noun = noun;
  }

  /**
   * The kind in words.
   *
   * @return for example {@code second moment of area}
   */
  public String noun() {
    return noun;
  }
}
