package rungwork.frame;

import java.util.Set;
import rungwork.fault.Guard;
import rungwork.fault.ModelException;
import rungwork.material.Material;
import rungwork.section.Section;

/**
 * A straight prismatic member between two nodes. Its own x runs from start to end, its y lies in
 * the frame's plane to the left of the way it runs, its z is the frame's normal. The node line is
 * the line of the section's centroids.
 *
 * @param name unique in its frame
 * @param start name of the start node
 * @param end name of the end node
 * @param section its cross-section, y in the frame's plane and z along the frame's normal
 * @param material its material
 * @param startReleases what its start does not pass on
 * @param endReleases what its end does not pass on
 */
public record Beam(
    String name,
    String start,
    String end,
    Section section,
    Material material,
    Set<Release> startReleases,
    Set<Release> endReleases) {
  /** Refuses a beam that ends where it starts, and a torque released at both ends. */
  public Beam {
    name = Guard.name("beam", name);
    start = Guard.name("start node of beam " + name, start);
    end = Guard.name("end node of beam " + name, end);
    if (start.equals(end)) {
      throw new ModelException("beam " + name + " starts and ends at node " + start);
    }
    startReleases = Set.copyOf(startReleases);
    endReleases = Set.copyOf(endReleases);
    if (startReleases.contains(Release.TORSION) && endReleases.contains(Release.TORSION)) {
      throw new ModelException(
          "beam " + name + " has its torque released at both ends and would spin; keep one end");
    }
  }

  /**
   * A beam that passes everything on at both ends.
   *
   * @param name unique in its frame
   * @param start name of the start node
   * @param end name of the end node
   * @param stock its section and material
   * @return the beam
   */
  public static Beam rigid(String name, String start, String end, Stock stock) {
    return new Beam(name, start, end, stock.section(), stock.material(), Set.of(), Set.of());
  }

  /**
   * This beam with released ends.
   *
   * @param atStart what its start does not pass on
   * @param atEnd what its end does not pass on
   * @return the released beam
   */
  public Beam released(Set<Release> atStart, Set<Release> atEnd) {
    return new Beam(name, start, end, section, material, atStart, atEnd);
  }
}
