package rungwork.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;
import rungwork.frame.LoadCase;
import rungwork.solve.Pushover.Place;

/**
 * Lets loads grow on a frame, from event to event: each step ends where the next force reaches its
 * yield surface or a hinge would turn backwards, until the frame moves as a mechanism.
 */
final class HingeByHinge {
  /** Steps of a path; a frame of some tens of beams takes some tens [1]. */
  private static final int STEPS = 5000;

  /** How well the loads' work and the hinges' agree in the collapse [1]. */
  private static final double CERTAIN = 1e-5;

  private final Structure structure;
  private final PlasticFrame frame;
  private final PushoverPath path;
  private double[] mechanism = new double[0];
  private double[] elastic = new double[0];

  /**
   * A frame on which nothing acts yet.
   *
   * @param structure the frame, held
   * @param strength the yield surface of each beam
   * @throws SolveException when it is a mechanism from the start
   */
  HingeByHinge(Structure structure, Function<Beam, YieldSurface> strength) {
    this.structure = structure;
    frame = new PlasticFrame(structure, strength);
    path = new PushoverPath(structure.motions());
    frame.refuseMechanism(frame.answer(new double[structure.motions()]));
  }

  /** Puts on what is constant, then lets the other load grow until the frame collapses. */
  void push(LoadCase constant, LoadCase growing) {
    NodalLoads loads = new NodalLoads(structure);
    double[] first = loads.of(constant);
    double[] then = loads.of(growing);
    refuseNothing(growing.name(), then);
    double firstTravel = work(first, frame.answer(first).motions());
    elastic = frame.answer(then).motions();
    grow(constant.name(), first, firstTravel, 1);
    refuseCollapse();
    path.begin(hinges());
    grow(growing.name(), then, work(then, elastic), Double.POSITIVE_INFINITY);
    certify(first, then);
  }

  private static void refuseNothing(String name, double[] load) {
    if (isNothing(load)) {
      throw new ModelException(
          "load case %s has no force in it that could grow until the frame collapses"
              .formatted(name));
    }
  }

  private static boolean isNothing(double[] load) {
    return Arrays.stream(load).allMatch(force -> force == 0);
  }

  private void refuseCollapse() {
    if (collapses()) {
      throw new SolveException(
          "the frame collapses under the constant load alone, at %.2f of it"
              .formatted(path.factor()));
    }
  }

  private static double work(double[] load, double[] ways) {
    double work = 0;
    for (int i = 0; i < load.length; i++) {
      work += load[i] * ways[i];
    }
    return work;
  }

  /** The loads must do just the work that the hinges take: then both bounds meet. */
  private void certify(double[] constant, double[] growing) {
    double taken = 0;
    for (int m = 0; m < frame.members().size(); m++) {
      taken += member(m).dissipation(mechanism, structure.places(m));
    }
    double given = path.factor() * work(growing, mechanism) + work(constant, mechanism);
    if (!(Math.abs(given - taken) <= CERTAIN * Math.abs(taken))) {
      throw new SolveException(
          "the collapse at %.4g times the load is not certain: the loads do %.4g, the hinges take %.4g; stiffnesses differ too much"
              .formatted(path.factor(), given, taken));
    }
  }

  private void grow(String name, double[] load, double elasticTravel, double until) {
    if (isNothing(load)) {
      return;
    }
    for (int step = 0; step < STEPS; step++) {
      List<Place> before = hinges();
      HingeSearch search = new HingeSearch(frame, load, elasticTravel);
      PlasticFrame.Answer answer = search.settle();
      path.note(before, hinges());
      if (answer.free()) {
        mechanism = perTravel(answer.motions(), load);
        path.noteEnd(hinges());
        return;
      }
      double room = Math.min(search.room(answer), until - path.factor());
      if (Double.isInfinite(room)) {
        throw new SolveException(
            "load case %s never makes the frame collapse: nothing in it yields under this load"
                .formatted(name));
      }
      advance(answer.motions(), load, room);
      if (path.factor() >= until) {
        return;
      }
    }
    throw new SolveException(
        "load case %s has not come to collapse in %d steps".formatted(name, STEPS));
  }

  private void advance(double[] rates, double[] load, double step) {
    for (int m = 0; m < frame.members().size(); m++) {
      member(m).advance(member(m).rates(rates, structure.places(m)), step);
    }
    path.advance(rates, work(load, rates), step);
  }

  private List<Place> hinges() {
    List<Place> places = new ArrayList<>();
    for (int m = 0; m < frame.members().size(); m++) {
      for (int end = 0; end < 2; end++) {
        if (member(m).yieldsAt(end)) {
          places.add(place(m, end));
        }
      }
    }
    return places;
  }

  private Place place(int member, int end) {
    Beam beam = structure.members().get(member).beam();
    return new Place(beam.name(), end == 0 ? beam.start() : beam.end());
  }

  private static double[] perTravel(double[] rates, double[] load) {
    double unit = 1 / work(load, rates);
    return Arrays.stream(rates).map(rate -> rate * unit).toArray();
  }

  PushoverPath path() {
    return path;
  }

  PlasticMember member(int index) {
    return frame.members().get(index);
  }

  boolean collapses() {
    return mechanism.length > 0;
  }

  /** Motions of the nodes in the collapse, for a unit of travel; nothing without one. */
  double[] mechanism() {
    return mechanism;
  }

  /** Motions of the nodes for a unit of the growing load while nothing yields. */
  double[] elastic() {
    return elastic;
  }
}
