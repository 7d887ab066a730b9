package rungwork.notebook;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rungwork.check.Caution;
import rungwork.check.CheckSheet;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.kernel.DisplayRegistry;
import rungwork.kernel.EvaluatorSetup;
import rungwork.kernel.KernelSpec;
import rungwork.kernel.MimeBundle;
import rungwork.kernel.PageStyle;
import rungwork.report.Page;
import rungwork.report.Picture;
import rungwork.report.Shown;

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
          "import rungwork.notebook.Rungwork;");

  /** Faults whose message alone tells a builder what to change. */
  private static final List<Class<? extends Throwable>> FAULTS =
      List.of(ModelException.class, SolveException.class);

  /** The kernel as Jupyter finds it. */
  static final KernelSpec KERNEL =
      new KernelSpec("rungwork", "Rungwork (Java)", Main.class.getName());

  private Composition() {}

  static EvaluatorSetup setup(Consumer<Object> shown) {
    return new EvaluatorSetup(IMPORTS, displays(), FAULTS, shown);
  }

  /** How values of the library's types are shown. */
  static DisplayRegistry displays() {
    return DisplayRegistry.plain()
        .with(Shown.class, Composition::page)
        .with(Picture.class, Composition::picture);
  }

  private static MimeBundle page(Shown shown) {
    Page page = shown.page(Rungwork.units());
    return MimeBundle.text(page.text()).html(page.html());
  }

  private static MimeBundle picture(Picture picture) {
    return MimeBundle.text(picture.text()).svg(picture.svg());
  }

  /** What is displayed brings its own style along; every page ends with the caution. */
  static PageStyle style() {
    return new PageStyle(
        "", "<p>" + Caution.SCREENING.text() + "</p>\n<p>Rungwork " + Version.number() + "</p>");
  }

  /** The line about a displayed value that belongs on the terminal, for a value that has one. */
  static Optional<String> headline(Object value) {
    return value instanceof CheckSheet sheet
        ? Optional.of(sheet.title() + ": " + sheet.verdictLine())
        : Optional.empty();
  }
}
