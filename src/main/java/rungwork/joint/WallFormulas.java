package rungwork.joint;

import java.util.List;
import rungwork.check.Formula;
import rungwork.check.Symbol;
import rungwork.quantity.Kind;

/**
 * The formulas for a tube's wall: EN 1993-1-8:2005, tables 7.11, 7.13 and 7.14 (from memory; the
 * moment along the tube checked against a worked example), AISC 360-16, table K2.2 as the second
 * opinion. Letters: b0 and t0 of the tube's face, h1 and b1 of the foot along and across the tube.
 */
final class WallFormulas {
  static final String TABLE = "EN 1993-1-8:2005, table 7.13";
  private static final String MOMENT_TABLE = "EN 1993-1-8:2005, table 7.14";
  private static final String PATCH_TABLE = "EN 1993-1-8:2005, table 7.11";

  private static final Symbol N = Letters.force("N", "pull or push on the foot");
  private static final Symbol MX = Letters.moment("Mx", "moment that rocks the foot sideways");
  private static final Symbol MY = Letters.moment("My", "moment in the plate's plane");
  private static final Symbol FY0 = Letters.stress("fy0", "yield strength of the wall");
  private static final Symbol S0 = Letters.stress("σ0", "compressive stress in the tube");
  private static final Symbol B0 = Letters.length("b0", "width of the face");
  private static final Symbol T0 = Letters.length("t0", "wall");
  private static final Symbol H1 = Letters.length("h1", "foot along the tube");
  private static final Symbol B1 = Letters.length("b1", "foot across the tube");
  private static final Symbol L = Letters.length("l", "length of the foot");
  private static final Symbol LOAD = Letters.ratio("n", "share of yield that the tube carries");
  private static final Symbol K = Letters.ratio("k", "reduction for the tube's own stress");

  static final Formula PULL = size(N, Letters.FZ);
  static final Formula TIP = size(Letters.moment("M", "moment"), MY);
  static final Formula ROCK = size(Letters.moment("M", "moment"), MX);
  static final Formula ALONG_FACE =
      new Formula(
          Letters.force("V", "force along the face"),
          "√({Fx}² + {Fy}²)",
          List.of(Letters.FX, Letters.FY_LATERAL),
          "statics",
          in -> Math.hypot(in[0], in[1]));
  static final Formula PLATE_EDGE =
      new Formula(
          Letters.lineForce("f", "largest force on a length of the foot"),
          "|{Fz}|/{l} + 6·|{My}|/{l}²",
          List.of(Letters.FZ, L, MY),
          "strength of materials",
          in -> Math.abs(in[0]) / in[1] + 6 * Math.abs(in[2]) / (in[1] * in[1]));
  static final Formula PATCH_EDGE =
      new Formula(
          Letters.lineForce("f", "largest force on a length of the patch's edge"),
          "|{Fz}|/(2·({l} + {b1})) + |{My}|/({l}·{b1} + {l}²/3) + |{Mx}|/({l}·{b1} + {b1}²/3)",
          List.of(Letters.FZ, L, B1, MY, MX),
          "elastic line method, Budynas & Nisbett, Shigley's Mechanical Engineering Design, table"
              + " 9-2, box",
          in -> {
            double cross = in[1] * in[2];
            double bending =
                Math.abs(in[3]) / (cross + in[1] * in[1] / 3)
                    + Math.abs(in[4]) / (cross + in[2] * in[2] / 3);
            return Math.abs(in[0]) / (2 * (in[1] + in[2])) + bending;
          });

