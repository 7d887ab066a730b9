package rungwork.check;

import java.util.List;
import rungwork.quantity.Kind;
import rungwork.section.Properties;

/** Stress at a point of a cross-section, first order, elastic. */
final class StressFormulas {
  private static final String MECHANICS = "strength of materials: plane sections stay plane";
  private static final String SHEAR =
      "strength of materials: shear flow along the wall, torsion free to warp";

  private static final Symbol N = new Symbol("N", Kind.FORCE, "normal force, tension positive");
  private static final Symbol MY = new Symbol("My", Kind.MOMENT, "moment out of the plane");
  private static final Symbol MZ = new Symbol("Mz", Kind.MOMENT, "moment in the plane");
  private static final Symbol IY = new Symbol("Iy", Kind.SECOND_MOMENT, "about y");
  private static final Symbol IZ = new Symbol("Iz", Kind.SECOND_MOMENT, "about z");
  private static final Symbol IYZ = new Symbol("Iyz", Kind.SECOND_MOMENT, "product of inertia");
  private static final Symbol Y = new Symbol("y", Kind.LENGTH, "of the point");
  private static final Symbol Z = new Symbol("z", Kind.LENGTH, "of the point");
  private static final Symbol VY = new Symbol("Vy", Kind.FORCE, "shear force in the plane");
  private static final Symbol VZ = new Symbol("Vz", Kind.FORCE, "shear force out of the plane");
  private static final Symbol AY =
      new Symbol("Ay", Kind.AREA, "shear force along y over its shear stress at the point");
  private static final Symbol AZ =
      new Symbol("Az", Kind.AREA, "shear force along z over its shear stress at the point");
  private static final Symbol WT =
      new Symbol("WT", Kind.SECTION_MODULUS, "torque over its shear stress at the point");
  private static final Symbol SIGMA = new Symbol("σ", Kind.STRESS, "normal stress");
  private static final Symbol TAU_Y = new Symbol("τy", Kind.STRESS, "shear stress of Vy");
  private static final Symbol TAU_Z = new Symbol("τz", Kind.STRESS, "shear stress of Vz");
  private static final Symbol TAU_T = new Symbol("τT", Kind.STRESS, "shear stress of T");
  private static final Symbol TAU = new Symbol("τ", Kind.STRESS, "shear stress");
  private static final Symbol MISES = new Symbol("σv", Kind.STRESS, "equivalent stress");
  private static final Symbol CAPACITY = new Symbol("fd", Kind.STRESS, "design strength");
  private static final Symbol WELDED =
      new Symbol("fy,w", Kind.STRESS, "yield strength within 25 mm of a weld");

  private static final Symbol SIGMA_N =
      new Symbol("σb", Kind.STRESS, "normal stress of force and bending");
  private static final Symbol SIGMA_W = new Symbol("σω", Kind.STRESS, "stress of held warping");
  private static final Symbol PART =
      new Symbol("c", Kind.RATIO, "largest part of the torque that twists the walls");

  private static final Symbol A_NET =
      new Symbol("A,net", Kind.AREA, "net area; y, z, Iy, Iz and moments are of the net section");
  private static final Symbol HOLES = new Symbol("ΔA", Kind.AREA, "holes in the walls");

  static final Formula NET =
      new Formula(
          A_NET,
          "{A} − {ΔA}",
          List.of(Letters.A, HOLES),
          "EN 1993-1-1:2005, 6.2.2.2: stress on the net section about its own axes; stiffness and"
              + " stability of the gross one; the peak at a hole's edge is not counted",
          in -> in[0] - in[1]);

  static final Formula NORMAL =
      new Formula(
          SIGMA,
          "{N}/{A} + {My}·{z}/{Iy} − {Mz}·{y}/{Iz}",
          List.of(N, Letters.A, MY, Z, IY, MZ, Y, IZ),
          MECHANICS,
          in -> in[0] / in[1] + in[2] * in[3] / in[4] - in[5] * in[6] / in[7]);

  /** Where y and z are no principal axes, as in a section whose slender walls count in part. */
  private static final Formula UNSYMMETRIC =
      new Formula(
          SIGMA,
          "{N}/{A} + (({My}·{Iz} + {Mz}·{Iyz})·{z} − ({Mz}·{Iy} + {My}·{Iyz})·{y})"
              + "/({Iy}·{Iz} − {Iyz}²)",
          List.of(N, Letters.A, MY, Z, IY, MZ, Y, IZ, IYZ),
          "strength of materials: unsymmetric bending",
          in ->
              in[0] / in[1]
                  + ((in[2] * in[7] + in[5] * in[8]) * in[3]
                          - (in[5] * in[4] + in[2] * in[8]) * in[6])
                      / (in[4] * in[7] - in[8] * in[8]));

  /** Products of inertia below this part of the second moments are rounding [1]. */
  private static final double ROUNDING = 1e-6;

  /** The formula of normal stress that a section asks for. */
  static Formula normal(Properties section) {
    return isSymmetric(section) ? NORMAL : UNSYMMETRIC;
  }

  static boolean isSymmetric(Properties section) {
    return Math.abs(section.iyz()) < ROUNDING * (section.iy() + section.iz());
  }

  /** The same under its own letter, where warping adds to it. */
  static Formula withoutWarping(Formula plain) {
    return new Formula(SIGMA_N, plain.text(), plain.inputs(), plain.source(), plain.evaluation());
  }

  static final Formula SHEAR_Y = quotient(TAU_Y, VY, AY);
  static final Formula SHEAR_Z = quotient(TAU_Z, VZ, AZ);
  static final Formula TWIST = quotient(TAU_T, Letters.TORQUE, WT);

  /** Saint-Venant's part of a torque, where held warping carries the rest of it. */
  static final Formula PART_TWIST =
      new Formula(
          TAU_T,
          "{c}·{T}/{WT}",
          List.of(PART, Letters.TORQUE, WT),
          SHEAR,
          in -> in[0] * in[1] / in[2]);

  /** Warping's stress changes its sign along a bay, so both signs are met. */
  static final Formula WITH_WARPING =
      new Formula(
          SIGMA,
          "|{σb}| + {σω}",
          List.of(SIGMA_N, SIGMA_W),
          "strength of materials: both signs of warping occur in a bay",
          in -> Math.abs(in[0]) + in[1]);

  static final Formula SHEAR_SUM =
      new Formula(
          TAU,
          "{τy} + {τz} + {τT}",
          List.of(TAU_Y, TAU_Z, TAU_T),
          SHEAR,
          in -> in[0] + in[1] + in[2]);

  static final Formula VON_MISES =
      new Formula(
          MISES,
          "√({σ}² + 3·{τ}²)",
          List.of(SIGMA, TAU),
          "von Mises; EN 1993-1-1:2005, 6.2.1(5), eq. 6.1",
          in -> Math.sqrt(in[0] * in[0] + 3 * in[1] * in[1]));

  static final Formula DESIGN_STRENGTH = designStrength(Letters.FY);
  static final Formula WELDED_STRENGTH = designStrength(WELDED);

  private StressFormulas() {}

  private static Formula quotient(Symbol stress, Symbol force, Symbol property) {
    return new Formula(
        stress,
        "{%s}/{%s}".formatted(force.letter(), property.letter()),
        List.of(force, property),
        SHEAR,
        in -> in[0] / in[1]);
  }

  private static Formula designStrength(Symbol yield) {
    return new Formula(
        CAPACITY,
        "{%s}/{γ}".formatted(yield.letter()),
        List.of(yield, Letters.GAMMA),
        "definition of the design factor",
        in -> in[0] / in[1]);
  }
}
