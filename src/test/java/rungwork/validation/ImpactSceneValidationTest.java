package rungwork.validation;

import static rungwork.quantity.Quantities.ft;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.kNpmm;
import static rungwork.quantity.Quantities.kg;
import static rungwork.quantity.Quantities.kmh;
import static rungwork.quantity.Quantities.lb;
import static rungwork.quantity.Quantities.m;
import static rungwork.quantity.Quantities.mph;
import static rungwork.quantity.Quantities.ms;

import org.junit.jupiter.api.Test;
import rungwork.impact.Obstacle;
import rungwork.impact.Pulse;
import rungwork.impact.Pulse.ChannelClass;
import rungwork.impact.Scene;

/** What follows from speed, mass and distance alone, and what pulses and their filter give. */
class ImpactSceneValidationTest {
  private static final double G = 9.80665;

  private static Scene wall(double kilometresAnHour) {
    return Scene.of("wall", kmh(kilometresAnHour), kg(700), Obstacle.rigidWall());
  }

  private static double mean(double kilometresAnHour, double metres) {
    return wall(kilometresAnHour).meanDeceleration(m(metres)).high() / G;
  }

  @Test
  void mean_deceleration_over_a_distance() {
    Published.identity("v²/(2·d), g 9.80665 m/s²", "vehicle to rest at a wall")
        .value("48 km/h, 0.2 m", "g", "45.3", mean(48, 0.2))
        .value("48 km/h, 0.4 m", "g", "22.7", mean(48, 0.4))
        .value("48 km/h, 0.6 m", "g", "15.1", mean(48, 0.6))
        .value("56 km/h, 0.2 m", "g", "61.7", mean(56, 0.2))
        .value("56 km/h, 0.4 m", "g", "30.8", mean(56, 0.4))
        .value("56 km/h, 0.6 m", "g", "20.6", mean(56, 0.6))
        .value("64 km/h, 0.2 m", "g", "80.6", mean(64, 0.2))
        .value("64 km/h, 0.4 m", "g", "40.3", mean(64, 0.4))
        .value("64 km/h, 0.6 m", "g", "26.9", mean(64, 0.6));
    Published.identity("½·m·v²", "700 kg")
        .value("48 km/h", "kJ", "62.2", wall(48).energy().high() / 1e3)
        .value("56 km/h", "kJ", "84.7", wall(56).energy().high() / 1e3)
        .value("64 km/h", "kJ", "110.6", wall(64).energy().high() / 1e3);
  }

  /** A person of 160 lb taken as the mass, as the page does. */
  @Test
  void a_person_stopped_from_30_mph() {
    Scene person = Scene.of("person", mph(30), lb(160), Obstacle.rigidWall());
    Published source =
        Published.read(
            "C. R. Nave, HyperPhysics, Georgia State University, car crash example",
            "160 lb from 30 mph");
    double one = person.meanDeceleration(ft(1)).high();
    double half = person.meanDeceleration(ft(1.5)).high();
    double fifth = person.meanDeceleration(ft(0.2)).high();
    source
        .value("deceleration over 1 ft", "g", "30", one / G)
        .value("deceleration over 1.5 ft", "g", "20", half / G)
        .value("deceleration over 1.5 ft", "ft/s²", "645", half / 0.3048)
        .value("deceleration over 1.5 ft", "m/s²", "197", half)
        .value("deceleration over 0.2 ft", "g", "150", fifth / G)
        .allowing(1.2e-3, "the page rounds the speed")
        .value("deceleration over 1 ft", "ft/s²", "967", one / 0.3048)
        .value("deceleration over 0.2 ft", "ft/s²", "4836", fifth / 0.3048)
        .value("deceleration over 0.2 ft", "m/s²", "1474", fifth)
        .value("force over 1 ft", "lb", "4813", 160 * one / G)
        .value("force over 1.5 ft", "lb", "3209", 160 * half / G)
        .value("force over 0.2 ft", "lb", "24068", 160 * fifth / G);
  }

  private static Scene meeting(double own) {
    return Scene.of("meeting", kmh(112), kg(own), Obstacle.vehicle(kg(2100 - own), kNpmm(1)))
        .restitution(0, 0);
  }

  @Test
  void two_vehicles_share_the_speed_by_their_masses() {
    Published.identity("conservation of momentum", "700 and 1400 kg closing at 112 km/h")
        .value("Δv of 700 kg", "km/h", "74.667", meeting(700).velocityChange().high() * 3.6)
        .value("Δv of 1400 kg", "km/h", "37.333", meeting(1400).velocityChange().high() * 3.6);
  }

