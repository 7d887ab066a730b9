package rungwork.solve;

import java.util.List;
import java.util.stream.IntStream;
import rungwork.fault.ModelException;
import rungwork.fault.Scale;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Mass;

/**
 * How a frame vibrates by itself with its masses: natural frequencies and shapes, undamped, about
 * the unloaded frame. A frame without supports floats; its six motions as a rigid body are left
 * out.
 *
 * <p><b>Method.</b> Each beam is cut into {@value #PIECES} pieces with consistent mass, so
 * frequencies come out from above: of a beam clamped between two nodes the first within 0.2 %, the
 * second within 1 %; of a frame of many beams closer. Heavy items move with the nodes that carry
 * them, rigidly and without amplification. None is missed: the natural frequencies below the
 * highest one that was found are counted (Sylvester's law of inertia).
 *
 * <p><b>Left out:</b> damping, tyres and springs unless they are supports with springs, the normal
 * forces' effect, warping, turning of cross-sections but where a beam has shear strain.
 */
public final class Vibration {
  private static final int PIECES = 4;

  /** Shapes that are turned along beyond those asked for. */
  private static final int MORE = 8;

  /** Motions of a rigid body. */
  private static final int RIGID = 6;

  /** Steps after which the shapes must have settled. */
  private static final int STEPS = 300;

  /** ω² has settled when a step changes it by less than this: some thousand roundings [1]. */
  private static final double SETTLED = 1e-12;

  /** Two ω² this close are one in the count [1]. */
  private static final double ALIKE = 1e-7;

  private final Frame frame;
  private final Cutting cutting;
  private final Structure structure;
  private final MovingMasses masses;

  private Vibration(Frame frame, List<Mass> masses) {
    this.frame = frame;
    cutting = new Cutting(frame, PIECES);
    structure = new Structure(cutting.frame(), frame.supports());
    this.masses = new MovingMasses(structure, masses);
  }

  /**
   * Prepares a frame.
   *
   * @param frame on its supports, or floating without any; its beams have their own mass
   * @param masses heavy items beside the beams, carried by nodes of the frame
   * @return its vibration
   * @throws ModelException when an item is carried by a node that the frame lacks
   * @throws SolveException when the frame is a mechanism, naming a node and its motion
   */
  public static Vibration of(Frame frame, List<Mass> masses) {
    if (frame.supports().isEmpty()) {
      Solver.unsupported(frame);
    } else {
      Solver.of(frame);
    }
    return new Vibration(frame, masses);
  }

  /**
   * The slowest vibrations.
   *
   * @param count how many, from 1
   * @return from the lowest frequency
   * @throws ModelException when the frame cut into pieces has not so many
   * @throws SolveException when the shapes do not settle, or one was missed
   */
  public List<Mode> modes(int count) {
    int rigid = frame.supports().isEmpty() ? RIGID : 0;
    int most = masses.size() - rigid;
    if (count < 1 || count > most) {
      throw new ModelException(
          "%d vibrations are asked for; this frame gives from 1 to %d".formatted(count, most));
    }
    int wanted = rigid + count;
    Subspace shapes =
        new Subspace(masses, Math.min(masses.size(), wanted + MORE), rigid > 0 ? start() : 0);
    double[] values = settle(shapes, rigid, wanted);
    refuseMissed(values, wanted);
    return IntStream.range(rigid, wanted)
        .mapToObj(i -> new Mode(values[i], shape(shapes.shape(i))))
        .toList();
  }

  private double start() {
    return 1e-4 * masses.leastRatio();
  }

  private MovedShape shape(double[] free) {
    return new MovedShape(cutting, structure, masses.spread(free));
  }

  /** Turns the shapes until the wanted ones stand; the shift follows the slowest vibration. */
  private double[] settle(Subspace shapes, int rigid, int wanted) {
    double[] before = shapes.step();
    for (int step = 1; step < STEPS; step++) {
      double[] values = shapes.step();
      if (step > MORE && settled(before, values, rigid, wanted)) {
        return values;
      }
      if (rigid > 0 && step < MORE) {
        shapes.shift(values[rigid] / 4);
      }
      before = values;
    }
    throw new SolveException(
        "the vibrations did not settle in %d steps; ask for fewer".formatted(STEPS));
  }

  private static boolean settled(double[] before, double[] values, int from, int to) {
    return IntStream.range(from, to)
        .allMatch(i -> Math.abs(values[i] - before[i]) <= SETTLED * values[to - 1]);
  }

  private void refuseMissed(double[] values, int wanted) {
    double above = values[wanted - 1] * (1 + ALIKE);
    long found = IntStream.range(0, values.length).filter(i -> values[i] < above).count();
    BandFactor factor = masses.factor();
    masses.fill(factor, above);
    int counted = factor.factoriseThrough();
    if (counted != found) {
      throw new SolveException(
          "there are %d vibrations below %s, but %d were found"
              .formatted(counted, Mode.show(above), found));
    }
  }

  @Override
  public String toString() {
    return "Vibration of a frame of %d beams, %s"
        .formatted(
            frame.beams().size(), frame.supports().isEmpty() ? "floating" : "on its supports");
  }

  /** One natural vibration. Immutable. */
  public static final class Mode {
    private static final Scale HERTZ = new Scale("Hz", 1);

    private final double squared;
    private final MovedShape shape;

    private Mode(double squared, MovedShape shape) {
      this.squared = squared;
      this.shape = shape;
    }

    /**
     * Its frequency.
     *
     * @return f = ω/2π [Hz]
     */
    public double frequency() {
      return Math.sqrt(squared) / (2 * Math.PI);
    }

    /**
     * How a node moves, the largest move of the shape being 1 and its sign of no meaning.
     *
     * @param node its name
     * @return its motion in vehicle axes
     */
    public Displacement shape(String node) {
      return shape.at(shape.cutting().whole().node(node).name());
    }

    /**
     * How the middle of a beam moves.
     *
     * @param beam its name
     * @return its motion in vehicle axes, to the scale of {@link #shape}
     */
    public Displacement middle(String beam) {
      Beam whole = shape.cutting().whole().beam(beam);
      return shape.middle(whole);
    }

    /**
     * What moves most.
     *
     * @return for example {@code node B moving along z most}
     */
    public String motion() {
      return shape.words();
    }

    private static String show(double squared) {
      return HERTZ.show(Math.sqrt(squared) / (2 * Math.PI));
    }

    @Override
    public String toString() {
      return show(squared) + ", " + motion();
    }
  }
}
