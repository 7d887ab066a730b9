package rungwork.kernel;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the name that a writer probably meant: a type that only lacks its import, or a name like it
 * among those that could stand in its place.
 */
final class NearName {
  private static final Pattern SYMBOL = Pattern.compile("symbol:\\s+\\w+\\s+([\\w$]+)");
  private static final Pattern OPEN = Pattern.compile("cannot find \\w+ ([\\w$]+).*");
  private static final int LETTERS_A_SLIP = 4;
  private static final int TYPES_SHOWN = 3;

  private final CodeHelp help;

  NearName(CodeHelp help) {
    this.help = help;
  }

  /** The error with what to do added to its first line, if that can be told. */
  CompileError hinted(CompileError error, String source) {
    return unknown(error).map(name -> hinted(error, source, name)).orElse(error);
  }

  private CompileError hinted(CompileError error, String source, String name) {
    List<String> types = help.types(name);
    if (!types.isEmpty() && types.size() <= TYPES_SHOWN) {
      return error.advised("to use it, import " + String.join("; or import ", types) + ";");
    }
    return nearest(name, source, source.indexOf(name, error.start()))
        .map(error::didYouMean)
        .orElse(error);
  }

  private static Optional<String> unknown(CompileError error) {
    Matcher symbol = SYMBOL.matcher(error.message());
    if (symbol.find()) {
      return Optional.of(symbol.group(1));
    }
    Matcher open = OPEN.matcher(error.summary());
    return open.matches() ? Optional.of(open.group(1)) : Optional.empty();
  }

  /** One slip is forgiven for every four letters. */
  private Optional<String> nearest(String name, String source, int at) {
    if (at < 0) {
      return Optional.empty();
    }
    return help.completions(source.substring(0, at), at).matches().stream()
        .map(match -> match.replaceAll("\\W.*", ""))
        .filter(match -> slips(name, match) <= name.length() / LETTERS_A_SLIP)
        .min(Comparator.comparingInt(match -> slips(name, match)));
  }

  /**
   * How many letters have to be added, dropped or changed, or neighbours exchanged, to make one
   * word of the other; case does not count.
   */
  static int slips(String written, String meant) {
    String from = written.toLowerCase(Locale.ROOT);
    String to = meant.toLowerCase(Locale.ROOT);
    int[][] least = new int[from.length() + 1][to.length() + 1];
    for (int i = 0; i <= from.length(); i++) {
      for (int j = 0; j <= to.length(); j++) {
        least[i][j] = i == 0 || j == 0 ? i + j : step(least, new Pair(from, i, to, j));
      }
    }
    return least[from.length()][to.length()];
  }

  private record Pair(String from, int i, String to, int j) {
    private boolean same(int back, int forth) {
      return i >= back && j >= forth && from.charAt(i - back) == to.charAt(j - forth);
    }
  }

  private static int step(int[][] least, Pair at) {
    int i = at.i();
    int j = at.j();
    int changed = least[i - 1][j - 1] + (at.same(1, 1) ? 0 : 1);
    int one = Math.min(changed, Math.min(least[i - 1][j], least[i][j - 1]) + 1);
    boolean exchanged = i > 1 && j > 1 && at.same(1, 2) && at.same(2, 1);
    return exchanged ? Math.min(one, least[i - 2][j - 2] + 1) : one;
  }
}
