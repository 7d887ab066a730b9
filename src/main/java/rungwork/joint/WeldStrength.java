package rungwork.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.Step;
import rungwork.check.Verdict.Amount;
import rungwork.check.Verdict.Reason;
import rungwork.material.RatedMaterial;
import rungwork.quantity.Kind;

/**
 * What a weld takes and can take at each point of its lines: EN 1993-1-8, its two methods; AISC 360
 * as the second opinion, without its increase for direction; the base metal at the fusion face; a
 * full-penetration weld as the plate that it continues.
 */
final class WeldStrength {
  private static final double SOFTEST_STEEL = 180e9;
  private static final double STRONGEST = 570e6;
  private static final double LEAST_THROAT = 0.003;
  private static final double LEAST_LENGTH = 0.030;

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
                  WeldFormulas.EN + "4.1"));
    }
    return checks;
  }

  private Check simplified() {
    Place worst = worst(place -> place.force().result());
    Step resistance =
        WeldFormulas.SIMPLIFIED.with(
            fu(), throat(), correlation(), load.factors().gammaM2(), gamma());
    return Finding.compare(worst.force(), resistance)
        .after(WeldFormulas.THROAT.with(weld.seam().size()))
        .after(worst.shares())
        .outside(outside())
        .answers(asks("weld throat, simplified", worst), load.factors().ultimate());
  }

  private Check directional() {
    Place worst = worst(this::equivalent);
    Step limit =
        WeldFormulas.DIRECTIONAL_LIMIT.with(fu(), correlation(), load.factors().gammaM2(), gamma());
    return Finding.compare(equivalentStep(worst), limit)
        .after(worst.along(), worst.across())
        .after(WeldFormulas.THROAT.with(weld.seam().size()))
        .after(worst.shares())
        .outside(outside())
        .answers(asks("weld throat, directional", worst), load.factors().ultimate());
  }

  private Check normal() {
    Place worst = worst(place -> normalStep(place).result());
    Step limit = WeldFormulas.NORMAL_LIMIT.with(fu(), load.factors().gammaM2(), gamma());
    return Finding.compare(normalStep(worst), limit)
        .after(worst.across())
        .after(WeldFormulas.THROAT.with(weld.seam().size()))
        .after(worst.shares())
        .outside(outside())
        .answers(asks("weld throat, directional, normal stress", worst), load.factors().ultimate());
  }

  private Check american() {
    Place worst = worst(place -> place.force().result());
    Step strength =
        WeldFormulas.AMERICAN.with(
            load.factors().phi(), weld.seam().electrode(), throat(), gamma());
    return Finding.compare(worst.force(), strength)
        .after(WeldFormulas.THROAT.with(weld.seam().size()))
        .after(worst.shares())
        .answers(asks("weld throat, second opinion", worst), load.factors().american());
  }

  private Check fusion() {
    Place worst = worst(place -> place.force().result());
    Step limit = WeldFormulas.FUSION.with(weldedYield(), weld.seam().size(), gamma());
    return Finding.compare(worst.force(), limit)
        .after(worst.shares())
        .answers(asks("base metal beside the weld", worst), load.factors().yield());
  }

  private Check fullPenetration() {
    Place worst = worst(place -> throughStep(place).result());
    Basis basis = load.factors().yield();
    return Finding.compare(throughStep(worst), WeldFormulas.PLATE.with(weldedYield(), gamma()))
        .after(worst.along(), worst.across())
        .after(worst.shares())
        .answers(asks("full-penetration weld", worst), basis);
  }

  private double equivalent(Place place) {
    return equivalentStep(place).result();
  }

  private Step equivalentStep(Place place) {
    return WeldFormulas.DIRECTIONAL.with(
        place.across().result(), place.out(), place.along().result(), throat());
  }

  private Step normalStep(Place place) {
    return WeldFormulas.NORMAL.with(place.across().result(), place.out(), throat());
  }

  private Step throughStep(Place place) {
    return WeldFormulas.THROUGH.with(
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
    Step along = WeldFormulas.ALONG.with(fx, cx, fy, cy);
    Step across = WeldFormulas.ACROSS.with(fy, cx, fx, cy);
    return new Place(
        name, shares, WeldFormulas.FORCE.with(fx, fy, shares.get(2).result()), along, across);
  }

  private List<Reason> outside() {
    List<Reason> reasons = outside(weld.seam(), weld.parent().material());
    double least = Math.max(LEAST_LENGTH, 6 * throat());
    weld.runs().stream()
        .mapToDouble(this::counting)
        .filter(length -> length < least * (1 - Rounding.TOLERANCE))
        .min()
        .ifPresent(length -> reasons.add(tooShort(length, least)));
    return reasons;
  }

  /** What of a seam on a material lies outside EN 1993-1-8, whatever its length. */
  static List<Reason> outside(WeldGroup.Seam seam, RatedMaterial material) {
    List<Reason> reasons = new ArrayList<>();
    double throat = seam.throat();
    if (throat < LEAST_THROAT * (1 - Rounding.TOLERANCE)) {
      reasons.add(
          Reason.of(
              "outside EN 1993-1-8: throat {} is under {}",
              Amount.length(throat),
              Amount.length(LEAST_THROAT)));
    }
    double ultimate = Welded.ultimate(material);
    if (ultimate > STRONGEST) {
      reasons.add(
          Reason.of(
              "outside EN 1993-1-8: fu {} is above that of S460",
              new Amount(Kind.STRESS, ultimate)));
    }
    return reasons;
  }

  private double counting(WeldGroup.Run run) {
    return run.effective(weld.seam().deduction()).stream().mapToDouble(Pattern.Line::length).sum();
  }

  private static Reason tooShort(double length, double least) {
    return Reason.of(
        "outside EN 1993-1-8: a run of {} is shorter than {}",
        Amount.length(length),
        Amount.length(least));
  }

  private boolean steel() {
    return steel(weld.parent().material());
  }

  static boolean steel(RatedMaterial material) {
    return material.elasticity().youngsModulus() >= SOFTEST_STEEL;
  }

  private double correlation() {
    return correlation(weld.parent().material());
  }

  /** βw of EN 1993-1-8, table 4.1, found by the ultimate strength of its grades. */
  static double correlation(RatedMaterial material) {
    double ultimate = material.strength().ultimate();
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

  /** One end of a line: its name, what it takes, and that along and across the weld. */
  private record Place(String name, List<Step> shares, Step force, Step along, Step across) {
    double out() {
      return shares.get(2).result();
    }
  }
}
