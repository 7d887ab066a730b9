package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import rungwork.check.Check;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.material.RatedMaterial;

/**
 * The weld that holds a part to a face: runs of straight lines on the part's outline, all of one
 * size, sharing a wrench elastically.
 *
 * @param name the weld's name
 * @param runs its runs, each from start to stop
 * @param seam what is laid
 * @param parent what it joins
 */
public record WeldGroup(String name, List<Run> runs, Seam seam, Parent parent) implements Joint {
  /** Refuses a weld without a run, lines that lie on one another, and a leg that burns through. */
  public WeldGroup {
    name = Guard.name("weld", name);
    runs = List.copyOf(runs);
    if (runs.isEmpty()) {
      throw new ModelException("weld " + name + " has no run; give it one at least");
    }
    WeldLines.refuseTwice(name, runs);
    if (seam.size() > parent.thinner() * (1 + Rounding.TOLERANCE)) {
      throw new ModelException(
          seam.kind().sizeName()
              + " "
              + Scale.MM.show(seam.size())
              + " of weld "
              + name
              + " is above the thinner wall of "
              + Scale.MM.show(parent.thinner())
              + "; it must not exceed it");
    }
    for (Run run : runs) {
      WeldLines.refuseShort(name, run, seam.deduction());
    }
  }

  /** How the weld fills the joint. */
  public enum Kind {
    /** A fillet of equal legs; its size is the leg. */
    FILLET("leg"),
    /** A full-penetration weld; its size is the plate's thickness. */
    FULL_PENETRATION("thickness");

    private final String sizeName;

    Kind(String sizeName) {
      this.sizeName = sizeName;
    }

    String sizeName() {
      return sizeName;
    }
  }

  /**
   * What is laid.
   *
   * @param kind fillet or full penetration
   * @param size leg, or thickness filled [m]
   * @param electrode tensile strength of the weld metal, FEXX [Pa]
   */
  public record Seam(Kind kind, double size, double electrode) {
    /** Refuses a weld of no size or no strength. */
    public Seam {
      Guard.positive("weld " + kind.sizeName(), size, Scale.MM);
      Guard.positive("tensile strength of the weld metal", electrode, Scale.MPA);
    }

    /**
     * A fillet of equal legs.
     *
     * @param leg its leg
     * @param electrode tensile strength of the weld metal
     * @return the seam
     */
    public static Seam fillet(Quantity<Length> leg, Quantity<Pressure> electrode) {
      return new Seam(Kind.FILLET, si("weld leg", leg), si("weld metal", electrode));
    }

    /**
     * A full-penetration weld.
     *
     * @param thickness of the plate
     * @param electrode tensile strength of the weld metal
     * @return the seam
     */
    public static Seam fullPenetration(Quantity<Length> thickness, Quantity<Pressure> electrode) {
      return new Seam(
          Kind.FULL_PENETRATION, si("weld thickness", thickness), si("weld metal", electrode));
    }

    /**
     * The thickness that carries.
     *
     * @return throat of a fillet, thickness of a full-penetration weld [m]
     */
    public double throat() {
      return kind == Kind.FILLET ? size / Math.sqrt(2) : size;
    }

    /** What each end of an open run does not count [m]: a throat, at start and stop of a fillet. */
    double deduction() {
      return kind == Kind.FILLET ? throat() : 0;
    }
  }

  /**
   * What the weld joins.
   *
   * @param material the weaker part's material
   * @param thinner the thinner part's thickness [m]
   */
  public record Parent(RatedMaterial material, double thinner) {
    /** Refuses a wall of nothing. */
    public Parent {
      Guard.positive("thinner wall", thinner, Scale.MM);
    }

    /**
     * What the weld joins, from a typed thickness.
     *
     * @param material the weaker part's material
     * @param thinner the thinner part's thickness
     * @return the parent
     */
    public static Parent of(RatedMaterial material, Quantity<Length> thinner) {
      return new Parent(material, si("thinner wall", thinner));
    }
  }

  /**
   * One run of weld through its corners without a gap. It is closed when it ends where it starts.
   *
   * @param corners from start to stop, two at least
   */
  public record Run(List<Spot> corners) {
    /** Lines for a circle: 0.1 % short of it, on the safe side. */
    private static final int ROUND = 40;

