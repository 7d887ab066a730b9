package rungwork.vehicle;

import java.util.ArrayList;
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
 * stable frame; and one crossmember at a time letting go torsion and both bendings, the others
 * rigid. A crossmember keeps its torsion at one end, or it would spin; each end is tried, since
 * what is mounted on the crossmember then twists the other joint alone.
 *
 * @param words the assumption in words
 * @param released for each crossmember's name, what its ends do not pass on
 */
public record Joints(String words, Map<String, Ends> released) {
  /** Every joint as stiff as the members. */
  public static final Joints RIGID = new Joints("joints rigid", Map.of());

  /** Copies the releases. */
  public Joints {
    released = Map.copyOf(released);
  }

  /**
   * What the ends of a crossmember do not pass on.
   *
   * @param left at its left end
   * @param right at its right end
   */
  public record Ends(Set<Release> left, Set<Release> right) {
    private static final Ends RIGID = new Ends(Set.of(), Set.of());

    /** Copies the releases. */
    public Ends {
      left = Set.copyOf(left);
      right = Set.copyOf(right);
    }

    private static Ends of(Side torsionFree, Set<Release> there, Set<Release> elsewhere) {
      return torsionFree == Side.LEFT ? new Ends(there, elsewhere) : new Ends(elsewhere, there);
    }
  }

  /**
   * One crossmember hinged at both ends.
   *
   * @param crossmember its name
   * @param torsionFree the end that lets go its torsion
   * @return joints that let go its torsion there and both bendings at both ends
   */
  public static Joints released(String crossmember, Side torsionFree) {
    Set<Release> bendings = Set.of(Release.IN_PLANE_BENDING, Release.OUT_OF_PLANE_BENDING);
    return new Joints(
        crossmember + " crossmember's joints released, torsion at the " + torsionFree.word(),
        Map.of(crossmember, Ends.of(torsionFree, Release.MOMENTS, bendings)));
  }

  /**
   * All crossmembers free of torsion at the same end.
   *
   * @param crossmembers their names
   * @param torsionFree the end that lets go
   * @return joints that let go the torsion of each
   */
  public static Joints torsionReleased(List<String> crossmembers, Side torsionFree) {
    Ends ends = Ends.of(torsionFree, Set.of(Release.TORSION), Set.of());
    return new Joints(
        "torsion of all crossmembers released at the " + torsionFree.word(),
        crossmembers.stream().distinct().collect(Collectors.toMap(name -> name, name -> ends)));
  }

  /**
   * Rigid, and every released variant that leaves a ladder stable.
   *
   * @param crossmembers the names of its crossmembers; of one alone the bendings are never released
   * @return the assumptions to run, rigid first
   */
  static List<Joints> all(List<String> crossmembers) {
    List<Joints> runs = new ArrayList<>(List.of(RIGID));
    for (Side end : List.of(Side.RIGHT, Side.LEFT)) {
      runs.add(torsionReleased(crossmembers, end));
    }
    if (crossmembers.size() > 1) {
      for (String crossmember : crossmembers) {
        runs.add(released(crossmember, Side.RIGHT));
        runs.add(released(crossmember, Side.LEFT));
      }
    }
    return List.copyOf(runs);
  }

  /** What the ends of a crossmember do not pass on; nothing where none is named. */
  Ends ends(String crossmember) {
    return released.getOrDefault(crossmember, Ends.RIGID);
  }

  @Override
  public String toString() {
    return words;
  }
}
