package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import rungwork.check.Member;
import rungwork.fault.ModelException;
import rungwork.quantity.Units;
import rungwork.report.Table.Column;
import rungwork.report.Table.Row;
import rungwork.solve.Response;

/**
 * The six internal forces along a straight run of beams: frame action on the left (N, Vy, Mz),
 * grillage action on the right (T, Vz, My); moments on the tension side.
 *
 * @param part the part's name
 * @param beams names of its beams, in order
 * @param response what the frame does
 */
public record ForceDiagrams(String part, List<String> beams, Response response) implements Shown {
  /** Copies the names. */
  public ForceDiagrams {
    beams = List.copyOf(beams);
    if (beams.isEmpty()) {
      throw new ModelException(part + " has no beams to draw; name one at least");
    }
  }

  /**
   * The diagrams of a member.
   *
   * @param member the member
   * @param response what its frame does
   * @return its diagrams
   */
  public static ForceDiagrams of(Member member, Response response) {
    return new ForceDiagrams(member.part(), member.beams(), response);
  }

  /**
   * The drawing alone.
   *
   * @param units the reader's units
   * @return the picture
   */
  public Picture picture(Units units) {
    Run run = new Run(response, beams);
    Canvas canvas = new Canvas();
    List<Course> courses = Course.all(run);
    for (int i = 0; i < courses.size(); i++) {
      new DiagramPanel(canvas, courses.get(i), units).draw(i / 3, i % 3);
    }
    String title = "Internal forces of " + part + ": " + response.loadCase().name();
    StringBuilder words = new StringBuilder("From " + run.first() + " to " + run.last() + ".");
    return new Picture(title, canvas.done(title), words.toString());
  }

  @Override
  public Page page(Units units) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Title("Internal forces of " + part + ": " + response.loadCase().name()));
    blocks.add(new Block.Figure(picture(units)));
    blocks.add(table(units));
    return new Page(blocks);
  }

  private Table table(Units units) {
    List<Row> rows = new ArrayList<>();
    for (Course course : Course.all(new Run(response, beams))) {
      rows.add(
          Row.of(
              course.name(),
              course.number(course.highest(), units),
              course.number(course.lowest(), units),
              units.scale(course.kind()).unit(),
              course.meaning()));
    }
    return new Table(
        List.of(
            Column.words("force"),
            Column.number("highest"),
            Column.number("lowest"),
            Column.brief("unit"),
            Column.sentence("drawn upwards")),
        rows);
  }

  @Override
  public String toString() {
    return page(Units.METRIC).text();
  }
}
