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
      List.of("strength of arms and links not listed", "repeated load");

  private static final String WHOLE_LOAD = "every part carries the mount's whole load";
  private static final String FREE_JOINTS =
      "joints of the suspension turn freely; springs and roll bars stand still";

  /** Refuses a chain without parts, and parts of one name. */
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
