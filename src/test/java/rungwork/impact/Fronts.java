package rungwork.impact;

import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.deg;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import rungwork.material.Material;

/** An invented runabout of 720 kg, bare and with two folding tubes in front. */
public final class Fronts {
  private Fronts() {}

  /** A wall at 50 km/h. */
  public static Scene wall() {
    return Scene.of("lane wall", kmh(50), kg(720), Obstacle.rigidWall());
  }

  /** Rails that take 300 to 480 kN before they yield. */
  public static RigidOrCrush.Rails rails() {
    return new RigidOrCrush.Rails(
        CrushCurve.named("rails, low")
            .to(mm(8), kN(300), "first yield")
            .to(mm(700), kN(310), "end of the curve")
            .end(),
        CrushCurve.named("rails, high")
            .to(mm(10), kN(480), "first yield")
            .to(mm(700), kN(490), "end of the curve")
            .end());
  }

  /** One folding tube. */
  public static CrushTube tube() {
    return CrushTube.square("front tube", mm(60), mm(1.5))
        .of(mm(350), Material.rated("S235JRH"))
        .triggered();
  }

  /** A driver on a guessed belt. */
  public static Occupant driver() {
    return Occupant.of(
            "driver", kg(80), Occupant.Belt.between(Npmm(50), Npmm(90)).slack(mm(10), mm(40)))
        .clearance("chest to wheel", mm(250), mm(300))
        .anchorage("seat left", 0.6, Range.ratio(1, 1.5), deg(45))
        .anchorage("dash left", 0.4, Range.ratio(1, 2), deg(10));
  }

  /** Two tubes before the rail tips. */
  public static RigidOrCrush.Design withTubes() {
    return RigidOrCrush.Design.with("two folding tubes", tube(), mm(350)).and(mm(-350));
  }

  /** Both designs at the wall. */
  public static RigidOrCrush choice() {
    return RigidOrCrush.of(
        wall(), rails(), driver(), RigidOrCrush.Design.bare("bare rails"), withTubes());
  }
}
