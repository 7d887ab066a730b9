package rungwork.impact;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.quantity.Kind;
import rungwork.quantity.Stiffness;
import rungwork.quantity.Units;

/** What is hit. Lateral places count from the vehicle's middle, to the left. */
public sealed interface Obstacle {
  /** A wall that neither moves nor gives, over the vehicle's full width. */
  record RigidWall() implements Obstacle {
    @Override
    public String words(Units units) {
      return "a rigid wall over the full width";
    }
  }

  /**
   * The same wall over a part of the width.
   *
   * @param right its right edge [m]
   * @param left its left edge [m]
   */
  record PartOfWall(double right, double left) implements Obstacle {
    /** Refuses edges that stand the wrong way round. */
    public PartOfWall {
      if (!(Guard.finite("left edge of a wall", left) > Guard.finite("right edge of it", right))) {
        throw new ModelException(
            "a wall from "
                + Scale.MM.show(right)
                + " to "
                + Scale.MM.show(left)
                + " has no width; give its right edge first (to the left is positive)");
      }
    }

    @Override
    public String words(Units units) {
      return "a rigid wall over a part of the width, from "
          + Range.brief(Kind.LENGTH, right, units)
          + " to "
          + Range.brief(Kind.LENGTH, left, units);
    }

    @Override
    public boolean meets(double partRight, double partLeft) {
      return partRight < left && right < partLeft;
    }

    @Override
    public boolean central() {
      return false;
    }
  }

  /**
   * A narrow post that neither moves nor gives.
   *
   * @param at its middle [m]
   * @param width across [m], above zero
   */
  record Post(double at, double width) implements Obstacle {
    /** Refuses a post without a width. */
    public Post {
      Guard.finite("place of a post", at);
      Guard.positive("width of a post", width, Scale.MM);
    }

    @Override
    public String words(Units units) {
      return "a post of "
          + Range.brief(Kind.LENGTH, width, units)
          + " at "
          + Range.brief(Kind.LENGTH, at, units);
    }

    @Override
    public boolean meets(double partRight, double partLeft) {
      return partRight < at + width / 2 && at - width / 2 < partLeft;
    }

    @Override
    public boolean central() {
      return at == 0;
    }
  }

  /**
   * Another vehicle, met front to front in line. Its front is taken as one linear spring.
   *
   * @param mass of it [kg], above zero
   * @param stiffness of its front [N/m], above zero
   */
  record OtherVehicle(Range mass, Range stiffness) implements Obstacle {
    /** Refuses a vehicle of nothing. */
    public OtherVehicle {
      Guard.positive("mass of the other vehicle", mass.low(), Scale.KG);
      Guard.positive("stiffness of the other vehicle", stiffness.low(), new Scale("N/mm", 1e3));
    }

    @Override
    public String words(Units units) {
      return "another vehicle of " + mass.show(units) + ", its front " + stiffness.show(units);
    }

    @Override
    public List<String> warnings(Units units) {
      return Stream.of(
              Sane.VEHICLE_MASS.warning(mass, units),
              Sane.FRONT_STIFFNESS.warning(stiffness, units))
          .flatMap(Optional::stream)
          .toList();
    }

    /**
     * The same vehicle where its mass is not known.
     *
     * @param low the least
     * @param high the most
     * @return the vehicle
     */
    public OtherVehicle mass(Quantity<Mass> low, Quantity<Mass> high) {
      return new OtherVehicle(
          new Range(Kind.MASS, si("least mass", low), si("most mass", high)), stiffness);
    }

    /**
     * The same vehicle where its stiffness is not known.
     *
     * @param low the least
     * @param high the most
     * @return the vehicle
     */
    public OtherVehicle stiffness(Quantity<Stiffness> low, Quantity<Stiffness> high) {
      return new OtherVehicle(
          mass, new Range(Kind.STIFFNESS, si("least stiffness", low), si("most stiffness", high)));
    }
  }

  /**
   * A rigid wall over the full width.
   *
   * @return the wall
   */
  static Obstacle rigidWall() {
    return new RigidWall();
  }

  /**
   * A rigid wall over a part of the width.
   *
   * @param right its right edge; to the left is positive
   * @param left its left edge
   * @return the wall
   */
  static Obstacle partOfWall(Quantity<Length> right, Quantity<Length> left) {
    return new PartOfWall(si("right edge of a wall", right), si("left edge of a wall", left));
  }

  /**
   * A narrow rigid post.
   *
   * @param at its middle; to the left is positive
   * @param width across
   * @return the post
   */
  static Obstacle post(Quantity<Length> at, Quantity<Length> width) {
    return new Post(si("place of a post", at), si("width of a post", width));
  }

  /**
   * Another vehicle, met front to front in line.
   *
   * @param mass of it
   * @param stiffness of its front
   * @return the vehicle
   */
  static OtherVehicle vehicle(Quantity<Mass> mass, Quantity<Stiffness> stiffness) {
    return new OtherVehicle(
        Range.exactly(Kind.MASS, si("mass of the other vehicle", mass)),
        Range.exactly(Kind.STIFFNESS, si("stiffness of the other vehicle", stiffness)));
  }

  /**
   * What it is, in words.
   *
   * @param units the reader's units
   * @return for example {@code a rigid wall over the full width}
   */
  String words(Units units);

  /**
   * Whether it stands in the way of a part that goes straight ahead.
   *
   * @param partRight right edge of the part [m], to the left is positive
   * @param partLeft left edge of the part [m]
   * @return true when it does
   */
  default boolean meets(double partRight, double partLeft) {
    return true;
  }

  /**
   * Whether the force passes the vehicle's middle, so that nothing turns it in plan.
   *
   * @return false for an off-centre hit
   */
  default boolean central() {
    return true;
  }

  /**
   * Inputs that look mistyped.
   *
   * @param units the reader's units
   * @return sentences; none when nothing does
   */
  default List<String> warnings(Units units) {
    return List.of();
  }
}
