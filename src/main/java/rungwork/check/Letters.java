package rungwork.check;

import rungwork.quantity.Kind;

/** Letters that several formulas of this room share. */
final class Letters {
  static final Symbol E = new Symbol("E", Kind.MODULUS, "Young's modulus");
  static final Symbol G = new Symbol("G", Kind.MODULUS, "shear modulus");
  static final Symbol A = new Symbol("A", Kind.AREA, "area of the cross-section");
  static final Symbol FY = new Symbol("fy", Kind.STRESS, "yield strength");
  static final Symbol GAMMA = new Symbol("γ", Kind.RATIO, "design factor");
  static final Symbol ALPHA = new Symbol("α", Kind.RATIO, "imperfection factor");
  static final Symbol TORQUE = new Symbol("T", Kind.MOMENT, "torque");

  static final Symbol IT = new Symbol("It", Kind.SECOND_MOMENT, "torsion constant");

  static final Symbol SQUASH = new Symbol("Npl", Kind.FORCE, "force at yield");

  private Letters() {}
}
