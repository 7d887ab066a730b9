package rungwork.frame;

import java.util.Set;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.material.Material;
import rungwork.section.Section;

/**
 * A straight prismatic member between two nodes. Its own x runs from start to end, its y lies in
 * the frame's plane to the left of the way it runs, its z is the frame's normal. The line between
 * its ends, which are at the nodes or at rigid arms from them, is the line of the section's
 * centroids.
 *
 * @param name unique in its frame
 * @param start name of the start node
 * @param end name of the end node
 * @param section its cross-section, y in the frame's plane and z along the frame's normal
 * @param material its material
 * @param atStart how its start is joined to the start node
 * @param atEnd how its end is joined to the end node
 * @param bending whether shear strain counts
 */
public record Beam(
    String name,
    String start,
    String end,
    Section section,
    Material material,
    End atStart,
    End atEnd,
    Bending bending) {
  /** What is assumed of a cross-section of a bent beam. */
  public enum Bending {
    /** It stays plane and square to the line of centroids: no shear strain (Euler, Bernoulli). */
    WITHOUT_SHEAR_STRAIN,
    /**
     * It stays plane and turns against the line of centroids by V/(G·A), A the section's shear area
     * (Timoshenko 1921).
     */
    WITH_SHEAR_STRAIN
  }

  /** Refuses a beam that ends where it starts, and one whose ends let it move by itself. */
  public Beam {
    name = Guard.name("beam", name);
    start = Guard.name("start node of beam " + name, start);
    end = Guard.name("end node of beam " + name, end);
    if (start.equals(end)) {
      throw new ModelException("beam " + name + " starts and ends at node " + start);
    }
    refuseLoose(name, atStart.released(), atEnd.released());
  }

  private static void refuseLoose(String name, Set<Release> start, Set<Release> end) {
    if (both(Release.TORSION, start, end)) {
      throw new ModelException(
          "beam " + name + " has its torque released at both ends and would spin; keep one end");
    }
    if (both(Release.NORMAL_FORCE, start, end)) {
      throw new ModelException(
          "beam "
              + name
              + " has its normal force released at both ends and would slide; keep one end");
    }
    refuseLoose(name, Release.IN_PLANE_SHEAR, Release.IN_PLANE_BENDING, start, end);
    refuseLoose(name, Release.OUT_OF_PLANE_SHEAR, Release.OUT_OF_PLANE_BENDING, start, end);
  }

  private static boolean both(Release release, Set<Release> start, Set<Release> end) {
    return start.contains(release) && end.contains(release);
  }

  /** Two of the four let go leave a cantilever or a pinned beam; three, or both shears, nothing. */
  private static void refuseLoose(
      String name, Release shear, Release moment, Set<Release> start, Set<Release> end) {
    int released = 0;
    for (Release release : new Release[] {shear, moment}) {
      released += start.contains(release) ? 1 : 0;
      released += end.contains(release) ? 1 : 0;
    }
    if (released > 2 || both(shear, start, end)) {
      throw new ModelException(
          "beam %s has so much %s and %s released that nothing holds it; let go of two of the four at most, and of one shear force at most"
              .formatted(name, shear.force(), moment.force()));
    }
  }

  /**
   * A beam that passes everything on at both ends, without shear strain.
   *
   * @param name unique in its frame
   * @param start name of the start node
   * @param end name of the end node
   * @param stock its section and material
   * @return the beam
   */
  public static Beam rigid(String name, String start, String end, Stock stock) {
    return new Beam(
        name,
        start,
        end,
        stock.section(),
        stock.material(),
        End.RIGID,
        End.RIGID,
        Bending.WITHOUT_SHEAR_STRAIN);
  }

  /**
   * This beam with released ends.
   *
   * @param atStart what its start does not pass on
   * @param atEnd what its end does not pass on
   * @return the released beam
   */
  public Beam released(Set<Release> atStart, Set<Release> atEnd) {
    return joined(this.atStart.releasing(atStart), this.atEnd.releasing(atEnd));
  }

  /**
   * This beam with other ends.
   *
   * @param start how its start is joined to the start node
   * @param end how its end is joined to the end node
   * @return the beam, joined so
   */
  public Beam joined(End start, End end) {
    return new Beam(name, this.start, this.end, section, material, start, end, bending);
  }

  /**
   * This beam under another assumption on bending.
   *
   * @param other whether shear strain counts
   * @return the beam, bending so
   */
  public Beam bending(Bending other) {
    return new Beam(name, start, end, section, material, atStart, atEnd, other);
  }

  /**
   * This beam between other nodes.
   *
   * @param otherName unique in its frame
   * @param from name of the start node
   * @param to name of the end node
   * @return a beam like this one
   */
  public Beam between(String otherName, String from, String to) {
    return new Beam(otherName, from, to, section, material, atStart, atEnd, bending);
  }

  /**
   * What its start does not pass on.
   *
   * @return the releases, none where it is rigid
   */
  public Set<Release> startReleases() {
    return atStart.released();
  }

  /**
   * What its end does not pass on.
   *
   * @return the releases, none where it is rigid
   */
  public Set<Release> endReleases() {
    return atEnd.released();
  }
}
