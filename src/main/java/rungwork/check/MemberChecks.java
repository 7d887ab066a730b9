package rungwork.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import rungwork.check.Verdict.NotChecked;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.LoadCase;
import rungwork.frame.Stock;
import rungwork.material.Material;
import rungwork.material.RatedMaterial;
import rungwork.material.Source;
import rungwork.quantity.Units;
import rungwork.solve.Response;
import rungwork.solve.Solver;
import rungwork.solve.YieldSurface;

/** Every check of one member under one load case. */
public final class MemberChecks {
  /** What {@link #firstYield} finds. */
  public static final String FIRST_YIELD = "first yield";

  /** What {@link #fullyPlastic} finds. */
  public static final String FULLY_PLASTIC = "section fully plastic";

  /** What {@link #column} finds. */
  public static final String COLUMN = "buckling as a column";

  private static final List<Question> QUESTIONS =
      List.of(
          new CombinedStress(),
          new ColumnBuckling(),
          new OpenColumn(),
          new SidewaysStrength(),
          new LateralTorsionalBuckling(),
          new WallSlenderness());

  private static final List<String> ASSUMPTIONS =
      List.of(
          "Members: elastic, first order; the largest stress of all cuts counts. Section moduli"
              + " are elastic even where a section could yield further.",
          "Columns of open sections: buckling by bending and by bending and twisting at once, ends"
              + " held against twist and free to warp; with bending by EN 1993-1-3, 6.2.5(2).",
          "Columns: effective lengths as stated with each part; cold-formed tubes on curve c of EN"
              + " 1993-1-1, a hot-finished tube too. No buckling check where a part is in tension.",
          "Square and round tubes are not susceptible to lateral-torsional buckling (EN 1993-1-1,"
              + " 6.3.2.1(2)); a rectangular tube is shown to be stocky enough or not checked; open"
              + " sections and solid bars by 6.3.2.2, curve d, loads at the shear centre.",
          "Walls: class by EN 1993-1-1, table 5.2, with the elastic stresses where the wall is"
              + " compressed most; round tubes as if compressed uniformly. Flat walls"
              + " of class 4 count with their effective widths (EN 1993-1-5, 4.4), the shift of the"
              + " centroid included.",
          "Twist of open sections: each with its bays' ends free to warp, one held and both held,"
              + " the frame solved anew for each, unless the joints are stated; bimoments of forces"
              + " off the shear centre and the growth of twist under bending are left out.",
          "Within 25 mm of a weld the material's welded-zone yield strength counts.");

  private static final List<String> NOT_MADE =
      List.of(
          "welds of rail-to-crossmember joints",
          "bolts, tabs and brackets at mounts",
          "tube walls where a load enters or a joint bears on them",
          "fatigue");

  private static final Basis SHAPE = new Basis(LimitState.PROPORTION, "no factor");

  private MemberChecks() {}

  /**
   * Checks a member under a load case.
   *
   * @param member the member
   * @param response what the frame does under the load case
   * @param factor the design factor of the load case
   * @return the checks that the load case asks of the member, in the order of the questions
   */
  public static List<Check> of(Member member, Response response, DesignFactor factor) {
    return all(LoadedMember.of(member, response, factor), QUESTIONS);
  }

  /**
   * Checks a member that is not straight, the other way to check a column: an initial bow (EN
   * 1993-1-1:2005, 5.3.2(3)b, table 5.1) stands in an analysis of second order, either way in both
   * directions, and then no column is checked, because its buckling is in the moments.
   *
   * @param member the member, its lengths between held ends
   * @param frame the frame on its supports
   * @param loads the loads
   * @param factor the design factor of the load case
   * @return the checks, of each question the worst over the four bows
   * @throws rungwork.fault.ModelException when the member's effective lengths have the frame's sway
   *     inside
   */
  public static List<Check> bowed(Member member, Frame frame, LoadCase loads, DesignFactor factor) {
    List<Question> questions =
        QUESTIONS.stream()
            .filter(question -> !question.what().equals(ColumnBuckling.WHAT))
            .toList();
    Solver solver = Solver.secondOrder(frame);
    Map<String, Check> worst = new LinkedHashMap<>();
    for (LoadCase bow : new InitialBow(member, ColumnCurve.C).cases(loads, frame)) {
      all(LoadedMember.of(member, solver.solve(bow), factor), questions)
          .forEach(
              check ->
                  worst.merge(
                      check.what() + check.verdict().reason(Units.METRIC),
                      check,
                      (one, two) ->
                          two.utilisation().orElse(0) > one.utilisation().orElse(0) ? two : one));
    }
    return List.copyOf(worst.values());
  }

