package rungwork.validation;

import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kNpmm;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import org.junit.jupiter.api.Test;
import rungwork.impact.Crash;
import rungwork.impact.CrashModel;
import rungwork.impact.CrushCurve;
import rungwork.impact.CrushTube;
import rungwork.material.Elasticity;
import rungwork.material.RatedMaterial;
import rungwork.material.Source;

/**
 * Folding forces and crashes. The low end of a tube holds a wall 10 % thin; each case takes a wall
 * that much thicker, to meet the formula at the printed wall.
 */
class ImpactCrushValidationTest {
  private static final Elasticity STEEL = new Elasticity(210e9, 0.3, 7850);

  private static RatedMaterial material(double yield, double ultimate) {
    return new RatedMaterial(
        "steel",
        STEEL,
        new RatedMaterial.Strength(yield, ultimate, yield, 0.2),
        new Source("stated for tests", Source.Tag.STATED_BY_USER));
  }

  private static CrushTube.Bare bare(
      CrushTube.Shape shape, double middle, double wall, double off) {
    return shape == CrushTube.Shape.SQUARE
        ? CrushTube.square("tube", mm(middle + wall), mm(wall / off))
        : CrushTube.round("tube", mm(middle + wall), mm(wall / off));
  }

  /** One formula [kN] for mid-line width and wall [mm] and flow stress [MPa], from the working. */
  private static double mean(String source, CrushTube.Shape shape, double... in) {
    CrushTube tube = bare(shape, in[0], in[1], 0.9).of(mm(200), material(in[2] * 1e6, in[2] * 1e6));
    return tube.working().stream()
            .filter(step -> step.formula().source().contains(source))
            .findFirst()
            .orElseThrow()
            .result()
        / 1e3;
  }

  private static double wierzbicki(double... in) {
    return mean("Wierzbicki", CrushTube.Shape.SQUARE, in);
  }

  private static double effective(double... in) {
    return mean("(1984) 179", CrushTube.Shape.SQUARE, in);
  }

  @Test
  void square_tubes() {
    Published folding =
        Published.memory(
            "Wierzbicki & Abramowicz 1983, 38.27·M₀·(c/t)^⅓", "square tube, mean force");
    folding
        .value("c 50, t 1.5 mm, σ₀ 300", "kN", "20.78", wierzbicki(50, 1.5, 300))
        .value("c 60, t 3 mm, σ₀ 355", "kN", "82.97", wierzbicki(60, 3, 355))
        .allowing(2e-3, "printed with 38.27/4 rounded to 9.56")
        .value("c 47, t 3 mm, σ₀ 297.5", "kN", "64.0", wierzbicki(47, 3, 297.5));
    Published effective =
        Published.memory("Abramowicz & Jones 1984, 52.22·M₀·(c/t)^⅓", "square tube, mean force");
    effective
        .value("c 50, t 1.5 mm, σ₀ 300", "kN", "28.36", effective(50, 1.5, 300))
        .value("c 60, t 3 mm, σ₀ 355", "kN", "113.2", effective(60, 3, 355))
        .value("c 47, t 3 mm, σ₀ 297.5", "kN", "87.5", effective(47, 3, 297.5));
  }

  @Test
  void round_tubes() {
    Published.memory("Alexander 1960, 6·σ₀·t·√(D·t)", "round tube, mean force")
        .value(
            "D 50, t 1.5 mm, σ₀ 300",
            "kN",
            "23.38",
            mean("Alexander", CrushTube.Shape.ROUND, 50, 1.5, 300));
    Published.memory("Abramowicz & Jones 1984, M₀·(20.79·√(D/t) + 11.90)", "round tube, mean force")
        .value(
            "D 50, t 1.5 mm, σ₀ 300",
            "kN",
            "25.71",
            mean("(1984) 263", CrushTube.Shape.ROUND, 50, 1.5, 300));
    double moment = 300 * 1.5 * 1.5 / 4 / 1e3;
    Published.read(
            "Guillow, Lu & Grzebieta, Int. J. Mech. Sci. 43 (2001) 2103–2123: F/Mp = 72.3·(D/t)^0.32",
            "round tube, mean force over Mp")
        .value(
            "at D/t 100, over 100^0.32",
            "",
            "72.3",
            mean("Guillow", CrushTube.Shape.ROUND, 150, 1.5, 300) / moment / Math.pow(100, 0.32));
  }

  @Test
  void the_squash_force_of_a_rail() {
    CrushTube rail =
        CrushTube.square("rail", mm(50), mm(3 / 0.9)).of(mm(200), material(235e6, 360e6));
    Published.memory("EN 10219-2 area 5.41 cm² times 235 MPa", "50×50×3, S235")
        .value("squash force", "kN", "127", rail.initiations().get(0).force().low() / 1e3);
  }

  private static Crash level(double kilonewtons, double kilometresAnHour) {
    CrushCurve curve =
        CrushCurve.named("level")
            .to(mm(0.001), kN(kilonewtons))
            .to(mm(2000), kN(kilonewtons))
            .end();
    return CrashModel.of("level", kmh(kilometresAnHour), kg(700), curve).run();
  }

  /** The simulation against energy: m·v²/2 over the level force. */
  @Test
  void a_level_force_simulated() {
    Published.identity("½·m·v² = F·d", "700 kg at 48 km/h against 311.1 kN, simulated")
        .value("crush", "m", "0.200", level(311.1, 48).mostCrush())
        .value("deceleration", "g", "45.3", level(311.1, 48).pulse().peak() / 9.80665)
        .value("crush against 155.6 kN", "m", "0.400", level(155.6, 48).mostCrush());
  }

  @Test
  void two_linear_fronts_simulated() {
    CrushCurve own = CrushCurve.linear("own front", kNpmm(0.5), mm(2000));
    CrushCurve other = CrushCurve.linear("other front", kNpmm(1), mm(2000));
    Crash crash = CrashModel.of("meeting", kmh(100), kg(700), own).into(kg(1400), other).run();
    Published.derived(
            "F = v·√(μ·k) of two springs in a row, computed apart",
            "700 and 1400 kg closing at 100 km/h, simulated")
        .value("own crush", "m", "0.69", crash.parts().get(1).mostCrush())
        .value("other crush", "m", "0.35", crash.parts().get(0).mostCrush())
        .value("force", "kN", "346", crash.parts().get(1).mostForce() / 1e3)
        .value("own deceleration", "g", "50.5", crash.pulse().peak() / 9.80665);
  }
}
