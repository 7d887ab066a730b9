package rungwork.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.Step;
import rungwork.material.RatedMaterial;

/**
 * What a weld takes and can take at each point of its lines: EN 1993-1-8, its two methods; AISC 360
 * as the second opinion, without its increase for direction; the base metal at the fusion face; a
 * full-penetration weld as the plate that it continues.
 */
final class WeldStrength {
  private static final String QUALITY =
      "Takes a sound weld for granted. An open run counts less a throat at start and at stop.";

  private final WeldGroup weld;
  private final FaceLoad load;

  WeldStrength(WeldGroup weld, FaceLoad load) {
    this.weld = weld;
    this.load = load;
  }

  List<Check> checks() {
    Optional<String> open = weld.pattern().cannotTake(load);
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
    if (SeamRules.steel(material())) {
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
                      + material().name()
                      + " need EN 1999-1-1 and the filler's strength",
                  WeldFormulas.EN + "4.1"));
    }
    return checks;
  }

  private Check simplified() {
    WeldPlace worst = worst(place -> place.force().result());
    Step resistance =
        WeldFormulas.SIMPLIFIED.with(
            fu(), throat(), SeamRules.correlation(material()), load.factors().gammaM2(), gamma());
    return Finding.compare(worst.force(), resistance)
        .after(WeldFormulas.THROAT.with(weld.seam().size()))
        .after(worst.shares())
        .outside(SeamRules.outside(weld))
        .answers(asks("weld throat, simplified", worst), load.factors().ultimate());
  }

  private Check directional() {
    WeldPlace worst = worst(this::equivalent);
    Step limit =
        WeldFormulas.DIRECTIONAL_LIMIT.with(
            fu(), SeamRules.correlation(material()), load.factors().gammaM2(), gamma());
    return Finding.compare(equivalentStep(worst), limit)
        .after(worst.along(), worst.across())
        .after(WeldFormulas.THROAT.with(weld.seam().size()))
        .after(worst.shares())
        .outside(SeamRules.outside(weld))
        .answers(asks("weld throat, directional", worst), load.factors().ultimate());
  }

  private Check normal() {
    WeldPlace worst = worst(place -> normalStep(place).result());
    Step limit = WeldFormulas.NORMAL_LIMIT.with(fu(), load.factors().gammaM2(), gamma());
    return Finding.compare(normalStep(worst), limit)
        .after(worst.across())
        .after(WeldFormulas.THROAT.with(weld.seam().size()))
        .after(worst.shares())
        .outside(SeamRules.outside(weld))
        .answers(asks("weld throat, directional, normal stress", worst), load.factors().ultimate());
  }

  private Check american() {
    WeldPlace worst = worst(place -> place.force().result());
    Step strength =
        WeldFormulas.AMERICAN.with(
            load.factors().phi(), weld.seam().electrode(), throat(), gamma());
    return Finding.compare(worst.force(), strength)
        .after(WeldFormulas.THROAT.with(weld.seam().size()))
        .after(worst.shares())
        .answers(asks("weld throat, second opinion", worst), load.factors().american());
  }

  private Check fusion() {
    WeldPlace worst = worst(place -> place.force().result());
    Step limit = WeldFormulas.FUSION.with(weldedYield(), weld.seam().size(), gamma());
    return Finding.compare(worst.force(), limit)
        .after(worst.shares())
        .answers(asks("base metal beside the weld", worst), load.factors().yield());
  }

  private Check fullPenetration() {
    WeldPlace worst = worst(place -> throughStep(place).result());
    Basis basis = load.factors().yield();
    return Finding.compare(throughStep(worst), WeldFormulas.PLATE.with(weldedYield(), gamma()))
        .after(worst.along(), worst.across())
        .after(worst.shares())
        .answers(asks("full-penetration weld", worst), basis);
  }

  private double equivalent(WeldPlace place) {
    return equivalentStep(place).result();
  }

  private Step equivalentStep(WeldPlace place) {
    return WeldFormulas.DIRECTIONAL.with(
        place.across().result(), place.out(), place.along().result(), throat());
  }

  private Step normalStep(WeldPlace place) {
    return WeldFormulas.NORMAL.with(place.across().result(), place.out(), throat());
  }

  private Step throughStep(WeldPlace place) {
    return WeldFormulas.THROUGH.with(
        place.out(), place.across().result(), place.along().result(), weld.seam().size());
  }

  private Question asks(String what, WeldPlace place) {
    return Question.of(what, weld.name(), load).at(place.name()).with(QUALITY);
  }

  private WeldPlace worst(ToDoubleFunction<WeldPlace> measure) {
    return WeldPlace.of(weld, load).stream().max(Comparator.comparingDouble(measure)).orElseThrow();
  }

  private RatedMaterial material() {
    return weld.parent().material();
  }

  private double fu() {
    return Welded.ultimate(material());
  }

  private double weldedYield() {
    return material().strength().weldedYield();
  }

  private double throat() {
    return weld.seam().throat();
  }

  private double gamma() {
    return load.factors().design().value();
  }
}
