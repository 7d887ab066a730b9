package rungwork.joint;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Check;
import rungwork.check.Formula;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * The rail's walls under a bracket. On one face the face bends and is punched like under any patch.
 * Where the bracket reaches round an edge, each wall is given only what lies in its own plane: the
 * sides take the pull, the rocking and the tipping, the face takes what runs along it. A state of
 * equilibrium that yields nowhere is safe (static theorem of plastic theory); what is left over
 * sideways goes back to the face.
 */
final class BracketWalls {
  /** A moment below this is rounding [N·m]. */
  private static final double NOTHING = 1e-9;

  private static final String SHARING =
      "equilibrium with each wall loaded in its own plane only: static theorem of plastic theory,"
          + " as in Neal, The Plastic Methods of Structural Analysis; from memory";
  private static final Symbol FY0 = Letters.stress("fy0", "yield strength of the wall");
  private static final Symbol T0 = Letters.length("t0", "wall");
  private static final Formula WALL =
      new Formula(
          Letters.lineForce("fRd", "what a wall takes on a length, in its plane"),
          "{t0}·{fy0}/(√3·{γ})",
          List.of(T0, FY0, Letters.GAMMA),
          SHARING,
          in -> in[0] * in[1] / (Math.sqrt(3) * in[2]));
  private static final Formula PULL =
      new Formula(
          Letters.force("V", "force on one side of the rail"),
          "|{Fz}|/2 + |{Mx}|/{b0}",
          List.of(
              Letters.FZ,
              Letters.moment("Mx", "moment about the rail"),
              Letters.length("b0", "width of the face")),
          SHARING,
          in -> Math.abs(in[0]) / 2 + Math.abs(in[1]) / in[2]);
  private static final Formula IN_WALL =
      new Formula(
          Letters.lineForce("f", "largest force on a length, in the wall's plane"),
          "√({fx}² + {fy}²)",
          List.of(Letters.lineForce("fx", "along x"), Letters.lineForce("fy", "along y")),
          "statics",
          in -> Math.hypot(in[0], in[1]));
  private static final String TIGHT =
      "The corner of the rail is taken as sharp; the fold must fit it, or the weld rides on the"
          + " bend.";

  private final Bracket bracket;
  private final FaceLoad load;
  private final Wrench wrench;

  BracketWalls(Bracket bracket, FaceLoad load) {
    this.bracket = bracket;
    this.load = load;
    wrench = bracket.onRail(load);
  }

  List<Check> checks() {
    return switch (bracket.stand().wrap()) {
      case ONE_FACE -> patch(wrench, 0);
      case TWO_FACES -> angle();
      case OVER_TOP -> List.of(face(), bothSides());
    };
  }

  /** The whole load on the face alone. */
  private List<Check> patch(Wrench part, double offset) {
    PlateOnTube.Foot foot =
        new PlateOnTube.Foot(
            PlateOnTube.Way.PATCH, bracket.outline().along(), bracket.outline().across(), offset);
    FaceLoad onFace = new FaceLoad(load.loadCase(), part, Bracket.ORIGIN, load.factors());
    return new PlateOnTube(name(), bracket.rail(), foot, 0).checks(onFace);
  }

  /** The side takes pull and tipping; its distance from the load leaves a rocking to the face. */
  private List<Check> angle() {
    double rocking = wrench.mx() - wrench.fz() * bracket.rail().width() / 2;
    List<Check> checks = new ArrayList<>(List.of(face(), oneSide()));
    if (Math.abs(rocking) > NOTHING) {
      double offset = (bracket.rail().width() - bracket.outline().across()) / 2;
      checks.addAll(patch(Wrench.moment(rocking, 0, 0), offset));
    }
    return checks;
  }

  private Check face() {
    double s = bracket.outline().along() / 2;
    double edge = bracket.rail().width() / 2;
    double far = edge - bracket.outline().across();
    List<Pattern.Line> lines =
        new ArrayList<>(List.of(line(s, far, s, edge), line(-s, far, -s, edge)));
    if (bracket.stand().wrap() == Bracket.Wrap.TWO_FACES) {
      lines.add(line(-s, far, s, far));
    }
    Wrench own = new Wrench(wrench.fx(), wrench.fy(), 0, 0, 0, wrench.mz());
    return inWall("face along itself", lines, own, List.of());
  }

  private Check oneSide() {
    return side(Math.abs(wrench.fz()), Math.abs(wrench.my()), List.of());
  }

  private Check bothSides() {
    Step pull = PULL.with(wrench.fz(), wrench.mx(), bracket.rail().width());
    return side(pull.result(), Math.abs(wrench.my()) / 2, List.of(pull));
  }

  /** A side in its own plane: x along the rail, y towards the face. */
  private Check side(double force, double moment, List<Step> before) {
    double s = bracket.outline().along() / 2;
    double low = -bracket.outline().sides();
    List<Pattern.Line> lines =
        List.of(line(-s, 0, -s, low), line(-s, low, s, low), line(s, low, s, 0));
    return inWall("side along itself", lines, new Wrench(0, force, 0, 0, 0, moment), before);
  }

  private Check inWall(String what, List<Pattern.Line> lines, Wrench own, List<Step> before) {
    Pattern pattern = Pattern.ofLines(lines);
    FaceLoad inPlane = new FaceLoad(load.loadCase(), own, new Point(0, 0, 0), load.factors());
    List<Step> worst = List.of();
    Step demand = IN_WALL.with(0, 0);
    for (Pattern.Line line : lines) {
      for (Spot end : List.of(line.from(), line.to())) {
        List<Step> share = pattern.share(end, inPlane).subList(0, 2);
        Step here = IN_WALL.with(share.get(0).result(), share.get(1).result());
        if (worst.isEmpty() || here.result() > demand.result()) {
          demand = here;
          worst = share;
        }
      }
    }
    Step capacity =
        WALL.with(
            bracket.rail().wall(),
            bracket.rail().material().strength().weldedYield(),
            load.factors().design().value());
    return Finding.compare(demand, capacity)
        .after(worst)
        .after(before)
        .sourcedBy(SHARING)
        .answers(Question.of(what, name(), load).at("rail").with(TIGHT), load.factors().yield());
  }

  private String name() {
    return bracket.name() + " rail wall";
  }

  private static Pattern.Line line(double x1, double y1, double x2, double y2) {
    return new Pattern.Line(new Spot(x1, y1), new Spot(x2, y2));
  }
}
