package rungwork.notebook;

import java.util.List;
import java.util.function.Consumer;
import javax.measure.Quantity;
import rungwork.check.Caution;
import rungwork.check.Step;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.impact.Range;
import rungwork.kernel.DisplayRegistry;
import rungwork.kernel.EvaluatorSetup;
import rungwork.kernel.KernelSpec;
import rungwork.kernel.MimeBundle;
import rungwork.kernel.PageStyle;
import rungwork.report.Page;
import rungwork.report.Picture;
import rungwork.report.Presentation;
import rungwork.report.RecordDocument;

/**
 * What cells see, how values show, how pages look: every choice that the other rooms leave open.
 */
final class Composition {
  /** Import statements that every cell sees without writing them. */
  static final List<String> IMPORTS =
      List.of(
          "import java.util.*;",
          "import static rungwork.quantity.Quantities.*;",
          "import static rungwork.notebook.Rungwork.display;",
          "import rungwork.notebook.Rungwork;",
          "import rungwork.quantity.Units;");

  /** Faults whose message alone tells a builder what to change. */
  private static final List<Class<? extends Throwable>> FAULTS =
      List.of(ModelException.class, SolveException.class);

  /** The kernel's name where nobody gives another. */
  static final String KERNEL = "rungwork";

  private static final String SHOWN = "Rungwork (Java)";

  /** Cells that touch what most notebooks touch: a frame, its stiffness, a picture. */
  static final List<String> REHEARSAL =
      List.of(
          "import rungwork.frame.*;\n"
              + "import rungwork.material.*;\n"
              + "import rungwork.section.*;\n"
              + "import rungwork.vehicle.*;\n"
              + "Rungwork.start();",
          "var tube = new Stock(Section.squareTube(mm(50), mm(3)), Material.rated(\"S355J2H\"));\n"
              + "var ladder = Ladder.named(\"rehearsal\").level(mm(360))\n"
              + "    .rails(mm(200), mm(-1800), mm(700), tube)\n"
              + "    .crossmember(\"front\", mm(200), tube)\n"
              + "    .crossmember(\"rear\", mm(-1800), tube).build();\n"
              + "ladder",
          "System.out.println(ladder.torsionalStiffness(\"front\", \"rear\"));");

  private Composition() {}

  /** The kernel as Jupyter finds it under a name. */
  static KernelSpec kernel(String name) {
    String shown = name.equals(KERNEL) ? SHOWN : SHOWN + ", " + name;
    return new KernelSpec(name, shown, Main.class);
  }

  static EvaluatorSetup setup(Consumer<Object> shown) {
    return new EvaluatorSetup(IMPORTS, displays(), FAULTS, shown).withAdvice(Advice::on);
  }

  /** How values of the library's types are shown: as the pages of {@code report}. */
  static DisplayRegistry displays() {
    DisplayRegistry displays = DisplayRegistry.plain();
    for (Presentation<?> each : Presentation.all()) {
      displays = with(displays, each);
    }
    return with(displays, RecordDocument.presentation(Version.ofProgramAndData()))
        .with(Picture.class, Composition::picture)
        .with(Range.class, range -> MimeBundle.text(range.show(Rungwork.units())))
        .with(Step.class, step -> MimeBundle.text(step.text(Rungwork.units())))
        .with(Quantity.class, quantity -> MimeBundle.text(Rungwork.units().show(quantity)));
  }

  private static DisplayRegistry with(DisplayRegistry displays, Presentation<?> one) {
    return displays.with(one.type(), value -> bundle(one.page(value, Rungwork.units())));
  }

  private static MimeBundle bundle(Page page) {
    return MimeBundle.text(page.text()).html(page.html());
  }

  /** A picture alone is SVG, which pages and Jupyter show as it is. */
  private static MimeBundle picture(Picture picture) {
    return MimeBundle.text(picture.text()).svg(picture.svg());
  }

  /** What is displayed brings its own style along; every page ends with the caution. */
  static PageStyle style() {
    return new PageStyle(
        "", "<p>" + Caution.SCREENING.text() + "</p>\n<p>Rungwork " + Version.number() + "</p>");
  }
}
