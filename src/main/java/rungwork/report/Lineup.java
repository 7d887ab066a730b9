package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rungwork.fault.ModelException;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.section.Section;
import rungwork.section.Torsion;

/**
 * Sections in a line-up: drawn to one scale, then what each is good and bad at as bars, the best of
 * all being 100 %.
 *
 * @param sections two or more that have outlines, at most 26
 */
public record Lineup(List<Section> sections) implements Shown {
  private static final int MOST = 26;

  /** Refuses too few, too many, and sections that cannot be drawn. */
  public Lineup {
    sections = List.copyOf(sections);
    if (sections.size() < 2 || sections.size() > MOST) {
      throw new ModelException(
          "a line-up takes 2 to " + MOST + " sections; there are " + sections.size());
    }
    for (Section section : sections) {
      if (section.outline().loops().isEmpty()) {
        throw new ModelException(
            section.name() + " has no outline to draw; it is known by its properties alone");
      }
    }
  }

  /**
   * A line-up.
   *
   * @param sections in the order to show
   * @return the line-up
   */
  public static Lineup of(Section... sections) {
    return new Lineup(List.of(sections));
  }

  @Override
  public Page page(Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title(sections.size() + " sections side by side"));
    blocks.add(new Block.Figure(SectionRow.of(sections, units)));
    blocks.add(new Block.Figure(TraitBars.of(sections)));
    blocks.add(new Block.Folded("the figures", List.of(table(units))));
    blocks.add(new Block.Remarks(remarks()));
    return new Page(blocks);
  }

  private List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    List<String> open =
        sections.stream().filter(s -> s.torsion() == Torsion.OPEN).map(Section::name).toList();
    if (!open.isEmpty()) {
      remarks.add("open, so its torsion is that of ends free to warp: " + String.join(", ", open));
    }
    Trait.drilled(sections).ifPresent(remarks::add);
    remarks.add("sizes only: no load was looked at, nothing was checked");
    return remarks;
  }

  private Table table(Units units) {
    List<Column> columns = new ArrayList<>(List.of(Column.words("section")));
    Trait.ALL.forEach(
        trait -> columns.add(Column.number(trait.letter(), units.scale(trait.kind()).unit())));
    List<Row> rows =
        IntStream.range(0, sections.size())
            .mapToObj(i -> row(SectionRow.letter(i) + ": ", sections.get(i), units))
            .toList();
    return new Table(columns, rows);
  }

  private static Row row(String letter, Section section, Units units) {
    List<String> cells = new ArrayList<>(List.of(letter + section.name()));
    Trait.ALL.forEach(trait -> cells.add(units.scale(trait.kind()).number(trait.of(section), 4)));
    return Row.of(cells.toArray(String[]::new));
  }

  @Override
  public String toString() {
    return page(Units.METRIC).text();
  }
}
