package rungwork.quantity;

/** What a number measures; decides the units that it is shown in. SI unit inside, in brackets. */
public enum Kind {
  /** A bare number [1]. */
  NUMBER,
  /** A ratio such as a utilisation [1]. */
  RATIO,
  /** Length of something large, such as a wheelbase or a thickness [m]. */
  LENGTH,
  /** Area of a cross-section [m²]. */
  AREA,
  /** Second moment of area or torsion constant [m⁴]. */
  SECOND_MOMENT,
  /** Elastic or plastic section modulus [m³]. */
  SECTION_MODULUS,
  /** Warping constant [m⁶]. */
  WARPING_CONSTANT,
  /** Force [N]. */
  FORCE,
  /** Moment or torque [N·m]. */
  MOMENT,
  /** Force on a length [N/m]. */
  LINE_LOAD,
  /** Stress, strength or modulus [Pa]. */
  STRESS,
  /** Elastic modulus [Pa]. */
  MODULUS,
  /** Mass [kg]. */
  MASS,
  /** Mass on a length [kg/m]. */
  MASS_PER_LENGTH,
  /** Density [kg/m³]. */
  DENSITY,
  /** Mass moment of inertia [kg·m²]. */
  INERTIA,
  /** Acceleration [m/s²]. */
  ACCELERATION,
  /** Angular acceleration [rad/s²]. */
  ANGULAR_ACCELERATION,
  /** Speed [m/s]. */
  SPEED,
  /** Energy [J]. */
  ENERGY,
  /** Time [s]. */
  TIME,
  /** Angle [rad]. */
  ANGLE,
  /** Force for a displacement [N/m]. */
  STIFFNESS,
  /** Moment for an angle [N·m/rad]. */
  ROTATIONAL_STIFFNESS
}
