package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class OutlineTest {
  /** What a thousand slices between two bends are good for; they are worst at round tops. */
  private static final double SLICED = 1e-4;

  /** Rounding of double numbers over some dozen pieces. */
  private static final double EXACT = 1e-9;

  static List<Section> someOfEachKind() {
    return Shapes.someOfEachKind();
  }

  @ParameterizedTest
  @MethodSource("someOfEachKind")
  void closed_forms_agree_with_thin_slices_about_both_axes(Section section) {
    sliced(section);
    sliced(section.turned());
    sliced(section.mirrored().turned());
  }

  private static void sliced(Section section) {
    Properties p = section.properties();
    Scanlines slices = new Scanlines(section.outline());
    double size = section.outline().reach(Spot::z);
    assertClose(p.area(), slices.integral(z -> 1));
    assertEquals(0, slices.integral(z -> z) / (p.area() * size), SLICED);
    assertClose(p.iy(), slices.integral(z -> z * z));
    assertClose(p.wely(), slices.integral(z -> z * z) / size);
    assertClose(p.wply(), slices.plasticModulus());
  }

  private static void assertClose(double expected, double computed) {
    assertEquals(1, computed / expected, SLICED);
  }

  @ParameterizedTest
  @MethodSource("someOfEachKind")
  void the_product_of_inertia_follows_from_axes_turned_by_45_degrees(Section section) {
    Moments m = section.outline().moments();
    Moments turned = m.turned(Math.PI / 4);
    assertEquals((turned.zz() - turned.yy()) / 2, m.yz(), EXACT * (m.yy() + m.zz()));
  }

  @ParameterizedTest
  @MethodSource("someOfEachKind")
  void moved_axes_follow_the_parallel_axis_theorem(Section section) {
    Moments m = section.outline().moments();
    Moments moved =
        section.outline().loops().stream()
            .flatMap(List::stream)
            .map(piece -> piece.moved(new Spot(0.3, -0.2)).moments())
            .reduce(Moments.NONE, Moments::plus);
    assertEquals(m.zz() + m.area() * 0.04, moved.zz(), EXACT * moved.zz());
    assertEquals(m.yy() + m.area() * 0.09, moved.yy(), EXACT * moved.yy());
    assertEquals(m.yz() - m.area() * 0.06, moved.yz(), EXACT * Math.abs(moved.yz()));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void doubled_lengths_make_sixteenfold_second_moments(long seed) {
    ThinShape shape = Shapes.random(new Random(seed));
    Properties one = shape.section().properties();
    Properties two = Shapes.scaled(shape, 2).section().properties();
    assertEquals(4 * one.area(), two.area(), EXACT * two.area());
    assertEquals(16 * one.iy(), two.iy(), EXACT * two.iy());
    assertEquals(16 * one.iz(), two.iz(), EXACT * two.iz());
    assertEquals(16 * one.it(), two.it(), EXACT * two.it());
    assertEquals(8 * one.wply(), two.wply(), EXACT * two.wply());
    assertEquals(8 * one.welz(), two.welz(), EXACT * two.welz());
    assertEquals(4 * one.shearZ(), two.shearZ(), EXACT * two.shearZ());
    assertEquals(2 * one.shearCentreY(), two.shearCentreY(), EXACT);
  }

  @Test
  void half_a_disc_has_its_known_centroid_and_second_moments() {
    Moments half = Moments.discSegment(2, Math.PI / 2);
    assertEquals(2 * Math.PI, half.area(), EXACT);
    assertEquals(4 * 2 / (3 * Math.PI), half.centroid().y(), EXACT);
    assertEquals(Math.PI * 16 / 8, half.yy(), EXACT);
    assertEquals(Math.PI * 16 / 8, half.zz(), EXACT);
  }

  @Test
  void a_bore_run_the_other_way_subtracts() {
    List<Segment> edge = Pen.roundedRectangle(4, 2, 0);
    List<Segment> bore = Outline.bore(Pen.roundedRectangle(2, 1, 0));
    assertEquals(6, new Outline(List.of(edge, bore)).moments().area(), EXACT);
  }
}
