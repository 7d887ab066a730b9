package rungwork.joint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.frame.Wrench;
import rungwork.material.RatedMaterial;

/** The weld of a bracket on one or more faces, by the methods that know no direction. */
final class BracketWeld {
  private static final String METHOD =
      "elastic line method on several faces: rigid bracket, weld alike in all directions; ω = J⁻¹·M"
          + " about the lines' centroid";
  private static final Symbol L = Letters.length("L", "length of the weld");
  private static final Formula ALONG = share("fx", "Fx", "ωy", "z", "ωz", "y");
  private static final Formula ACROSS = share("fy", "Fy", "ωz", "x", "ωx", "z");
  private static final Formula OUT = share("fz", "Fz", "ωx", "y", "ωy", "x");
  private static final String AXES =
      "Along the rail x, across the face y, out of it z. The bracket is taken to be at least as"
          + " thick and strong as the rail's wall, and the weld to be sound.";

  private final Bracket bracket;
  private final FaceLoad load;
  private final SpaceLines lines;
  private final SpaceLines.Share worst;

  BracketWeld(Bracket bracket, FaceLoad load) {
    this.bracket = bracket;
    this.load = load;
    lines = bracket.lines();
    worst =
        lines.shares(bracket.onRail(load), Bracket.ORIGIN).stream()
            .max(Comparator.comparingDouble(share -> share.force().getNorm()))
            .orElseThrow();
  }

  List<Check> checks() {
    RatedMaterial material = bracket.rail().material();
    List<Check> checks = new ArrayList<>(List.of(baseMetal(material)));
    if (bracket.seam().kind() != WeldGroup.Kind.FILLET) {
      return checks;
    }
    if (!SeamRules.steel(material)) {
      checks.add(
          asks("weld throat")
              .open(
                  load.factors().ultimate(),
                  "EN 1993-1-8 and AISC 360 cover welds of steel only",
                  WeldFormulas.EN + "4.1"));
      return checks;
    }
    checks.add(simplified(material));
    checks.add(american());
    return checks;
  }

  private Check baseMetal(RatedMaterial material) {
    Step limit =
        WeldFormulas.FUSION.with(material.strength().weldedYield(), bracket.seam().size(), gamma());
    return Finding.compare(force(), limit)
        .after(shares())
        .answers(asks("base metal beside the weld"), load.factors().yield());
  }

  private Check simplified(RatedMaterial material) {
    Step resistance =
        WeldFormulas.SIMPLIFIED.with(
            Welded.ultimate(material),
            bracket.seam().throat(),
            SeamRules.correlation(material),
            load.factors().gammaM2(),
            gamma());
    return Finding.compare(force(), resistance)
        .after(shares())
        .outside(SeamRules.outside(bracket.seam(), material))
        .answers(asks("weld throat, simplified"), load.factors().ultimate());
  }

  private Check american() {
    Step strength =
        WeldFormulas.AMERICAN.with(
            load.factors().phi(), bracket.seam().electrode(), bracket.seam().throat(), gamma());
    return Finding.compare(force(), strength)
        .after(shares())
        .answers(asks("weld throat, second opinion"), load.factors().american());
  }

  private Step force() {
    Vector3D f = worst.force();
    return WeldFormulas.FORCE.with(f.getX(), f.getY(), f.getZ());
  }

  private List<Step> shares() {
    Wrench w = bracket.onRail(load);
    Vector3D turn = lines.turn(w, Bracket.ORIGIN);
    Vector3D r = worst.at().subtract(lines.centroid());
    double l = lines.length();
    return List.of(
        ALONG.with(w.fx(), l, turn.getY(), r.getZ(), turn.getZ(), r.getY()),
        ACROSS.with(w.fy(), l, turn.getZ(), r.getX(), turn.getX(), r.getZ()),
        OUT.with(w.fz(), l, turn.getX(), r.getY(), turn.getY(), r.getX()));
  }

  private Question asks(String what) {
    return Question.of(what, bracket.name() + " weld", load).at(worst.name()).with(AXES);
  }

  private double gamma() {
    return load.factors().design().value();
  }

  /** F/L + ω × r, one component. */
  private static Formula share(
      String result, String force, String turn, String arm, String turn2, String arm2) {
    return new Formula(
        Letters.lineForce(result, "share along " + result.substring(1)),
        "{%s}/{L} + {%s}·{%s} − {%s}·{%s}".formatted(force, turn, arm, turn2, arm2),
        List.of(
            Letters.force(force, "force"),
            L,
            Letters.stress(turn, "turn of the bracket times the weld's stiffness"),
            Letters.length(arm, "distance from the centroid"),
            Letters.stress(turn2, "turn of the bracket times the weld's stiffness"),
            Letters.length(arm2, "distance from the centroid")),
        METHOD,
        in -> in[0] / in[1] + in[2] * in[3] - in[4] * in[5]);
  }
}
