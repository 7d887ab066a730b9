package rungwork.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.fault.Scale;

/**
 * What a weld can take at each point of its lines: EN 1993-1-8:2005, 4.5.3.3 (simplified) and
 * 4.5.3.2 (directional), AISC 360-16, J2.4 without its increase for direction, the base metal at
 * the fusion face, and a full-penetration weld as the plate that it continues. From memory, checked
 * against worked examples.
 */
final class WeldStrength {
  private static final String EN = "EN 1993-1-8:2005, ";
  private static final double SOFTEST_STEEL = 180e9;
  private static final double STRONGEST = 570e6;
  private static final double LEAST_THROAT = 0.003;
  private static final double LEAST_LENGTH = 0.030;

  private static final Symbol FX = line("fx", "share along x");
  private static final Symbol FY = line("fy", "share along y");
  private static final Symbol FZ = line("fz", "share out of the face");
  private static final Symbol FS = line("fs", "share along the weld");
  private static final Symbol FN = line("fn", "share across the weld, in the face");
  private static final Symbol CX = Letters.ratio("cx", "direction of the weld along x");
  private static final Symbol CY = Letters.ratio("cy", "direction of the weld along y");
  private static final Symbol S = Letters.length("s", "leg");
  private static final Symbol A = Letters.length("a", "throat");
  private static final Symbol BETA = Letters.ratio("βw", "correlation factor");
  private static final Symbol FEXX = Letters.stress("FEXX", "strength of the weld metal");
  private static final Symbol FYW = Letters.stress("fyw", "yield strength beside a weld");

  private static final Formula THROAT =
      new Formula(A, "{s}/√2", List.of(S), "geometry", in -> in[0] / Math.sqrt(2));
  private static final Formula FORCE =
      new Formula(
          line("f", "force on a length of weld"),
          "√({fx}² + {fy}² + {fz}²)",
          List.of(FX, FY, FZ),
          "elastic line method",
          in -> Math.sqrt(in[0] * in[0] + in[1] * in[1] + in[2] * in[2]));
  private static final Formula ALONG =
      new Formula(
          FS,
          "{fx}·{cx} + {fy}·{cy}",
          List.of(FX, CX, FY, CY),
          "statics",
          in -> in[0] * in[1] + in[2] * in[3]);
  private static final Formula ACROSS =
      new Formula(
          FN,
          "{fy}·{cx} − {fx}·{cy}",
          List.of(FY, CX, FX, CY),
          "statics",
          in -> in[0] * in[1] - in[2] * in[3]);
  private static final Formula SIMPLIFIED =
      new Formula(
          line("Fw,Rd", "resistance of a length of weld"),
          "{fu}·{a}/(√3·{βw}·{γM2}·{γ})",
          List.of(Letters.FU, A, BETA, Letters.GAMMA_M2, Letters.GAMMA),
          EN + "4.5.3.3",
          in -> in[0] * in[1] / (Math.sqrt(3) * in[2] * in[3] * in[4]));
  private static final Formula DIRECTIONAL =
      new Formula(
          Letters.stress("σw", "equivalent stress on the throat"),
          "√(2·({fn}² + {fz}² + |{fn}·{fz}|) + 3·{fs}²)/{a}",
          List.of(FN, FZ, FS, A),
          EN + "4.5.3.2, σ⊥² + 3·(τ⊥² + τ∥²) on a throat at 45°, on the worse side of the plate",
          in ->
              Math.sqrt(
                      2 * (in[0] * in[0] + in[1] * in[1] + Math.abs(in[0] * in[1]))
                          + 3 * in[2] * in[2])
                  / in[3]);
  private static final Formula DIRECTIONAL_LIMIT =
      new Formula(
          Letters.stress("σw,Rd", "resistance of the throat"),
          "{fu}/({βw}·{γM2}·{γ})",
          List.of(Letters.FU, BETA, Letters.GAMMA_M2, Letters.GAMMA),
          EN + "4.5.3.2(6), eq. 4.1",
          in -> in[0] / (in[1] * in[2] * in[3]));
  private static final Formula NORMAL =
      new Formula(
          Letters.stress("σ⊥", "normal stress on the throat"),
          "(|{fn}| + |{fz}|)/(√2·{a})",
          List.of(FN, FZ, A),
          EN + "4.5.3.2, on the worse side of the plate",
          in -> (Math.abs(in[0]) + Math.abs(in[1])) / (Math.sqrt(2) * in[2]));
  private static final Formula NORMAL_LIMIT =
      new Formula(
          Letters.stress("σ⊥,Rd", "resistance to normal stress"),
          "0.9·{fu}/({γM2}·{γ})",
          List.of(Letters.FU, Letters.GAMMA_M2, Letters.GAMMA),
          EN + "4.5.3.2(6), eq. 4.1",
          in -> 0.9 * in[0] / (in[1] * in[2]));
  private static final Formula AMERICAN =
      new Formula(
          line("φrn", "strength of a length of weld"),
          "{φ}·0.6·{FEXX}·{a}/{γ}",
          List.of(Letters.PHI, FEXX, A, Letters.GAMMA),
          "AISC 360-16, J2.4 and table J2.5, without its increase for direction",
          in -> in[0] * 0.6 * in[1] * in[2] / in[3]);
  private static final Formula FUSION =
      new Formula(
          line("fyd", "yield of the base metal on a length"),
          "{fyw}·{s}/(√3·{γ})",
          List.of(FYW, S, Letters.GAMMA),
          "strength of materials: shear yield of the fusion face, strength beside a weld",
          in -> in[0] * in[1] / (Math.sqrt(3) * in[2]));
  private static final Formula THROUGH =
      new Formula(
          Letters.stress("σv", "equivalent stress in the plate"),
          "√({fz}² + 3·({fn}² + {fs}²))/{t}",
          List.of(FZ, FN, FS, Letters.T),
          "von Mises",
          in -> Math.sqrt(in[0] * in[0] + 3 * (in[1] * in[1] + in[2] * in[2])) / in[3]);
  private static final Formula PLATE =
      new Formula(
          Letters.stress("fyd", "yield strength divided by the factor"),
          "{fyw}/{γ}",
          List.of(FYW, Letters.GAMMA),
          EN
              + "4.7.1: a full-penetration weld is as strong as the weaker part; strength beside a"
              + " weld",
          in -> in[0] / in[1]);