  static final Formula SHARE =
      new Formula(LOAD, "{σ0}/{fy0}", List.of(S0, FY0), TABLE, in -> in[0] / in[1]);
  static final Formula KM =
      new Formula(
          K, "min(1, 1.3·(1 − {n}))", List.of(LOAD), TABLE, in -> Math.min(1, 1.3 * (1 - in[0])));
  static final Formula KN =
      new Formula(
          K,
          "max(0.001, min(1, 1.3 − 0.4·{n}·{b0}/{b1}))",
          List.of(LOAD, B0, B1),
          PATCH_TABLE + "; where nothing is left, a thousandth stands for it",
          in -> Math.max(1e-3, Math.min(1, 1.3 - 0.4 * in[0] * in[1] / in[2])));
  static final Formula PUNCHING =
      new Formula(
          Letters.lineForce("fRd", "punching resistance of a length, on both sides"),
          "2·{t0}·{fy0}/(√3·{γ})",
          List.of(T0, FY0, Letters.GAMMA),
          "EN 1993-1-8:2005, table 7.3, punching shear (for round tubes), used for a flat face:"
              + " common practice",
          in -> 2 * in[0] * in[1] / (Math.sqrt(3) * in[2]));
  static final Formula PATCH_PUNCHING =
      new Formula(
          Letters.lineForce("fRd", "punching resistance of a length"),
          "{t0}·{fy0}/(√3·{γ})",
          List.of(T0, FY0, Letters.GAMMA),
          "strength of materials: shear yield through the wall",
          in -> in[0] * in[1] / (Math.sqrt(3) * in[2]));
  static final Formula SHEAR =
      new Formula(
          Letters.force("VRd", "shear resistance along the foot"),
          "2·{l}·{t0}·{fy0}/(√3·{γ})",
          List.of(L, T0, FY0, Letters.GAMMA),
          "strength of materials, on two planes; common practice, no source",
          in -> 2 * in[0] * in[1] * in[2] / (Math.sqrt(3) * in[3]));

  static final Formula LONGITUDINAL = face("", "(2·{h1}/{b0} + 4·√(1 − {b1}/{b0}))", 1);
  static final Formula THROUGH = face("2·", "(2·{h1}/{b0} + 4·√(1 − {b1}/{b0}))", 2);
  static final Formula TRANSVERSE =
      new Formula(
          Letters.force("N1,Rd", "pull that bends the face"),
          "{k}·{fy0}·{t0}²·(2 + 2.8·{b1}/{b0})/(√(1 − 0.9·{b1}/{b0})·{γ})",
          List.of(K, FY0, T0, B1, B0, Letters.GAMMA),
          TABLE + ", transverse plate, chord face failure",
          in ->
              in[0]
                  * in[1]
                  * in[2]
                  * in[2]
                  * (2 + 2.8 * in[3] / in[4])
                  / (Math.sqrt(1 - 0.9 * in[3] / in[4]) * in[5]));
  static final Formula PATCH =
      new Formula(
          Letters.force("N1,Rd", "pull that bends the face"),
          "{k}·{fy0}·{t0}²/(1 − {b1}/{b0})·(2·{h1}/{b0} + 4·√(1 − {b1}/{b0}))/{γ}",
          List.of(K, FY0, T0, H1, B1, B0, Letters.GAMMA),
          PATCH_TABLE + ", T joint, chord face failure",
          in -> yieldLine(in) / (1 - in[4] / in[5]) / in[6]);
  static final Formula AMERICAN =
      new Formula(
          Letters.force("Rn", "pull that bends the face"),
          "{m}·{fy0}·{t0}²/(1 − {b1}/{b0})·(2·{h1}/{b0} + 4·√(1 − {b1}/{b0})·√(1 − {n}²))/{γ}",
          List.of(Letters.number("m", "faces that bend"), FY0, T0, H1, B1, B0, LOAD, Letters.GAMMA),
          "AISC 360-16, table K2.2, longitudinal plate, plastification; φ = 1.00",
          in -> {
            double beta = 1 - in[4] / in[5];
            double root = 4 * Math.sqrt(beta) * Math.sqrt(1 - in[6] * in[6]);
            return in[0] * in[1] * in[2] * in[2] / beta * (2 * in[3] / in[5] + root) / in[7];
          });
  static final Formula TIPPING =
      new Formula(
          Letters.moment("Mip,Rd", "moment along the tube that bends the face"),
          "{k}·{fy0}·{t0}²·{h1}·({b0}/(2·{h1}) + 2/√(1 − {b1}/{b0}) + {h1}/({b0} − {b1}))/{γ}",
          List.of(K, FY0, T0, H1, B0, B1, Letters.GAMMA),
          MOMENT_TABLE + ", in-plane moment, chord face failure",
          in -> {
            double spread =
                in[4] / (2 * in[3]) + 2 / Math.sqrt(1 - in[5] / in[4]) + in[3] / (in[4] - in[5]);
            return in[0] * in[1] * in[2] * in[2] * in[3] * spread / in[6];
          });
  static final Formula ROCKING =
      new Formula(
          Letters.moment("Mop,Rd", "moment across the tube that bends the face"),
          "{k}·{fy0}·{t0}²·({h1}·({b0} + {b1})/(2·({b0} − {b1})) + √(2·{b0}·{b1}·({b0} + {b1})/({b0}"
              + " − {b1})))/{γ}",
          List.of(K, FY0, T0, H1, B0, B1, Letters.GAMMA),
          MOMENT_TABLE + ", out-of-plane moment, chord face failure",
          in -> {
            double ratio = (in[4] + in[5]) / (in[4] - in[5]);
            double spread = in[3] * ratio / 2 + Math.sqrt(2 * in[4] * in[5] * ratio);
            return in[0] * in[1] * in[2] * in[2] * spread / in[6];
          });
  static final Formula HALF_LENGTH =
      new Formula(
          Letters.moment("MRd", "moment in the plate's plane that bends the face"),
          "0.5·{l}·{N1,Rd}",
          List.of(L, Letters.force("N1,Rd", "pull that bends the face")),
          "half the foot's length times the pull, as EN 1993-1-8, table 7.3 has it for round tubes",
          in -> 0.5 * in[0] * in[1]);
  static final Formula UNEVEN =
      new Formula(
          Letters.force("N1,Rd", "pull that the uneven support allows"),
          "10·{fy0}·{t0}²·{b1}/({b0}·{γ})",
          List.of(FY0, T0, B1, B0, Letters.GAMMA),
          "uneven support of a transverse plate, " + TABLE + ", effective width",
          in -> 10 * in[0] * in[1] * in[1] * in[2] / (in[3] * in[4]));
  static final Formula SIDE_WALL =
      new Formula(
          Letters.force("N1,Rd", "push that crushes the side walls"),
          "{k}·{fy0}·{t0}·(2·{h1} + 10·{t0})/{γ}",
          List.of(K, FY0, T0, H1, Letters.GAMMA),
          "crushing of the side walls, " + TABLE,
          in -> in[0] * in[1] * in[2] * (2 * in[3] + 10 * in[2]) / in[4]);

