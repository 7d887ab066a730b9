package rungwork.solve;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.LoadCase;
import rungwork.frame.Stock;

/**
 * One frame under some load cases, solved again and again with other stocks: first order, both
 * actions, the forces at both ends of every beam. What the graph decides (numbering, band, where
 * each stiffness goes) is worked out once; a solve only fills numbers in and allocates nothing.
 * Immutable; each thread takes a {@link Workspace} of its own.
 *
 * <p>The same numbers as {@link Solver}'s up to rounding, and as strict: a frame that is a
 * mechanism, or leaves more than 1e-9 of a load out of balance, is refused.
 *
 * <p><b>Not covered</b>, and refused: beams with springs at their ends or with shear strain, whose
 * stiffness is not in proportion to one rigidity each; warmth, misfit and settlement; a stock whose
 * shear centre lies elsewhere than that of the beam's first stock. Loads do not follow the stocks,
 * unless load cases are {@link #combined}: a beam's own weight is that of the load case.
 */
public final class Sweep {
  /** Shear centres this close are at one place: rounding [m]. */
  private static final double SAME_PLACE = 1e-9;

  private final SweepPlan plan;
  private final Optional<LoadCombination> combination;

  /** Load cases put together at a time: far more than a vehicle has [1]. */
  private static final int MOST_CASES = 10_000;

  private final int cases;

  private Sweep(SweepPlan plan, Optional<LoadCombination> combination, int cases) {
    this.plan = plan;
    this.combination = combination;
    this.cases = cases;
  }

  /**
   * Plans a frame on its supports.
   *
   * @param frame the frame with its first stocks
   * @param loadCases the load cases, at least one
   * @return the plan
   * @throws ModelException when nothing holds the frame, there is no load case, or a beam or load
   *     is of a kind that is not covered
   * @throws SolveException when the frame is a mechanism
   */
  public static Sweep of(Frame frame, List<LoadCase> loadCases) {
    Solver once = Solver.of(frame);
    return planned(new Structure(frame, frame.supports()), once, loadCases);
  }

  /**
   * Plans a frame that nothing holds, for loads that balance themselves.
   *
   * @param frame the frame with its first stocks; its supports are taken away
   * @param loadCases the load cases, at least one
   * @return the plan
   */
  public static Sweep unsupported(Frame frame, List<LoadCase> loadCases) {
    Solver once = Solver.unsupported(frame);
    Frame free = frame.on(List.of());
    return planned(new Structure(free, new FreeMotion(free).holds()), once, loadCases);
  }

  /**
   * Plans a frame that nothing holds, for load cases that are put together from basic ones while it
   * is swept, such as inertia that follows the stocks: see {@link Workspace#combine}.
   *
   * @param frame the frame with its first stocks; its supports are taken away
   * @param basics what the load cases are put together from; none needs to balance itself
   * @param cases how many load cases there will be
   * @return the plan, each case still without a load
   * @throws ModelException as {@link #of}
   */
  public static Sweep combined(Frame frame, List<LoadCase> basics, int cases) {
    if (cases < 1 || cases > MOST_CASES) {
      throw new ModelException(
          "a sweep of %d load cases is asked for; 1 to %d can be put together"
              .formatted(cases, MOST_CASES));
    }
    Solver.unsupported(frame);
    Frame free = frame.on(List.of());
    SweepPlan plan = plan(new Structure(free, new FreeMotion(free).holds()), basics);
    refuseBetween(plan);
    return new Sweep(plan, Optional.of(new LoadCombination(plan.loads)), cases);
  }

  private static void refuseBetween(SweepPlan plan) {
    for (int beam = 0; beam < plan.loads.lines.length; beam++) {
      if (Arrays.stream(plan.loads.lines[beam]).anyMatch(Double::isNaN)) {
        throw new ModelException(
            "beam %s has a load between its ends that is no line load all along, which load cases put together from basic ones do not cover"
                .formatted(plan.structure.members().get(beam).beam().name()));
      }
    }
  }

