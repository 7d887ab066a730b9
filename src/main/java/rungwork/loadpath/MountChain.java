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
      List.of(
          "strength of arms and links",
          "two faces of a tube loaded by one bracket",
          "repeated load");

  private static final List<String> ASSUMPTIONS =
      List.of(
          "every part carries the mount's whole load",
          "joints of the suspension turn freely; springs and roll bars stand still");

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
    if (forces.isEmpty()) {
      throw new ModelException("mount " + mount + " is under no load case; give it one at least");
    }
    List<Check> checks = new ArrayList<>();
    for (CornerForces each : forces) {
      for (MountForce force : each.on(mount)) {
        FaceLoad load = face.load(force, factors);
        parts.forEach(part -> checks.addAll(part.checks(load)));
      }
    }
    String title = "mount " + mount;
    List<String> assumed = assumptions(forces);
    return new ChainSheet(
        mount, new CheckSheet(title, checks, NOT_MADE, assumed, cautions(factors)));
  }

  /** Unfactored strengths are asked of in impacts. */
  private static Set<Caution> cautions(Factors factors) {
    return factors.equals(Factors.UNFACTORED) ? Set.of(Caution.IMPACT) : Set.of();
  }

  private static List<String> assumptions(List<CornerForces> forces) {
    List<String> all = new ArrayList<>(ASSUMPTIONS);
    forces.forEach(each -> each.corner().weakness().ifPresent(all::add));
    return all;
  }
}
