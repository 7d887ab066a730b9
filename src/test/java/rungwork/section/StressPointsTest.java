package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.mm;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StressPointsTest {
  /** What a check may miss of the greatest stress, by the choice of points. */
  private static final double MISSED = 0.02;

  static List<Section> someOfEachKind() {
    return Shapes.someOfEachKind();
  }

  static List<ThinShape> thin() {
    return Shapes.thin();
  }

  @ParameterizedTest
  @MethodSource("someOfEachKind")
  void bending_in_any_direction_finds_its_outermost_fibre(Section section) {
    for (int degrees = 0; degrees < 360; degrees++) {
      double angle = Math.toRadians(degrees);
      double my = section.properties().iy() * Math.cos(angle);
      double mz = section.properties().iz() * Math.sin(angle);
      Forces forces = new Forces(new double[] {0, 0, 0, 0, my, mz});
      double exact =
          edge(section.outline()).mapToDouble(s -> forces.normal(section, s)).max().orElse(0);
      double found =
          section.points().stream()
              .mapToDouble(p -> forces.normal(section, new Spot(p.y(), p.z())))
              .max()
              .orElse(0);
      assertTrue(found > exact * (1 - MISSED), degrees + "°: " + found / exact);
    }
  }

  private static Stream<Spot> edge(Outline outline) {
    return outline.loops().stream()
        .flatMap(List::stream)
        .flatMap(piece -> IntStream.rangeClosed(0, 90).mapToObj(i -> piece.at(i / 90.0)));
  }

  @ParameterizedTest
  @MethodSource("someOfEachKind")
  void bending_about_one_axis_gives_the_moment_over_the_elastic_modulus(Section section) {
    Properties p = section.properties();
    Forces aboutY = new Forces(new double[] {0, 0, 0, 0, 1, 0});
    Forces aboutZ = new Forces(new double[] {0, 0, 0, 0, 0, 1});
    assertEquals(1 / p.wely(), worstNormal(section, aboutY), 1e-6 / p.wely());
    assertEquals(1 / p.welz(), worstNormal(section, aboutZ), 1e-6 / p.welz());
  }

  private static double worstNormal(Section section, Forces forces) {
    return section.points().stream()
        .mapToDouble(p -> Math.abs(forces.normal(section, new Spot(p.y(), p.z()))))
        .max()
        .orElse(0);
  }

  @ParameterizedTest
  @MethodSource("thin")
  void no_place_on_the_walls_is_stressed_much_more_than_the_worst_point(ThinShape shape) {
    Section section = shape.section();
    Random random = new Random(7);
    for (int i = 0; i < 400; i++) {
      Forces forces = Forces.random(section, random);
      double found =
          section.points().stream().mapToDouble(p -> forces.mises(section, p)).max().orElse(0);
      double dense =
          everywhere(shape).stream().mapToDouble(p -> forces.mises(section, p)).max().orElse(0);
      assertTrue(found >= dense * (1 - MISSED), shape.name() + " " + forces + ": " + found / dense);
    }
  }

  /** Both faces of all walls, closely spaced; welds are for the joints' checks. */
  private static List<StressPoint> everywhere(ThinShape shape) {
    List<Mark> marks =
        IntStream.range(0, shape.strips().size())
            .filter(wall -> shape.strips().get(wall).filled() > 0)
            .boxed()
            .flatMap(wall -> Stream.of(-1, 1).flatMap(side -> face(shape, wall, side)))
            .toList();
    return new ThinShape(
            shape.name(),
            shape.outline(),
            shape.strips(),
            marks,
            List.of(),
            shape.torsion(),
            shape.it())
        .section()
        .points();
  }

  private static Stream<Mark> face(ThinShape shape, int wall, int side) {
    Strip strip = shape.strips().get(wall);
    Segment face = strip.path().aside(side * strip.thickness() / 2);
    return IntStream.rangeClosed(0, 40)
        .mapToObj(i -> new Mark("wall", face.at(i / 40.0), wall, i / 40.0, side));
  }

  @Test
  void torsion_of_a_rounded_tube_gives_the_torque_over_the_standard_s_modulus() {
    Section tube = Section.rectangularTube(mm(50), mm(30), mm(3));
    tube.points().forEach(p -> assertEquals(1 / 6.49e-6, p.perT(), 0.001 / 6.49e-6));
  }

  @Test
  void shear_and_torque_add_on_one_side_of_a_tube_and_oppose_on_the_other() {
    Section tube = Section.rectangularTube(mm(80), mm(40), mm(3));
    StressPoint left = named(tube, "left wall middle");
    StressPoint right = named(tube, "right wall middle");
    assertTrue(left.perVz() > 0 && right.perVz() < 0);
    assertTrue(left.perT() > 0 && right.perT() > 0);
    assertEquals(0, left.perVy() / left.perVz(), 1e-9);
  }

  @Test
  void the_web_of_an_upright_channel_carries_the_shear() {
    Section channel = Section.foldedChannel(mm(80), mm(40), mm(3), mm(3));
    StressPoint web = named(channel, "right web middle");
    double average = 1 / (0.080 * 0.003);
    assertEquals(1.2 * average, Math.abs(web.perVz()), 0.1 * average);
  }

  private static StressPoint named(Section section, String name) {
    return section.points().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 15, 37, 45, 90})
  void a_round_tube_is_sheared_alike_in_all_directions(double degrees) {
    Section tube = Section.roundTube(mm(60), mm(3));
    double vy = Math.cos(Math.toRadians(degrees));
    double vz = Math.sin(Math.toRadians(degrees));
    double worst =
        tube.points().stream()
            .mapToDouble(p -> Math.abs(vy * p.perVy() + vz * p.perVz()))
            .max()
            .orElse(0);
    assertEquals(2 / tube.properties().area(), worst, 0.01 * worst);
  }

  /** N, Vy, Vz, T, My, Mz. */
  private record Forces(double[] sizes) {
    /** Each force alone would stress the section by up to 1. */
    static Forces random(Section section, Random random) {
      Properties p = section.properties();
      double[] full = {p.area(), p.shearY(), p.shearZ(), p.it() / 0.05, p.wely(), p.welz()};
      double[] sizes = new double[full.length];
      for (int i = 0; i < full.length; i++) {
        sizes[i] = full[i] * (2 * random.nextDouble() - 1) * random.nextInt(2);
      }
      return new Forces(sizes);
    }

    double normal(Section section, Spot spot) {
      Properties p = section.properties();
      return sizes[0] / p.area() + sizes[4] * spot.z() / p.iy() - sizes[5] * spot.y() / p.iz();
    }

    double mises(Section section, StressPoint point) {
      double normal = normal(section, new Spot(point.y(), point.z()));
      double shear = sizes[1] * point.perVy() + sizes[2] * point.perVz() + sizes[3] * point.perT();
      return Math.sqrt(normal * normal + 3 * shear * shear);
    }

    @Override
    public String toString() {
      return Arrays.toString(sizes);
    }
  }
}
