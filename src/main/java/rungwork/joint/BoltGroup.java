package rungwork.joint;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import rungwork.check.Check;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.material.RatedMaterial;

/**
 * A plate bolted to a face by several equal bolts. The load is shared elastically: forces in the
 * face as shear, forces and moments out of it as tension, compression bearing on the same plane
 * through the centroid. Prying of the plate counts where {@link #pried} asks for it, preload where
 * {@link #clamped} asks for slip.
 *
 * @param name the group's name
 * @param bolt the bolts
 * @param threads where their threads end
 * @param spots where they are in the face
 * @param plate the thinner plate and its holes
 */
public record BoltGroup(String name, Bolt bolt, Bolt.Threads threads, List<Spot> spots, Plate plate)
    implements Joint {
  /** Refuses a group of fewer than two bolts and two bolts in one place. */
  public BoltGroup {
    name = Guard.name("bolt group", name);
    spots = List.copyOf(spots);
    if (spots.size() < 2) {
      throw new ModelException(
          "bolt group " + name + " has " + spots.size() + " bolt; it needs two at least");
    }
    double nearest = nearest(spots);
    if (nearest <= plate.hole()) {
      throw new ModelException(
          "two bolts of group "
              + name
              + " are "
              + Scale.MM.show(nearest)
              + " apart; their holes of "
              + Scale.MM.show(plate.hole())
              + " would meet");
    }
    refuseNarrow(name, bolt, plate);
  }

  /**
   * The thinner plate.
   *
   * @param material its material
   * @param thickness its thickness [m]
   * @param hole diameter of each hole [m]
   * @param edge from a hole's centre to the nearest edge [m], above the hole's radius
   */
  public record Plate(RatedMaterial material, double thickness, double hole, double edge) {
    /** Refuses a hole that breaks through the edge. */
    public Plate {
      Guard.positive("thickness of the bolted plate", thickness, Scale.MM);
      Guard.positive("hole diameter", hole, Scale.MM);
      Guard.positive("edge distance", edge, Scale.MM);
      if (edge <= hole / 2) {
        throw new ModelException(
            "edge distance "
                + Scale.MM.show(edge)
                + " lets the hole of "
                + Scale.MM.show(hole)
                + " break through the edge; it must stay above "
                + Scale.MM.show(hole / 2));
      }
    }

    /**
     * A plate from typed lengths.
     *
     * @param material its material
     * @param thickness its thickness
     * @param hole diameter of each hole
     * @param edge from a hole's centre to the nearest edge
     * @return the plate
     */
    public static Plate of(
        RatedMaterial material,
        Quantity<Length> thickness,
        Quantity<Length> hole,
        Quantity<Length> edge) {
      return new Plate(
          material, si("plate thickness", thickness), si("hole", hole), si("edge distance", edge));
    }
  }

  /**
   * The shear force on each bolt, in the order of the bolts.
   *
   * @param load the load
   * @return shear forces [N]
   */
  public List<Double> shears(FaceLoad load) {
    return new BoltGroupStrength(this, load).shears();
  }

  /**
   * The tension in each bolt, in the order of the bolts; zero where the plate is pressed on.
   *
   * @param load the load
   * @return tensions [N]; empty when the bolts cannot take the load
   */
  public List<Double> tensions(FaceLoad load) {
    return Pattern.ofBolts(spots).cannotTake(load).isPresent()
        ? List.of()
        : new BoltGroupStrength(this, load).tensions();
  }

  /**
   * The same group with the prying of its plate counted. Each bolt holds as much plate as reaches
   * to the middle between two holes, and no more on that side than to the nearest edge.
   *
   * @param toUpstand from the bolts' middle to the face of what pulls the plate, such as the tab's
   * @return what is asked of the group and of its plate
   */
  public Joint pried(Quantity<Length> toUpstand) {
    double held = Math.min(pitch(), 2 * plate.edge());
    return new PriedGroup(this, si("distance from the bolts to the upstand", toUpstand), held);
  }

  /**
   * The same with the length of plate that each bolt holds.
   *
   * @param toUpstand from the bolts' middle to the face of what pulls the plate
   * @param held plate that one bolt holds, along the row
   * @return what is asked of the group and of its plate
   */
  public Joint pried(Quantity<Length> toUpstand, Quantity<Length> held) {
    return new PriedGroup(
        this,
        si("distance from the bolts to the upstand", toUpstand),
        si("plate that one bolt holds", held));
  }

  /**
   * Whether the clamping force holds the plate where it is.
   *
   * @param preload clamping force of each bolt, at most its proof load
   * @param friction coefficient of the faces: 0.3 on clean mill scale (AISC 360-16, class A)
   * @return what is asked besides
   */
  public Joint clamped(Quantity<Force> preload, double friction) {
    return new SlipResistance(this, si("clamping force", preload), friction);
  }

  @Override
  public List<Check> checks(FaceLoad load) {
    List<Check> checks = withoutPrying(load);
    if (tensions(load).stream().anyMatch(tension -> tension > 0)) {
      checks.add(PriedGroup.open(this, load));
    }
    return checks;
  }

  /** Everything but the prying of the plate. */
  List<Check> withoutPrying(FaceLoad load) {
    return new BoltGroupStrength(this, load).checks();
  }

  /** The smallest distance of two bolts [m]. */
  double pitch() {
    return nearest(spots);
  }

  private static double nearest(List<Spot> spots) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < spots.size(); i++) {
      for (int j = 0; j < i; j++) {
        nearest = Math.min(nearest, spots.get(i).distance(spots.get(j)));
      }
    }
    return nearest;
  }

  private static void refuseNarrow(String name, Bolt bolt, Plate plate) {
    if (plate.hole() < bolt.size().diameter()) {
      throw new ModelException(
          "hole "
              + Scale.MM.show(plate.hole())
              + " of "
              + name
              + " is too narrow for its bolt "
              + bolt
              + "; it must be at least "
              + Scale.MM.show(bolt.size().diameter()));
    }
  }
}
