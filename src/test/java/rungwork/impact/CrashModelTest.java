package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.Npmm;
import static rungwork.quantity.Quantities.kN;
import static rungwork.quantity.Quantities.kNpmm;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.mm;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwork.fault.SolveException;

class CrashModelTest {
  private static final CrushCurve FRAME =
      CrushCurve.named("frame").to(mm(10), kN(180)).to(mm(600), kN(200)).end();
  private static final CrushCurve ELEMENT =
      CrushCurve.named("element").to(mm(5), kN(45)).to(mm(250), kN(46)).end();
  private static final CrushCurve OTHER = CrushCurve.linear("other", kNpmm(1), mm(900));
  private static final CrashModel.Motor MOTOR =
      CrashModel.Motor.of("motor", kg(58)).on(Npmm(600), mm(12), kNpmm(8));

  private static CrashModel plain() {
    return CrashModel.of("car", kmh(36), kg(700), FRAME);
  }

  private static List<String> names(CrashModel model) {
    return model.foremost().stream().map(CrushCurve::name).toList();
  }

  @Test
  void what_is_hit_and_what_crushes_stand_from_front_to_rear() {
    assertEquals(List.of("frame"), names(plain()));
    assertEquals(List.of("element", "frame"), names(plain().behind(ELEMENT)));
    assertEquals(
        List.of("other", "element", "frame"), names(plain().behind(ELEMENT).into(kg(900), OTHER)));
    assertEquals(
        List.of("other", "element"), names(plain().behind(ELEMENT, kg(5)).into(kg(900), OTHER)));
  }

  @Test
  void the_body_is_what_front_mass_and_motor_leave() {
    assertEquals(700, plain().body());
    assertEquals(700, plain().behind(ELEMENT).body());
    assertEquals(700 - 58 - 5, plain().behind(ELEMENT, kg(5)).with(MOTOR).body());
    assertTrue(plain().behind(ELEMENT, kg(5)).hasFrontMass());
    assertFalse(plain().behind(ELEMENT).hasFrontMass());
    assertFalse(plain().hasFrontMass());
  }

  @Test
  void variations_keep_all_the_rest() {
    CrashModel full = plain().behind(ELEMENT, kg(5)).with(MOTOR).into(kg(900), OTHER);
    CrashModel faster = full.at(kmh(72));
    assertEquals(20, faster.speed(), 1e-12);
    assertEquals(full.front(), faster.front());
    assertEquals(Optional.of(MOTOR), faster.motor());
    assertEquals(Optional.of(new CrashModel.Other(900, OTHER)), faster.other());
    assertEquals(0.6e6, MOTOR.rubber(), 1e-6);
    assertEquals(0.012, MOTOR.gap(), 1e-12);
    assertEquals(8e6, MOTOR.stop(), 1e-6);
    assertEquals(
        "car: 700.0 kg at 72.0 km/h, element before frame, motor on rubber", faster.toString());
    assertEquals("car: 700.0 kg at 36.0 km/h, frame", plain().toString());
  }

  @Test
  void bodies_stand_in_the_order_of_the_line() {
    Crash crash = plain().behind(ELEMENT, kg(5)).with(MOTOR).into(kg(900), OTHER).run();
    assertEquals(
        List.of("other vehicle", "front mass", "body", "motor"),
        crash.bodies().stream().map(Crash.Body::name).toList());
    assertEquals(
        List.of(900.0, 5.0, 637.0, 58.0), crash.bodies().stream().map(Crash.Body::mass).toList());
    assertEquals(
        List.of(0.0, 10.0, 10.0, 10.0),
        crash.bodies().stream().map(body -> body.speeds()[0]).toList());
    assertEquals(
        List.of("other", "element", "frame"),
        crash.parts().stream().map(part -> part.curve().name()).toList());
  }

  @Test
  void parts_of_no_mass_are_refused() {
    Refused.with(
        "front mass and motor of car leave 0 kg of 58.00 kg for its body; they are parts of the"
            + " whole mass",
        () -> CrashModel.of("car", kmh(36), kg(58), FRAME).with(MOTOR));
    Refused.with("front mass 0 kg is not above zero", () -> plain().behind(ELEMENT, kg(0)));
    Refused.with("front mass -1.000 kg is below zero", () -> new CrashModel.Front(ELEMENT, -1));
    Refused.with(
        "mass of the other vehicle 0 kg is not above zero", () -> plain().into(kg(0), OTHER));
    Refused.with("other mass 0 kg is not above zero", () -> new CrashModel.Other(0, OTHER));
    Refused.with("closing speed 0 km/h is not above zero", () -> plain().at(kmh(0)));
    Refused.with(
        "mass of car 0 kg is not above zero", () -> CrashModel.of("car", kmh(36), kg(0), FRAME));
  }

  @Test
  void a_motor_without_mass_rubber_or_stop_is_refused() {
    CrashModel.Motor.Weighed weighed = CrashModel.Motor.of("motor", kg(58));
    Refused.with("mass of motor 0 kg is not above zero", () -> CrashModel.Motor.of("motor", kg(0)));
    Refused.with(
        "mass of motor 0 kg is not above zero",
        () -> new CrashModel.Motor("motor", 0, 1e5, 0, 1e6));
    Refused.with(
        "rubber stiffness of motor 0 N/mm is not above zero",
        () -> weighed.on(Npmm(0), mm(12), kNpmm(8)));
    Refused.with(
        "gap of motor -1.000 mm is below zero", () -> weighed.on(Npmm(600), mm(-1), kNpmm(8)));
    Refused.with(
        "stop stiffness of motor 0 N/mm is not above zero",
        () -> weighed.on(Npmm(600), mm(12), kNpmm(0)));
    assertEquals(0, weighed.on(Npmm(600), mm(0), kNpmm(8)).gap());
  }

  /** ½ m v² into ½ k x²: 10·√(700/700 000) m on and back off at the same speed. */
  @Test
  void ways_and_speeds_of_a_body_are_those_of_its_mass() {
    CrushCurve spring = CrushCurve.linear("spring", Npmm(700), mm(2000));
    Crash alone = CrashModel.of("car", kmh(36), kg(700), spring).run();
    double most = Arrays.stream(alone.body("body").ways()).max().orElseThrow();
    assertEquals(10 * Math.sqrt(1e-3), most, 1e-5);
    assertEquals(10 * Math.sqrt(1e-3), alone.mostCrush(), 1e-5);
    assertEquals(1, alone.restitution(), 1e-6);
    double[] speeds = alone.body("body").speeds();
    assertEquals(-10, speeds[speeds.length - 1], 1e-6);
  }

  /** 600 N on 720 kg take 0.42 m/s in half a second: of 13.89 are left 13.47, 48.5 km/h. */
  @Test
  void a_pulse_without_an_end_tells_the_bodys_speed() {
    CrushCurve paper = CrushCurve.named("paper").to(mm(1), kN(0.6)).to(mm(9000), kN(0.6)).end();
    CrashModel weak = CrashModel.of("weak", kmh(50), kg(720), paper).behind(paper, kg(1));
    assertEquals(
        "the pulse of weak does not end within 500 ms: it still closes at 48.5 km/h; the frame is"
            + " too weak for this mass and speed, or its curve too short",
        assertThrows(SolveException.class, weak::run).getMessage());
  }
}
