package rungwork.quantity;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static rungwork.quantity.Quantities.*;

import java.util.Map;
import java.util.function.DoubleFunction;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Time;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.fault.ModelException;
import systems.uom.common.USCustomary;

class QuantitiesTest {
  /** A maker multiplies once and its reader once: two roundings. */
  private static final double ROUNDING = 1e-15;

  private static final double INCH = 0.0254;
  private static final double POUND = 0.45359237;
  private static final double POUND_FORCE = POUND * 9.80665;

  @Test
  void geometry_comes_out_in_metres() {
    Quantity<Length> length = mm(50);
    Quantity<Area> area = cm2(5.41);
    Quantity<SectionModulus> modulus = cm3(8.46);
    Quantity<SecondMoment> secondMoment = cm4(25.38);
    assertAll(
        () -> equal(0.05, length),
        () -> equal(0.05, cm(5)),
        () -> equal(2.2, m(2.2)),
        () -> equal(2 * INCH, inch(2)),
        () -> equal(3.0 / 16 * INCH, inch("3/16")),
        () -> equal(12 * INCH, ft(1)),
        () -> equal(5.41e-4, area),
        () -> equal(541e-6, mm2(541)),
        () -> equal(8.46e-6, modulus),
        () -> equal(8460e-9, mm3(8460)),
        () -> equal(25.38e-8, secondMoment),
        () -> equal(1386e-12, mm4(1386)));
  }

  @Test
  void statics_comes_out_in_newtons_and_metres() {
    Quantity<Force> force = kN(4);
    Quantity<Moment> moment = kNm(0.86);
    Quantity<LineLoad> lineLoad = kNpm(20);
    Quantity<Pressure> stress = MPa(355);
    Quantity<Stiffness> stiffness = Npmm(70);
    Quantity<RotationalStiffness> rotationalStiffness = Nmpdeg(3000);
    assertAll(
        () -> equal(4000, force),
        () -> equal(4, N(4)),
        () -> equal(5000 * POUND_FORCE, lbf(5000)),
        () -> equal(5000 * POUND_FORCE, kip(5)),
        () -> equal(860, moment),
        () -> equal(860, Nm(860)),
        () -> equal(10 * POUND_FORCE * 12 * INCH, lbft(10)),
        () -> equal(10 * POUND_FORCE * INCH, lbin(10)),
        () -> equal(20_000, lineLoad),
        () -> equal(20, Npm(20)),
        () -> equal(500 * POUND_FORCE / (12 * INCH), lbfpft(500)),
        () -> equal(355e6, stress),
        () -> equal(210e9, GPa(210)),
        () -> equal(46_000 * POUND_FORCE / (INCH * INCH), ksi(46)),
        () -> equal(46_000 * POUND_FORCE / (INCH * INCH), psi(46_000)),
        () -> equal(70e3, stiffness),
        () -> equal(70e6, kNpmm(70)),
        () -> equal(400 * POUND_FORCE / INCH, lbfpin(400)),
        () -> equal(3000 * 180 / Math.PI, rotationalStiffness),
        () -> equal(3000, Nmprad(3000)),
        () -> equal(2000 * POUND_FORCE * 12 * INCH * 180 / Math.PI, lbftpdeg(2000)));
  }

  @Test
  void masses_and_motion_come_out_in_kilograms_metres_and_seconds() {
    Quantity<Mass> mass = kg(62);
    Quantity<Density> density = kgpm3(7850);
    Quantity<MomentOfInertia> inertia = kgm2(410);
    Quantity<Acceleration> acceleration = g(3);
    Quantity<Speed> speed = kmh(50);
    Quantity<Energy> energy = kJ(62.2);
    Quantity<Time> time = ms(90);
    Quantity<Angle> angle = deg(12);
    assertAll(
        () -> equal(62, mass),
        () -> equal(160 * POUND, lb(160)),
        () -> equal(7850, density),
        () -> equal(410, inertia),
        () -> equal(29.41995, acceleration),
        () -> equal(5, mps2(5)),
        () -> equal(50 / 3.6, speed),
        () -> equal(30 * 1609.344 / 3600, mph(30)),
        () -> equal(13.41, mps(13.41)),
        () -> equal(62_200, energy),
        () -> equal(62_200, J(62_200)),
        () -> equal(0.09, time),
        () -> equal(0.09, s(0.09)),
        () -> equal(Math.toRadians(12), angle),
        () -> equal(0.2, rad(0.2)));
  }

