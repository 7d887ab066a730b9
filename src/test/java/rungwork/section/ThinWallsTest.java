package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class ThinWallsTest {
  private static final double ROUNDING = 1e-9;

  static List<ThinShape> shapes() {
    List<ThinShape> shapes = new ArrayList<>(Shapes.thin());
    for (int seed = 0; seed < 12; seed++) {
      shapes.add(Shapes.random(new Random(seed)));
    }
    return shapes;
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void the_shear_flow_adds_up_to_the_force(ThinShape shape) {
    ThinWalls walls = new ThinWalls(shape.strips());
    Spot force = new Spot(0.7, -1.3);
    Spot sum = resultant(walls.shear(force));
    assertEquals(force.y(), sum.y(), ROUNDING);
    assertEquals(force.z(), sum.z(), ROUNDING);
  }

  @ParameterizedTest
  @MethodSource("closed")
  void the_flow_of_twist_is_a_pure_torque(ThinShape shape) {
    ThinWalls walls = new ThinWalls(shape.strips());
    Spot sum = resultant(walls.twist());
    assertEquals(0, sum.size() / walls.twist().moment(), 1e-6);
  }

  static List<ThinShape> closed() {
    return shapes().stream().filter(shape -> shape.torsion() == Torsion.CLOSED).toList();
  }

  @ParameterizedTest
  @MethodSource("closed")
  void a_force_through_the_shear_centre_does_not_twist(ThinShape shape) {
    ThinWalls walls = new ThinWalls(shape.strips());
    Flow shear = walls.shear(new Spot(0.4, 1));
    Flow twist = walls.twist();
    double work = 0;
    for (int i = 0; i < shape.strips().size(); i++) {
      int wall = i;
      Strip strip = shape.strips().get(i);
      work +=
          strip.path().length()
              / strip.thickness()
              * Gauss.mean(s -> shear.at(wall, s) * twist.at(wall, s));
    }
    double scale = Math.sqrt(shear.energy() * twist.energy());
    assertEquals(0, work / scale, 1e-8);
  }

  @ParameterizedTest
  @MethodSource("shapes")
  void splitting_walls_changes_nothing(ThinShape shape) {
    ThinWalls whole = new ThinWalls(shape.strips());
    ThinWalls split = new ThinWalls(Walls.halved(shape.strips()));
    assertEquals(1, split.torsionConstant() / whole.torsionConstant(), ROUNDING);
    assertEquals(1, split.shearAreas().y() / whole.shearAreas().y(), ROUNDING);
    assertEquals(1, split.shearAreas().z() / whole.shearAreas().z(), ROUNDING);
    assertEquals(0, split.shearCentre().minus(whole.shearCentre()).size(), ROUNDING);
  }

  private static Spot resultant(Flow flow) {
    Spot sum = Spot.ORIGIN;
    for (int i = 0; i < flow.strips().size(); i++) {
      int wall = i;
      Segment path = flow.strips().get(i).path();
      double y = Gauss.mean(s -> flow.at(wall, s) * path.direction(s).y());
      double z = Gauss.mean(s -> flow.at(wall, s) * path.direction(s).z());
      sum = sum.plus(new Spot(y, z).times(path.length()));
    }
    return sum;
  }

  @Test
  void one_upright_wall_of_a_cross_carries_shear_on_five_sixths_of_its_area() {
    Spot middle = Spot.ORIGIN;
    List<Strip> cross =
        List.of(
            Walls.strip(new Spot(0, -0.05), middle, 0.004),
            Walls.strip(middle, new Spot(0, 0.05), 0.004),
            Walls.strip(new Spot(-0.03, 0), middle, 0.002),
            Walls.strip(middle, new Spot(0.03, 0), 0.002));
    Spot areas = new ThinWalls(cross).shearAreas();
    assertEquals(5.0 / 6 * 0.1 * 0.004, areas.z(), 1e-12);
    assertEquals(5.0 / 6 * 0.06 * 0.002, areas.y(), 1e-12);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.05, 0.11})
  void a_thin_channel_has_the_textbook_s_shear_centre(double width) {
    double depth = 0.1;
    double flange = 0.004;
    double web = 0.003;
    Line top = new Line(new Spot(width, depth / 2), new Spot(0, depth / 2));
    Line upright = new Line(top.end(), new Spot(0, -depth / 2));
    Line bottom = new Line(upright.end(), new Spot(width, -depth / 2));
    ThinWalls walls =
        new ThinWalls(
            List.of(new Strip(top, flange), new Strip(upright, web), new Strip(bottom, flange)));
    double e = 3 * width * width * flange / (depth * web + 6 * width * flange);
    assertEquals(-e, walls.shearCentre().y(), ROUNDING);
    assertEquals(0, walls.shearCentre().z(), ROUNDING);
  }

  @Test
  void a_thin_angle_has_its_shear_centre_where_its_legs_meet() {
    Line upright = new Line(new Spot(0, 0.08), Spot.ORIGIN);
    Line level = new Line(Spot.ORIGIN, new Spot(0.05, 0));
    ThinWalls walls = new ThinWalls(List.of(new Strip(upright, 0.004), new Strip(level, 0.003)));
    assertEquals(0, walls.shearCentre().size(), ROUNDING);
  }

  @Test
  void a_slit_ring_has_its_shear_centre_two_radii_from_its_middle() {
    Arc ring = new Arc(Spot.ORIGIN, 0.03, 1e-5, 2 * Math.PI - 2e-5);
    List<Strip> pieces = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      pieces.add(new Strip(Walls.part(ring, i / 8.0, (i + 1) / 8.0), 0.001));
    }
    ThinWalls walls = new ThinWalls(pieces);
    assertEquals(-0.06, walls.shearCentre().y(), 1e-5);
    assertEquals(2 * Math.PI * 0.03 * 1e-9 / 3, walls.torsionConstant(), 1e-14);
  }

  @Test
  void a_closed_ring_needs_no_junction() {
    Arc ring = new Arc(Spot.ORIGIN, 0.03, 0, 2 * Math.PI);
    List<Strip> pieces = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      pieces.add(new Strip(Walls.part(ring, i / 4.0, (i + 1) / 4.0), 0.001));
    }
    ThinWalls walls = new ThinWalls(pieces);
    double area = 2 * Math.PI * 0.03 * 0.001;
    assertEquals(area / 2, walls.shearAreas().y(), 1e-12);
    double r3t = 2 * Math.PI * Math.pow(0.03, 3) * 0.001;
    assertEquals(r3t + area * 1e-6 / 3, walls.torsionConstant(), 1e-14);
  }

  /** Two cells by Bredt: for each, the sum of q·s/t over its walls is 2 A G θ'. */
  @Test
  void two_cells_share_their_flow_as_by_bredt() {
    double a = 0.05;
    double b = 0.08;
    double h = 0.04;
    double t = 0.002;
    List<Strip> strips =
        List.of(
            Walls.strip(new Spot(0, 0), new Spot(a, 0), t),
            Walls.strip(new Spot(a, 0), new Spot(a + b, 0), t),
            Walls.strip(new Spot(a + b, 0), new Spot(a + b, h), t),
            Walls.strip(new Spot(a + b, h), new Spot(a, h), t),
            Walls.strip(new Spot(a, h), new Spot(0, h), t),
            Walls.strip(new Spot(0, h), new Spot(0, 0), t),
            Walls.strip(new Spot(a, 0), new Spot(a, h), t));
    double left = 2 * (a + h) / t;
    double right = 2 * (b + h) / t;
    double shared = h / t;
    double determinant = left * right - shared * shared;
    double q1 = 2 * h * (a * right + b * shared) / determinant;
    double q2 = 2 * h * (b * left + a * shared) / determinant;
    Flow flow = new ThinWalls(strips).twist();
    assertEquals(q1, flow.at(0, 0.5), ROUNDING * q1);
    assertEquals(q2, flow.at(1, 0.5), ROUNDING * q2);
    assertEquals(q1 - q2, flow.at(6, 0.5), ROUNDING * q1);
    assertEquals(2 * h * (a * q1 + b * q2), flow.moment(), ROUNDING * flow.moment());
  }

  /** VS/(I·2t), S and I of the exact outline, against the flow on centre lines. */
  @ParameterizedTest
  @ValueSource(doubles = {2, 3, 4, 5})
  void the_greatest_shear_of_a_tube_agrees_with_its_exact_outline(double wall) {
    Section tube = RectangularTube.coldFormed(0.08, 0.05, wall / 1e3).shape().section();
    Properties p = tube.properties();
    double exact = p.wply() / 2 / p.iy() / (2 * wall / 1e3);
    double computed =
        tube.points().stream().mapToDouble(point -> Math.abs(point.perVz())).max().orElse(0);
    assertEquals(1, computed / exact, 0.01);
  }
}