  private static final String QUALITY =
      "Takes a sound weld for granted. An open run counts less a throat at start and at stop.";

  private final WeldGroup weld;
  private final FaceLoad load;
  private final Pattern pattern;

  WeldStrength(WeldGroup weld, FaceLoad load) {
    this.weld = weld;
    this.load = load;
    pattern = weld.pattern();
  }

  List<Check> checks() {
    Optional<String> open = pattern.cannotTake(load);
    if (open.isPresent()) {
      return List.of(
          Question.of("weld strength", weld.name(), load)
              .open(load.factors().ultimate(), open.get(), "elastic line method"));
    }
    return weld.seam().kind() == WeldGroup.Kind.FILLET ? fillet() : List.of(fullPenetration());
  }

  double largestForce() {
    return worst(place -> place.force().result()).force().result();
  }

  private List<Check> fillet() {
    List<Check> checks = new ArrayList<>(List.of(fusion()));
    if (steel()) {
      checks.add(simplified());
      checks.add(directional());
      checks.add(normal());
      checks.add(american());
    } else {
      checks.add(
          Question.of("weld throat", weld.name(), load)
              .open(
                  load.factors().ultimate(),
                  "EN 1993-1-8 and AISC 360 cover welds of steel; those of "
                      + weld.parent().material().name()
                      + " need EN 1999-1-1 and the filler's strength",
                  EN + "4.1"));
    }
    return checks;
  }

  private Check simplified() {
    Place worst = worst(place -> place.force().result());
    Step resistance =
        SIMPLIFIED.with(fu(), throat(), correlation(), load.factors().gammaM2(), gamma());
    return Finding.compare(worst.force(), resistance)
        .after(THROAT.with(weld.seam().size()))
        .after(worst.shares())
        .outside(outside())
        .answers(asks("weld throat, simplified", worst), load.factors().ultimate());
  }

  private Check directional() {
    Place worst = worst(this::equivalent);
    Step limit = DIRECTIONAL_LIMIT.with(fu(), correlation(), load.factors().gammaM2(), gamma());
    return Finding.compare(equivalentStep(worst), limit)
        .after(worst.along(), worst.across())
        .after(THROAT.with(weld.seam().size()))
        .after(worst.shares())
        .outside(outside())
        .answers(asks("weld throat, directional", worst), load.factors().ultimate());
  }

  private Check normal() {
    Place worst = worst(place -> normalStep(place).result());
    Step limit = NORMAL_LIMIT.with(fu(), load.factors().gammaM2(), gamma());
    return Finding.compare(normalStep(worst), limit)
        .after(worst.across())
        .after(THROAT.with(weld.seam().size()))
        .after(worst.shares())
        .outside(outside())
        .answers(asks("weld throat, directional, normal stress", worst), load.factors().ultimate());
  }

  private Check american() {
    Place worst = worst(place -> place.force().result());
    Step strength = AMERICAN.with(load.factors().phi(), weld.seam().electrode(), throat(), gamma());
    return Finding.compare(worst.force(), strength)
        .after(THROAT.with(weld.seam().size()))
        .after(worst.shares())
        .answers(asks("weld throat, second opinion", worst), load.factors().american());
  }

