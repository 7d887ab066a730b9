package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwork.quantity.Quantities.g;
import static rungwork.quantity.Quantities.ms;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rungwork.impact.Pulse.ChannelClass;

class PulseTest {
  private static final double G = 9.80665;

  @TempDir Path folder;

  @Test
  void ideal_pulses_have_their_known_means_and_areas() {
    double area = 20 * G * 0.1;
    assertEquals(area, Pulse.square(g(20), ms(100)).velocityChange(), 1e-9);
    assertEquals(area / 2, Pulse.triangle(g(20), ms(100)).velocityChange(), 1e-9);
    assertEquals(area / 2, Pulse.haversine(g(20), ms(100)).velocityChange(), 1e-9);
    assertEquals(area * 2 / Math.PI, Pulse.halfSine(g(20), ms(100)).velocityChange(), 1e-6 * area);
  }

  @Test
  void a_symmetric_pulse_to_rest_takes_half_the_time_at_full_speed() {
    for (Pulse pulse : List.of(Pulse.haversine(g(30), ms(90)), Pulse.triangle(g(30), ms(90)))) {
      double speed = pulse.velocityChange();
      assertEquals(speed * 0.09 / 2, pulse.stopDistance(speed), 1e-6);
      assertEquals(pulse.meanOverTime(), pulse.meanOverDistance(speed), 1e-4);
    }
  }

  @Test
  void a_back_loaded_pulse_goes_farther_than_its_mirror_image() {
    Pulse late = Pulse.through("late", new double[] {0, 0.08, 0.1}, new double[] {0, 300, 0});
    Pulse early = Pulse.through("early", new double[] {0, 0.02, 0.1}, new double[] {0, 300, 0});
    assertEquals(late.velocityChange(), early.velocityChange(), 1e-12);
    assertTrue(late.stopDistance(15) > 1.4 * early.stopDistance(15));
    assertTrue(late.meanOverDistance(15) < late.meanOverTime());
    assertTrue(early.meanOverDistance(15) > early.meanOverTime());
  }

  @Test
  void the_way_ends_where_the_vehicle_stands() {
    Pulse square = Pulse.square(g(20), ms(200));
    double speed = 13;
    assertEquals(speed * speed / (40 * G), square.stopDistance(speed), 1e-12);
    assertEquals(20 * G, square.meanOverDistance(speed), 1e-9);
    double fast = 60;
    double left = fast - 20 * G * 0.2;
    assertEquals(
        (fast * fast - left * left) / (40 * G), square.stopDistance(fast), 1e-9, "runs through");
  }

  @Test
  void the_3_ms_value_lies_below_a_short_peak() {
    Pulse triangle = Pulse.triangle(g(40), ms(100));
    assertEquals(40 * G * 0.97, triangle.clip(0.003), 1e-6);
    Pulse twoPeaks =
        Pulse.through(
            "two peaks",
            new double[] {0, 0.002, 0.004, 0.006, 0.008},
            new double[] {0, 100, 0, 100, 0});
    assertEquals(100 * (1 - 0.003 / 0.008), twoPeaks.clip(0.003), 1e-6, "pieces count together");
    assertEquals(0, Pulse.square(g(20), ms(2)).clip(0.003), 1e-9);
  }

