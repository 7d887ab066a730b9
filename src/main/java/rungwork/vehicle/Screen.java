package rungwork.vehicle;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungwork.check.DesignFactor;
import rungwork.check.Member;
import rungwork.check.Member.Ends;
import rungwork.check.MemberChecks;
import rungwork.fault.ModelException;
import rungwork.frame.Beam;
import rungwork.frame.Frame;
import rungwork.frame.Stock;
import rungwork.solve.Sweep;
import rungwork.vehicle.Assessment.Screened;
import rungwork.vehicle.Assessment.Stocks;

/**
 * The plan of a screening: for each assumption about the joints a {@link Sweep}, and what does not
 * change with the stocks. Immutable; each thread takes a bench of its own.
 */
final class Screen {
  /** Cuts that a beam may have: those asked for at two welds and more, and the places between. */
  private static final int MORE_CUTS = 8;

  /** Utilisations nearer than this are looked at whole to tell which is higher: rounding [1]. */
  private static final double ALIKE = 1 - 1e-9;

  private final List<StockGroup> groups;
  private final FollowingLoads loads;
  private final List<Joints> joints;
  private final List<Sweep> sweeps;
  private final Frame frame;
  private final int[] groupOf;
  private final List<Piece> pieces = new ArrayList<>();
  private final List<String> names;
  private final String words;
  private final TwistSweep twist;

  /** A member with the numbers of its beams and the places that its checks look at. */
  private record Piece(
      Member member, int group, int[] beams, double[] lengths, double[][] fractions) {}

  Screen(Vehicle vehicle, Ladder ladder, List<Event> events, List<Joints> joints) {
    this.joints = List.copyOf(joints);
    groups = StockGroup.of(ladder);
    loads = new FollowingLoads(vehicle, ladder, groups, events);
    Ends ends = ladder.warping().cases().get(0);
    frame = ladder.frame(Joints.RIGID, ends);
    sweeps =
        joints.stream()
            .map(
                one ->
                    Sweep.combined(ladder.frame(one, ends), loads.basics(), loads.cases().size()))
            .toList();
    groupOf = frame.beams().stream().mapToInt(beam -> group(beam.name())).toArray();
    ladder.members().forEach(member -> pieces.add(piece(member.with(ends))));
    names =
        loads.cases().stream()
            .map(one -> one.event().name() + one.sharing().suffix() + ", ")
            .toList();
    words = ladder.warpingWords(ends);
    twist = new TwistSweep(TwistRig.of(vehicle.on(ladder), ladder));
  }

  private int group(String beam) {
    for (int i = 0; i < groups.size(); i++) {
      if (groups.get(i).beams().contains(beam)) {
        return i;
      }
    }
    throw new ModelException("beam " + beam + " is of no part of the ladder");
  }

  private Piece piece(Member member) {
    List<String> all = frame.beams().stream().map(Beam::name).toList();
    int[] beams = member.beams().stream().mapToInt(all::indexOf).toArray();
    double[] lengths =
        member.beams().stream().mapToDouble(beam -> frame.length(frame.beam(beam))).toArray();
    return new Piece(
        member, groupOf[beams[0]], beams, lengths, MemberChecks.fractions(member, lengths));
  }

  /** A place to screen in, for one thread. */
  Bench bench() {
    return new Bench();
  }

  /** One choice of stocks at a time. */
  final class Bench implements Assessment.Screening {
    /** Stocks whose numbers are kept. */
    private static final int KEPT = 4096;

    private final List<Sweep.Workspace> workspaces = sweeps.stream().map(Sweep::workspace).toList();
    private final TwistSweep.Bench rig = twist.bench();
    private final Map<Stock, MemberChecks.Numbers[]> known = new IdentityHashMap<>();

    /** Assumptions about the joints, what ruled out the last one first. */
    private final List<Integer> order =
        new ArrayList<>(IntStream.range(0, workspaces.size()).boxed().toList());

    private final double[][] cuts;
    private final int[][] counts;
    private final double[][] bounds;
    private final int cases = loads.cases().size();
    private double highest;

    /** Where the highest is: the number of an assumption about the joints, a member and a case. */
    private int worst;

    /** The member and case that governed last, which are looked at first. */
    private int first;

    private String what;

    private Bench() {
      int most = pieces.stream().mapToInt(piece -> piece.beams.length).max().orElse(1);
      int longest =
          pieces.stream()
              .flatMap(piece -> Stream.of(piece.fractions))
              .mapToInt(fractions -> fractions.length)
              .max()
              .orElse(0);
      cuts = new double[most][7 * (longest + MORE_CUTS)];
      bounds = new double[pieces.size()][workspaces.get(0).bounds()];
      counts = new int[most + 1][];
      for (int i = 0; i <= most; i++) {
        counts[i] = new int[i];
      }
    }