  @Test
  void two_linear_fronts_crush_by_their_stiffness() {
    springs(0.5, "346", "0.69", "0.35", "50.5", "25.2");
    springs(1, "424", "0.42", "0.42", "61.8", "30.9");
    springs(10, "572", "0.06", "0.57", "83.3", "41.7");
  }

  private static void springs(
      double own, String force, String ownCrush, String otherCrush, String ownG, String otherG) {
    Scene.LinearCrush crush =
        Scene.of("meeting", kmh(100), kg(700), Obstacle.vehicle(kg(1400), kNpmm(1)))
            .springs(kNpmm(own));
    Published.derived(
            "F = v·√(μ·k) of two springs in a row, computed apart",
            "700 and 1400 kg closing at 100 km/h, own front " + own + " MN/m, other 1.0 MN/m")
        .value("force", "kN", force, crush.force().high() / 1e3)
        .value("own crush", "m", ownCrush, crush.ownCrush().high())
        .value("other crush", "m", otherCrush, crush.otherCrush().high())
        .value("own deceleration", "g", ownG, crush.ownDeceleration().high() / G)
        .value("other deceleration", "g", otherG, crush.otherAcceleration().high() / G);
  }

  private static double peakOverMean(Pulse pulse) {
    return pulse.peak() / pulse.meanOverTime();
  }

  @Test
  void peak_over_mean_of_ideal_pulses() {
    Published.identity("areas of the ideal shapes", "peak over mean over time")
        .value("square", "", "1.0000", peakOverMean(Pulse.square(g(20), ms(100))))
        .value("half-sine", "", "1.5708", peakOverMean(Pulse.halfSine(g(20), ms(100))))
        .value("haversine", "", "2.0000", peakOverMean(Pulse.haversine(g(20), ms(100))))
        .value("triangle", "", "2.0000", peakOverMean(Pulse.triangle(g(20), ms(100))));
  }

  /** The generic sled pulse that 49 CFR 571.208 once named. */
  @Test
  void a_half_sine_of_17_2_g_and_125_ms() {
    Pulse sled = Pulse.halfSine(g(17.2), ms(125));
    double speed = sled.velocityChange();
    Published.memory("49 CFR 571.208, generic sled pulse", "half-sine 17.2 g, 125 ms")
        .value("velocity change", "km/h", "48.3", speed * 3.6)
        .value("way to rest", "m", "0.839", sled.stopDistance(speed));
  }

  /** Varat and Husher's way of a haversine from v to rest is v·T/2. */
  @Test
  void a_haversine_to_rest() {
    Pulse pulse = Pulse.haversine(g(30), ms(100));
    Published.derived(
            "closed form S of Varat & Husher, ESV-18 paper 501 (2003), with v = P·T/2",
            "haversine 30 g, 100 ms")
        .value("way to rest", "m", "0.73550", pulse.stopDistance(pulse.velocityChange()));
  }

  @Test
  void the_light_stiff_vehicle_of_the_records() {
    Published.identity("v²/(2·d), g 9.80665 m/s²", "56 km/h on about 350 mm")
        .value("mean deceleration", "g", "35.2", mean(56, 0.35));
  }

  @Test
  void the_channel_filter() {
    Published.memory("SAE J211-1, dynamic accuracy of classes 60 and 180", "response")
        .value("CFC 60 at 100 Hz", "dB", "-3.0", decibels(ChannelClass.CFC_60, 100))
        .value("CFC 180 at 300 Hz", "dB", "-3.0", decibels(ChannelClass.CFC_180, 300));
    double[] wide = ChannelClass.CFC_180.coefficients();
    double[] narrow = ChannelClass.CFC_60.coefficients();
    Published.derived(
            "bilinear transform of 1/(s² + √2·s + 1), computed apart with scipy.signal.butter",
            "10 000 samples a second")
        .value("CFC 180, a₀", "", "0.011796", wide[0])
        .value("CFC 180, b₁", "", "1.67012", wide[3])
        .value("CFC 180, b₂", "", "-0.71730", wide[4])
        .value("CFC 60, a₀", "", "0.0014524", narrow[0])
        .value("CFC 60, b₁", "", "1.88934", narrow[3])
        .value("CFC 60, b₂", "", "-0.89515", narrow[4]);
  }

  private static double decibels(ChannelClass channel, double hertz) {
    return 20 * Math.log10(channel.gain(hertz));
  }
}
