package rungwork.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rungwork.frame.LoadCase;
import rungwork.frame.Plane;
import rungwork.frame.Point;

/**
 * All that stays the same while a frame's stocks change: which equation a motion has, where each
 * beam's stiffness goes, and the load cases as numbers. Everything a beam does is linear in its
 * four rigidities EA, GJ, EIz and EIy, so it is kept for rigidities of 1.
 */
final class SweepPlan {
  /** A factor below this part of the largest of its row is rounding [1]. */
  private static final double NOTHING = 1e-14;

  /** Which of the rigidities resists each of the six deformations. */
  private static final int[] RIGIDITY = {0, 1, 2, 2, 3, 3};

  final Structure structure;
  final List<Part> parts = new ArrayList<>();
  final SweepLoads loads;
  private final List<LoadCase> cases;

  SweepPlan(Structure structure, List<LoadCase> cases) {
    this.structure = structure;
    this.cases = cases;
    List<Assembly> assemblies = new ArrayList<>();
    for (Action action : structure.actions()) {
      Assembly assembly = new Assembly(structure, action.motions());
      assemblies.add(assembly);
      parts.add(new Part(action, assembly));
    }
    loads = nothing(cases.size());
    for (int c = 0; c < cases.size(); c++) {
      load(c, new Loading(structure, cases.get(c)), assemblies);
    }
  }

  /** So many cases without a load. */
  SweepLoads nothing(int count) {
    int[] sizes = parts.stream().mapToInt(part -> part.size).toArray();
    return new SweepLoads(count, structure.members().size(), sizes);
  }

  private void load(int c, Loading loading, List<Assembly> assemblies) {
    double[] nodal = nodal(loading);
    loads.sizes[c] = loading.size();
    addResultant(nodal, loads.resultants[c]);
    for (int part = 0; part < assemblies.size(); part++) {
      loads.equations(part, c, assemblies.get(part).gathered(nodal));
    }
    double[] none = new double[Member.DEFORMATIONS];
    for (int index = 0; index < structure.members().size(); index++) {
      Member member = structure.members().get(index);
      double[] ends = member.endForces(none, loading.free(index));
      double[] line = loading.span(index).line(member.length());
      loads.member(index, c, loading.held(index), ends, line);
    }
  }

  /** What a load case is called: its name, or its number where it is put together. */
  String name(SweepLoads of, int loadCase) {
    return of == loads ? cases.get(loadCase).name() : String.valueOf(loadCase + 1);
  }

  /** Forces, and moments about the first node over the frame's size. */
  private void addResultant(double[] nodal, double[] sum) {
    Plane plane = structure.frame().plane();
    Point first = structure.nodes().get(0).at();
    for (int node = 0; node < structure.nodes().size(); node++) {
      Point at = structure.nodes().get(node).at();
      double[] arm = plane.toFrame(at.x() - first.x(), at.y() - first.y(), at.z() - first.z());
      double[] f = Arrays.copyOfRange(nodal, 6 * node, 6 * node + 6);
      double[] moment = {
        f[3] + arm[1] * f[2] - arm[2] * f[1],
        f[4] + arm[2] * f[0] - arm[0] * f[2],
        f[5] + arm[0] * f[1] - arm[1] * f[0]
      };
      for (int i = 0; i < 3; i++) {
        sum[i] += f[i];
        sum[3 + i] += moment[i] / structure.size();
      }
    }
  }

  /** What the nodes feel of the loads, those between members' ends included. */
  private double[] nodal(Loading loading) {
    double[] forces = loading.nodal().clone();
    for (int index = 0; index < structure.members().size(); index++) {
      Member member = structure.members().get(index);
      double[] ends = member.endForces(loading.held(index), loading.free(index));
      double[] taken = member.axes().toNodes(ends);
      int[] places = structure.places(index);
      for (int i = 0; i < taken.length; i++) {
        forces[places[i]] -= taken[i];
      }
    }
    return forces;
  }

  /** One action: its equations, and its beams' stiffness entry by entry. */
  final class Part {
    final int size;
    final int band;
    final double[] springs;

    /** Makes an equation's rest a force: 1, or 1 over the frame's size for a moment [1], [1/m]. */
    final double[] scale;

    /** Entries of the band matrix: place, rigidity (4 · member + which) and factor. */
    final int[] entryPlace;

    final int[] entryRigidity;
    final double[] entryFactor;

    /**
     * Forces of deformations by motions, row by row: a row is a member's deformation; the motions
     * of row r stand from rowStart[r] to rowStart[r + 1].
     */
    final int[] rowStart;

    final int[] rowOf;
    final int[] rowRigidity;
    final int[] rowEquation;
    final double[] rowFactor;

    /** Deformations by the same motions, for equilibrium. */
    final double[] rowTurn;

    private Part(Action action, Assembly assembly) {
      size = assembly.size();
      band = assembly.band();
      springs = assembly.springs();
      double[] scales = new double[structure.motions()];
      Arrays.setAll(scales, motion -> motion % 6 < 3 ? 1 : 1 / structure.size());
      scale = assembly.gathered(scales);
      Entries entries = new Entries(assembly, action);
      entryPlace = entries.place();
      entryRigidity = entries.rigidity();
      entryFactor = entries.factor();
      Rows rows = new Rows(assembly, action);
      rowStart = rows.start();
      rowOf = rows.of();
      rowRigidity = rows.rigidity();
      rowEquation = rows.equation();
      rowFactor = rows.factor();
      rowTurn = rows.turn();
    }
  }

