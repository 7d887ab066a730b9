package rungwork.report;

/**
 * The heading of a document's chapter, with its number.
 *
 * @param number such as {@code 3} or {@code A}
 * @param words the heading
 * @param css {@code fresh} where paper begins a new page, else empty
 */
record Chapter(String number, String words, String css) implements Block {
  static Chapter of(String number, String words) {
    return new Chapter(number, words, "");
  }

  @Override
  public void html(Markup markup) {
    markup.leaf("h2", number + "  " + words, "class", ("chapter " + css).strip());
  }

  @Override
  public void text(StringBuilder out) {
    String line = number + "  " + words;
    out.append("\n\n").append(line).append('\n');
    out.append("-".repeat(Math.min(Wrapped.WIDTH, Wrapped.width(line)))).append('\n');
  }
}
