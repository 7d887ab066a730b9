package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.mm;

import java.util.List;
import org.junit.jupiter.api.Test;

class StackTest {
  private static final CrushCurve SOFT =
      CrushCurve.named("soft")
          .to(mm(10), kN(2), "folds")
          .to(mm(60), kN(2), "used up")
          .to(mm(70), kN(9), "solid")
          .end(Npmm(900));

  private static final CrushCurve HARD =
      CrushCurve.named("hard").to(mm(30), kN(6), "yields").to(mm(90), kN(7), "ends").end();

  /**
   * At 2 kN: 10 and 10 mm; the soft one goes on to 60. At 6 kN: 60 + 4/0.7 and 30 mm; at 7 kN 60 +
   * 5/0.7 and 90 mm, where the weaker end is passed. Let go: 1/(1/900 + 1/200) N/mm, but the
   * steepest rise is what it may not fall below.
   */
  @Test
  void parts_in_a_row_carry_one_force_and_add_their_crush() {
    Stack stack = Stack.of(List.of(SOFT, HARD));
    CrushCurve curve = stack.curve();
    assertEquals("soft before hard", curve.name());
    double[] crushes = curve.points().stream().mapToDouble(CrushCurve.Point::crush).toArray();
    double[] forces = curve.points().stream().mapToDouble(CrushCurve.Point::force).toArray();
    double six = 0.06 + 0.004 / 0.7;
    double seven = 0.06 + 0.005 / 0.7;
    assertArrayEquals(new double[] {0, 0.02, 0.07, six + 0.03, seven + 0.09}, crushes, 1e-12);
    assertArrayEquals(new double[] {0, 2000, 2000, 6000, 7000}, forces, 1e-9);
    assertEquals(
        List.of("", "folds", "used up", "yields", "ends"),
        curve.points().stream().map(CrushCurve.Point::label).toList());
    assertEquals(1 / (1 / 900e3 + 1 / 200e3), curve.unloading(), 1e-6);
  }

  @Test
  void each_part_has_its_share_of_the_crush() {
    Stack stack = Stack.of(List.of(SOFT, HARD));
    assertEquals(0.005, stack.share(0, 0.01), 1e-12);
    assertEquals(0.005, stack.share(1, 0.01), 1e-12);
    assertEquals(0.03, stack.share(0, 0.04), 1e-12);
    assertEquals(0.01, stack.share(1, 0.04), 1e-12);
    assertEquals(0.06, stack.share(0, 0.07), 1e-12);
    double half = 0.07 + (0.004 / 0.7 + 0.02) / 2;
    assertEquals(0.06 + 0.002 / 0.7, stack.share(0, half), 1e-12);
    assertEquals(0.02, stack.share(1, half), 1e-12);
    assertEquals(0, stack.share(0, -1), 1e-12);
  }

  @Test
  void beyond_the_end_the_part_with_the_weakest_end_goes_on_alone() {
    double end = 0.06 + 0.005 / 0.7;
    Stack stack = Stack.of(List.of(SOFT, HARD));
    assertEquals(end, stack.share(0, end + 0.09 + 0.02), 1e-12);
    assertEquals(0.11, stack.share(1, end + 0.09 + 0.02), 1e-12);
    Stack turned = Stack.of(List.of(HARD, SOFT));
    assertEquals("hard before soft", turned.curve().name());
    assertEquals(0.11, turned.share(0, end + 0.09 + 0.02), 1e-12);
    assertEquals(end, turned.share(1, end + 0.09 + 0.02), 1e-12);
  }

  @Test
  void what_happens_to_two_parts_at_once_is_said_in_the_order_of_letters() {
    CrushCurve other = CrushCurve.named("other").to(mm(5), kN(2), "bends").to(mm(9), kN(20)).end();
    CrushCurve same = CrushCurve.named("same").to(mm(7), kN(2), "folds").to(mm(9), kN(20)).end();
    assertEquals(
        "bends, folds",
        Stack.of(List.of(SOFT, other, same)).curve().points().get(1).label(),
        "each word once");
  }

  @Test
  void one_part_alone_is_its_own_stack_and_may_fall() {
    CrushCurve falling = CrushCurve.named("falls").to(mm(10), kN(5)).to(mm(40), kN(2)).end();
    Stack stack = Stack.of(List.of(falling));
    assertEquals(falling, stack.curve());
    assertEquals(0.025, stack.share(0, 0.025), 1e-12);
    assertEquals(0.05, stack.share(0, 0.05), 1e-12);
    Refused.with(
        "the force of falls falls from 5.000 kN to 2.000 kN; one behind the other it would be"
            + " ambiguous which part crushes: put a front mass between them",
        () -> Stack.of(List.of(SOFT, falling)));
  }
}
