package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class WarpingTest {
  /** Arcs by five points: to this part. */
  private static final double QUADRATURE = 1e-6;

  static List<List<Strip>> shapes() {
    List<List<Strip>> shapes = new ArrayList<>();
    Shapes.thin().forEach(shape -> shapes.add(shape.strips()));
    for (int seed = 0; seed < 8; seed++) {
      shapes.add(Walls.open(new Random(seed)));
      shapes.add(Walls.twoCells(new Random(seed)));
    }
    return shapes;
  }

  /** Rounding, where walls that meet in one point do not warp: sizes of other shapes are 1e-9. */
  private static final double NOTHING = 1e-20;

  /** ∫ω·y dA = ∫ω·z dA = 0: the pole of the warping is the shear centre of the shear flow. */
  @ParameterizedTest
  @MethodSource("shapes")
  void the_shear_centre_of_the_flow_is_the_pole_of_the_warping(List<Strip> strips) {
    ThinWalls walls = new ThinWalls(strips);
    Warping warping = walls.warping();
    List<Strip> centred = warping.twist().strips();
    double size = 0;
    double none = 0;
    double alongY = 0;
    double alongZ = 0;
    for (int i = 0; i < centred.size(); i++) {
      int wall = i;
      Segment path = centred.get(i).path();
      double area = centred.get(i).area();
      none += area * Gauss.mean(s -> warping.at(wall, s));
      alongY += area * Gauss.mean(s -> warping.at(wall, s) * path.at(s).y());
      alongZ += area * Gauss.mean(s -> warping.at(wall, s) * path.at(s).z());
      size += area * Gauss.mean(s -> Math.abs(warping.at(wall, s)));
    }
    assertEquals(0, none, QUADRATURE * size + NOTHING);
    assertEquals(0, alongY, QUADRATURE * size * 0.1 + NOTHING);
    assertEquals(0, alongZ, QUADRATURE * size * 0.1 + NOTHING);
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void the_sectorial_coordinate_runs_on_without_a_step_around_every_cell(List<Strip> strips) {
    Warping warping = new ThinWalls(strips).warping();
    List<Strip> walls = warping.twist().strips();
    for (int i = 0; i < walls.size(); i++) {
      for (int j = 0; j < walls.size(); j++) {
        if (walls.get(i).path().end().minus(walls.get(j).path().start()).size() < 1e-8) {
          assertEquals(warping.at(i, 1), warping.at(j, 0), 1e-12);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void splitting_walls_changes_no_warping(List<Strip> strips) {
    double whole = new ThinWalls(strips).warping().resistance().iw();
    double split = new ThinWalls(Walls.halved(strips)).warping().resistance().iw();
    assertEquals(whole, split, QUADRATURE * whole + 1e-22);
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void turning_the_walls_changes_no_invariant(List<Strip> strips) {
    for (double angle : new double[] {0.3, 1.1, 2.5, -0.7}) {
      Turn turn = Turn.by(angle);
      ThinWalls old = new ThinWalls(strips);
      ThinWalls turned =
          new ThinWalls(
              strips.stream()
                  .map(s -> new Strip(s.path().turned(turn), s.thickness(), s.filled()))
                  .toList());
      double iw = old.warping().resistance().iw();
      assertEquals(iw, turned.warping().resistance().iw(), 1e-9 * iw + 1e-24);
      assertEquals(1, turned.torsionConstant() / old.torsionConstant(), 1e-9);
      assertEquals(0, turn.of(old.shearCentre()).minus(turned.shearCentre()).size(), 1e-9);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 3})
  void the_warping_constant_grows_with_the_sixth_power_of_size(double factor) {
    for (ThinShape shape : Shapes.thin()) {
      Properties small = shape.section().properties();
      Properties large = Shapes.scaled(shape, factor).section().properties();
      double sixth = Math.pow(factor, 6);
      assertEquals(sixth * small.iw(), large.iw(), 1e-9 * large.iw() + 1e-24);
      assertEquals(sixth * small.iwAcross(), large.iwAcross(), 1e-9 * large.iwAcross());
      assertEquals(Math.pow(factor, 4) * small.iy(), large.iy(), 1e-9 * large.iy());
      assertEquals(Math.pow(factor, 4) * small.it(), large.it(), 1e-9 * large.it());
    }
  }

  @Test
  void walls_that_meet_in_one_point_warp_only_across_their_thickness() {
    double b = 0.05;
    double t = 0.004;
    List<Strip> angle =
        List.of(
            Walls.strip(new Spot(0, b), Spot.ORIGIN, t),
            Walls.strip(Spot.ORIGIN, new Spot(b, 0), t));
    ShearTorsion.Resistance resistance = new ThinWalls(angle).warping().resistance();
    assertEquals(0, resistance.iw(), 1e-24);
    double bothLegs = t * t * t * 2 * b * b * b / 36;
    assertEquals(bothLegs, resistance.across(), 1e-9 * bothLegs);
  }

  /** A ring, and an oblong tube whose upright walls are as much thicker as they are longer. */
  @Test
  void a_tube_whose_walls_go_with_its_sides_does_not_warp() {
    Arc ring = new Arc(Spot.ORIGIN, 0.03, 0, 2 * Math.PI);
    List<Strip> round = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      round.add(new Strip(Walls.part(ring, i / 4.0, (i + 1) / 4.0), 0.002));
    }
    assertEquals(0, new ThinWalls(round).warping().resistance().iw(), 1e-24);
    List<Strip> walls = Walls.rectangle(0.06, 0.03, 0.004, 0.002);
    assertEquals(0, new ThinWalls(walls).warping().resistance().iw(), 1e-24);
  }

  /** Corner warping b·h/4·(b·th − h·tb)/(b·th + h·tb), linear between: Iw = A·ω²/3. */
  @Test
  void an_oblong_tube_warps_by_the_closed_form() {
    double h = 0.08;
    double b = 0.04;
    double t = 0.003;
    double corner = b * h / 4 * (b - h) / (b + h);
    double expected = 2 * (b + h) * t * corner * corner / 3;
    double iw = new ThinWalls(Walls.rectangle(h, b, t, t)).warping().resistance().iw();
    assertEquals(expected, iw, 1e-9 * expected);
  }

  @Test
  void a_mirrored_channel_warps_the_other_way() {
    Section channel = Section.foldedChannel(mm(80), mm(40), mm(3), mm(3));
    Section other = channel.mirrored();
    for (int i = 0; i < channel.points().size(); i++) {
      assertEquals(-channel.points().get(i).sectorial(), other.points().get(i).sectorial(), 1e-15);
      assertEquals(
          channel.points().get(i).sectorial(), channel.turned().points().get(i).sectorial(), 1e-15);
    }
    assertEquals(channel.properties().iw(), other.properties().iw());
  }

  /** The toe's inner edge warps most: by (b + e)·t/2 more than its centre line. */
  @Test
  void the_outline_of_a_toe_warps_more_than_its_centre_line() {
    Section channel = Section.rolledChannel(mm(80), mm(40), RolledWalls.of(mm(3), mm(3), mm(0)));
    double b = 0.0385;
    double h = 0.077;
    double e = 3 * b * b / (h + 6 * b);
    double most = channel.points().stream().mapToDouble(StressPoint::sectorial).max().orElse(0);
    assertEquals(h / 2 * (b - e) + 0.0015 * (b + e), most, 1e-12);
  }

  @Test
  void a_hair_thin_slit_makes_a_tube_open() {
    for (double slit : new double[] {1e-4, 1e-5, 1e-6}) {
      List<Strip> walls = Walls.slitRectangle(0.08, 0.04, 0.003, slit);
      ThinWalls thin = new ThinWalls(walls);
      double open = (0.24 - slit) * 2.7e-8 / 3;
      assertEquals(open, thin.torsionConstant(), 1e-9 * open);
      double closed = new ThinWalls(Walls.rectangle(0.08, 0.04, 0.003, 0.003)).torsionConstant();
      assertTrue(closed > 200 * open);
    }
    double narrow = iwOfSlit(1e-6);
    assertEquals(iwOfSlit(2e-7), narrow, 1e-4 * narrow);
  }

  private static double iwOfSlit(double slit) {
    return new ThinWalls(Walls.slitRectangle(0.08, 0.04, 0.003, slit)).warping().resistance().iw();
  }

  private static javax.measure.Quantity<javax.measure.quantity.Length> mm(double value) {
    return rungwork.quantity.Quantities.mm(value);
  }
}
