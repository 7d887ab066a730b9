package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;

/**
 * A bolt group whose plate bends between the bolts and what pulls it, and levers at its edge: AISC
 * Manual, part 9, prying action, as worked in Tamboli, Handbook of Structural Steel Connection
 * Design and Details, 2nd ed., chapter 2 (read). The plate may yield at the upstand and at the
 * bolts; the bolt pulls against both ends. What the bolts are bolted to counts as stiff.
 *
 * @param group the bolts and their plate
 * @param toUpstand from the bolts' middle to the face of what pulls the plate [m]
 * @param held plate that one bolt holds, along the row [m]
 */
record PriedGroup(BoltGroup group, double toUpstand, double held) implements Joint {
  private static final String SOURCE = "AISC Manual, part 9, prying action";
  private static final String WHAT = "bending of the plate with prying";
  private static final String CAUTION =
      "What the plate is bolted to counts as stiff; a thin tube wall is not. The plate must be"
          + " ductile.";
  private static final Symbol B = Letters.length("b", "bolt's middle to the upstand");
  private static final Symbol A = Letters.length("a", "bolt's middle to the plate's edge");
  private static final Symbol INNER = Letters.length("b′", "lever arm of the bolt");
  private static final Symbol OUTER = Letters.length("a′", "lever arm of the edge");
  private static final Symbol P = Letters.length("p", "plate that one bolt holds, along the row");
  private static final Symbol S = Letters.length("s", "plate from bolt to bolt, or to the edge");
  private static final Symbol DELTA = Letters.ratio("δ", "net over gross section at the bolts");
  private static final Symbol RHO = Letters.ratio("ρ", "ratio of the lever arms");
  private static final Symbol TC = Letters.length("tc", "thickness above which nothing pries");
  private static final Symbol ALPHA = Letters.ratio("α′", "share of the bending at the bolts");
  private static final Symbol STRENGTH = Letters.force("φrn", "tension strength of the bolt");
  private static final Symbol FT = Letters.force("Ft", "tension in the bolt without prying");

  private static final Formula INNER_ARM =
      new Formula(INNER, "{b} − {d}/2", List.of(B, Letters.D), SOURCE, in -> in[0] - in[1] / 2);
  private static final Formula OUTER_ARM =
      new Formula(
          OUTER,
          "min({a}, 1.25·{b}) + {d}/2",
          List.of(A, B, Letters.D),
          SOURCE,
          in -> Math.min(in[0], 1.25 * in[1]) + in[2] / 2);
  private static final Formula LENGTH =
      new Formula(P, "min({s}, 2·{b})", List.of(S, B), SOURCE, in -> Math.min(in[0], 2 * in[1]));
  private static final Formula NET =
      new Formula(DELTA, "1 − {d₀}/{p}", List.of(Letters.D0, P), SOURCE, in -> 1 - in[0] / in[1]);
  private static final Formula ARMS =
      new Formula(RHO, "{b′}/{a′}", List.of(INNER, OUTER), SOURCE, in -> in[0] / in[1]);
  private static final Formula STIFF =
      new Formula(
          TC,
          "√(4·{φrn}·{γ}·{b′}/(0.9·{p}·{fu}))",
          List.of(STRENGTH, Letters.GAMMA, INNER, P, Letters.FU),
          SOURCE,
          in -> Math.sqrt(4 * in[0] * in[1] * in[2] / (0.9 * in[3] * in[4])));
  private static final Formula SHARE =
      new Formula(
          ALPHA,
          "(({tc}/{t})² − 1)/({δ}·(1 + {ρ}))",
          List.of(TC, Letters.T, DELTA, RHO),
          SOURCE,
          in -> (Math.pow(in[0] / in[1], 2) - 1) / (in[2] * (1 + in[3])));
  private static final Formula AVAILABLE =
      new Formula(
          Letters.force("Td", "pull that bolt and plate can take"),
          "{φrn}·min(1, ({t}/{tc})²·(1 + {δ}·max(0, min({α′}, 1))))",
          List.of(STRENGTH, Letters.T, TC, DELTA, ALPHA),
          SOURCE,
          in ->
              in[0]
                  * Math.min(
                      1,
                      Math.pow(in[1] / in[2], 2) * (1 + in[3] * Math.max(0, Math.min(in[4], 1)))));
  private static final Formula PRYING =
      new Formula(
          Letters.force("Q", "prying force at the edge under this pull"),
          "{ρ}·max(0, {Ft} − {φrn}·({t}/{tc})²)",
          List.of(RHO, FT, STRENGTH, Letters.T, TC),
          SOURCE + "; the edge takes what the upstand's hinge leaves",
          in -> in[0] * Math.max(0, in[1] - in[2] * Math.pow(in[3] / in[4], 2)));

