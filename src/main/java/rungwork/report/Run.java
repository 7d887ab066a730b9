package rungwork.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.TreeSet;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Plane;
import rungwork.frame.Point;
import rungwork.solve.BeamForces;
import rungwork.solve.InternalForces;
import rungwork.solve.Response;

/** The internal forces along a straight run of beams, the front or the left end first. */
final class Run {
  /** Cuts along a beam, besides the places where a moment is extreme. */
  private static final int STEPS = 12;

  private final Frame frame;
  private final List<Cut> cuts = new ArrayList<>();
  private final List<Stop> stops = new ArrayList<>();
  private final Beam beam;
  private double length;

  /** A cut: its place along the run [m] and what acts there. */
  record Cut(double at, InternalForces forces) {}

  /** A node on the way: its name and its place along the run [m]. */
  record Stop(String node, double at) {}

  Run(Response response, List<String> beams) {
    frame = response.frame();
    beam = frame.beam(beams.get(0));
    stops.add(new Stop(beam.start(), 0));
    for (String name : beams) {
      BeamForces forces = response.forces(name);
      for (double fraction : fractions(forces)) {
        cuts.add(new Cut(length + fraction * forces.length(), forces.at(fraction)));
      }
      length += forces.length();
      stops.add(new Stop(frame.beam(name).end(), length));
    }
    if (runsForward()) {
      turnRound();
    }
  }

  List<Cut> cuts() {
    return List.copyOf(cuts);
  }

  List<Stop> stops() {
    return List.copyOf(stops);
  }

  double length() {
    return length;
  }

  String first() {
    return stops.get(0).node();
  }

  String last() {
    return stops.get(stops.size() - 1).node();
  }

  /** The beams' y, a unit vector in vehicle axes. */
  double[] y() {
    double[] along = frame.plane().toFrame(way()[0], way()[1], way()[2]);
    return frame.plane().toVehicle(-along[1], along[0], 0);
  }

  /** The beams' z, a unit vector in vehicle axes: the frame's normal. */
  double[] z() {
    return frame.plane().toVehicle(0, 0, 1);
  }

  private double[] way() {
    Point start = frame.startOf(beam);
    Point end = frame.endOf(beam);
    double size = frame.length(beam);
    return new double[] {
      (end.x() - start.x()) / size, (end.y() - start.y()) / size, (end.z() - start.z()) / size
    };
  }

  /** Drawings have the front on the left, and in front elevation the vehicle's right. */
  private boolean runsForward() {
    double forward = frame.plane() == Plane.FRONT ? 0 : way()[0];
    return forward > 1e-9;
  }

  private void turnRound() {
    cuts.replaceAll(cut -> new Cut(length - cut.at(), cut.forces()));
    stops.replaceAll(stop -> new Stop(stop.node(), length - stop.at()));
    Collections.reverse(cuts);
    Collections.reverse(stops);
  }

  private static TreeSet<Double> fractions(BeamForces forces) {
    TreeSet<Double> fractions = new TreeSet<>(forces.stations());
    for (int i = 0; i <= STEPS; i++) {
      fractions.add((double) i / STEPS);
    }
    return fractions;
  }
}
