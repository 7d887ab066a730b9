package rungwork.notebook;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import rungwork.fault.ModelException;
import rungwork.fault.SolveException;
import rungwork.kernel.DisplayRegistry;
import rungwork.kernel.EvaluatorSetup;
import rungwork.kernel.KernelSpec;
import rungwork.kernel.PageStyle;

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
    return DisplayRegistry.plain();
  }

  static PageStyle style() {
    return new PageStyle("", Version.banner());
  }

  /** The line about a displayed value that belongs on the terminal, for a value that has one. */
  static Optional<String> headline(Object value) {
    return Optional.empty();
  }
}