  /** Every check of a loaded member. */
  static List<Check> all(LoadedMember loaded) {
    return all(loaded, QUESTIONS);
  }

  private static List<Check> all(LoadedMember loaded, List<Question> questions) {
    LoadedMember effective = effective(loaded);
    List<Finding> torsion = OpenTorsion.of(effective).stream().toList();
    List<Finding> proportions = answers(loaded, LimitState.PROPORTION, questions);
    List<String> doubts = new ArrayList<>();
    if (torsion.stream().anyMatch(OpenTorsion::leftOut)) {
      doubts.add("the stress of warping is left out");
    }
    if (proportions.stream().anyMatch(MemberChecks::wallInDoubt)) {
      doubts.add("a wall is not shown to reach yield before it buckles");
    }
    Stream<Finding> strength =
        answers(effective, LimitState.YIELD, questions).stream()
            .map(finding -> finding.doubted(doubts));
    Basis yield = loaded.factor().onYield();
    return Stream.of(
            strength.map(finding -> check(finding, loaded, yield)),
            torsion.stream().map(finding -> check(finding, loaded, yield)),
            proportions.stream().map(finding -> check(finding, loaded, SHAPE)))
        .flatMap(checks -> checks)
        .toList();
  }

  private static List<Finding> answers(
      LoadedMember loaded, LimitState limitState, List<Question> questions) {
    return questions.stream()
        .filter(question -> question.limitState() == limitState && question.arises(loaded))
        .flatMap(question -> answer(question, loaded).stream())
        .toList();
  }

  private static List<Finding> answer(Question question, LoadedMember loaded) {
    Material material = loaded.stock().material();
    if (material instanceof RatedMaterial rated) {
      return question.ask(loaded, rated);
    }
    String reason =
        material.name()
            + " has no guaranteed yield strength; state it with the evidence for it, such as a mill"
            + " certificate";
    return List.of(Finding.notChecked(question.what(), reason, material.source().toString()));
  }

  /** With the effective widths of its walls, as far as the rules for them cover it. */
  private static LoadedMember effective(LoadedMember loaded) {
    if (loaded.stock().material() instanceof RatedMaterial rated
        && SteelRange.of(rated).isEmpty()) {
      return loaded.reduced(EffectiveWidth.reduced(loaded, rated.strength().yield()));
    }
    return loaded;
  }

  private static boolean wallInDoubt(Finding finding) {
    return finding.what().equals(WallSlenderness.WHAT) && finding.verdict() instanceof NotChecked;
  }

  private static Check check(Finding finding, LoadedMember loaded, Basis basis) {
    Source strength = loaded.stock().material().source();
    boolean stated = strength.tag() == Source.Tag.STATED_BY_USER;
    return new Check(
        finding.what(),
        loaded.member().part(),
        finding.where(),
        loaded.loadCase(),
        basis,
        finding.verdict(),
        finding.working(),
        finding.source() + "; " + loaded.stock().material().name() + ": " + strength,
        stated ? "strength stated by the user: " + strength.reference() : "");
  }

  /**
   * Two states of one frame: what stands all along, and loads that grow.
   *
   * @param standing the response to what stands
   * @param growing the response to the growing loads, once
   */
  public record Growth(Response standing, Response growing) {}

  /**
   * Something that begins at a multiple of growing loads.
   *
   * @param what begins, such as {@code first yield}
   * @param where on the part
   * @param factor how many times the growing loads; infinite when they never bring it about [1]
   * @param working the lines of the calculation
   * @param doubts what was left out, or why nothing was found; none when all was counted
   */
  public record Onset(
      String what, String where, double factor, List<Step> working, List<String> doubts) {
    /** Copies its lists. */
    public Onset {
      working = List.copyOf(working);
      doubts = List.copyOf(doubts);
    }

    /** Nothing was found out, and why. */
    static Onset notChecked(String what, String reason) {
      return new Onset(what, Finding.WHOLE, Double.POSITIVE_INFINITY, List.of(), List.of(reason));
    }
  }

  /**
   * When a member's first fibre yields, at the stress points of the cuts that its checks look at.
   * Within 25 mm of a weld the strength's welded yield counts.
   *
   * @param member the member, the ends of its bay as the frame was solved with
   * @param loads both states
   * @param strength that counts here
   * @return the first place to yield
   */
  public static Onset firstYield(Member member, Growth loads, RatedMaterial.Strength strength) {
    return FirstYield.of(member, loads, strength).onset();
  }