  @Test
  void a_pulse_is_nothing_outside_its_time() {
    Pulse square = Pulse.square(g(20), ms(100));
    assertEquals(0, square.at(-0.001));
    assertEquals(20 * G, square.at(0), 1e-9);
    assertEquals(20 * G, square.at(0.0999), 1e-9);
    assertEquals(0, square.at(0.1));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13, 14, 15})
  void the_channel_filter_keeps_the_area_and_lowers_the_peak(long seed) {
    Random random = new Random(seed);
    double[] times = new double[60];
    double[] values = new double[60];
    for (int i = 1; i < 60; i++) {
      times[i] = i * 0.002;
      values[i] = i == 59 ? 0 : 400 * random.nextDouble();
    }
    Pulse raw = Pulse.through("noise", times, values);
    for (ChannelClass channel : ChannelClass.values()) {
      Pulse smooth = raw.filtered(channel);
      assertEquals(raw.velocityChange(), smooth.velocityChange(), 2e-3 * raw.velocityChange());
      assertTrue(smooth.peak() < raw.peak());
      assertEquals(List.of(), smooth.warnings());
    }
  }

  @Test
  void the_channel_filter_shifts_nothing() {
    Pulse smooth = Pulse.haversine(g(30), ms(60)).filtered(ChannelClass.CFC_60);
    assertEquals(0.03, smooth.peakTime(), 1.5e-4);
    assertEquals("haversine, filtered CFC 60", smooth.name());
  }

  @Test
  void a_file_is_read_in_the_units_of_its_heads() throws IOException {
    Path file = folder.resolve("sled.csv");
    Files.writeString(file, "time_ms,deceleration_g\n0,0\n50,20\n100,0\n");
    Pulse pulse = Pulse.read(file);
    assertEquals("sled.csv", pulse.name());
    assertEquals(20 * G, pulse.peak(), 1e-9);
    assertEquals(0.1, pulse.duration(), 1e-12);
    Files.writeString(file, "note,deceleration_m_s2,time_s\na,0,0\nb,100,0.05\nc,0,0.1\n");
    assertEquals(100, Pulse.read(file).peak(), 1e-12);
    Files.writeString(file, "time_s,deceleration_m_s2\n0,100\n0.01,100\n0.01,50\n0.03,50\n");
    assertEquals(2, Pulse.read(file).velocityChange(), 1e-12, "a jump stands at one time");
  }

  @Test
  void a_mistake_in_a_file_is_named_by_line_and_column() throws IOException {
    Path file = folder.resolve("sled.csv");
    refused(
        file,
        "time_ms,deceleration_g\n0,0\n50,x\n",
        "sled.csv line 3, deceleration_g: \"x\" is not a number");
    refused(
        file,
        "time_ms,deceleration_g\n0,0\n50\n",
        "sled.csv line 3, deceleration_g: the row has no such column");
    refused(
        file,
        "time_ms,deceleration_g\n0,0\n50,3\n40,2\n",
        "sled.csv line 4, time_ms: goes back in time; times must not fall");
    refused(
        file,
        "t,a\n0,0\n",
        "sled.csv line 1, time_ms or time_s: there is no such column; the heads are t, a");
    refused(
        file,
        "time_ms,deceleration_g\n",
        "sled.csv line 2, time_ms: nothing stands there; give one row at least");
    refused(
        file,
        "time_ms,deceleration_g\n0,0\n50,-20\n100,0\n",
        "pulse sled.csv speeds the vehicle up by 35.30 km/h; a deceleration is positive here:"
            + " change the sign");
    refused(
        file,
        "time_ms,deceleration_g\n0,0\n",
        "pulse sled.csv has 1 times and 1 values; give 2 to 2000000 of both");
    refused(
        file,
        "time_ms,time_s,deceleration_g\n0,0,0\n",
        "sled.csv line 1, time_s: stands beside time_ms; give one of the two");
    refused(
        file,
        "time_min,deceleration_g\n0,0\n",
        "sled.csv line 1, time_ms or time_s: there is no such column; the heads are time_min,"
            + " deceleration_g");
    refused(
        file,
        "time_ms,deceleration_g\n0,0\n,20\n",
        "sled.csv line 3, time_ms: nothing stands there");
    refused(
        file,
        "time_ms,deceleration_g\n0,0\n50,NaN\n",
        "sled.csv line 3, deceleration_g: \"NaN\" is not a number");
    Path nowhere = folder.resolve("none.csv");
    Refused.with("there is no pulse file " + nowhere, () -> Pulse.read(nowhere));
  }

  private static void refused(Path file, String text, String message) throws IOException {
    Files.writeString(file, text);
    Refused.with(message, () -> Pulse.read(file));
  }

  @Test
  void a_pulse_that_does_not_end_says_so() {
    Pulse cut = Pulse.through("cut", new double[] {0, 0.05}, new double[] {0, 20 * G});
    assertEquals(
        List.of(
            "Pulse cut does not end: it still is 20.0 g at its last point, 50.0 ms. What follows is"
                + " missing from every figure."),
        cut.warnings());
    assertEquals(List.of(), Pulse.square(g(20), ms(50)).warnings());
  }

  @Test
  void nonsense_is_refused() {
    Refused.with("peak of a pulse 0 g is not above zero", () -> Pulse.square(g(0), ms(50)));
    Refused.with(
        "duration of a pulse -5.000 ms is not above zero", () -> Pulse.square(g(9), ms(-5)));
    Refused.with(
        "pulse back goes back from 50.00 ms to 40.00 ms; times must not fall",
        () -> Pulse.through("back", new double[] {0, 0.05, 0.04}, new double[] {1, 1, 1}));
    Refused.with(
        "pulse short lasts no time; give it a duration",
        () -> Pulse.through("short", new double[] {0, 0}, new double[] {1, 1}));
  }

  @Test
  void a_pulse_prints_its_figures() {
    assertEquals(
        "square: peak 20.0 g, mean over time 20.0 g, 100 ms, Δv 70.6 km/h",
        Pulse.square(g(20), ms(100)).toString());
  }
}