  private static Sweep planned(Structure structure, Solver once, List<LoadCase> loadCases) {
    SweepPlan plan = plan(structure, loadCases);
    once.solve(loadCases);
    return new Sweep(plan, Optional.empty(), loadCases.size());
  }

  private static SweepPlan plan(Structure structure, List<LoadCase> loadCases) {
    if (loadCases.isEmpty()) {
      throw new ModelException("there is no load case to sweep the frame under");
    }
    refuse(
        structure,
        beam -> !beam.atStart().springs().isEmpty() || !beam.atEnd().springs().isEmpty(),
        "has springs at its ends");
    refuse(structure, beam -> beam.bending() == Beam.Bending.WITH_SHEAR_STRAIN, "has shear strain");
    loadCases.forEach(Sweep::refuseStrains);
    return new SweepPlan(structure, List.copyOf(loadCases));
  }

  private static void refuse(Structure structure, Predicate<Beam> bad, String what) {
    structure.frame().beams().stream()
        .filter(bad)
        .findFirst()
        .ifPresent(
            beam -> {
              throw new ModelException(
                  "beam %s %s, which a sweep does not cover; solve it frame by frame"
                      .formatted(beam.name(), what));
            });
  }

  private static void refuseStrains(LoadCase loadCase) {
    if (loadCase.loads().stream().anyMatch(Sweep::strains)) {
      throw new ModelException(
          "load case %s has warmth, misfit or settlement, which a sweep does not cover; solve it frame by frame"
              .formatted(loadCase.name()));
    }
  }

  private static boolean strains(Load load) {
    return load instanceof Load.Warmth
        || load instanceof Load.Misfit
        || load instanceof Load.Settlement;
  }

  /**
   * A place to solve in, for one thread, with the frame's first stocks.
   *
   * @return the workspace
   */
  public Workspace workspace() {
    return new Workspace();
  }

  /**
   * How many beams there are.
   *
   * @return the count; beams are numbered in the frame's order
   */
  public int beams() {
    return plan.structure.members().size();
  }

  /**
   * How many load cases there are.
   *
   * @return the count
   */
  public int cases() {
    return cases;
  }

  /** One frame at a time. Not for two threads at once. */
  public final class Workspace {
    private final double[] rigidities = new double[4 * beams()];
    private final SweepSolve[] parts;
    private final double[] deformationForces;
    private final double[] shearCentres = new double[beams()];

    private final double[] ends = new double[Member.MOTIONS];
    private final double[] line = new double[SweepLoads.LINE];
    private final SweepLoads loads;
    private final ForceBounds bounds;

    private Workspace() {
      loads = combination.isEmpty() ? plan.loads : plan.nothing(cases);
      deformationForces = new double[Member.DEFORMATIONS * beams() * loads.width];
      bounds = new ForceBounds(loads, deformationForces);
      parts =
          IntStream.range(0, plan.parts.size())
              .mapToObj(action -> new SweepSolve(plan, action, loads))
              .toArray(SweepSolve[]::new);
      for (int beam = 0; beam < beams(); beam++) {
        Member member = plan.structure.members().get(beam);
        shearCentres[beam] = member.offset();
        set(beam, member.rigidity());
      }
    }

    private static void refuseUnknown(String what, int number, int count) {
      if (number < 0 || number >= count) {
        throw new ModelException(
            "there is no %s %d; they are numbered from 0 to %d".formatted(what, number, count - 1));
      }
    }

    private void set(int beam, Member.Rigidity rigidity) {
      for (int which = 0; which < 4; which++) {
        rigidities[4 * beam + which] = rigidity.of(which);
      }
    }

