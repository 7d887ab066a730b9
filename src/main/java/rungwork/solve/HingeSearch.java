package rungwork.solve;

import java.util.HashSet;
import java.util.Set;
import rungwork.fault.SolveException;

/**
 * Finds, at a state of a yielding frame, which hinges work when the load grows: each hinge that
 * works dissipates, and no force leaves its yield surface. Faces come into use one at a time, the
 * one first that would be left fastest, so that two hinges at a node of two beams do not both turn.
 */
final class HingeSearch {
  /** A force this near to its surface is on it: rounding of some steps [1]. */
  private static final double ON_SURFACE = 1 - 1e-9;

  /** A rate below this part of the largest counts as none: rounding [1]. */
  private static final double NO_RATE = 1e-9;

  /** A frame this many times softer than its elastic self moves freely but for rounding [1]. */
  private static final double SOFT = 1e7;

  /** Changes of the hinges in one search; each settles after a few [1]. */
  private static final int TURNS = 400;

  private final PlasticFrame frame;
  private final double[] load;
  private final double elasticTravel;
  private final Set<Place> tied = new HashSet<>();

  /**
   * A search at the frame's present state.
   *
   * @param frame the frame
   * @param load forces on all nodes
   * @param elasticTravel their work for a unit of them while nothing yields [J]
   */
  HingeSearch(PlasticFrame frame, double[] load, double elasticTravel) {
    this.frame = frame;
    this.load = load;
    this.elasticTravel = elasticTravel;
  }

  /**
   * Settles which hinges work.
   *
   * @return how the nodes move per unit of load; or the mechanism by which the frame collapses
   * @throws SolveException when the hinges come to no end
   */
  PlasticFrame.Answer settle() {
    Place last = null;
    for (int turn = 0; turn < TURNS; turn++) {
      PlasticFrame.Answer answer = judged(frame.answer(load));
      double power = power(answer.motions());
      if (answer.free() && !doesWork(answer.motions(), power)) {
        last = untie(last);
        continue;
      }
      PlasticFrame.Answer forward = power < 0 ? reversed(answer) : answer;
      Place backwards = mostBackwards(forward);
      if (backwards != null) {
        frame.members().get(backwards.member).release(backwards.index);
        continue;
      }
      Place leaving = answer.free() ? null : fastestLeaving(forward);
      if (leaving == null) {
        return forward;
      }
      last = use(leaving);
    }
    throw new SolveException(
        "the hinges that work do not settle after %d changes; cut long beams or change a strength a little"
            .formatted(TURNS));
  }

  /** A stable frame follows its load, and not too far. */
  private PlasticFrame.Answer judged(PlasticFrame.Answer answer) {
    double power = power(answer.motions());
    boolean free = answer.free() || power < 0 || power > SOFT * elasticTravel;
    return new PlasticFrame.Answer(answer.motions(), free);
  }

  /** A face in use, or one that could come into use. */
  private record Place(int member, int index, PlasticMember.Hinge hinge) {}

  /** Two hinges at one joint turn against each other without doing any work: one is enough. */
  private Place untie(Place last) {
    if (last == null) {
      throw new SolveException("the frame has a motion of its own that no load does work on");
    }
    PlasticMember member = frame.members().get(last.member);
    member.release(member.active().indexOf(last.hinge));
    tied.add(last);
    return null;
  }

  private Place use(Place place) {
    if (!frame.members().get(place.member).use(place.hinge)) {
      tied.add(place);
    }
    return place;
  }

  private double power(double[] motions) {
    double power = 0;
    for (int i = 0; i < motions.length; i++) {
      power += load[i] * motions[i];
    }
    return power;
  }

  private boolean doesWork(double[] motions, double power) {
    double most = 0;
    for (int i = 0; i < motions.length; i++) {
      most += Math.abs(load[i] * motions[i]);
    }
    double size = frame.structure().size();
    double reach = 0;
    double force = 0;
    for (int i = 0; i < motions.length; i++) {
      double lever = i % 6 < 3 ? 1 : size;
      reach = Math.max(reach, Math.abs(motions[i]) * lever);
      force = Math.max(force, Math.abs(load[i]) / lever);
    }
    return Math.abs(power) > NO_RATE * Math.max(most, reach * force);
  }

  private static PlasticFrame.Answer reversed(PlasticFrame.Answer answer) {
    double[] back = answer.motions().clone();
    for (int i = 0; i < back.length; i++) {
      back[i] = -back[i];
    }
    return new PlasticFrame.Answer(back, answer.free());
  }

  private Place mostBackwards(PlasticFrame.Answer answer) {
    Place found = null;
    double most = 0;
    double fastest = 0;
    for (int m = 0; m < frame.members().size(); m++) {
      PlasticMember member = frame.members().get(m);
      double[] flow = member.flow(answer.motions(), frame.structure().places(m));
      for (int i = 0; i < flow.length; i++) {
        fastest = Math.max(fastest, Math.abs(flow[i]));
        if (-flow[i] > most) {
          most = -flow[i];
          found = new Place(m, i, member.active().get(i));
        }
      }
    }
    return most > NO_RATE * fastest ? found : null;
  }

  private Place fastestLeaving(PlasticFrame.Answer answer) {
    Place found = null;
    double most = 0;
    double largest = 0;
    for (int m = 0; m < frame.members().size(); m++) {
      PlasticMember member = frame.members().get(m);
      double[] rates = member.rates(answer.motions(), frame.structure().places(m));
      for (int place = 0; place < 2 * member.faces(); place++) {
        PlasticMember.Hinge hinge = new PlasticMember.Hinge(place % 2, place / 2);
        double rate = member.use(hinge, rates);
        largest = Math.max(largest, rate);
        if (rate > most
            && member.use(hinge, member.forces()) > ON_SURFACE
            && !member.active().contains(hinge)
            && !tied.contains(new Place(m, 0, hinge))) {
          most = rate;
          found = new Place(m, 0, hinge);
        }
      }
    }
    return most > NO_RATE * largest ? found : null;
  }

  /**
   * How far the load can grow until some force reaches its surface.
   *
   * @param answer how the nodes move per unit of load
   * @return the growth; infinite where nothing comes nearer
   */
  double room(PlasticFrame.Answer answer) {
    double room = Double.POSITIVE_INFINITY;
    for (int m = 0; m < frame.members().size(); m++) {
      PlasticMember member = frame.members().get(m);
      double[] rates = member.rates(answer.motions(), frame.structure().places(m));
      for (int place = 0; place < 2 * member.faces(); place++) {
        PlasticMember.Hinge hinge = new PlasticMember.Hinge(place % 2, place / 2);
        double use = member.use(hinge, member.forces());
        double rate = member.use(hinge, rates);
        if (use <= ON_SURFACE && rate > 0) {
          room = Math.min(room, (1 - use) / rate);
        }
      }
    }
    return room;
  }
}
