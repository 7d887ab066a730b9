package rungwork.report;

import java.util.ArrayList;
import java.util.List;

/** A piece of a page, which writes itself as HTML and as plain text from the same words. */
sealed interface Block
    permits Block.Title,
        Block.Heading,
        Block.Paragraph,
        Block.VerdictLine,
        Block.Warning,
        Block.Remarks,
        Block.Calculation,
        Block.Folded,
        Block.Figure,
        Chapter,
        Signatures,
        Table {
  /** Writes it as HTML. */
  void html(Markup markup);

  /** Writes it as plain text, ending with a line break. */
  void text(StringBuilder out);

  /** The same with everything unfolded, for paper and for plain text that leaves nothing out. */
  default List<Block> unfolded() {
    return List.of(this);
  }

  /** The page's title. */
  record Title(String words) implements Block {
    @Override
    public void html(Markup markup) {
      markup.leaf("h2", words);
    }

    @Override
    public void text(StringBuilder out) {
      Wrapped.into(out, "", words);
      out.append("=".repeat(Math.min(Wrapped.WIDTH, Wrapped.width(words)))).append('\n');
    }
  }

  /** A heading inside the page. */
  record Heading(String words) implements Block {
    @Override
    public void html(Markup markup) {
      markup.leaf("h3", words);
    }

    @Override
    public void text(StringBuilder out) {
      out.append('\n').append(words).append('\n');
    }
  }

  /** A sentence or two. */
  record Paragraph(String words) implements Block {
    @Override
    public void html(Markup markup) {
      markup.leaf("p", words);
    }

    @Override
    public void text(StringBuilder out) {
      Wrapped.into(out, "", words);
    }
  }

  /** What was found, in one line; what was not checked stands in it. */
  record VerdictLine(String words) implements Block {
    private static final String GAPS = "; not checked: ";

    @Override
    public void html(Markup markup) {
      int end = words.contains(GAPS) ? words.indexOf(GAPS) : words.length();
      Runnable line = () -> markup.leaf("b", words.substring(0, end)).text(words.substring(end));
      markup.element("p", line, "class", "verdict");
    }

    @Override
    public void text(StringBuilder out) {
      Wrapped.into(out, "", words);
    }
  }

  /** A caution, which no page may lose. */
  record Warning(String words) implements Block {
    @Override
    public void html(Markup markup) {
      markup.element("p", () -> markup.leaf("b", "Caution. ").text(words), "class", "caution");
    }

    @Override
    public void text(StringBuilder out) {
      out.append('\n');
      Wrapped.into(out, "", "Caution. " + words);
    }
  }

  /** A list of remarks. */
  record Remarks(List<String> items) implements Block {
    @Override
    public void html(Markup markup) {
      markup.element("ul", () -> items.forEach(item -> markup.leaf("li", item)));
    }

    @Override
    public void text(StringBuilder out) {
      items.forEach(item -> Wrapped.into(out, "- ", item));
    }
  }

  /** The lines of a calculation. */
  record Calculation(String heading, List<String> lines) implements Block {
    @Override
    public void html(Markup markup) {
      markup.leaf("h3", heading);
      markup.element(
          "ol", () -> lines.forEach(line -> markup.leaf("li", line)), "class", "working");
    }

    @Override
    public void text(StringBuilder out) {
      out.append('\n').append(heading).append('\n');
      lines.forEach(line -> Wrapped.into(out, "  ", line));
    }
  }

  /** More of the same, folded away on a page and left out of plain text, where a line counts it. */
  record Folded(String summary, List<Block> inside) implements Block {
    @Override
    public void html(Markup markup) {
      markup.element(
          "details",
          () -> {
            markup.leaf("summary", summary);
            inside.forEach(block -> block.html(markup));
          });
    }

    @Override
    public void text(StringBuilder out) {
      Wrapped.into(out, "", summary);
    }

    @Override
    public List<Block> unfolded() {
      List<Block> open = new ArrayList<>(List.of(new Heading(summary)));
      inside.forEach(block -> open.addAll(block.unfolded()));
      return open;
    }
  }

  /** A picture. */
  record Figure(Picture picture) implements Block {
    @Override
    public void html(Markup markup) {
      markup.element("figure", () -> markup.raw(picture.svg()));
    }

    @Override
    public void text(StringBuilder out) {
      out.append(picture.text()).append('\n');
    }
  }
}
