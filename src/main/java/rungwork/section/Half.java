package rungwork.section;

/**
 * What of an area lies above a level.
 *
 * @param area the area above [m²]
 * @param moment its first moment about the level [m³]
 */
record Half(double area, double moment) {
  static final Half NONE = new Half(0, 0);

  Half plus(Half other) {
    return new Half(area + other.area, moment + other.moment);
  }
}
