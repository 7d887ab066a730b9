package rungwork.notebook;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The words after a command: options, each followed by its value, and what remains. */
final class Options {
  private final List<String> words;

  Options(List<String> words) {
    this.words = new ArrayList<>();
    words.forEach(this::take);
  }

  /** {@code --name=value} is as good as {@code --name value}. */
  private void take(String word) {
    int equals = word.startsWith("--") ? word.indexOf('=') : -1;
    if (equals < 0) {
      words.add(word);
    } else {
      words.add(word.substring(0, equals));
      words.add(word.substring(equals + 1));
    }
  }

  /** Takes an option and its value. */
  Optional<String> optional(String name) {
    int at = words.indexOf(name);
    if (at < 0) {
      return Optional.empty();
    }
    if (at + 1 == words.size() || !isValue(words.get(at + 1))) {
      throw new UsageException(name + " needs a value after it");
    }
    words.remove(at);
    return Optional.of(words.remove(at));
  }

  private static boolean isValue(String word) {
    return !word.isEmpty() && !word.startsWith("--");
  }

  /** Takes an option that has no value; says whether it was there. */
  boolean flag(String name) {
    return words.remove(name);
  }

  /** Takes an option that has to be there. */
  String value(String name) {
    return optional(name).orElseThrow(() -> new UsageException(name + " is missing"));
  }

  /** Takes an option that counts whole seconds. */
  Optional<Duration> seconds(String name) {
    return optional(name)
        .map(
            text -> {
              if (!text.matches("[1-9]\\d{0,5}")) {
                throw new UsageException(name + " " + text + " is no whole number of seconds");
              }
              return Duration.ofSeconds(Long.parseLong(text));
            });
  }

  /** Takes the one word that is no option. */
  String only(String what) {
    int at = 0;
    while (at < words.size() && words.get(at).startsWith("--")) {
      at += 2;
    }
    if (at >= words.size()) {
      throw new UsageException(what + " is missing");
    }
    return words.remove(at);
  }

  /** Nothing may be left. */
  void refuseOthers() {
    if (!words.isEmpty()) {
      throw new UsageException("cannot use " + String.join(" ", words));
    }
  }
}
