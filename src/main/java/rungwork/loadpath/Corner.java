package rungwork.loadpath;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.fault.SolveException;
import rungwork.frame.Wrench;
import rungwork.vehicle.Mount;

/**
 * One wheel's suspension, as many unknown forces as equilibrium has equations: six for the upright
 * and six for each arm. It is taken where it stands; springs do not move it.
 *
 * @param name such as {@code front left}
 * @param hub the wheel on its upright
 * @param members what stands between frame and upright
 */
public record Corner(String name, Hub hub, List<SuspensionMember> members) {
  /** Loads magnified more than this by the members deserve a word: common practice, no source. */
  private static final double MUCH = 20;

  /** What equilibrium may leave over, of the load: rounding of a system of this size. */
  private static final double LEFT_OVER = 1e-9;

  /** Refuses a corner that moves, and one whose forces statics cannot find. */
  public Corner {
    name = Guard.name("corner", name);
    members = List.copyOf(members);
    String whole = called(name, hub);
    refuseTwice(whole, members);
    refuseStray(whole, members, hub.carrier().body());
    Statics statics = statics(name, hub, members);
    if (statics.free()) {
      throw new ModelException(
          "nothing resists "
              + statics.leastResisted(hub.carrier().body())
              + " of "
              + whole
              + "; add what holds it");
    }
  }

  /**
   * Forces of all members that hold the wheel against the ground.
   *
   * @param loadCase the load case's name
   * @param tyre force and moment of the ground on the tyre, at the contact
   * @return the forces
   */
  public CornerForces under(String loadCase, Wrench tyre) {
    Statics statics = statics(name, hub, members);
    Wrench asked = hub.onUpright(tyre);
    double[] forces = statics.solve(asked);
    double left = statics.largest(statics.onFrame(forces).plus(asked.times(-1)));
    if (left > LEFT_OVER * Math.max(statics.largest(asked), statics.given())) {
      throw new SolveException(
          "forces of " + called() + " leave " + Scale.KN.show(left) + " of the load unbalanced");
    }
    return CornerForces.of(this, Guard.name("load case", loadCase), tyre, forces);
  }

  /**
   * What the members hold badly: where they take many times the load.
   *
   * @return such as {@code steering of the upright is hardly resisted: the members of corner front
   *     left take up to 35.0 times an unlucky load}, or nothing
   */
  public Optional<String> weakness() {
    Statics statics = statics(name, hub, members);
    if (statics.magnification() < MUCH) {
      return Optional.empty();
    }
    return Optional.of(
        statics.leastResisted(hub.carrier().body())
            + " is hardly resisted: the members of "
            + called()
            + " take up to "
            + Scale.NUMBER.show(statics.magnification(), 3)
            + " times an unlucky load");
  }

  /**
   * The mounts that hold this corner.
   *
   * @return each once, in the members' order
   */
  public List<Mount> mounts() {
    return members.stream().flatMap(member -> member.mounts().stream()).distinct().toList();
  }

  List<Reaction> reactions() {
    return statics(name, hub, members).all();
  }

  SuspensionMember member(String member) {
    return members.stream()
        .filter(each -> each.name().equals(member))
        .findFirst()
        .orElseThrow(
            () ->
                new ModelException(
                    called()
                        + " has no member "
                        + member
                        + "; it has "
                        + String.join(
                            ", ", members.stream().map(SuspensionMember::name).toList())));
  }

  /** What messages call it, such as {@code corner front left}. */
  String called() {
    return called(name, hub);
  }

  private static String called(String name, Hub hub) {
    return hub.carrier().whole() + " " + name;
  }

  private static Statics statics(String name, Hub hub, List<SuspensionMember> members) {
    Statics statics = new Statics(members, hub);
    if (statics.reactions().size() > statics.equations()) {
      throw new ModelException(
          called(name, hub)
              + " has "
              + statics.reactions().size()
              + " unknown forces for "
              + statics.equations()
              + " equations of equilibrium: statics cannot say how they share; take members out");
    }
    return statics;
  }

  private static void refuseTwice(String whole, List<SuspensionMember> members) {
    if (members.isEmpty()) {
      throw new ModelException(whole + " has no member; name what holds the wheel");
    }
    Set<String> names = new HashSet<>(Set.of(SuspensionMember.UPRIGHT));
    for (SuspensionMember member : members) {
      if (!names.add(member.name())) {
        throw new ModelException(whole + " has two bodies or members named " + member.name());
      }
    }
    Map<String, Mount> mounts = new LinkedHashMap<>();
    for (SuspensionMember member : members) {
      for (Mount mount : member.mounts()) {
        Mount twin = mounts.putIfAbsent(mount.name(), mount);
        if (names.contains(mount.name()) || twin != null && !twin.equals(mount)) {
          throw new ModelException(
              whole + " has mount " + mount.name() + " twice, or a member of its name");
        }
      }
    }
  }

  private static void refuseStray(String whole, List<SuspensionMember> members, String carrier) {
    for (SuspensionMember member : members) {
      String body = heldBy(member);
      if (!body.equals(SuspensionMember.UPRIGHT)
          && members.stream()
              .noneMatch(m -> m.reactions().body().filter(body::equals).isPresent())) {
        throw new ModelException(
            "bar "
                + member.name()
                + " of "
                + whole
                + " holds "
                + body
                + ", which is neither the "
                + carrier
                + " nor an arm");
      }
    }
  }

  private static String heldBy(SuspensionMember member) {
    if (member instanceof SuspensionMember.Bar bar) {
      return bar.body();
    }
    return member instanceof SuspensionMember.RollBarLink link
        ? link.body()
        : SuspensionMember.UPRIGHT;
  }
}