    @Override
    public Screened of(Stocks stocks, double enough) {
      Stock[] all = stocks.inOrder(groups.size());
      double[] weights = new double[all.length];
      double mass = 0;
      for (int i = 0; i < all.length; i++) {
        weights[i] = groups.get(i).weight(all[i]);
        mass += weights[i] * groups.get(i).mass().kilograms();
      }
      double[][] factors = loads.factors(weights);
      MemberChecks.Numbers[] numbers = numbers(all);
      highest = 0;
      worst = 0;
      what = "";
      for (int i = 0; i < order.size() && highest <= enough; i++) {
        Integer run = order.get(i);
        solve(workspaces.get(run), all, factors);
        checkAll(run, numbers);
        if (highest > enough) {
          order.remove(i);
          order.add(0, run);
        }
      }
      first = worst % (numbers.length * cases);
      return what.isEmpty()
          ? new Screened(mass, highest, "", "", "", doubts(numbers))
          : new Screened(mass, highest, what, part(), loadCase(), doubts(numbers));
    }

    private String part() {
      return pieces.get(worst / cases % pieces.size()).member.part();
    }

    private String loadCase() {
      Joints assumed = joints.get(worst / cases / pieces.size());
      return names.get(worst % cases) + assumed.words() + words;
    }

    @Override
    public double torsionalStiffness(Stocks stocks) {
      return rig.stiffness(stocks.inOrder(groups.size()), groupOf);
    }

    private MemberChecks.Numbers[] numbers(Stock[] all) {
      MemberChecks.Numbers[] numbers = new MemberChecks.Numbers[pieces.size()];
      for (int i = 0; i < numbers.length; i++) {
        Stock stock = all[pieces.get(i).group];
        MemberChecks.Numbers[] own = known.get(stock);
        if (own == null) {
          if (known.size() >= KEPT) {
            known.clear();
          }
          own = new MemberChecks.Numbers[pieces.size()];
          known.put(stock, own);
        }
        if (own[i] == null) {
          own[i] = numbers(pieces.get(i), stock);
        }
        own[i].forget();
        numbers[i] = own[i];
      }
      return numbers;
    }

    private MemberChecks.Numbers numbers(Piece piece, Stock stock) {
      Map<Beam, Double> beams = new LinkedHashMap<>();
      for (int i = 0; i < piece.beams.length; i++) {
        beams.put(frame.beams().get(piece.beams[i]), piece.lengths[i]);
      }
      return MemberChecks.numbers(piece.member, beams, stiffened(piece, stock));
    }

    private void solve(Sweep.Workspace workspace, Stock[] all, double[][] factors) {
      for (Piece piece : pieces) {
        Stock stock = stiffened(piece, all[piece.group]);
        for (int beam : piece.beams) {
          workspace.stock(beam, stock);
        }
      }
      workspace.combine(factors);
      workspace.solve();
    }

    private Stock stiffened(Piece piece, Stock stock) {
      Member.Warping warping = piece.member.warping();
      return warping.ends().stiffened(stock, warping.length());
    }

    /** Checks every member in every load case, first of all what governed last. */
    private void checkAll(int run, MemberChecks.Numbers[] numbers) {
      for (int i = 0; i < numbers.length; i++) {
        workspaces.get(run).bounds(pieces.get(i).beams, bounds[i]);
      }
      int all = numbers.length * cases;
      int governed = first;
      check(run * all + governed, numbers);
      for (int place = 0; place < all; place++) {
        if (place != governed) {
          check(run * all + place, numbers);
        }
      }
    }

    /**
     * Checks one member in one load case, if it can be worse than what was found up to now. Of two
     * that are as bad as each other the one whose number is lower is kept, whatever the order.
     */
    private void check(int place, MemberChecks.Numbers[] numbers) {
      int i = place / cases % numbers.length;
      int c = place % cases;
      Sweep.Workspace workspace = workspaces.get(place / cases / numbers.length);
      DesignFactor factor = loads.cases().get(c).event().designFactor();
      boolean before = place < worst;
      MemberChecks.Asked asked = new MemberChecks.Asked(factor, before ? highest * ALIKE : highest);
      if (numbers[i].canExceed(bounds[i], c, workspace.stride(), asked)) {
        double found = numbers[i].utilisation(cuts, cut(workspace, pieces.get(i), c), asked);
        if (found > highest || before && found == highest) {
          highest = found;
          worst = place;
          what = numbers[i].what();
        }
      }
    }

    /** The cuts of a member in a load case; returns how many each of its beams has. */
    private int[] cut(Sweep.Workspace workspace, Piece piece, int c) {
      int[] count = counts[piece.beams.length];
      for (int b = 0; b < count.length; b++) {
        count[b] = workspace.cuts(piece.beams[b], c, piece.fractions[b], cuts[b]);
      }
      return count;
    }

    private List<String> doubts(MemberChecks.Numbers[] numbers) {
      List<String> all = new ArrayList<>();
      for (int i = 0; i < numbers.length; i++) {
        for (String doubt : numbers[i].doubts()) {
          all.add(pieces.get(i).member.part() + ": " + doubt);
        }
      }
      return all;
    }
  }
}
