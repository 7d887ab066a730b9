package rungwork.section;

import java.util.List;
import java.util.Optional;

/**
 * A cross-section in its own axes: y to the left, z up, seen against the beam's x, that is with x
 * coming towards the reader; the origin at the centroid.
 *
 * @param name such as {@code RHS 80x40x3}
 * @param properties about the centroid
 * @param points where stresses are worth knowing
 * @param walls flat parts with their width-to-thickness
 */
public record Section(
    String name, Properties properties, List<StressPoint> points, List<Wall> walls) {

  /**
   * Why a flat frame cannot take this section, if so: its centroid, shear centre or principal axes
   * leave the frame's plane, so plane and grillage action would mix.
   *
   * @return the reason, or nothing when it fits
   */
  public Optional<String> unfitForFlatFrame() {
    return Optional.empty();
  }
}