  /** Refuses bolts that reach the upstand, and holes that leave nothing of the plate. */
  PriedGroup {
    double radius = group.bolt().size().diameter() / 2;
    if (Guard.finite("distance from the bolts to the upstand", toUpstand) <= radius) {
      throw new ModelException(
          "bolts of group "
              + group.name()
              + " stand "
              + Scale.MM.show(toUpstand)
              + " from the upstand; they need more than half their diameter, "
              + Scale.MM.show(radius));
    }
    double least = Math.min(held, 2 * toUpstand);
    if (least <= group.plate().hole()) {
      throw new ModelException(
          "holes of "
              + Scale.MM.show(group.plate().hole())
              + " leave nothing of the "
              + Scale.MM.show(least)
              + " of plate that each bolt of group "
              + group.name()
              + " holds");
    }
  }

  /** That the plate's prying was not asked. */
  static Check open(BoltGroup group, FaceLoad load) {
    return Question.of(WHAT, group.name(), load)
        .open(
            load.factors().american(),
            "how far the bolts are from what pulls the plate is not told; with that distance,"
                + " prying is checked",
            SOURCE);
  }

  @Override
  public String name() {
    return group.name();
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    List<Check> checks = new ArrayList<>(group.withoutPrying(load));
    List<Double> tensions = group.tensions(load);
    if (tensions.stream().anyMatch(tension -> tension > 0)) {
      checks.add(prying(load));
    }
    return checks;
  }

  private Check prying(FaceLoad load) {
    Question question = Question.of(WHAT, name(), load).with(CAUTION);
    Optional<String> brittle = notSteel();
    if (brittle.isPresent()) {
      return question.open(load.factors().american(), brittle.get(), SOURCE);
    }
    List<Step> pulled = new BoltGroupStrength(group, load).largestTension();
    Step tension = pulled.get(pulled.size() - 1);
    List<Step> lines = new ArrayList<>(pulled.subList(0, pulled.size() - 1));
    Step available = available(lines, load.factors(), tension.result());
    return Finding.compare(tension, available)
        .after(lines)
        .answers(question, load.factors().american());
  }

  private Optional<String> notSteel() {
    return SeamRules.steel(group.plate().material())
        ? Optional.empty()
        : Optional.of("prying by the AISC Manual is for plates of steel");
  }

  /** The lines up to what bolt and plate can take. */
  private Step available(List<Step> lines, Factors factors, double tension) {
    double d = group.bolt().size().diameter();
    double t = group.plate().thickness();
    double a = group.plate().edge();
    Step strength = new BoltStrength(group.bolt(), group.threads(), factors).americanTension();
    Step inner = INNER_ARM.with(toUpstand, d);
    Step outer = OUTER_ARM.with(a, toUpstand, d);
    Step length = LENGTH.with(held, toUpstand);
    Step net = NET.with(group.plate().hole(), length.result());
    Step arms = ARMS.with(inner.result(), outer.result());
    double fu = Welded.ultimate(group.plate().material());
    Step stiff =
        STIFF.with(
            strength.result(), factors.design().value(), inner.result(), length.result(), fu);
    Step share = SHARE.with(stiff.result(), t, net.result(), arms.result());
    Step prying = PRYING.with(arms.result(), tension, strength.result(), t, stiff.result());
    lines.addAll(List.of(strength, inner, outer, length, net, arms, stiff, share, prying));
    return AVAILABLE.with(strength.result(), t, stiff.result(), net.result(), share.result());
  }
}
