package rungwork.solve;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import rungwork.fault.Scale;
import rungwork.frame.Beam;

/** The load at which a perfect elastic frame becomes unstable, and how it moves then. Immutable. */
public final class CriticalLoad {
  /**
   * A beam takes part when its normal force does at least this part of the work, per metre, that
   * the busiest one does [1]. Common practice, no source: the critical load says little about a
   * beam that is carried along, and its effective length would come out far too long.
   */
  public static final double TAKES_PART = 0.1;

  private final double factor;
  private final Action action;
  private final BuckledShape shape;
  private final List<Beam> beams;
  private final double[] works;
  private final double mostWork;

  CriticalLoad(double factor, Action action, BuckledShape shape) {
    this.factor = factor;
    this.action = action;
    this.shape = shape;
    beams = shape.moves().cutting().whole().beams();
    works = IntStream.range(0, beams.size()).mapToDouble(shape::work).toArray();
    mostWork = IntStream.range(0, beams.size()).mapToDouble(i -> works[i]).max().orElse(0);
  }

  /**
   * How many times the loads are the critical ones.
   *
   * @return the critical factor; below 1 the frame is unstable under its loads [1]
   */
  public double factor() {
    return factor;
  }

  /**
   * How a node moves, the largest move of the shape being 1 and its sign of no meaning.
   *
   * @param node its name
   * @return its motion in vehicle axes
   */
  public Displacement shape(String node) {
    return shape.moves().at(shape.moves().cutting().whole().node(node).name());
  }

  /**
   * How the middle of a beam moves.
   *
   * @param beam its name
   * @return its motion in vehicle axes, to the scale of {@link #shape}
   */
  public Displacement middle(String beam) {
    return shape.moves().middle(shape.moves().cutting().whole().beam(beam));
  }

  /**
   * Whether a beam takes part in the buckling, see {@link #TAKES_PART}.
   *
   * @param beam its name
   * @return false for a beam that is carried along, holds against it or is in tension
   */
  public boolean takesPart(String beam) {
    return works[index(beam)] >= TAKES_PART * mostWork;
  }

  /**
   * The effective length that gives a beam, taken as a column with hinged ends, the force that it
   * carries at the critical load: Lcr = π√(EI/Ncr) (EN 1993-1-1:2005, 6.3.1.2 and BB.1.1, from
   * memory). For a column check with moments of first order; not together with moments of second
   * order, which have the sway inside already.
   *
   * @param beam its name
   * @return the length [m]; empty for a beam that does not take part: it is checked between its
   *     held ends (K = 1), with the sway in the moments
   */
  public OptionalDouble effectiveLength(String beam) {
    int index = index(beam);
    if (!takesPart(beam)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        Math.PI * Math.sqrt(shape.rigidity(index, action) / shape.compression(index)));
  }

  /**
   * What makes this load lower than the true one, perhaps by far.
   *
   * @return which beam takes part that bends and twists at once, because its shear centre lies off
   *     its centroid, while its warping stiffness is left out; empty when none does
   */
  public Optional<String> withoutWarping() {
    return action == Action.FRAME
        ? Optional.empty()
        : beams.stream()
            .filter(beam -> Eccentric.concerns(beam.section().properties()))
            .map(Beam::name)
            .filter(this::takesPart)
            .findFirst()
            .map(
                beam ->
                    "beam "
                        + beam
                        + " would bend and twist at once with only Saint-Venant torsion against it;"
                        + " its warping stiffness, which may be most of what it has, is left out;"
                        + " not checked");
  }

  private int index(String beam) {
    return beams.indexOf(shape.moves().cutting().whole().beam(beam));
  }

  /**
   * How the frame buckles.
   *
   * @return for example {@code in the frame's plane, node B moving along x most}
   */
  public String motion() {
    return action.place() + ", " + shape.moves().words();
  }

  @Override
  public String toString() {
    return "buckles at " + Scale.NUMBER.show(factor) + " times the load " + motion();
  }
}