    /**
     * Gives a beam another stock.
     *
     * @param beam its number in the frame's order
     * @param stock section and material
     * @throws ModelException when its shear centre lies elsewhere than the first stock's
     */
    public void stock(int beam, Stock stock) {
      refuseUnknown("beam", beam, shearCentres.length);
      double centre = stock.section().properties().shearCentreY();
      if (Math.abs(centre - shearCentres[beam]) > SAME_PLACE) {
        throw new ModelException(
            "stock %s has its shear centre elsewhere than what beam %s was planned with; plan a sweep of its own for it"
                .formatted(
                    stock.section().name(), plan.structure.members().get(beam).beam().name()));
      }
      double e = stock.material().elasticity().youngsModulus();
      rigidities[4 * beam] = e * stock.section().properties().area();
      rigidities[4 * beam + 1] =
          stock.material().elasticity().shearModulus()
              * stock.section().properties().twistConstant();
      rigidities[4 * beam + 2] = e * stock.section().properties().iz();
      rigidities[4 * beam + 3] = e * stock.section().properties().iy();
    }

    /**
     * Puts all load cases together anew.
     *
     * @param factors for each load case, how many times each basic load case acts, in their order
     * @throws ModelException when there are not as many
     * @throws SolveException when a load case does not balance itself
     */
    public void combine(double[][] factors) {
      int basics = combination.map(LoadCombination::size).orElse(0);
      int from = Arrays.stream(factors).mapToInt(row -> row.length).max().orElse(0);
      boolean ragged = Arrays.stream(factors).anyMatch(row -> row.length != from);
      if (factors.length != cases || from != basics || ragged) {
        throw new ModelException(
            "%d load cases are put together from %d basic ones; factors for %d from %d were given"
                .formatted(cases, basics, factors.length, from));
      }
      double[] flat = new double[basics * loads.width];
      for (int c = 0; c < cases; c++) {
        for (int basic = 0; basic < basics; basic++) {
          flat[basic * loads.width + c] = factors[c][basic];
        }
      }
      combination.ifPresent(one -> one.apply(flat, loads));
      for (int c = 0; c < cases; c++) {
        refuseUnbalanced(c);
      }
    }

    private void refuseUnbalanced(int loadCase) {
      double over = loads.imbalance(loadCase);
      if (!(over <= FirstOrder.LARGEST_RESIDUAL)) {
        throw new SolveException(
            String.format(
                Locale.ROOT,
                "load case %d does not balance itself: %.1e of its load is left over; at most %.0e"
                    + " is accepted",
                loadCase + 1,
                over,
                FirstOrder.LARGEST_RESIDUAL));
      }
    }

    /**
     * Solves all load cases with the stocks as they are now.
     *
     * @throws SolveException when the frame is a mechanism, or more than 1e-9 of a load is out of
     *     balance
     */
    public void solve() {
      for (SweepSolve part : parts) {
        part.solve(rigidities, deformationForces);
      }
    }

    /**
     * What the nodes do to the ends of a beam in the last solve: Fx, Fy, Fz, Mx, My, Mz at its
     * start, then at its end, in its own axes; force and torque about the line of shear centres.
     *
     * @param beam its number in the frame's order
     * @param loadCase the load case's number
     * @param into 12 numbers, replaced [N], [N·m]
     */
    public void endForces(int beam, int loadCase, double[] into) {
      refuseUnknown("beam", beam, shearCentres.length);
      refuseUnknown("load case", loadCase, loads.sizes.length);
      if (into.length < Member.MOTIONS) {
        throw new ModelException(
            "the end forces of a beam are %d numbers; there is room for %d"
                .formatted(Member.MOTIONS, into.length));
      }
      int width = loads.width;
      double[] byLoads = loads.ends[beam];
      for (int i = 0; i < Member.MOTIONS; i++) {
        into[i] = byLoads[i * width + loadCase];
      }
      double length = plan.structure.members().get(beam).length();
      int at = Member.DEFORMATIONS * beam * width + loadCase;
      double n = deformationForces[at];
      double t = deformationForces[at + width];
      double z1 = deformationForces[at + 2 * width];
      double z2 = deformationForces[at + 3 * width];
      double y1 = deformationForces[at + 4 * width];
      double y2 = deformationForces[at + 5 * width];
      double across = (z1 + z2) / length;
      double upright = (y1 + y2) / length;
      into[0] -= n;
      into[1] += across;
      into[2] -= upright;
      into[3] -= t;
      into[4] += y1;
      into[5] += z1;
      into[6] += n;
      into[7] -= across;
      into[8] += upright;
      into[9] += t;
      into[10] += y2;
      into[11] += z2;
    }