  /** Of the six deformations, those that an action causes. */
  private static boolean causes(Action action, int deformation) {
    return switch (action) {
      case FRAME -> RIGIDITY[deformation] == 0 || RIGIDITY[deformation] == 2;
      case GRILLAGE -> RIGIDITY[deformation] == 1 || RIGIDITY[deformation] == 3;
      case COUPLED -> true;
    };
  }

  /** Condensed stiffness for rigidities of 1, 6 × 6. */
  private double[][] unitStiffness(int member) {
    Member whole = structure.members().get(member);
    double[][] k = whole.condensation().stiffness();
    double[][] unit = new double[k.length][k.length];
    for (int i = 0; i < k.length; i++) {
      for (int j = 0; j < k.length; j++) {
        unit[i][j] = k[i][j] / whole.rigidity().of(RIGIDITY[i]);
      }
    }
    return unit;
  }

  /** The entries that beams add to a band matrix. */
  private final class Entries {
    private final List<double[]> found = new ArrayList<>();

    Entries(Assembly assembly, Action action) {
      for (int member = 0; member < structure.members().size(); member++) {
        for (int which = 0; which < 4; which++) {
          add(assembly, action, member, which);
        }
      }
    }

    private void add(Assembly assembly, Action action, int member, int which) {
      double[][] b = structure.members().get(member).deformationsByMotions();
      double[][] k = unitStiffness(member);
      int[] places = structure.places(member);
      double[][] sum = new double[places.length][places.length];
      for (int m = 0; m < b.length; m++) {
        for (int n = 0; n < b.length; n++) {
          if (RIGIDITY[m] == which && RIGIDITY[n] == which && causes(action, m)) {
            addProduct(sum, k[m][n], b[m], b[n]);
          }
        }
      }
      double largest =
          Arrays.stream(sum).flatMapToDouble(Arrays::stream).map(Math::abs).max().orElse(0);
      for (int i = 0; i < places.length; i++) {
        for (int j = 0; j < places.length; j++) {
          int row = assembly.number(places[i]);
          int column = assembly.number(places[j]);
          if (column >= 0 && row >= column && Math.abs(sum[i][j]) > NOTHING * largest) {
            int place = column * (assembly.band() + 1) + row - column;
            found.add(new double[] {place, 4 * member + which, sum[i][j]});
          }
        }
      }
    }

    private static void addProduct(double[][] sum, double k, double[] left, double[] right) {
      for (int i = 0; i < left.length; i++) {
        for (int j = 0; j < right.length; j++) {
          sum[i][j] += k * left[i] * right[j];
        }
      }
    }

    int[] place() {
      return found.stream().mapToInt(entry -> (int) entry[0]).toArray();
    }

    int[] rigidity() {
      return found.stream().mapToInt(entry -> (int) entry[1]).toArray();
    }

    double[] factor() {
      return found.stream().mapToDouble(entry -> entry[2]).toArray();
    }
  }

  /** The forces of beams' deformations by the equations' motions. */
  private final class Rows {
    private final List<Integer> starts = new ArrayList<>(List.of(0));
    private final List<Integer> deformations = new ArrayList<>();
    private final List<double[]> found = new ArrayList<>();

    Rows(Assembly assembly, Action action) {
      for (int member = 0; member < structure.members().size(); member++) {
        for (int m = 0; m < Member.DEFORMATIONS; m++) {
          if (causes(action, m)) {
            add(assembly, member, m);
          }
        }
      }
    }

    private void add(Assembly assembly, int member, int deformation) {
      double[][] b = structure.members().get(member).deformationsByMotions();
      double[] k = unitStiffness(member)[deformation];
      int[] places = structure.places(member);
      for (int j = 0; j < places.length; j++) {
        double factor = 0;
        for (int n = 0; n < b.length; n++) {
          factor += RIGIDITY[n] == RIGIDITY[deformation] ? k[n] * b[n][j] : 0;
        }
        int equation = assembly.number(places[j]);
        double turn = b[deformation][j];
        if (equation >= 0 && (factor != 0 || turn != 0)) {
          found.add(new double[] {equation, factor, turn});
        }
      }
      starts.add(found.size());
      deformations.add(Member.DEFORMATIONS * member + deformation);
    }

    int[] start() {
      return starts.stream().mapToInt(Integer::intValue).toArray();
    }

    int[] of() {
      return deformations.stream().mapToInt(Integer::intValue).toArray();
    }

    int[] rigidity() {
      return deformations.stream()
          .mapToInt(d -> 4 * (d / Member.DEFORMATIONS) + RIGIDITY[d % Member.DEFORMATIONS])
          .toArray();
    }

    int[] equation() {
      return found.stream().mapToInt(entry -> (int) entry[0]).toArray();
    }

    double[] factor() {
      return found.stream().mapToDouble(entry -> entry[1]).toArray();
    }

    double[] turn() {
      return found.stream().mapToDouble(entry -> entry[2]).toArray();
    }
  }
}
