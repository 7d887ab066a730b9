package rungwork.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import rungwork.frame.Mass;

/**
 * Stiffness and mass of a frame for all its motions together: heavy items that stand off the
 * frame's plane couple the two actions. Stiffness is kept as members, mass as beams and items.
 */
final class MovingMasses {
  private static final int NONE = -1;

  private final Structure structure;
  private final int[] number;
  private final int count;
  private final List<Block> stiffness = new ArrayList<>();
  private final List<Block> mass = new ArrayList<>();

  /**
   * Takes stock.
   *
   * @param structure the frame in pieces
   * @param masses the heavy items, their carriers nodes of it
   */
  MovingMasses(Structure structure, List<Mass> masses) {
    this.structure = structure;
    number = new int[structure.motions()];
    count = count();
    for (int i = 0; i < structure.members().size(); i++) {
      Member member = structure.members().get(i);
      int[] numbers = numbers(structure.places(i));
      stiffness.add(new Block(numbers, member.frameStiffness()));
      mass.add(new Block(numbers, new BeamMass(member).matrix()));
    }
    for (Mass item : masses) {
      ItemMass block = new ItemMass(structure, item);
      mass.add(new Block(numbers(block.places()), block.matrix()));
    }
  }

  private int count() {
    Arrays.fill(number, NONE);
    int next = 0;
    for (int node : structure.order()) {
      for (int motion = 6 * node; motion < 6 * node + 6; motion++) {
        if (!structure.held(motion)) {
          number[motion] = next++;
        }
      }
    }
    return next;
  }

  private int[] numbers(int[] places) {
    return Arrays.stream(places).map(place -> number[place]).toArray();
  }

  /** How many motions are free. */
  int size() {
    return count;
  }

  /**
   * A matrix for K − λM, empty until it is {@link #fill filled}.
   *
   * @return wide enough for the items' carriers
   */
  BandFactor factor() {
    int band =
        IntStream.concat(
                stiffness.stream().mapToInt(Block::reach), mass.stream().mapToInt(Block::reach))
            .max()
            .orElse(0);
    return new BandFactor(new BandMatrix(count, band));
  }

  /** Fills a matrix with K − λM. */
  void fill(BandFactor factor, double lambda) {
    BandMatrix matrix = factor.matrix();
    matrix.clear();
    for (int motion = 0; motion < number.length; motion++) {
      if (number[motion] != NONE) {
        matrix.add(number[motion], number[motion], structure.spring(motion));
      }
    }
    stiffness.forEach(block -> block.addTo(matrix, 1));
    mass.forEach(block -> block.addTo(matrix, -lambda));
  }

  /** M x. */
  double[] massTimes(double[] x) {
    double[] product = new double[count];
    mass.forEach(block -> block.addProduct(product, x));
    return product;
  }

  /** The least that any motion alone has of stiffness over mass [1/s²]. */
  double leastRatio() {
    double[] k = new double[count];
    double[] m = new double[count];
    stiffness.forEach(block -> block.addDiagonal(k));
    mass.forEach(block -> block.addDiagonal(m));
    return IntStream.range(0, count).mapToDouble(i -> k[i] / m[i]).min().orElse(1);
  }

  /** Values of the free motions on all motions of all nodes; zero where a motion is held. */
  double[] spread(double[] x) {
    return Arrays.stream(number).mapToDouble(i -> i == NONE ? 0 : x[i]).toArray();
  }

  /**
   * A symmetric matrix on some of the motions.
   *
   * @param numbers which, held ones marked
   * @param entries a row and a column for each
   */
  private record Block(int[] numbers, double[][] entries) {
    int reach() {
      int first = Integer.MAX_VALUE;
      int last = 0;
      for (int i : numbers) {
        if (i != NONE) {
          first = Math.min(first, i);
          last = Math.max(last, i);
        }
      }
      return Math.max(0, last - first);
    }

    void addTo(BandMatrix matrix, double factor) {
      for (int i = 0; i < numbers.length; i++) {
        for (int j = 0; j < numbers.length; j++) {
          if (numbers[i] != NONE && numbers[j] != NONE) {
            matrix.add(numbers[i], numbers[j], factor * entries[i][j]);
          }
        }
      }
    }

    void addProduct(double[] sum, double[] x) {
      for (int i = 0; i < numbers.length; i++) {
        for (int j = 0; j < numbers.length; j++) {
          if (numbers[i] != NONE && numbers[j] != NONE) {
            sum[numbers[i]] += entries[i][j] * x[numbers[j]];
          }
        }
      }
    }

    void addDiagonal(double[] sum) {
      for (int i = 0; i < numbers.length; i++) {
        if (numbers[i] != NONE) {
          sum[numbers[i]] += entries[i][i];
        }
      }
    }
  }
}
