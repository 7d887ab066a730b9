package rungwork.report;

import java.util.List;

/**
 * What a value has to say, in the reader's units: as HTML and as plain text, both from the same
 * words, so that they cannot disagree.
 */
public final class Page {
  private final List<Block> blocks;

  Page(List<Block> blocks) {
    this.blocks = List.copyOf(blocks);
  }

  /** What it says, piece by piece, for a page that holds more. */
  List<Block> blocks() {
    return blocks;
  }

  /**
   * The page as HTML.
   *
   * @return a {@code div} that brings its style along and needs nothing around it
   */
  public String html() {
    Markup markup = new Markup();
    markup.element(
        "div",
        () -> {
          markup.leaf("style", Look.fragmentStyle());
          blocks.forEach(block -> block.html(markup));
        },
        "class",
        "rw");
    return markup.done();
  }

  /**
   * The page as plain text, the same on every machine.
   *
   * @return lines, the last without a line break
   */
  public String text() {
    StringBuilder out = new StringBuilder();
    blocks.forEach(block -> block.text(out));
    return out.toString().stripTrailing();
  }

  @Override
  public String toString() {
    return text();
  }
}