  /**
   * When a member's section is fully plastic somewhere, its forces as in the elastic frame. Class 1
   * and 2 sections only, in uniform compression.
   *
   * @param member the member
   * @param loads both states
   * @param surface what its section carries
   * @return the first such place
   */
  public static Onset fullyPlastic(Member member, Growth loads, YieldSurface surface) {
    return FullYield.of(member, loads, surface).onset();
  }

  /**
   * When a member buckles as a column under its compression alone.
   *
   * @param member the member
   * @param growing the response to the growing loads
   * @param yield its yield strength [Pa]
   * @param critical its compression when the frame buckles [N]; empty where it takes no part in
   *     that, for the lengths that come with the member
   * @return the load at which it buckles
   */
  public static Onset column(
      Member member, Response growing, double yield, OptionalDouble critical) {
    LoadedMember loaded = LoadedMember.of(member, growing, DesignFactor.NONE);
    return new ColumnOnset(loaded, critical).onset(yield);
  }

  /**
   * How a utilisation is asked for.
   *
   * @param factor the design factor of the load case
   * @param noInterest utilisations up to this one are of no interest [1]
   */
  public record Asked(DesignFactor factor, double noInterest) {}

  /**
   * The numbers of a member's checks without their working, for sweeps: the highest utilisation
   * that {@link #of} would show, and what can stay unchecked. For one thread at a time.
   */
  public sealed interface Numbers permits TubeNumbers, WholeNumbers {
    /**
     * The highest utilisation of the checks that can govern: of strength all, of proportion those
     * that fail.
     *
     * @param cuts for each of its beams the internal forces at its cuts, as {@link
     *     rungwork.solve.Sweep.Workspace#cuts} gives them for {@link #fractions}
     * @param counts how many cuts each beam has
     * @param asked how it is asked
     * @return demand over capacity [1]; zero where no check can govern; something too low where it
     *     is not above what is of no interest
     */
    double utilisation(double[][] cuts, int[] counts, Asked asked);

    /**
     * Whether a utilisation can be above what is of no interest, without looking at any cut.
     *
     * @param bounds the largest compression along the member, then the largest N, Vy, Vz, T, My and
     *     Mz without their signs, as {@link rungwork.solve.Sweep.Workspace#bounds} gives them [N],
     *     [N·m]
     * @param at where the first of them stands
     * @param stride how far apart they lie
     * @param asked how it is asked
     * @return false where it is certain that none can
     * @throws rungwork.fault.ModelException where there are no such bounds
     */
    boolean canExceed(double[] bounds, int at, int stride, Asked asked);

    /**
     * Which check the last utilisation is of.
     *
     * @return such as {@code combined stress}; empty where none could govern
     */
    String what();

    /**
     * What is not checked, or outside the range of its rule. Of a tube: whether or not the load
     * asks it; of any other section: what the load cases up to now asked.
     *
     * @return each with its reason
     */
    List<String> doubts();

    /** Forgets what the load cases up to now asked. */
    void forget();
  }

  /**
   * Prepares the numbers of a member that is cut from a stock.
   *
   * @param member the member, its ends as the frame is solved with
   * @param beams its beams with their lengths [m], in order
   * @param stock what it is cut from
   * @return its numbers
   */
  public static Numbers numbers(Member member, Map<Beam, Double> beams, Stock stock) {
    WholeNumbers whole = new WholeNumbers(member, beams, stock);
    return TubeNumbers.covers(stock) ? new TubeNumbers(whole) : whole;
  }

  /**
   * The places along a member's beams that its checks look at whatever acts.
   *
   * @param member the member
   * @param lengths of its beams, in order [m]
   * @return for each beam, fractions of its length [1]
   */
  public static double[][] fractions(Member member, double... lengths) {
    double[][] all = new double[lengths.length][];
    double offset = 0;
    for (int i = 0; i < lengths.length; i++) {
      all[i] =
          LoadedMember.fractions(lengths[i], offset, member.welds()).stream()
              .mapToDouble(Double::doubleValue)
              .toArray();
      offset += lengths[i];
    }
    return all;
  }

  /**
   * What these checks assume.
   *
   * @return one sentence or more each
   */
  public static List<String> assumptions() {
    return ASSUMPTIONS;
  }

  /**
   * What a sheet of member checks leaves out altogether.
   *
   * @return kinds of check that are not made
   */
  public static List<String> notMade() {
    return NOT_MADE;
  }
}
