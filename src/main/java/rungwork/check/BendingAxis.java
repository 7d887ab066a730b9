package rungwork.check;

import rungwork.section.Properties;
import rungwork.solve.InternalForces;

/** Which of a section's two axes it bends about. */
enum BendingAxis {
  /** About the section's y: out of the frame's plane. */
  Y("out of the frame's plane"),
  /** About the section's z: in the frame's plane. */
  Z("in the frame's plane");

  private final String bends;

  BendingAxis(String bends) {
    this.bends = bends;
  }

  /** The axis of the larger second moment; y where both are equal. */
  static BendingAxis strong(Properties section) {
    return section.iy() >= section.iz() ? Y : Z;
  }

  BendingAxis other() {
    return this == Y ? Z : Y;
  }

  /** Where a part bends when it bends about this axis. */
  String bends() {
    return bends;
  }

  /** Second moment of area about this axis [m⁴]. */
  double secondMoment(Properties section) {
    return this == Y ? section.iy() : section.iz();
  }

  /** Elastic section modulus about this axis [m³]. */
  double modulus(Properties section) {
    return this == Y ? section.wely() : section.welz();
  }

  /** Effective length for buckling about this axis [m]. */
  double length(Member.BucklingLengths lengths) {
    return this == Y ? lengths.outOfPlane() : lengths.inPlane();
  }

  /** Bending moment about this axis [N·m]. */
  double moment(InternalForces forces) {
    return this == Y ? forces.my() : forces.mz();
  }
}
