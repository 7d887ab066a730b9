package rungwork.joint;

import rungwork.check.Symbol;
import rungwork.quantity.Kind;

/** The letters that several formulas of this room share. */
final class Letters {
  static final Symbol GAMMA = ratio("γ", "design factor");
  static final Symbol GAMMA_M2 = ratio("γM2", "partial factor on ultimate strength");
  static final Symbol PHI = ratio("φ", "resistance factor on ultimate strength");
  static final Symbol FU = stress("fu", "ultimate strength of the plate");
  static final Symbol FY = stress("fy", "yield strength of the plate");
  static final Symbol T = length("t", "plate thickness");
  static final Symbol D = length("d", "bolt diameter");
  static final Symbol D0 = length("d₀", "hole diameter");
  static final Symbol FX = force("Fx", "force along the foot");
  static final Symbol FY_LATERAL = force("Fy", "force across the tab");
  static final Symbol FZ = force("Fz", "force out of the face");
  static final Symbol UTILISATION = ratio("u", "utilisation");

  private Letters() {}

  static Symbol ratio(String letter, String meaning) {
    return new Symbol(letter, Kind.RATIO, meaning);
  }

  static Symbol number(String letter, String meaning) {
    return new Symbol(letter, Kind.NUMBER, meaning);
  }

  static Symbol length(String letter, String meaning) {
    return new Symbol(letter, Kind.LENGTH, meaning);
  }

  static Symbol area(String letter, String meaning) {
    return new Symbol(letter, Kind.AREA, meaning);
  }

  static Symbol modulus(String letter, String meaning) {
    return new Symbol(letter, Kind.SECTION_MODULUS, meaning);
  }

  static Symbol force(String letter, String meaning) {
    return new Symbol(letter, Kind.FORCE, meaning);
  }

  static Symbol moment(String letter, String meaning) {
    return new Symbol(letter, Kind.MOMENT, meaning);
  }

  static Symbol stress(String letter, String meaning) {
    return new Symbol(letter, Kind.STRESS, meaning);
  }

  static Symbol lineForce(String letter, String meaning) {
    return new Symbol(letter, Kind.LINE_LOAD, meaning);
  }
}
