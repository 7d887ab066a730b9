package rungwork.solve;

import java.util.Arrays;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Wrench;

/**
 * A load case in numbers: forces on nodes, what acts on members, and how far supports are moved.
 * Nodes in frame axes, members in their own.
 */
final class Loading {
  /** A place this close to a beam's end is its end: rounding of lengths, a part of them [1]. */
  private static final double ROUNDING = 1e-9;

  private static final double[] NO_STATE = new double[Span.STATE];
  private static final double[] NO_FORCES = new double[Member.DEFORMATIONS];

  private final Structure structure;
  private final Plane plane;
  private final double[] nodal;
  private final double[] settled;
  private final Span[] spans;
  private final double[][] free;
  private final double[][] held;
  private double size;

  Loading(Structure structure, LoadCase loadCase) {
    this.structure = structure;
    plane = structure.frame().plane();
    nodal = new double[structure.motions()];
    settled = new double[structure.motions()];
    spans = new Span[structure.members().size()];
    Arrays.fill(spans, Span.EMPTY);
    free = new double[spans.length][];
    held = new double[spans.length][];
    loadCase.loads().forEach(this::add);
    for (int member = 0; member < spans.length; member++) {
      hold(member);
    }
  }

  private void hold(int index) {
    free[index] = NO_STATE;
    held[index] = NO_FORCES;
    if (!spans[index].isEmpty()) {
      Member member = structure.members().get(index);
      free[index] = spans[index].at(1, member);
      held[index] = member.clamped(free[index]);
      member.condensation().giveWay(held[index], forces(free[index]));
    }
  }

  /** N, Vy, Vz, T, My, Mz of a state. */
  private static double[] forces(double[] state) {
    return Arrays.copyOfRange(state, Span.N, Span.STATE);
  }

  private void add(Load load) {
    if (load instanceof Load.AtNode atNode) {
      add(atNode);
    } else if (load instanceof Load.OnBeam onBeam) {
      add(onBeam);
    } else if (load instanceof Load.AlongBeam along) {
      Load.PerMetre same = new Load.PerMetre(along.wx(), along.wy(), along.wz());
      add(structure.member(along.beam()), 0, 1, new Load.PerMetre[] {same, same});
    } else if (load instanceof Load.AlongPart part) {
      add(part);
    } else if (load instanceof Load.Warmth warmth) {
      add(warmth);
    } else if (load instanceof Load.Misfit misfit) {
      add(misfit);
    } else if (load instanceof Load.Settlement settlement) {
      add(settlement);
    }
  }

  private void add(Load.AtNode load) {
    double[] wrench = plane.toFrame(load.wrench());
    int first = 6 * structure.node(load.node());
    for (int i = 0; i < 6; i++) {
      nodal[first + i] += wrench[i];
    }
    count(wrench);
  }

  private void count(double[] wrench) {
    for (int i = 0; i < 6; i++) {
      size += i < 3 ? Math.abs(wrench[i]) : Math.abs(wrench[i]) / structure.size();
    }
  }

  private void add(Load.OnBeam load) {
    int index = structure.member(load.beam());
    double from = fraction(index, load.from());
    double[] wrench = plane.toFrame(load.wrench());
    count(wrench);
    spans[index] = spans[index].plus(new Term(from, 0, member(index).axes().ofLoad(wrench)));
  }

  private void add(Load.AlongPart load) {
    int index = structure.member(load.beam());
    double from = fraction(index, load.from());
    double to = fraction(index, load.to());
    add(index, from, to, new Load.PerMetre[] {load.first(), load.last()});
  }

  private void add(int index, double from, double to, Load.PerMetre[] ends) {
    Member member = member(index);
    double[][] loads = new double[2][];
    for (int i = 0; i < 2; i++) {
      double[] w = plane.toFrame(Wrench.force(ends[i].wx(), ends[i].wy(), ends[i].wz()));
      loads[i] = member.axes().ofLoad(w);
      for (double force : w) {
        size += Math.abs(force) * (to - from) * member.length() / 2;
      }
    }
    spans[index] = spans[index].plus(from, to, loads, member.length());
  }

