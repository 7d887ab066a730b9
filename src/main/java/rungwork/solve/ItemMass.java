package rungwork.solve;

import java.util.List;
import rungwork.frame.Frame;
import rungwork.frame.Load;
import rungwork.frame.Mass;
import rungwork.frame.Plane;
import rungwork.frame.Wrench;

/**
 * A heavy item as the nodes that carry it feel it. The item moves as the nodes take it along: by
 * the rule with which {@link Carriers} share its inertia among them, turned round (virtual work).
 */
final class ItemMass {
  private final Mass mass;
  private final int[] places;
  private final double[][] motions = new double[6][];

  ItemMass(Structure structure, Mass mass) {
    this.mass = mass;
    Frame frame = structure.frame();
    Carriers carriers = Carriers.of(frame, mass.carriers());
    places = new int[6 * mass.carriers().size()];
    for (int i = 0; i < places.length; i++) {
      places[i] = 6 * structure.node(mass.carriers().get(i / 6)) + i % 6;
    }
    for (int i = 0; i < 6; i++) {
      motions[i] = flat(frame.plane(), carriers.share(Wrench.UNITS.get(i), mass.at()));
    }
  }

  private double[] flat(Plane plane, List<Load.AtNode> shares) {
    double[] flat = new double[places.length];
    for (int i = 0; i < shares.size(); i++) {
      System.arraycopy(plane.toFrame(shares.get(i).wrench()), 0, flat, 6 * i, 6);
    }
    return flat;
  }

  /** Which motions of all nodes its matrix works with. */
  int[] places() {
    return places;
  }

  /** As many rows and columns as places [kg, kg·m, kg·m²]. */
  double[][] matrix() {
    double[][] own = own();
    double[][] sum = new double[places.length][places.length];
    for (int a = 0; a < 6; a++) {
      for (int b = 0; b < 6; b++) {
        for (int i = 0; i < places.length; i++) {
          for (int j = 0; j < places.length; j++) {
            sum[i][j] += own[a][b] * motions[a][i] * motions[b][j];
          }
        }
      }
    }
    return sum;
  }

  private double[][] own() {
    double m = mass.kilograms();
    Mass.Inertia i = mass.own();
    return new double[][] {
      {m, 0, 0, 0, 0, 0},
      {0, m, 0, 0, 0, 0},
      {0, 0, m, 0, 0, 0},
      {0, 0, 0, i.xx(), -i.xy(), -i.zx()},
      {0, 0, 0, -i.xy(), i.yy(), -i.yz()},
      {0, 0, 0, -i.zx(), -i.yz(), i.zz()}
    };
  }
}
