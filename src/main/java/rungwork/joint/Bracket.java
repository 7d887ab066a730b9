package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rungwork.check.Check;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Point;
import rungwork.frame.Wrench;

/**
 * What the tabs of a mount stand on, as builders make it: a plate on one face of a rail, folded
 * round an edge onto a second face, or over the rail onto three faces, welded all round. The same
 * load on each shows what wrapping buys.
 *
 * <pre>
 *    one face          two faces           over the top
 *    ________           _________           __________
 *   |--------|         |---------#         #----------#     z out of the face
 *   |        |         |         #         #          #     |
 *   |        |         |         #         #          #     +-- c across the rail
 * </pre>
 *
 * <p>The bracket counts as rigid and at least as thick and strong as the rail's wall; what bends in
 * it is asked of its tabs.
 *
 * @param name the bracket's name
 * @param rail the rail, seen from the face that the tabs stand over
 * @param outline of the plate
 * @param stand how it stands
 * @param seam its weld, all round
 */
public record Bracket(String name, TubeWall rail, Outline outline, Stand stand, WeldGroup.Seam seam)
    implements Joint {
  /** Refuses a plate that the rail cannot hold and a leg thicker than its wall. */
  public Bracket {
    name = Guard.name("bracket", name);
    refuseLarger("plate of bracket " + name + " across the face", outline.across(), rail.width());
    if (stand.wrap() != Wrap.ONE_FACE) {
      Guard.positive("sides of bracket " + name, outline.sides(), Scale.MM);
      refuseLarger("sides of bracket " + name, outline.sides(), rail.depth());
    }
    if (stand.wrap() == Wrap.OVER_TOP
        && outline.across() < rail.width() * (1 - Rounding.TOLERANCE)) {
      throw new ModelException(
          "bracket "
              + name
              + " goes over the rail; its plate must be as wide as the face, "
              + Scale.MM.show(rail.width())
              + ", not "
              + Scale.MM.show(outline.across()));
    }
    refuseLarger(
        "weld " + seam.kind().sizeName() + " of bracket " + name, seam.size(), rail.wall());
  }

  /** On how many faces it is welded. */
  public enum Wrap {
    /** A plate on the face, welded all round. */
    ONE_FACE("on one face"),
    /** An angle on the face and on the side towards +c. */
    TWO_FACES("on two faces"),
    /** A saddle on the face and on both sides. */
    OVER_TOP("over the top");

    private final String words;

    Wrap(String words) {
      this.words = words;
    }

    /**
     * How it stands in words.
     *
     * @return such as {@code on one face}
     */
    public String words() {
      return words;
    }
  }

  /** How the tab's foot lies on the rail. */
  public enum Foot {
    /** The tab's plane contains the rail's direction: x runs along the rail. */
    ALONG_RAIL,
    /** The tab stands across the rail: its pin, y, runs along the rail. */
    ACROSS_RAIL
  }

  /**
   * How a bracket stands on its rail.
   *
   * @param wrap on how many faces
   * @param foot how the tab's foot lies
   */
  public record Stand(Wrap wrap, Foot foot) {}

  /**
   * The plate's outline.
   *
   * @param along the rail [m]
   * @param across the face, from its edge towards +c [m]; on one face in its middle
   * @param sides how far down the rail's sides [m]; not used on one face
   */
  public record Outline(double along, double across, double sides) {
    /** Refuses a plate of no size. */
    public Outline {
      Guard.positive("bracket along the rail", along, Scale.MM);
      Guard.positive("bracket across the face", across, Scale.MM);
      Guard.notNegative("sides of the bracket", sides, Scale.MM);
    }

    /**
     * An outline from typed lengths.
     *
     * @param along the rail
     * @param across the face
     * @param sides how far down the rail's sides
     * @return the outline
     */
    public static Outline of(
        Quantity<Length> along, Quantity<Length> across, Quantity<Length> sides) {
      return new Outline(si("along", along), si("across", across), si("sides", sides));
    }
  }

  /**
   * The same bracket on more or fewer faces.
   *
   * @param wrap on how many
   * @return the bracket
   */
  public Bracket wrapped(Wrap wrap) {
    return new Bracket(name, rail, outline, new Stand(wrap, stand.foot()), seam);
  }

  /**
   * The length of its weld.
   *
   * @return all round [m]
   */
  public double weldLength() {
    return lines().length();
  }

  /**
   * The largest force on a length of its weld.
   *
   * @param load the load
   * @return the force on a length [N/m]
   */
  public double largestForce(FaceLoad load) {
    Wrench onRail = onRail(load);
    return lines().shares(onRail, ORIGIN).stream()
        .mapToDouble(share -> share.force().getNorm())
        .max()
        .orElseThrow();
  }

  /**
   * How far the nominal stress in the rail's wall beside the weld swings between two loads.
   *
   * @param from the one load
   * @param to the other load
   * @return the stress range [Pa]
   */
  public double toeRange(FaceLoad from, FaceLoad to) {
    return largestForce(to.since(from)) / rail.wall();
  }

  /**
   * How far the stress on the throat swings between two loads.
   *
   * @param from the one load
   * @param to the other load
   * @return the stress range [Pa]
   */
  public double rootRange(FaceLoad from, FaceLoad to) {
    return largestForce(to.since(from)) / seam.throat();
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    List<Check> checks = new ArrayList<>(new BracketWeld(this, load).checks());
    checks.addAll(new BracketWalls(this, load).checks());
    return checks;
  }

  static final Point ORIGIN = new Point(0, 0, 0);

  /** The load about the face's origin along the rail's axes: along it, across it, out of it. */
  Wrench onRail(FaceLoad load) {
    Wrench w = load.about(ORIGIN);
    return stand.foot() == Foot.ALONG_RAIL
        ? w
        : new Wrench(w.fy(), -w.fx(), w.fz(), w.my(), -w.mx(), w.mz());
  }

  /** The weld's lines: along the rail, across the face, out of the face. */
  SpaceLines lines() {
    double s = outline.along() / 2;
    double edge = stand.wrap() == Wrap.ONE_FACE ? outline.across() / 2 : rail.width() / 2;
    double far = edge - outline.across();
    List<Vector3D> half = new ArrayList<>();
    if (stand.wrap() == Wrap.OVER_TOP) {
      half.add(new Vector3D(s, far, -outline.sides()));
    }
    half.add(new Vector3D(s, far, 0));
    half.add(new Vector3D(s, edge, 0));
    if (stand.wrap() != Wrap.ONE_FACE) {
      half.add(new Vector3D(s, edge, -outline.sides()));
    }
    return closed(half);
  }

  /** The corners of one end, and the same at the other end, joined all round. */
  private static SpaceLines closed(List<Vector3D> half) {
    List<SpaceLines.Line> lines = new ArrayList<>();
    for (double end : new double[] {1, -1}) {
      for (int i = 1; i < half.size(); i++) {
        String name = half.get(i).getZ() == half.get(i - 1).getZ() ? "across the face" : "side";
        lines.add(
            new SpaceLines.Line(name, mirrored(half.get(i - 1), end), mirrored(half.get(i), end)));
      }
    }
    for (Vector3D corner : List.of(half.get(0), half.get(half.size() - 1))) {
      lines.add(new SpaceLines.Line("along the rail", corner, mirrored(corner, -1)));
    }
    return new SpaceLines(lines);
  }

  private static Vector3D mirrored(Vector3D corner, double end) {
    return new Vector3D(end * corner.getX(), corner.getY(), corner.getZ());
  }

  private static void refuseLarger(String what, double value, double most) {
    if (value > most * (1 + Rounding.TOLERANCE)) {
      throw new ModelException(
          what
              + " is "
              + Scale.MM.show(value)
              + "; the rail allows at most "
              + Scale.MM.show(most));
    }
  }
}
