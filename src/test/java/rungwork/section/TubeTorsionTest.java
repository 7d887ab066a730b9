package rungwork.section;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwork.validation.Published;

/** Torsion constants against Saint-Venant's torsion, solved numerically on the exact outline. */
class TubeTorsionTest {
  @ParameterizedTest
  @CsvSource({
    "40, 40, 2",
    "40, 40, 4",
    "50, 50, 3",
    "60, 40, 3",
    "80, 40, 3",
    "100, 50, 4",
    "40, 20, 2",
    "120, 40, 5",
    "50, 30, 4"
  })
  void cold_formed_tubes_twist_as_saint_venant_says_within_half_a_percent(
      double height, double width, double wall) {
    RectangularTube tube = RectangularTube.coldFormed(height / 1e3, width / 1e3, wall / 1e3);
    Section section = tube.shape().section();
    Published.derived("Saint-Venant's torsion solved on the exact outline", section.name())
        .allowing(0.005, "the standard's formula is one for thin walls")
        .value(
            "It",
            "cm⁴",
            String.format(Locale.ROOT, "%.4g", exact(tube) * 1e8),
            section.properties().it() * 1e8);
  }

  @ParameterizedTest
  @CsvSource({"80, 60, 4", "120, 60, 6"})
  void hot_finished_tubes_twist_as_saint_venant_says_within_3_percent(
      double height, double width, double wall) {
    RectangularTube tube = RectangularTube.hotFinished(height / 1e3, width / 1e3, wall / 1e3);
    assertEquals(1, tube.shape().section().properties().it() / exact(tube), 0.03);
  }

  /** Its corners are thicker than its walls, which the standard's formula leaves out. */
  @Test
  void a_stout_hot_finished_tube_is_a_little_stiffer_than_its_standard_s_formula() {
    RectangularTube tube = RectangularTube.hotFinished(0.05, 0.05, 0.005);
    assertEquals(0.968, tube.shape().section().properties().it() / exact(tube), 0.0005);
  }

  /** From two meshes, the error of either a quarter of the one before. */
  private static double exact(RectangularTube tube) {
    double coarse = new SaintVenant(tube, 40, 4).torsionConstant();
    double middle = new SaintVenant(tube, 80, 8).torsionConstant();
    double fine = new SaintVenant(tube, 160, 16).torsionConstant();
    assertEquals(4, (middle - coarse) / (fine - middle), 0.25, "halving quarters the error");
    return fine + (fine - middle) / 3;
  }

  /** The judge judged: a tube that is all corner is round, and its constant is known exactly. */
  @Test
  void the_numerical_solution_finds_the_exact_constant_of_a_round_tube() {
    RectangularTube round = RectangularTube.cornered(0.06, 0.06, 0.006, 0.03);
    double exact = Math.PI / 2 * (Math.pow(0.030, 4) - Math.pow(0.024, 4));
    assertEquals(1, exact(round) / exact, 1e-5);
  }
}
