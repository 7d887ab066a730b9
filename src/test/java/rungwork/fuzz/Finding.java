package rungwork.fuzz;

import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * What an entry must not have done.
 *
 * @param entry the entry
 * @param what what it did, without the values
 * @param example the call, its arguments shortened
 */
record Finding(Entry entry, String what, String example) {
  private static final int SHOWN = 160;

  static Finding of(Call call, String what) {
    return new Finding(call.entry(), what, shown(call));
  }

  /** Two findings of one cause have one key. */
  String key() {
    return entry + ": " + what.replaceFirst("(\\.java:\\d+\\)).*", "$1");
  }

  private static String shown(Call call) {
    String arguments =
        Arrays.stream(call.arguments()).map(Finding::shown).collect(Collectors.joining(", "));
    String on = call.entry().needsReceiver() ? " on " + shown(call.receiver()) : "";
    return "(" + arguments + ")" + on;
  }

  private static String shown(Object value) {
    String text;
    try {
      text = value instanceof double[] numbers ? Arrays.toString(numbers) : String.valueOf(value);
    } catch (RuntimeException e) {
      text = value.getClass().getSimpleName();
    }
    String line = text.replace("\n", "\\n");
    return line.length() > SHOWN ? line.substring(0, SHOWN) + "…" : line;
  }

  @Override
  public String toString() {
    return entry + ": " + what + "\n      " + example;
  }
}