    /**
     * The internal forces along a beam in the last solve, if nothing acts between its ends but a
     * line load all along: at the fractions asked for, and at each place between where a shear
     * force or a line load crosses zero, as {@link BeamForces#stations} has them.
     *
     * @param beam its number in the frame's order
     * @param loadCase the load case's number
     * @param fractions places asked for, of the beam's length [1]
     * @param into replaced: for each cut its fraction, N, Vy, Vz, T, My and Mz; room for 7 numbers
     *     for each fraction asked for and {@value LineCuts#ZEROS} more cuts [1], [N], [N·m]
     * @return how many cuts there are
     */
    public int cuts(int beam, int loadCase, double[] fractions, double[] into) {
      int room = LineCuts.CUT * (fractions.length + LineCuts.ZEROS);
      if (into.length < room) {
        throw new ModelException(
            "the forces at the cuts of a beam may be %d numbers; there is room for %d"
                .formatted(room, into.length));
      }
      endForces(beam, loadCase, ends);
      double[] lines = loads.lines[beam];
      for (int i = 0; i < SweepLoads.LINE; i++) {
        line[i] = lines[i * loads.width + loadCase];
      }
      double length = plan.structure.members().get(beam).length();
      return LineCuts.of(ends, line, length, fractions, into);
    }

    /**
     * Bounds of the internal forces along some beams in the last solve, in every load case at once,
     * if nothing acts between their ends but a line load all along: no cut shows more, and most
     * show less.
     *
     * @param beams their numbers in the frame's order
     * @param into replaced: the largest compression, then the largest N, Vy, Vz, T, My and Mz
     *     without their signs; each in all cases, {@link #stride} numbers apart [N], [N·m]
     */
    public void bounds(int[] beams, double[] into) {
      if (into.length < bounds()) {
        throw new ModelException(
            "the bounds of the forces are %d numbers; there is room for %d"
                .formatted(bounds(), into.length));
      }
      bounds.clear(into);
      for (int beam : beams) {
        refuseUnknown("beam", beam, shearCentres.length);
        bounds.raise(beam, plan.structure.members().get(beam).length(), into);
      }
    }

    /**
     * How many numbers the bounds of the forces are.
     *
     * @return the count
     */
    public int bounds() {
      return ForceBounds.EACH * loads.width;
    }

    /**
     * How far apart bounds of one load case lie.
     *
     * @return the count of load cases, filled up to whole blocks
     */
    public int stride() {
      return loads.width;
    }

    /**
     * The sum of all forces times the motions of their nodes in the last solve: twice the work that
     * a load that grows from nothing does.
     *
     * @param loadCase the load case's number
     * @return F·u [N·m]
     * @throws ModelException when there are more load cases than are solved side by side
     */
    public double work(int loadCase) {
      if (loads.blocks() > 1) {
        throw new ModelException(
            "the work of a load case is known of %d load cases at most; there are %d"
                .formatted(SweepLoads.CASES, cases));
      }
      if (loadCase < 0 || loadCase >= cases) {
        throw new ModelException(
            "there is no load case %d; they are counted from 0 to %d"
                .formatted(loadCase, cases - 1));
      }
      double work = 0;
      for (SweepSolve part : parts) {
        work += part.work(loadCase);
      }
      return work;
    }
  }
}
