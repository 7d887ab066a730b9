package rungwork.vehicle;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rungwork.frame.Release;

/**
 * What is assumed of the welded joints between crossmembers and rails, whose real stiffness is not
 * known: it lies between rigid and released.
 *
 * <p>Not every joint can be released at once. With every crossmember hinged in plan the ladder
 * folds like a lozenge, and with every crossmember hinged out of plan each rail spins about itself.
 * So the released variants are: the torsion of all crossmembers let go together, which leaves a
 * stable frame; and one crossmember at a time letting go torsion and both bendings at both ends,
 * the others rigid. Torsion is let go at the right end, which leaves the crossmember without torque
 * except from what is mounted on it.
 *
 * @param words the assumption in words
 * @param released for each crossmember's name, what its ends do not pass on
 */
public record Joints(String words, Map<String, Set<Release>> released) {
  /** Every joint as stiff as the members. */
  public static final Joints RIGID = new Joints("joints rigid", Map.of());

  /** Copies the releases. */
  public Joints {
    released = Map.copyOf(released);
  }

  /**
   * One crossmember hinged at both ends.
   *
   * @param crossmember its name
   * @return joints that let go its torsion and both bendings
   */
  public static Joints released(String crossmember) {
    return new Joints(
        crossmember + " crossmember's joints released",
        Map.of(crossmember, Set.copyOf(EnumSet.allOf(Release.class))));
  }

  /**
   * All crossmembers free of torque.
   *
   * @param crossmembers their names
   * @return joints that let go the torsion of each
   */
  public static Joints torsionReleased(List<String> crossmembers) {
    return new Joints(
        "torsion of all crossmembers released",
        crossmembers.stream()
            .collect(Collectors.toMap(name -> name, name -> Set.of(Release.TORSION))));
  }

  /**
   * What a crossmember's left end lets go.
   *
   * @param crossmember its name
   * @return the bendings among its releases
   */
  Set<Release> atLeft(String crossmember) {
    return atRight(crossmember).stream()
        .filter(release -> release != Release.TORSION)
        .collect(Collectors.toUnmodifiableSet());
  }

  /**
   * What a crossmember's right end lets go.
   *
   * @param crossmember its name
   * @return all of its releases
   */
  Set<Release> atRight(String crossmember) {
    return released.getOrDefault(crossmember, Set.of());
  }

  @Override
  public String toString() {
    return words;
  }
}
