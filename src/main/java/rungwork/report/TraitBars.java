package rungwork.report;

import java.util.List;
import rungwork.fault.Scale;
import rungwork.section.Section;

/** Small charts, one for each trait: every section's part of the best one's. */
final class TraitBars {
  private static final List<Trait> CHARTS =
      List.of(
          Trait.UPRIGHT_STIFFNESS,
          Trait.SIDEWAYS_STIFFNESS,
          Trait.TWIST_STIFFNESS,
          Trait.UPRIGHT_STRENGTH,
          Trait.SIDEWAYS_STRENGTH,
          Trait.TWIST_STRENGTH);

  private static final int ACROSS = 3;
  private static final double WIDTH = 190;
  private static final double COLUMN = 320;
  private static final double PITCH = 21;
  private static final double THICKNESS = 13;

  private TraitBars() {}

  static Picture of(List<Section> sections) {
    Canvas canvas = new Canvas();
    StringBuilder text = new StringBuilder("Parts of the best of them");
    for (int i = 0; i < CHARTS.size(); i++) {
      Trait trait = CHARTS.get(i);
      double x = i % ACROSS * COLUMN;
      double y = i / ACROSS * (PITCH * sections.size() + 62);
      chart(canvas, trait, sections, new Spot(x, y));
      text.append("\n- ").append(heading(trait)).append(": ").append(words(trait, sections));
    }
    String title = "What each is good and bad at, as a part of the best";
    return new Picture(title, canvas.done(title), text.toString());
  }

  private static String heading(Trait trait) {
    return trait.words() + " (" + trait.letter() + ")";
  }

  private static double best(Trait trait, List<Section> sections) {
    return sections.stream().mapToDouble(trait::of).max().orElse(1);
  }

  private static String words(Trait trait, List<Section> sections) {
    double best = best(trait, sections);
    return String.join(
        ", ", sections.stream().map(s -> s.name() + " " + percent(trait.of(s) / best)).toList());
  }

  private static void chart(Canvas canvas, Trait trait, List<Section> sections, Spot corner) {
    double best = best(trait, sections);
    canvas.label(Label.at(corner.plus(0, -16), heading(trait)).css("strong"));
    for (int i = 0; i < sections.size(); i++) {
      double part = trait.of(sections.get(i)) / best;
      Spot start = corner.plus(20, PITCH * (i + 0.5));
      String letter = SectionRow.letter(i);
      canvas.part(
          sections.get(i).name() + ": " + percent(part), () -> bar(canvas, letter, start, part));
    }
    double bottom = corner.y() + PITCH * sections.size();
    canvas.line("thin", corner.plus(20, 0), new Spot(corner.x() + 20, bottom));
  }

  private static void bar(Canvas canvas, String letter, Spot start, double part) {
    canvas.label(Label.end(start.plus(-7, 4), letter));
    Spot end = start.plus(Math.max(1, WIDTH * part), 0);
    new Bar(start, end, THICKNESS).draw(canvas, "steel");
    String css = part > 0.999 ? "small strong on" : "small on";
    canvas.label(Label.at(end.plus(7, 4), percent(part)).css(css));
  }

  /** Two digits below ten per cent, so that a channel's torsion is not nil. */
  private static String percent(double part) {
    return Scale.NUMBER.number(100 * part, part < 0.995 ? 2 : 3) + " %";
  }
}
