package rungwork.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A table: numbers to the right, their unit in the head. A row may carry notes, and lines folded
 * under it.
 *
 * @param columns its columns
 * @param rows its rows, a cell for each column
 */
record Table(List<Column> columns, List<Row> rows) implements Block {
  private static final String GAP = "  ";

  /**
   * A column.
   *
   * @param head its head, the unit in square brackets
   * @param css {@code number} to stand on the right, {@code flag} for a utilisation, {@code wide}
   *     or {@code said} for sentences, {@code brief} for a word or two, else empty
   * @param width letters in a line of plain text, where words are broken
   */
  record Column(String head, String css, int width) {
    private static final int WORDS = 26;

    static Column words(String head) {
      return new Column(head, "", WORDS);
    }

    /** A word or two, never broken: a unit, a standing. */
    static Column brief(String head) {
      return new Column(head, "brief", WORDS);
    }

    /** Words that may run to a sentence. */
    static Column sentence(String head) {
      return new Column(head, "said", 2 * WORDS);
    }

    /** Words that run to several sentences, as wide as the page. */
    static Column wide(String head) {
      return new Column(head, "wide", 3 * WORDS);
    }

    static Column number(String head) {
      return new Column(head, "number", WORDS);
    }

    /** A utilisation or another short flag, never broken. */
    static Column flag(String head) {
      return new Column(head, "flag", WORDS);
    }

    static Column number(String head, String unit) {
      return number(unit.isEmpty() ? head : head + " [" + unit + "]");
    }

    boolean onTheRight() {
      return css.equals("number");
    }

    boolean breaks() {
      return css.isEmpty() || css.equals("said") || css.equals("wide");
    }
  }

  /**
   * A cell.
   *
   * @param words what it says
   * @param chip style-sheet class of the colour shown before it; empty for no colour
   */
  record Cell(String words, String chip) {
    static Cell of(String words) {
      return new Cell(words, "");
    }
  }

  /**
   * A row.
   *
   * @param cells a cell for each column
   * @param notes lines that stand under the row; none for a plain row
   * @param folded lines folded under the row on a page and left out of plain text; none for a plain
   *     row
   */
  record Row(List<Cell> cells, List<String> notes, List<String> folded) {
    static Row of(Cell... cells) {
      return new Row(List.of(cells), List.of(), List.of());
    }

    static Row of(String... words) {
      return new Row(Arrays.stream(words).map(Cell::of).toList(), List.of(), List.of());
    }

    /** This row with notes under it; empty ones fall away. */
    Row noting(String... lines) {
      return new Row(cells, Arrays.stream(lines).filter(line -> !line.isEmpty()).toList(), folded);
    }

    /** This row with what was folded under it in plain sight. */
    Row unfolded() {
      List<String> all = new ArrayList<>(notes);
      all.addAll(folded);
      return new Row(cells, all, List.of());
    }

    /** This row with lines folded under it. */
    Row folding(List<String> lines) {
      return new Row(cells, notes, List.copyOf(lines));
    }
  }

  Table {
    columns = List.copyOf(columns);
    rows = List.copyOf(rows);
  }

  @Override
  public void html(Markup markup) {
    markup.element(
        "div",
        () -> markup.element("table", () -> head(markup).element("tbody", () -> body(markup))),
        "class",
        "scroll");
  }

  private boolean headless() {
    return columns.stream().allMatch(column -> column.head().isEmpty());
  }

  private Markup head(Markup markup) {
    if (headless()) {
      return markup;
    }
    Runnable cells =
        () -> columns.forEach(c -> markup.leaf("th", c.head(), "scope", "col", "class", c.css()));
    return markup.element("thead", () -> markup.element("tr", cells));
  }

  private void body(Markup markup) {
    for (Row row : rows) {
      markup.element("tr", () -> cells(markup, row));
      if (!row.notes().isEmpty() || !row.folded().isEmpty()) {
        markup.element("tr", () -> under(markup, row), "class", "under");
      }
    }
  }

  private void cells(Markup markup, Row row) {
    for (int i = 0; i < columns.size(); i++) {
      Cell cell = row.cells().get(i);
      markup.element("td", () -> cell(markup, cell), "class", columns.get(i).css());
    }
  }

  private static void cell(Markup markup, Cell cell) {
    if (!cell.chip().isEmpty()) {
      markup.leaf("span", "", "class", "chip " + cell.chip());
    }
    markup.text(cell.words());
  }

  private void under(Markup markup, Row row) {
    markup.element(
        "td",
        () -> {
          row.notes().forEach(note -> markup.leaf("div", note, "class", "note"));
          if (!row.folded().isEmpty()) {
            markup.element("details", () -> fold(markup, row));
          }
        },
        "colspan",
        String.valueOf(columns.size()));
  }

  private static void fold(Markup markup, Row row) {
    markup.leaf("summary", "working and source");
    markup.element(
        "ol", () -> row.folded().forEach(line -> markup.leaf("li", line)), "class", "working");
  }

  @Override
  public List<Block> unfolded() {
    return List.of(new Table(columns, rows.stream().map(Row::unfolded).toList()));
  }

  @Override
  public void text(StringBuilder out) {
    List<List<String>> heads = columns.stream().map(column -> List.of(column.head())).toList();
    List<List<List<String>>> lines = rows.stream().map(this::broken).toList();
    int[] widths = new int[columns.size()];
    widen(widths, heads);
    lines.forEach(cells -> widen(widths, cells));
    if (!headless()) {
      row(out, widths, heads);
      row(out, widths, Arrays.stream(widths).mapToObj(w -> List.of("-".repeat(w))).toList());
    }
    for (int i = 0; i < rows.size(); i++) {
      row(out, widths, lines.get(i));
      rows.get(i).notes().forEach(note -> Wrapped.into(out, "    ", note));
    }
  }

  /** The cells of a row in plain text, long words broken into lines. */
  private List<List<String>> broken(Row row) {
    List<List<String>> cells = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      String words = row.cells().get(i).words();
      cells.add(
          columns.get(i).breaks() ? Wrapped.lines(words, columns.get(i).width()) : List.of(words));
    }
    return cells;
  }

  private static void widen(int[] widths, List<List<String>> cells) {
    for (int i = 0; i < widths.length; i++) {
      for (String line : cells.get(i)) {
        widths[i] = Math.max(widths[i], Wrapped.width(line));
      }
    }
  }

  private void row(StringBuilder out, int[] widths, List<List<String>> cells) {
    int height = cells.stream().mapToInt(List::size).max().orElse(0);
    for (int k = 0; k < height; k++) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < widths.length; i++) {
        String words = k < cells.get(i).size() ? cells.get(i).get(k) : "";
        String blank = " ".repeat(widths[i] - Wrapped.width(words));
        line.append(columns.get(i).onTheRight() ? blank + words : words + blank).append(GAP);
      }
      out.append(line.toString().stripTrailing()).append('\n');
    }
  }
}
