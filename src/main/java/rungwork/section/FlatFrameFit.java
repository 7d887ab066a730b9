package rungwork.section;

import java.util.Optional;
import rungwork.fault.Scale;

/**
 * Whether a flat frame can take a section: its principal axes and its shear centre must lie in the
 * frame's plane.
 *
 * @param p the section's properties
 */
record FlatFrameFit(Properties p) {
  /** Two axes closer than this part of the section's size are one: rounding of double numbers. */
  private static final double ROUNDING = 1e-6;

  /** Why it cannot; nothing when it fits. */
  Optional<String> reason() {
    if (Math.abs(p.iyz()) > ROUNDING * (p.iy() + p.iz())) {
      double turned = Math.abs(Math.toDegrees(p.principalAngle()));
      double angle = Math.min(turned, 90 - turned);
      return Optional.of(
          "its principal axes stand %s° off the frame's plane; bending in the plane would push it out, which a flat frame cannot follow; use a tube, a flat bar or an upright channel"
              .formatted(Scale.NUMBER.number(Math.abs(angle), 3)));
    }
    if (Math.abs(p.shearCentreZ()) > ROUNDING * Math.sqrt(p.area())) {
      return Optional.of(
          "its shear centre lies %s out of the frame's plane; bending would twist it, which a flat frame cannot follow; turn it by a quarter so that its axis of symmetry lies in the plane, as a channel's does with its web upright, or box it"
              .formatted(Scale.MM.show(Math.abs(p.shearCentreZ()), 3)));
    }
    return Optional.empty();
  }
}