  private Check fusion() {
    Place worst = worst(place -> place.force().result());
    Step limit = FUSION.with(weldedYield(), weld.seam().size(), gamma());
    return Finding.compare(worst.force(), limit)
        .after(worst.shares())
        .answers(asks("base metal beside the weld", worst), load.factors().yield());
  }

  private Check fullPenetration() {
    Place worst = worst(place -> throughStep(place).result());
    Basis basis = load.factors().yield();
    return Finding.compare(throughStep(worst), PLATE.with(weldedYield(), gamma()))
        .after(worst.along(), worst.across())
        .after(worst.shares())
        .answers(asks("full-penetration weld", worst), basis);
  }

  private double equivalent(Place place) {
    return equivalentStep(place).result();
  }

  private Step equivalentStep(Place place) {
    return DIRECTIONAL.with(place.across().result(), place.out(), place.along().result(), throat());
  }

  private Step normalStep(Place place) {
    return NORMAL.with(place.across().result(), place.out(), throat());
  }

  private Step throughStep(Place place) {
    return THROUGH.with(
        place.out(), place.across().result(), place.along().result(), weld.seam().size());
  }

  private Question asks(String what, Place place) {
    return Question.of(what, weld.name(), load).at(place.name()).with(QUALITY);
  }

  private Place worst(ToDoubleFunction<Place> measure) {
    return places().stream().max(Comparator.comparingDouble(measure)).orElseThrow();
  }

  /** Both ends of every line: every measure is convex along a line, so its worst is at an end. */
  private List<Place> places() {
    List<Place> places = new ArrayList<>();
    for (int run = 0; run < weld.runs().size(); run++) {
      List<Pattern.Line> lines = weld.runs().get(run).effective(weld.seam().deduction());
      for (int i = 0; i < lines.size(); i++) {
        String name = "run " + (run + 1) + ", line " + (i + 1);
        places.add(place(name + ", start", lines.get(i), lines.get(i).from()));
        places.add(place(name + ", end", lines.get(i), lines.get(i).to()));
      }
    }
    return places;
  }

  private Place place(String name, Pattern.Line line, Spot spot) {
    List<Step> shares = pattern.share(spot, load);
    double fx = shares.get(0).result();
    double fy = shares.get(1).result();
    double cx = (line.to().x() - line.from().x()) / line.length();
    double cy = (line.to().y() - line.from().y()) / line.length();
    Step along = ALONG.with(fx, cx, fy, cy);
    Step across = ACROSS.with(fy, cx, fx, cy);
    return new Place(name, shares, FORCE.with(fx, fy, shares.get(2).result()), along, across);
  }

  private List<String> outside() {
    List<String> reasons = new ArrayList<>();
    double throat = throat();
    if (throat < LEAST_THROAT * (1 - Rounding.TOLERANCE)) {
      reasons.add(
          "outside EN 1993-1-8: throat "
              + Scale.MM.show(throat)
              + " is under "
              + Scale.MM.show(LEAST_THROAT));
    }
    double least = Math.max(LEAST_LENGTH, 6 * throat);
    weld.runs().stream()
        .mapToDouble(this::counting)
        .filter(length -> length < least * (1 - Rounding.TOLERANCE))
        .min()
        .ifPresent(length -> reasons.add(tooShort(length, least)));
    if (fu() > STRONGEST) {
      reasons.add("outside EN 1993-1-8: fu " + Scale.MPA.show(fu()) + " is above that of S460");
    }
    return reasons;
  }

  private double counting(WeldGroup.Run run) {
    return run.effective(weld.seam().deduction()).stream().mapToDouble(Pattern.Line::length).sum();
  }

  private static String tooShort(double length, double least) {
    return "outside EN 1993-1-8: a run of "
        + Scale.MM.show(length)
        + " is shorter than "
        + Scale.MM.show(least);
  }

  private boolean steel() {
    return weld.parent().material().elasticity().youngsModulus() >= SOFTEST_STEEL;
  }

  /** βw of EN 1993-1-8, table 4.1, found by the ultimate strength of its grades. */
  private double correlation() {
    double ultimate = weld.parent().material().strength().ultimate();
    if (ultimate <= 360e6) {
      return 0.8;
    }
    if (ultimate <= 430e6) {
      return 0.85;
    }
    return ultimate <= 510e6 ? 0.9 : 1.0;
  }

  private double fu() {
    return Welded.ultimate(weld.parent().material());
  }

  private double weldedYield() {
    return weld.parent().material().strength().weldedYield();
  }

  private double throat() {
    return weld.seam().throat();
  }

  private double gamma() {
    return load.factors().design().value();
  }

  private static Symbol line(String letter, String meaning) {
    return Letters.lineForce(letter, meaning);
  }

  /** One end of a line: its name, what it takes, and that along and across the weld. */
  private record Place(String name, List<Step> shares, Step force, Step along, Step across) {
    double out() {
      return shares.get(2).result();
    }
  }
}
