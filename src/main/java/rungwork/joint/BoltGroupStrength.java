package rungwork.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.check.Verdict.Amount;
import rungwork.check.Verdict.Reason;

/** What a bolt group is asked: each bolt's share, and the worst bolt's strength. */
final class BoltGroupStrength {
  private static final Symbol FX = Letters.force("fx", "share along x");
  private static final Symbol FY = Letters.force("fy", "share along y");
  private static final Symbol FZ = Letters.force("fz", "share along z");
  private static final Formula SHEAR =
      new Formula(
          Letters.force("Fv", "shear on the bolt"),
          "√({fx}² + {fy}²)",
          List.of(FX, FY),
          "statics",
          in -> Math.hypot(in[0], in[1]));
  private static final Formula TENSION =
      new Formula(
          Letters.force("Ft", "tension in the bolt"),
          "max({fz}, 0)",
          List.of(FZ),
          "statics",
          in -> Math.max(in[0], 0));
  private static final String PRYING =
      "Prying of a thin plate adds to the tension; it is asked apart. Preload is not counted.";

  private final BoltGroup group;
  private final FaceLoad load;
  private final BoltStrength strength;
  private final Pattern pattern;

  BoltGroupStrength(BoltGroup group, FaceLoad load) {
    this.group = group;
    this.load = load;
    strength = new BoltStrength(group.bolt(), group.threads(), load.factors());
    pattern = Pattern.ofBolts(group.spots());
  }

  List<Double> shears() {
    return shares().stream().map(share -> share.shear().result()).toList();
  }

  List<Double> tensions() {
    return shares().stream().map(share -> share.tension().result()).toList();
  }

  List<Check> checks() {
    List<Check> checks = new ArrayList<>(proportions());
    Optional<String> open = pattern.cannotTake(load);
    open.ifPresent(reason -> checks.add(notShared(reason)));
    checks.addAll(shear());
    checks.add(bearing());
    if (open.isEmpty()) {
      checks.addAll(tension());
    }
    return checks;
  }

  /** The most pulled bolt: its lines, then its tension. */
  List<Step> largestTension() {
    Share pulled = worst(share -> share.tension().result());
    List<Step> lines = new ArrayList<>(pulled.lines());
    lines.add(pulled.tension());
    return lines;
  }

  private List<Check> shear() {
    Share worst = worst(share -> share.shear().result());
    Finding european =
        Finding.compare(worst.shear(), strength.shear())
            .after(worst.lines())
            .outside(strength.outside());
    Finding american = Finding.compare(worst.shear(), strength.americanShear());
    return List.of(
        european.answers(asks("bolt shear", worst), load.factors().ultimate()),
        american
            .after(worst.lines())
            .answers(asks("bolt shear, second opinion", worst), load.factors().american()));
  }

  private List<Check> tension() {
    Share pulled = worst(share -> share.tension().result());
    Share both =
        worst(
            share -> strength.combined(share.shear().result(), share.tension().result()).result());
    Step combined = strength.combined(both.shear().result(), both.tension().result());
    double fu = group.plate().material().strength().ultimate();
    List<Finding> findings =
        List.of(
            Finding.compare(pulled.tension(), strength.tension()).after(pulled.lines()),
            Finding.compare(pulled.tension(), strength.punching(group.plate().thickness(), fu))
                .after(pulled.lines()),
            Finding.ratio(combined)
                .after(both.shear(), both.tension(), strength.shear(), strength.tension())
                .after(both.lines()));
    List<Question> questions =
        List.of(
            asks("bolt tension", pulled).with(PRYING),
            asks("head through the plate", pulled),
            asks("bolt shear and tension", both).with(PRYING));
    List<Check> checks = new ArrayList<>();
    for (int i = 0; i < findings.size(); i++) {
      Finding finding = findings.get(i).outside(strength.outside());
      checks.add(finding.answers(questions.get(i), load.factors().ultimate()));
    }
    return checks;
  }

  private Check bearing() {
    double fu = group.plate().material().strength().ultimate();
    BoltStrength.Hole hole =
        new BoltStrength.Hole(
            group.plate().hole(), group.plate().edge(), group.plate().thickness(), fu);
    Share worst = worst(share -> share.shear().result());
    Question question =
        asks("bearing of the plate", worst)
            .with(
                "Every bolt counts as if it stood at the edge and next to its nearest neighbour.");
    Optional<Reason> tooNear = hole.tooNear().or(this::tooClose);
    if (tooNear.isPresent()) {
      return question.open(load.factors().ultimate(), tooNear.get(), "EN 1993-1-8:2005, table 3.4");
    }
    List<Step> steps = strength.bearing(hole, group.pitch());
    return Finding.compare(worst.shear(), steps.get(2))
        .after(steps.subList(0, 2))
        .after(worst.lines())
        .outside(strength.outside())
        .answers(question, load.factors().ultimate());
  }

  private Optional<Reason> tooClose() {
    double least = HoleRules.DISTANCE * group.plate().hole();
    return group.pitch() >= least * (1 - Rounding.TOLERANCE)
        ? Optional.empty()
        : Optional.of(
            Reason.of(
                "two bolts are {} apart; the bearing rule needs {}",
                Amount.length(group.pitch()),
                Amount.length(least)));
  }

  private List<Check> proportions() {
    List<Check> checks = new ArrayList<>();
    checks.add(
        HoleRules.edge(
            Question.of("edge distance", group.name(), load),
            group.plate().hole(),
            group.plate().edge()));
    checks.add(
        HoleRules.distance(
            Question.of("hole distance", group.name(), load), group.plate().hole(), group.pitch()));
    checks.addAll(
        HoleRules.width(
            Question.of("hole width", group.name(), load), group.bolt(), group.plate().hole()));
    return checks;
  }

  private Check notShared(String reason) {
    return Question.of("bolt tension", group.name(), load)
        .open(load.factors().ultimate(), reason, "elastic vector method");
  }

  private Question asks(String what, Share share) {
    return Question.of(what, group.name(), load).at("bolt " + share.number());
  }

  private Share worst(ToDoubleFunction<Share> measure) {
    return shares().stream().max(Comparator.comparingDouble(measure)).orElseThrow();
  }

  List<Share> shares() {
    List<Share> shares = new ArrayList<>();
    for (Spot spot : group.spots()) {
      List<Step> lines = pattern.share(spot, load);
      Step shear = SHEAR.with(lines.get(0).result(), lines.get(1).result());
      Step tension = TENSION.with(lines.get(2).result());
      shares.add(new Share(shares.size() + 1, lines, shear, tension));
    }
    return shares;
  }

  /** What one bolt takes: its number, the lines that lead to it, its shear and its tension. */
  record Share(int number, List<Step> lines, Step shear, Step tension) {}
}