  private Member member(int index) {
    return structure.members().get(index);
  }

  private double fraction(int index, double from) {
    Member member = member(index);
    double fraction = from / member.length();
    if (fraction > 1 + ROUNDING) {
      throw new ModelException(
          "a load on beam %s acts %s from its start; the beam is %s long"
              .formatted(
                  member.beam().name(), Scale.MM.show(from), Scale.MM.show(member.length())));
    }
    return Math.min(fraction, 1);
  }

  private void add(Load.Warmth load) {
    double a = load.expansion();
    strain(load.beam(), a * load.rise(), 0, a * load.acrossZ(), -a * load.acrossY());
  }

  /** An arc of rise b over L has the curvature 8b/L² (to first order a circle or a parabola). */
  private void add(Load.Misfit load) {
    double length = member(structure.member(load.beam())).length();
    double arc = 8 / (length * length);
    strain(
        load.beam(),
        load.tooLong() / length,
        load.twisted() / length,
        arc * load.bowZ(),
        -arc * load.bowY());
  }

  private void strain(String beam, double stretch, double twist, double bendY, double bendZ) {
    int index = structure.member(beam);
    Member.Rigidity rigidity = member(index).rigidity();
    spans[index] = spans[index].strained(new double[] {stretch, twist, bendY, bendZ});
    size += Math.abs(stretch) * rigidity.stretching();
    size +=
        (Math.abs(twist) * rigidity.twisting()
                + Math.abs(bendY) * rigidity.bendingY()
                + Math.abs(bendZ) * rigidity.bendingZ())
            / structure.size();
  }

  private void add(Load.Settlement load) {
    int motion = plane.motions().indexOf(load.motion());
    int place = 6 * structure.node(load.node()) + motion;
    if (!structure.supported(place) && structure.spring(place) == 0) {
      throw new ModelException(
          "node %s cannot settle by %s: no support holds it against that; hold it, or give it a spring"
              .formatted(load.node(), load.motion().motion()));
    }
    double amount = sign(motion) * load.amount();
    settled[place] += amount;
    size += Math.abs(amount) * structure.spring(place) / (motion < 3 ? 1 : structure.size());
    for (int i = 0; structure.held(place) && i < spans.length; i++) {
      countClamped(i, place, amount);
    }
  }

  /** The frame's normal may be a vehicle axis turned round. */
  private double sign(int motion) {
    double[] normal = plane.toVehicle(0, 0, 1);
    return motion % 3 == 2 ? normal[0] + normal[1] + normal[2] : 1;
  }

  /** What a settlement would do to a member between clamped nodes. */
  private void countClamped(int index, int place, double amount) {
    int[] places = structure.places(index);
    for (int j = 0; j < places.length; j++) {
      if (places[j] == place) {
        double[][] k = member(index).frameStiffness();
        for (int i = 0; i < places.length; i++) {
          size += Math.abs(k[i][j] * amount) / (i % 6 < 3 ? 1 : structure.size());
        }
      }
    }
  }

  /** Forces and moments on all nodes. */
  double[] nodal() {
    return nodal;
  }

  /** How far a support's ground has moved at a motion, or the foot of a spring. */
  double settled(int motion) {
    return settled[motion];
  }

  /** What acts on a member. */
  Span span(int member) {
    return spans[member];
  }

  /** The state at a member's end by what acts on it, its start at rest and free. */
  double[] free(int member) {
    return free[member];
  }

  /** The forces that hold a member's deformations at zero, its joints giving way. */
  double[] held(int member) {
    return held[member];
  }

  /** How far the joints at a member's start open: N, Vy, Vz, T, My, Mz. */
  double[] openingsAtStart(int index, double[] deformations) {
    Member member = member(index);
    return member
        .condensation()
        .openingsAtStart(deformations, member.clamped(free[index]), forces(free[index]));
  }

  /**
   * All loads added without regard to their sign, moments over the frame's size; what only strains
   * counts by the forces that it would cause between clamped nodes [N].
   */
  double size() {
    return size;
  }
}
