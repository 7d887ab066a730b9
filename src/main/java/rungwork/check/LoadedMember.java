package rungwork.check;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Stock;
import rungwork.section.Section;
import rungwork.section.Spot;
import rungwork.solve.BeamForces;
import rungwork.solve.InternalForces;
import rungwork.solve.Response;

/**
 * A member under one load case: its stock, and the internal forces at every cut worth looking at.
 *
 * @param member the member
 * @param loadCase the load case's name
 * @param stock what it is cut from
 * @param whole its whole section; the stock's may count in part, where slender walls buckle
 * @param cuts the cuts from its start to its end
 * @param factor the design factor of this load case
 */
record LoadedMember(
    Member member,
    String loadCase,
    Stock stock,
    Section whole,
    List<Cut> cuts,
    DesignFactor factor) {
  /** A normal or shear strain that makes no difference to any check: 0.2 MPa in steel [1]. */
  static final double NEGLIGIBLE_STRAIN = 1e-6;

  /** Between the places where a single force is extreme, von Mises stress is sampled at these. */
  private static final List<Double> BETWEEN = List.of(0.25, 0.5, 0.75);

  /** Rounding of lengths that were added up [m]. */
  private static final double ROUNDING = 1e-9;

  static LoadedMember of(Member member, Response response, DesignFactor factor) {
    refuseSwayTwice(member, response);
    Frame frame = response.frame();
    List<Beam> beams = member.beams().stream().map(frame::beam).toList();
    for (int i = 1; i < beams.size(); i++) {
      refuseBreak(member, beams.get(i - 1), beams.get(i));
    }
    List<Cut> cuts = new ArrayList<>();
    double along = 0;
    for (Beam beam : beams) {
      cuts.addAll(cuts(beam, along, response.forces(beam.name()), member.welds()));
      along += frame.length(beam);
    }
    refuseWeldsBeyond(member, along);
    Stock stock = new Stock(beams.get(0).section(), beams.get(0).material());
    return new LoadedMember(
        member, response.loadCase().name(), stock, stock.section(), List.copyOf(cuts), factor);
  }

  /**
   * The same member with less of its section counting: its forces act about the new centroid.
   *
   * @param left what of the section counts
   * @return the member; itself where all counts
   */
  LoadedMember reduced(Section left) {
    if (left == stock.section()) {
      return this;
    }
    Spot old = stock.section().walls().get(0).from();
    Spot now = left.walls().get(0).from();
    Spot shift = new Spot(old.y() - now.y(), old.z() - now.z());
    List<Cut> moved = cuts.stream().map(cut -> cut.about(left, shift)).toList();
    return new LoadedMember(
        member, loadCase, new Stock(left, stock.material()), whole, moved, factor);
  }

  /** The largest value over all cuts. */
  double largest(ToDoubleFunction<InternalForces> force) {
    double largest = Double.NEGATIVE_INFINITY;
    for (Cut cut : cuts) {
      largest = Math.max(largest, force.applyAsDouble(cut.forces()));
    }
    return largest;
  }

  /** Stress below which nothing is asked [Pa]. */
  double negligibleStress() {
    return NEGLIGIBLE_STRAIN * stock.material().elasticity().youngsModulus();
  }

  private static List<Cut> cuts(
      Beam beam, double offset, BeamForces forces, List<Member.Weld> welds) {
    TreeSet<Double> fractions = new TreeSet<>(forces.stations());
    fractions.addAll(fractions(forces.length(), offset, welds));
    return fractions.stream()
        .map(at -> new Cut(beam, beam.section(), at, offset + at * forces.length(), forces.at(at)))
        .toList();
  }

  /**
   * The places of a beam that are looked at whatever acts: both ends, some between, and at welds.
   *
   * @param length of the beam [m]
   * @param offset of its start from the member's [m]
   * @param welds of the member
   * @return fractions of its length in rising order [1]
   */
  static TreeSet<Double> fractions(double length, double offset, List<Member.Weld> welds) {
    TreeSet<Double> fractions = new TreeSet<>(BETWEEN);
    fractions.add(0.0);
    fractions.add(1.0);
    for (Member.Weld weld : welds) {
      for (double edge : new double[] {-Member.Weld.ZONE, 0, Member.Weld.ZONE}) {
        double fraction = (weld.at() + edge - offset) / length;
        if (fraction > 0 && fraction < 1) {
          fractions.add(fraction);
        }
      }
    }
    return fractions;
  }

  private static void refuseSwayTwice(Member member, Response response) {
    if (response.theory() == Response.Theory.SECOND_ORDER
        && member.buckling().sway() == Member.Sway.IN_LENGTHS) {
      throw new ModelException(
          "part %s: its effective lengths have the frame's sway inside (%s), and so have the moments of load case %s, solved in second order; never both: give lengths between held ends (K at most 1), or moments of first order"
              .formatted(member.part(), member.buckling().reason(), response.loadCase().name()));
    }
  }

  private static void refuseBreak(Member member, Beam first, Beam next) {
    if (!first.end().equals(next.start())) {
      throw new ModelException(
          "part %s: beam %s ends at %s, but beam %s starts at %s; name the beams in order"
              .formatted(member.part(), first.name(), first.end(), next.name(), next.start()));
    }
    if (!sameStock(first, next)) {
      throw new ModelException(
          "part %s: beams %s and %s are not of one stock; make a part of each"
              .formatted(member.part(), first.name(), next.name()));
    }
  }

  private static boolean sameStock(Beam first, Beam next) {
    return first.section().name().equals(next.section().name())
        && first.section().properties().equals(next.section().properties())
        && first.material().equals(next.material());
  }

  private static void refuseWeldsBeyond(Member member, double length) {
    for (Member.Weld weld : member.welds()) {
      if (weld.at() > length + ROUNDING) {
        throw new ModelException(
            "part %s: weld %s sits %s from its start; the part is %s long"
                .formatted(
                    member.part(), weld.name(), Scale.MM.show(weld.at()), Scale.MM.show(length)));
      }
    }
  }
}
