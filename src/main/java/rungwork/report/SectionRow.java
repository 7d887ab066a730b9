package rungwork.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rungwork.quantity.Kind;
import rungwork.quantity.Units;
import rungwork.section.Section;

/**
 * Sections in a row, to one scale, each with its letter, its overall dimensions, its name and the
 * mass of a length of steel.
 */
final class SectionRow {
  /** Height of the deepest section [px]. */
  private static final double DEEPEST = 150;

  /** Least distance of one section's middle from the next one's [px]. */
  private static final double PITCH = 150;

  private static final double GAP = 70;

  /** Letters in a line of a name. */
  private static final int NAME = 20;

  private final List<Section> sections;
  private final Units units;
  private final Canvas canvas = new Canvas();
  private final double scale;

  private SectionRow(List<Section> sections, Units units) {
    this.sections = sections;
    this.units = units;
    double deepest =
        sections.stream()
            .map(s -> Outlines.around(Outlines.loops(s, 1)))
            .mapToDouble(Box::height)
            .max()
            .orElse(1);
    scale = DEEPEST / deepest;
  }

  /** Draws sections that have outlines. */
  static Picture of(List<Section> sections, Units units) {
    return new SectionRow(sections, units).draw();
  }

  private Picture draw() {
    double x = 0;
    List<String> words = new ArrayList<>();
    for (int i = 0; i < sections.size(); i++) {
      Section section = sections.get(i);
      Box box = Outlines.around(Outlines.loops(section, scale));
      x += Math.max(PITCH, box.width() + GAP) / 2;
      String letter = letter(i);
      double middle = x;
      canvas.part(letter + ": " + section.name(), () -> section(section, letter, middle));
      words.add(letter + ": " + section.name() + ", " + mass(section));
      x += Math.max(PITCH, box.width() + GAP) / 2;
    }
    String title = "Sections to one scale, " + units.scale(Kind.LENGTH).unit();
    return new Picture(
        title,
        canvas.done(title),
        title + "\n" + words.stream().map(w -> "- " + w).collect(Collectors.joining("\n")));
  }

  private void section(Section section, String letter, double middle) {
    List<List<Spot>> loops = Outlines.loops(section, scale);
    Box box = Outlines.around(loops);
    double dx = middle - (box.left() + box.right()) / 2;
    double dy = -box.bottom();
    canvas.loops(
        "steel",
        loops.stream().map(loop -> loop.stream().map(s -> s.plus(dx, dy)).toList()).toList());
    double left = box.left() + dx;
    double right = box.right() + dx;
    new Dimension(new Spot(left, 0), new Spot(right, 0), length(box.width())).along(canvas, 26);
    new Dimension(new Spot(right, -box.height()), new Spot(right, 0), length(box.height()))
        .up(canvas, right + 12);
    canvas.label(Label.middle(new Spot(middle, -DEEPEST - 14), letter).css("head"));
    List<String> lines = new ArrayList<>(Wrapped.lines(section.name(), NAME));
    lines.add(mass(section));
    for (int i = 0; i < lines.size(); i++) {
      canvas.label(Label.middle(new Spot(middle, 60 + 15 * i), lines.get(i)).css("small"));
    }
  }

  private String length(double pixels) {
    return Numbers.dimension(pixels / scale, units);
  }

  private String mass(Section section) {
    return units.show(Kind.MASS_PER_LENGTH, section.properties().area() * SectionPage.STEEL);
  }

  /** A, B, C and so on. */
  static String letter(int place) {
    return String.valueOf((char) ('A' + place % 26));
  }
}
