package rungwork.loadpath;

import static rungwork.quantity.Quantities.si;

import java.util.List;
import javax.measure.Quantity;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rungwork.check.Check;
import rungwork.check.DesignFactor;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.joint.Tab;
import rungwork.loadpath.Reaction.Ray;
import rungwork.quantity.Stiffness;
import rungwork.vehicle.Mount;

/**
 * A tube between two mounts. It takes a part of what pushes the near one along its own line and
 * takes it to the far one: springs side by side, the mount's own stiffness on the one hand, the
 * tube and the far mount in a row on the other.
 *
 * @param name such as {@code brace between the fore mounts}
 * @param near the loaded mount
 * @param far the mount that helps
 * @param tube what it is cut from
 */
public record Brace(String name, Mount near, Mount far, Stock tube) {
  private static final Scale STIFFNESS = new Scale("N/mm", 1e3);

  /** Refuses a brace of no length. */
  public Brace {
    name = Guard.name("brace", name);
    if (near.at().distance(far.at()) < SuspensionMember.ONE_POINT) {
      throw new ModelException("brace " + name + " joins a mount with itself");
    }
  }

  /**
   * What became of a load.
   *
   * @param inBrace force in the tube, tension positive [N]
   * @param onNear what the near mount keeps
   * @param onFar what the far mount gets
   */
  public record Shared(double inBrace, MountForce onNear, MountForce onFar) {
    /** Refuses a force that is no number. */
    public Shared {
      Guard.solved("force in the brace", inBrace);
    }
  }

  /**
   * The tube's stiffness along itself, E·A/L.
   *
   * @return the stiffness [N/m]
   */
  public double stiffness() {
    double modulus = tube.material().elasticity().youngsModulus();
    return modulus * tube.section().properties().area() / length();
  }

  /**
   * A tab's stiffness across its thin side, 3·E·I/h³ for each plate: as stiff as it can be, since
   * the wall under it gives way too.
   *
   * @param tab the tab
   * @return the stiffness [N/m]
   */
  public static double sideways(Tab tab) {
    Tab.Plate plate = tab.plate();
    double second = plate.foot() * Math.pow(plate.thickness(), 3) / 12;
    double one =
        3 * tab.material().elasticity().youngsModulus() * second / Math.pow(plate.height(), 3);
    return plate.count().plates() * one;
  }

  /**
   * The share of a push along the tube that it takes.
   *
   * @param own stiffness of the near mount along the tube [N/m]
   * @param other stiffness of the far mount along the tube [N/m]
   * @return the share [1]
   */
  public double share(double own, double other) {
    Guard.positive("stiffness of mount " + near.name(), own, STIFFNESS);
    Guard.positive("stiffness of mount " + far.name(), other, STIFFNESS);
    double row = 1 / (1 / stiffness() + 1 / other);
    return row / (own + row);
  }

  /**
   * How a load on the near mount shares.
   *
   * @param load what pushes the near mount
   * @param own stiffness of the near mount along the tube
   * @param other stiffness of the far mount along the tube
   * @return the shares
   */
  public Shared under(MountForce load, Quantity<Stiffness> own, Quantity<Stiffness> other) {
    if (!load.mount().equals(near)) {
      throw new ModelException(
          "brace "
              + name
              + " helps mount "
              + near.name()
              + "; the load pushes mount "
              + load.mount().name());
    }
    Vector3D u = Ray.vector(near.at(), far.at()).normalize();
    Wrench w = load.wrench();
    double along = new Vector3D(w.fx(), w.fy(), w.fz()).dotProduct(u);
    double taken = along * share(si("stiffness", own), si("stiffness", other));
    Wrench moved = Wrench.force(taken * u.getX(), taken * u.getY(), taken * u.getZ());
    return new Shared(
        -taken,
        new MountForce(near, load.loadCase(), w.plus(moved.times(-1))),
        new MountForce(far, load.loadCase(), moved));
  }

  /**
   * The tube's strength under its force; its coped ends are a weld all round a round tube.
   *
   * @param shared how a load shared
   * @param design what its yield strength is divided by
   * @return its checks
   */
  public List<Check> strength(Shared shared, DesignFactor design) {
    return new MemberStrength(name, shared.onNear().loadCase(), tube, design)
        .bar(shared.inBrace(), length());
  }

  private double length() {
    return near.at().distance(far.at());
  }
}
