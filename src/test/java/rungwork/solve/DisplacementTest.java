package rungwork.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import rungwork.fault.SolveException;
import rungwork.frame.Freedom;

class DisplacementTest {
  private static final Displacement ONE =
      new Displacement(0.001, -0.002, 0.003, 0.004, 0.005, -0.006);

  private static List<Double> all(Displacement one) {
    return Arrays.stream(Freedom.values()).map(one::along).toList();
  }

  @Test
  void its_motions_are_asked_one_by_one() {
    assertEquals(List.of(0.001, -0.002, 0.003, 0.004, 0.005, -0.006), all(ONE));
  }

  @Test
  void motions_add_and_are_scaled_each_by_itself() {
    Displacement other = new Displacement(1, 2, 4, 8, 16, 32);
    assertEquals(new Displacement(3, 6, 12, 24, 48, 96), other.times(3));
    assertEquals(new Displacement(3, 6, 12, 24, 48, 96), other.plus(other.times(2)));
    assertEquals(
        new Displacement(1.5, 2.25, 4.125, 8.5, 16.25, 32.125),
        other.plus(new Displacement(0.5, 0.25, 0.125, 0.5, 0.25, 0.125)));
  }

  @Test
  void it_is_told_in_millimetres_and_thousandths_of_a_radian() {
    assertEquals(
        "moves (1.000 mm, -2.000 mm, 3.000 mm), turns (4.000 mrad, 5.000 mrad, -6.000 mrad)",
        ONE.toString());
  }

  @Test
  void what_is_not_finite_is_refused() {
    assertThrows(SolveException.class, () -> new Displacement(0, 0, 0, 0, Double.NaN, 0));
  }
}
