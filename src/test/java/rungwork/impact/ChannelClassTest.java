package rungwork.impact;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rungwork.impact.Pulse.ChannelClass;

/**
 * The corners of the tolerance band for classes 60 and 180 (SAE J211-1, figure of the dynamic
 * accuracy; from memory): +0.5 and −1 dB up to the class number, +0.5 and −4 dB at 5/3 of it, then
 * a fall between 9 dB and 24 dB an octave.
 */
class ChannelClassTest {
  private static double number(ChannelClass channel) {
    return channel == ChannelClass.CFC_60 ? 60 : 180;
  }

  private static double decibels(ChannelClass channel, double frequency) {
    return 20 * Math.log10(channel.gain(frequency));
  }

  @ParameterizedTest
  @EnumSource
  void the_response_lies_in_the_band_at_its_corners(ChannelClass channel) {
    double number = number(channel);
    for (double frequency = 0.1; frequency <= number; frequency += number / 50) {
      assertBetween(-1, 0.5, decibels(channel, frequency));
    }
    double corner = number / 0.6;
    assertBetween(-4, 0.5, decibels(channel, corner));
    assertBetween(-4 - 24, 0.5 - 9, decibels(channel, 2 * corner));
    assertTrue(decibels(channel, 4 * corner) < -30);
  }

  /** The second route: a wave sent through the recursion itself, not the formula of its gain. */
  @ParameterizedTest
  @EnumSource
  void a_wave_through_the_filter_comes_out_by_its_gain(ChannelClass channel) {
    for (double part : new double[] {0.5, 1, 5 / 3.0, 3}) {
      double frequency = number(channel) * part;
      int count = 8000;
      double[] times = new double[count];
      double[] values = new double[count];
      for (int i = 0; i < count; i++) {
        times[i] = i * 1e-4;
        values[i] = 1000 + 100 * Math.sin(2 * Math.PI * frequency * times[i]);
      }
      double[] out = Pulse.through("wave", times, values).filtered(channel).decelerations();
      double high = 0;
      double low = 2000;
      for (int i = 3500; i < 5000; i++) {
        high = Math.max(high, out[i]);
        low = Math.min(low, out[i]);
      }
      assertEquals(channel.gain(frequency), (high - low) / 200, 0.01);
    }
  }

  @ParameterizedTest
  @EnumSource
  void what_does_not_change_passes_whole(ChannelClass channel) {
    double[] c = channel.coefficients();
    assertEquals(1, (c[0] + c[1] + c[2]) / (1 - c[3] - c[4]), 1e-12);
    assertEquals(1, channel.gain(0));
  }

  private static void assertBetween(double low, double high, double value) {
    assertTrue(value >= low && value <= high, () -> value + " is not in " + low + " to " + high);
  }
}
