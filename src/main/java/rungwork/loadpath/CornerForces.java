package rungwork.loadpath;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import rungwork.check.Check;
import rungwork.check.DesignFactor;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Stock;
import rungwork.frame.Wrench;
import rungwork.loadpath.SuspensionMember.Arm;
import rungwork.loadpath.SuspensionMember.Bar;
import rungwork.solve.AppliedWrench;
import rungwork.vehicle.Mount;

/** All forces in one wheel's suspension under one load case, in balance with the ground. */
public final class CornerForces {
  /** A force below this part of the largest is rounding. */
  private static final double NOTHING = 1e-9;

  private final Corner corner;
  private final String loadCase;
  private final Wrench tyre;
  private final List<Reaction> reactions;
  private final double[] forces;

  private CornerForces(Corner corner, String loadCase, Wrench tyre, double[] forces) {
    this.corner = corner;
    this.loadCase = loadCase;
    this.tyre = tyre;
    this.forces = forces.clone();
    reactions = corner.reactions();
  }

  static CornerForces of(Corner corner, String loadCase, Wrench tyre, double[] forces) {
    return new CornerForces(corner, loadCase, tyre, forces);
  }

  /**
   * The corner.
   *
   * @return the corner
   */
  public Corner corner() {
    return corner;
  }

  /**
   * The load case.
   *
   * @return its name
   */
  public String loadCase() {
    return loadCase;
  }

  /**
   * What the ground does to the tyre.
   *
   * @return force and moment at the contact, vehicle axes
   */
  public Wrench tyre() {
    return tyre;
  }

  /**
   * The force in a bar.
   *
   * @param bar its name
   * @return tension positive [N]
   */
  public double along(String bar) {
    SuspensionMember member = corner.member(bar);
    if (!(member instanceof Bar || member instanceof SuspensionMember.RollBarLink)) {
      throw new ModelException(bar + " of " + corner.called() + " is no bar; ask for its mounts");
    }
    for (int i = 0; i < forces.length; i++) {
      if (reactions.get(i).member().equals(bar)) {
        return forces[i];
      }
    }
    throw new IllegalStateException("bar " + bar + " takes no force");
  }

  /**
   * What the corner pushes on a mount. Where two pivots share a thrust along their axis, statics
   * cannot say how: each pivot is asked with none of it and with all of it.
   *
   * @param mount the mount's name
   * @return one force, or both ends of what is possible
   */
  public List<MountForce> on(String mount) {
    Mount held = mount(mount);
    if (thrust(mount) <= NOTHING * largest()) {
      return List.of(new MountForce(held, loadCase, on(mount, reaction -> 1)));
    }
    return List.of(
        new MountForce(
            held,
            loadCase + ", thrust on the other pivot",
            on(mount, reaction -> reaction.shared() ? 0 : 1)),
        new MountForce(held, loadCase + ", thrust on this pivot", on(mount, reaction -> 1)));
  }

  /**
   * What the corner pushes on the frame, as loads for the ladder: a force at each mount, half of a
   * shared thrust on each of two pivots, and the moment of an inboard brake.
   *
   * @return forces that do to the frame what the ground does to the tyre
   */
  public List<AppliedWrench> onFrame() {
    List<AppliedWrench> loads = new ArrayList<>();
    for (Mount mount : corner.mounts()) {
      Wrench force = on(mount.name(), reaction -> reaction.shared() ? 0.5 : 1);
      String name = corner.name() + " suspension at " + mount.name();
      loads.add(new AppliedWrench(name, force, mount.at(), List.of(mount.name())));
    }
    Hub hub = corner.hub();
    if (!hub.brakeCarriers().isEmpty()) {
      String name = corner.name() + " inboard brake";
      loads.add(new AppliedWrench(name, hub.onShaft(tyre), hub.centre(), hub.brakeCarriers()));
    }
    return loads;
  }

  /**
   * The largest bending moment that an arm has where a bar stands on it: of the ball joint's force
   * and of what stands farther out.
   *
   * @param arm its name
   * @return the moment [N·m]; 0 when no bar stands on it
   */
  public double bending(String arm) {
    return cuts(arm).stream().mapToDouble(ArmCut::moment).max().orElse(0);
  }

  /**
   * The strength of a bar under its force, and of an arm where a bar stands on it.
   *
   * @param member its name
   * @param stock what it is cut from; of an arm, what stands where the bar does
   * @param design what its yield strength is divided by
   * @return its checks
   */
  public List<Check> strength(String member, Stock stock, DesignFactor design) {
    MemberStrength strength = new MemberStrength(member, loadCase, stock, design);
    if (corner.member(member) instanceof Bar bar) {
      return strength.bar(along(member), bar.mount().at().distance(bar.end()));
    }
    List<Check> checks = new ArrayList<>();
    cuts(member).forEach(cut -> checks.add(strength.arm(cut.moment(), Math.abs(cut.along()))));
    return checks;
  }

  private List<ArmCut> cuts(String arm) {
    if (!(corner.member(arm) instanceof Arm own)) {
      throw new ModelException(arm + " of " + corner.called() + " is no arm");
    }
    return ArmCut.of(own, this);
  }

  private Mount mount(String name) {
    return corner.mounts().stream()
        .filter(mount -> mount.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new ModelException(
                    corner.called()
                        + " is not held by mount "
                        + name
                        + "; it is held by "
                        + String.join(", ", corner.mounts().stream().map(Mount::name).toList())));
  }

  private Wrench on(String mount, ToDoubleFunction<Reaction> part) {
    Vector3D f = sum(reaction -> reaction.heldBy(mount) ? -part.applyAsDouble(reaction) : 0);
    return Wrench.force(f.getX(), f.getY(), f.getZ());
  }

  /** The sum of all reactions, each times a part of it [N]. */
  Vector3D sum(ToDoubleFunction<Reaction> part) {
    Vector3D sum = Vector3D.ZERO;
    for (int i = 0; i < forces.length; i++) {
      double size = forces[i] * part.applyAsDouble(reactions.get(i));
      sum = sum.add(size, reactions.get(i).along());
    }
    return sum;
  }

  private double thrust(String mount) {
    return sum(reaction -> reaction.shared() && reaction.heldBy(mount) ? 1 : 0).getNorm();
  }

  private double largest() {
    double largest = 0;
    for (double force : forces) {
      largest = Math.max(largest, Math.abs(force));
    }
    return largest;
  }

  @Override
  public String toString() {
    StringBuilder card = new StringBuilder("Corner " + corner.name() + " under " + loadCase + ":");
    for (SuspensionMember member : corner.members()) {
      if (member instanceof Bar) {
        double force = shown(along(member.name()));
        card.append("\n  ").append(member.name()).append(' ');
        card.append(Scale.KN.show(Math.abs(force))).append(force < 0 ? " compression" : " tension");
      }
    }
    corner.mounts().forEach(mount -> on(mount.name()).forEach(force -> card.append(line(force))));
    return card.toString();
  }

  /** Rounding shows as nothing. */
  private double shown(double force) {
    return Math.abs(force) <= NOTHING * largest() ? 0 : force;
  }

  private String line(MountForce force) {
    Wrench w = force.wrench();
    return "\n  on "
        + force.mount().name()
        + " ("
        + force.loadCase()
        + "): forward "
        + Scale.KN.show(shown(w.fx()))
        + ", left "
        + Scale.KN.show(shown(w.fy()))
        + ", up "
        + Scale.KN.show(shown(w.fz()));
  }
}
