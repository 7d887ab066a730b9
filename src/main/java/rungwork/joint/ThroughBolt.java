package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import rungwork.check.Basis;
import rungwork.check.Check;
import rungwork.check.DesignFactor;
import rungwork.check.Formula;
import rungwork.check.LimitState;
import rungwork.check.Step;
import rungwork.check.Symbol;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Point;
import rungwork.material.RatedMaterial;

/**
 * A bolt tightened through both walls of a box: whether the walls stand its clamping force, or a
 * crush sleeve inside the box is needed and holds.
 *
 * @param name the bolt's name
 * @param preload clamping force [N], above zero
 * @param box the box
 * @param seat what the clamping force rests on
 */
public record ThroughBolt(String name, double preload, TubeWall box, Seat seat) implements Joint {
  private static final Symbol FP = Letters.force("Fp", "clamping force");
  private static final Symbol D = Letters.length("D", "outside diameter of the sleeve");
  private static final Symbol T = Letters.length("ts", "wall of the sleeve");
  private static final Symbol FYS = Letters.stress("fys", "yield strength of the sleeve");
  private static final Formula CLAMP =
      new Formula(
          Letters.force("F", "force on the sleeve"), "{Fp}", List.of(FP), "statics", in -> in[0]);
  private static final Formula SQUASH =
      new Formula(
          Letters.force("Ny", "force that yields the sleeve"),
          "π·({D} − {ts})·{ts}·{fys}",
          List.of(D, T, FYS),
          "strength of materials: first yield",
          in -> Math.PI * (in[0] - in[1]) * in[1] * in[2]);
  private static final String TIGHTENING =
      "The bolt's tightening scatters by a third either way; the force given counts as it is.";
  private static final Basis CLAMPED =
      new Basis(LimitState.YIELD, "none: a clamping force is set, not a load");

  /** Refuses a force of nothing and a seat that the box cannot hold. */
  public ThroughBolt {
    name = Guard.name("bolt through a box", name);
    Guard.positive("clamping force of " + name, preload, Scale.KN);
    if (seat.diameter() >= box.width()) {
      throw new ModelException(
          "the seat of "
              + name
              + ", "
              + Scale.MM.show(seat.diameter())
              + " wide, does not fit on the face of "
              + Scale.MM.show(box.width()));
    }
  }

  /**
   * A tightened bolt.
   *
   * @param name the bolt's name
   * @param preload clamping force
   * @param box the box
   * @param seat what the clamping force rests on
   * @return the bolt
   */
  public static ThroughBolt tightened(
      String name, Quantity<Force> preload, TubeWall box, Seat seat) {
    return new ThroughBolt(name, si("clamping force", preload), box, seat);
  }

  /** What a clamping force rests on. */
  public sealed interface Seat permits Washer, Sleeve {
    /**
     * How wide it is.
     *
     * @return outside diameter [m]
     */
    double diameter();
  }

  /**
   * A washer on the bare wall.
   *
   * @param diameter outside diameter [m], above zero
   */
  public record Washer(double diameter) implements Seat {
    /** Refuses a washer of no size. */
    public Washer {
      Guard.positive("diameter of the washer", diameter, Scale.MM);
    }

    /**
     * A washer from a typed length.
     *
     * @param diameter outside diameter
     * @return the washer
     */
    public static Washer of(Quantity<Length> diameter) {
      return new Washer(si("diameter of the washer", diameter));
    }
  }

  /**
   * A sleeve through the box, as long as the box is deep.
   *
   * @param diameter outside diameter [m], above zero
   * @param wall its wall [m], above zero, below half the diameter
   * @param material its material
   */
  public record Sleeve(double diameter, double wall, RatedMaterial material) implements Seat {
    /** Refuses a wall that leaves no bore. */
    public Sleeve {
      Guard.positive("diameter of the sleeve", diameter, Scale.MM);
      Guard.positive("wall of the sleeve", wall, Scale.MM);
      if (2 * wall >= diameter) {
        throw new ModelException(
            "wall "
                + Scale.MM.show(wall)
                + " leaves no bore in a sleeve of "
                + Scale.MM.show(diameter)
                + "; the wall must stay below "
                + Scale.MM.show(diameter / 2));
      }
    }

    /**
     * A sleeve from typed lengths.
     *
     * @param diameter outside diameter
     * @param wall its wall
     * @param material its material
     * @return the sleeve
     */
    public static Sleeve of(
        Quantity<Length> diameter, Quantity<Length> wall, RatedMaterial material) {
      return new Sleeve(
          si("diameter of the sleeve", diameter), si("wall of the sleeve", wall), material);
    }
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    if (seat instanceof Sleeve sleeve) {
      return List.of(squash(sleeve, load));
    }
    return List.of(bareWall(load));
  }

  /**
   * Whether the bare walls cannot stand the clamping force, by the sourced rule for the bending of
   * a tube's face; a number outside that rule's range needs a sleeve too.
   *
   * @return true when a crush sleeve is needed
   */
  public boolean needsSleeve() {
    Point middle = new Point(0, 0, 0);
    FaceLoad none = FaceLoad.at("clamping", middle, Factors.UNFACTORED);
    Check bare = bareWall(none);
    return !bare.made() || bare.fails();
  }

  /** The face under a square patch as large as the washer. */
  private Check bareWall(FaceLoad load) {
    double side = seat.diameter() * Math.sqrt(Math.PI) / 2;
    PlateOnTube.Foot foot = new PlateOnTube.Foot(PlateOnTube.Way.PATCH, side, side, 0);
    WallRules rules = WallRules.of(PlateOnTube.of(name, box, foot), DesignFactor.NONE.value());
    Finding bending = rules.pull(WallFormulas.PULL.with(-preload));
    Question question =
        Question.of("bare wall under the clamping force", name, load)
            .at("box")
            .with(
                "Over 1, or outside the rule: put a crush sleeve through the box. The washer counts"
                    + " as a welded square of its area. "
                    + TIGHTENING);
    return bending.answers(question, CLAMPED);
  }

  private Check squash(Sleeve sleeve, FaceLoad load) {
    Step squash =
        SQUASH.with(sleeve.diameter(), sleeve.wall(), sleeve.material().strength().weldedYield());
    return Finding.compare(CLAMP.with(preload), squash)
        .answers(Question.of("crush sleeve", name, load).at("box").with(TIGHTENING), CLAMPED);
  }
}
