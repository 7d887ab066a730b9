package rungwork.notebook;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a beginner can do about the compiler's commonest messages. */
final class Advice {
  /** A quantity asked for; a number, a text or a quantity of another kind given. */
  private static final Pattern WANTED =
      Pattern.compile(".* cannot be converted to (\\S*\\.)?Quantity<(\\S*\\.)?(?<kind>\\w+)>");

  private static final Map<String, String> MAKERS =
      Map.of(
          "Length", "mm(50), inch(2) or length(\"3/16 in\")",
          "Mass", "kg(58) or lb(128)",
          "Force", "kN(4) or lbf(900)",
          "Moment", "Nm(150) or lbft(110)",
          "Pressure", "MPa(355) or ksi(50)",
          "Acceleration", "g(1.1) or mps2(10)",
          "Speed", "kmh(40) or mph(25)",
          "Angle", "deg(45)",
          "Stiffness", "Npmm(50) or lbfpin(300)",
          "Time", "ms(20) or s(1)");

  private static final Map<Pattern, String> OTHERS = others();

  private Advice() {}

  private static Map<Pattern, String> others() {
    Map<Pattern, String> advice = new LinkedHashMap<>();
    advice.put(Pattern.compile("';' expected"), "end the statement before it with a semicolon");
    advice.put(
        Pattern.compile("reached end of file while parsing"),
        "close every bracket and brace that the cell opens");
    advice.put(
        Pattern.compile(
            "incompatible types: (java\\.lang\\.)?String cannot be converted to double"),
        "write the number without quotes");
    advice.put(
        Pattern.compile("no suitable (method|constructor) found for .*"),
        "what it takes is listed below, and by Shift+Tab inside its brackets");
    return advice;
  }

  /**
   * What to do.
   *
   * @param message the first line of what the compiler says
   * @return the advice; empty where there is none
   */
  static Optional<String> on(String message) {
    Matcher wanted = WANTED.matcher(message);
    if (wanted.matches()) {
      String kind = wanted.group("kind");
      return Optional.ofNullable(MAKERS.get(kind))
          .map(makers -> "write the " + word(kind) + " with its unit, such as " + makers);
    }
    return OTHERS.entrySet().stream()
        .filter(each -> each.getKey().matcher(message).matches())
        .map(Map.Entry::getValue)
        .findFirst();
  }

  private static String word(String kind) {
    return kind.equals("Pressure") ? "stress" : kind.toLowerCase(Locale.ROOT);
  }
}
