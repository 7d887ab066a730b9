package rungwork.section;

import java.util.ArrayList;
import java.util.List;

/**
 * A second route to an outline's area and second moments: its edge as many short straight pieces,
 * summed by the surveyor's formula. Arcs are cut finely; the pieces' corners lie on the edge.
 */
final class FinePolygon {
  private static final int PIECES = 400;

  private double area;
  private double y;
  private double z;
  private double yy;
  private double zz;
  private double yz;

  FinePolygon(Outline outline) {
    for (List<Segment> loop : outline.loops()) {
      List<Spot> corners = new ArrayList<>();
      for (Segment piece : loop) {
        for (int i = 0; i < PIECES; i++) {
          corners.add(piece.at((double) i / PIECES));
        }
      }
      for (int i = 0; i < corners.size(); i++) {
        add(corners.get(i), corners.get((i + 1) % corners.size()));
      }
    }
  }

  private void add(Spot a, Spot b) {
    double twice = a.y() * b.z() - b.y() * a.z();
    area += twice / 2;
    y += twice * (a.y() + b.y()) / 6;
    z += twice * (a.z() + b.z()) / 6;
    yy += twice * (a.y() * a.y() + a.y() * b.y() + b.y() * b.y()) / 12;
    zz += twice * (a.z() * a.z() + a.z() * b.z() + b.z() * b.z()) / 12;
    yz += twice * (a.y() * b.z() + 2 * a.y() * a.z() + 2 * b.y() * b.z() + b.y() * a.z()) / 24;
  }

  double area() {
    return area;
  }

  /** ∫z² dA about the centroid. */
  double iy() {
    return zz - z * z / area;
  }

  /** ∫y² dA about the centroid. */
  double iz() {
    return yy - y * y / area;
  }

  double iyz() {
    return yz - y * z / area;
  }
}
