package rungwork.report;

import java.util.List;

/**
 * Room for a reviewer's remarks and for signatures, on paper by hand.
 *
 * @param people who signs, each with what for
 */
record Signatures(List<Line> people) implements Block {
  private static final String REMARKS = "Reviewer's remarks";
  private static final String RULE = "_".repeat(40);
  private static final int ROOM = 8;

  /**
   * A line to sign.
   *
   * @param who whose name goes there
   * @param what what the signature says
   */
  record Line(String who, String what) {}

  Signatures {
    people = List.copyOf(people);
  }

  @Override
  public void html(Markup markup) {
    markup.element("div", () -> markup.leaf("p", REMARKS), "class", "remarks");
    markup.element("div", () -> people.forEach(one -> line(markup, one)), "class", "signatures");
  }

  private static void line(Markup markup, Line one) {
    markup.element(
        "div",
        () -> {
          markup.leaf("p", one.who(), "class", "who");
          markup.leaf("p", one.what(), "class", "note");
          markup.leaf("p", "date, name, signature", "class", "sign");
        },
        "class",
        "signature");
  }

  @Override
  public void text(StringBuilder out) {
    out.append(REMARKS).append('\n').append("\n".repeat(ROOM));
    for (Line one : people) {
      Wrapped.into(out, "", one.who());
      Wrapped.into(out, "", one.what());
      out.append('\n').append(RULE).append('\n');
      Wrapped.into(out, "", "date, name, signature");
      out.append('\n');
    }
  }
}