  static final Formula WALL_SLENDERNESS =
      new Formula(
          Buckling.SLENDERNESS,
          "3.46·({h0}/{t0} − 2)/(π·√({E}/{fy0}))",
          List.of(
              Letters.length("h0", "depth of the tube"),
              T0,
              new Symbol("E", Kind.MODULUS, "Young's modulus"),
              FY0),
          PATCH_TABLE + ", side wall as a strut",
          in -> 3.46 * (in[0] / in[1] - 2) / (Math.PI * Math.sqrt(in[2] / in[3])));
  static final Formula WIDE_PATCH =
      new Formula(
          Letters.force("N1,Rd", "push or pull that the side walls take"),
          "{k}·{χ}·{fy0}·{t0}·(2·{h1} + 10·{t0})/{γ}",
          List.of(K, Buckling.REDUCTION, FY0, T0, H1, Letters.GAMMA),
          PATCH_TABLE + ", T joint as wide as the tube, side walls; χ also for a pull",
          in -> in[0] * in[1] * in[2] * in[3] * (2 * in[4] + 10 * in[3]) / in[5]);
  static final Formula SUM =
      new Formula(
          Letters.UTILISATION,
          "{u1} + {u2} + {u3}",
          List.of(
              Letters.ratio("u1", "share of the first"),
              Letters.ratio("u2", "share of the second"),
              Letters.ratio("u3", "share of the third")),
          "EN 1993-1-8:2005, 7.5.2.1, linear interaction on a rectangular tube",
          in -> in[0] + in[1] + in[2]);

  private WallFormulas() {}

  private static Formula size(Symbol result, Symbol of) {
    return new Formula(
        result, "|{" + of.letter() + "}|", List.of(of), "statics", in -> Math.abs(in[0]));
  }

  private static Formula face(String text, String spread, double faces) {
    return new Formula(
        Letters.force("N1,Rd", "pull that bends the face"),
        text + "{k}·{fy0}·{t0}²·" + spread + "/{γ}",
        List.of(K, FY0, T0, H1, B1, B0, Letters.GAMMA),
        TABLE
            + ", longitudinal plate, chord face failure"
            + (faces > 1 ? "; doubled for a plate through both faces as in AISC 360" : ""),
        in -> faces * yieldLine(in) / in[6]);
  }

  private static double yieldLine(double[] in) {
    double spread = 2 * in[3] / in[5] + 4 * Math.sqrt(1 - in[4] / in[5]);
    return in[0] * in[1] * in[2] * in[2] * spread;
  }
}