    /** Refuses a run of one corner, and two corners in one place. */
    public Run {
      corners = List.copyOf(corners);
      if (corners.size() < 2) {
        throw new ModelException(
            "a weld run has " + corners.size() + " corner; it needs a start and a stop");
      }
      for (int i = 1; i < corners.size(); i++) {
        if (corners.get(i).distance(corners.get(i - 1)) == 0) {
          throw new ModelException(
              "corner " + (i + 1) + " of a weld run stands where the one before stands");
        }
      }
    }

    /**
     * A run through corners.
     *
     * @param corners from start to stop
     * @return the run
     */
    public static Run through(Spot... corners) {
      return new Run(List.of(corners));
    }

    /**
     * A run all the way round a rectangle in the middle of the face.
     *
     * @param length along x
     * @param width along y
     * @return the closed run
     */
    public static Run around(Quantity<Length> length, Quantity<Length> width) {
      double x = si("length", length) / 2;
      double y = si("width", width) / 2;
      return through(
          new Spot(-x, -y), new Spot(x, -y), new Spot(x, y), new Spot(-x, y), new Spot(-x, -y));
    }

    /**
     * A run all the way round a round tube that stands on the face.
     *
     * @param diameter outside diameter of the tube
     * @return the closed run, of {@value #ROUND} short lines
     */
    public static Run round(Quantity<Length> diameter) {
      double across = Guard.positive("diameter", si("diameter", diameter), Scale.MM);
      return new Run(WeldLines.circle(across / 2, ROUND));
    }

    /**
     * A run on each side of a plate that stands in the middle of the face along x.
     *
     * @param length of the plate along x
     * @param thickness of the plate along y
     * @return the two runs
     */
    public static List<Run> bothSides(Quantity<Length> length, Quantity<Length> thickness) {
      double x = si("length", length) / 2;
      double y = si("thickness", thickness) / 2;
      return List.of(
          through(new Spot(-x, y), new Spot(x, y)), through(new Spot(-x, -y), new Spot(x, -y)));
    }

    boolean closed() {
      return corners.get(0).equals(corners.get(corners.size() - 1));
    }

    double length() {
      return lines().stream().mapToDouble(Pattern.Line::length).sum();
    }

    List<Pattern.Line> lines() {
      return WeldLines.through(corners);
    }

    /** The lines that count: an open run loses a length at its start and at its stop. */
    List<Pattern.Line> effective(double deduction) {
      return closed() ? lines() : WeldLines.shortened(lines(), deduction);
    }
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    return new WeldStrength(this, load).checks();
  }

  /**
   * The largest force on a length of weld, the elastic line method's answer.
   *
   * @param load the load
   * @return the force on a length [N/m]
   * @throws ModelException when the weld stands in one line and the load tips it about that line
   */
  public double largestForce(FaceLoad load) {
    Optional<String> open = pattern().cannotTake(load);
    if (open.isPresent()) {
      throw new ModelException("weld " + name + " cannot take this load: " + open.get());
    }
    return new WeldStrength(this, load).largestForce();
  }

  /**
   * How far the nominal stress beside the weld swings between two loads: for the weld toe's class.
   *
   * @param from the one load
   * @param to the other load
   * @return the stress range in the thinner part [Pa]
   */
  public double toeRange(FaceLoad from, FaceLoad to) {
    return Guard.solved(
        "stress range beside a weld", largestForce(to.since(from)) / parent.thinner());
  }

  /**
   * How far the stress on the throat swings between two loads: for the weld root's class.
   *
   * @param from the one load
   * @param to the other load
   * @return the stress range on the throat [Pa]
   */
  public double rootRange(FaceLoad from, FaceLoad to) {
    return Guard.solved("stress range in a weld", largestForce(to.since(from)) / seam.throat());
  }

  /**
   * The length that counts: open runs of a fillet less a throat at each end.
   *
   * @return the effective length [m]
   */
  public double length() {
    return pattern().size();
  }

  Pattern pattern() {
    return Pattern.ofLines(
        runs.stream().flatMap(run -> run.effective(seam.deduction()).stream()).toList());
  }
}
