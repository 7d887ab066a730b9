package rungwork.loadpath;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rungwork.check.Caution;
import rungwork.check.Check;
import rungwork.check.CheckSheet;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.joint.FaceLoad;
import rungwork.joint.Factors;
import rungwork.joint.Joint;

/**
 * A mount with everything that its load passes on the way to the rail: bolt, tab, weld, wall.
 *
 * @param mount the mount's name
 * @param face where it stands
 * @param parts what it is made of, from the bolt to the wall
 */
public record MountChain(String mount, Face face, List<Joint> parts) {
  private static final List<String> NOT_MADE =
      List.of("strength of arms and links not listed", "repeated load, unless screened apart");

  private static final List<String> NOT_REPEATED =
      List.of("fatigue of bolts, tabs, tube walls and rod ends", "corrosion and weld defects");

  private static final String WHOLE_LOAD = "every part carries the mount's whole load";
  private static final String FREE_JOINTS =
      "joints of the suspension turn freely; springs and roll bars stand still";

  /** Refuses a chain without parts, parts of one name, and a weld that misses its tab. */
  public MountChain {
    mount = Guard.name("mount", mount);
    parts = List.copyOf(parts);
    if (parts.isEmpty()) {
      throw new ModelException("mount " + mount + " has no parts; name what it is made of");
    }
    Set<String> names = new HashSet<>();
    for (Joint part : parts) {
      if (!names.add(part.name())) {
        throw new ModelException("mount " + mount + " has two parts named " + part.name());
      }
    }
    Touching.refuseApart(parts);
  }

  /**
   * What corners do to this mount.
   *
   * @param forces the corner's forces, one a load case
   * @param factors what capacities are divided by
   * @return every question that the parts answer, under every load case
   */
  public ChainSheet under(List<CornerForces> forces, Factors factors) {
    List<MountForce> loads = forces.stream().flatMap(each -> each.on(mount).stream()).toList();
    List<String> assumed = new ArrayList<>(List.of(FREE_JOINTS));
    forces.forEach(each -> each.corner().weakness().ifPresent(assumed::add));
    ChainSheet sheet = under(loads, factors, assumed);
    return new ChainSheet(this, forces, sheet.arrivals(), sheet.sheet());
  }

  /**
   * What stated forces do to this mount.
   *
   * @param forces what pushes it, one a load case
   * @param factors what capacities are divided by
   * @param assumptions what was assumed to find the forces
   * @return every question that the parts answer, under every load case
   */
  public ChainSheet under(List<MountForce> forces, Factors factors, List<String> assumptions) {
    if (forces.isEmpty()) {
      throw new ModelException("mount " + mount + " is under no load case; give it one at least");
    }
    List<Check> checks = new ArrayList<>();
    List<ChainSheet.Arrival> arrivals = new ArrayList<>();
    for (MountForce force : forces) {
      refuseElsewhere(force);
      FaceLoad load = face.load(force, factors);
      arrivals.add(new ChainSheet.Arrival(force, load));
      parts.forEach(part -> checks.addAll(part.checks(load)));
    }
    List<String> assumed = new ArrayList<>(List.of(WHOLE_LOAD));
    assumed.addAll(assumptions);
    CheckSheet sheet =
        new CheckSheet("mount " + mount, checks, NOT_MADE, assumed, cautions(factors));
    return new ChainSheet(this, List.of(), arrivals, sheet);
  }

  /**
   * A swing of load that comes back again and again.
   *
   * @param event such as {@code braking to a stop}
   * @param from the corner's forces at its one end, such as standing
   * @param to the corner's forces at its other end
   * @param count how often in the stated use, at least zero
   */
  public record Swing(String event, CornerForces from, CornerForces to, double count) {
    /** Refuses a negative count. */
    public Swing {
      event = Guard.name("swing", event);
      Guard.notNegative("count of " + event, count, Scale.NUMBER);
    }
  }

  /**
   * Screening of this mount's welds for a stated use, such as a simple year: stress ranges at toe
   * and root, added up by Miner's rule. It compares designs; it is never a life.
   *
   * @param use the swings, one at least
   * @param gammaMf what a detail's class is divided by, such as {@link
   *     rungwork.joint.FatigueScreening#SAFE_LIFE}
   * @return the screening of every weld
   */
  public CheckSheet repeated(List<Swing> use, double gammaMf) {
    List<String> assumed = new ArrayList<>();
    use.forEach(
        swing ->
            assumed.add(
                swing.event()
                    + ": "
                    + Scale.NUMBER.show(swing.count())
                    + " times from "
                    + swing.from().loadCase()
                    + " to "
                    + swing.to().loadCase()
                    + ", counts stated by the user"));
    List<Check> checks = new Repeated(this, use, gammaMf).checks();
    return new CheckSheet(
        "mount " + mount + ", repeated load", checks, NOT_REPEATED, assumed, Set.of());
  }

  private void refuseElsewhere(MountForce force) {
    if (!force.mount().name().equals(mount)) {
      throw new ModelException(
          force.loadCase() + " pushes mount " + force.mount().name() + ", not mount " + mount);
    }
  }

  /** Unfactored strengths are asked of in impacts. */
  private static Set<Caution> cautions(Factors factors) {
    return factors.equals(Factors.UNFACTORED) ? Set.of(Caution.IMPACT) : Set.of();
  }
}