  @Test
  void the_fast_way_to_si_agrees_with_the_librarys_own() {
    for (String unit : Vocabulary.known()) {
      Quantity<?> quantity = parse("12.5 " + unit);
      double library = quantity.toSystemUnit().getValue().doubleValue();
      assertEquals(library, si(unit, quantity), 2 * ROUNDING * library, unit);
    }
  }

  @Test
  void quantities_print_in_metric_workshop_units() {
    assertAll(
        () -> assertEquals("50 mm", mm(50).toString()),
        () -> assertEquals("50.8 mm", inch(2).toString()),
        () -> assertEquals("4.7625 mm", inch("3/16").toString()),
        () -> assertEquals("0.86 kN·m", Nm(860).toString()),
        () -> assertEquals("355 MPa", MPa(355).toString()),
        () -> assertEquals("70 N/mm", Npmm(70).toString()),
        () -> assertEquals("3000 N·m/deg", Nmpdeg(3000).toString()),
        () -> assertEquals("29.41995 m/s²", g(3).toString()),
        () -> assertEquals("80.4672 km/h", mph(50).toString()),
        () -> assertEquals("2.26796185 kg", lb(5).toString()));
  }

  @Test
  void the_same_length_from_inches_and_millimetres_is_equal() {
    assertEquals(mm(50.8), inch(2));
    assertEquals(m(2.2), mm(2200));
  }

  @Test
  void a_quantity_made_with_the_library_is_welcome() {
    Quantity<Length> theirs =
        tech.units.indriya.quantity.Quantities.getQuantity(2, USCustomary.INCH);
    equal(0.0508, theirs);
  }

  @Test
  void every_measure_holds_the_unit_that_metric_readers_see() {
    Map<Kind, String> printed = Map.of(Kind.ACCELERATION, "m/s²", Kind.SECOND_MOMENT, "cm^4");
    for (Measure<?> measure : Measure.ALL) {
      String shown = Units.METRIC.scale(measure.kind()).unit();
      assertEquals(printed.getOrDefault(measure.kind(), shown), measure.unit().toString(), shown);
      Unit<?> unit = measure.unit();
      double library =
          tech.units.indriya.quantity.Quantities.getQuantity(1, unit)
              .toSystemUnit()
              .getValue()
              .doubleValue();
      assertEquals(library, measure.inSi(), ROUNDING * library, shown);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void makers_refuse_what_is_no_number(double value) {
    String word = Double.isNaN(value) ? "not a number" : value > 0 ? "infinite" : "-infinite";
    Map<String, DoubleFunction<Quantity<?>>> makers =
        Map.of("length in mm", Quantities::mm, "force in lbf", Quantities::lbf);
    makers.forEach(
        (what, maker) -> {
          ModelException refusal = assertThrows(ModelException.class, () -> maker.apply(value));
          assertEquals(what + " is " + word + "; give a finite number", refusal.getMessage());
        });
  }

  @Test
  void a_number_too_large_for_its_unit_is_refused() {
    ModelException refusal = assertThrows(ModelException.class, () -> m(1e307));
    assertEquals(
        "length in m is 1.000e307 in SI units; numbers beyond 1e30 cannot be calculated with",
        refusal.getMessage());
  }

  @Test
  void a_quantity_that_is_infinite_in_si_units_names_the_thing() {
    Quantity<Force> huge =
        tech.units.indriya.quantity.Quantities.getQuantity(
            Double.MAX_VALUE, MetricPrefix.KILO(tech.units.indriya.unit.Units.NEWTON));
    ModelException refusal =
        assertThrows(ModelException.class, () -> si("force on the left mount", huge));
    assertEquals("force on the left mount is infinite; give a finite number", refusal.getMessage());
  }

  private static void equal(double si, Quantity<?> quantity) {
    assertEquals(si, si("value", quantity), ROUNDING * Math.abs(si));
  }
}
