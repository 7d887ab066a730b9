package rungwork.kernel;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * What an evaluator is made with.
 *
 * @param imports import statements that every cell sees
 * @param displays how values are shown
 * @param plainFaults exception types whose message alone says enough; their stack is not shown
 * @param shown is told each value that a cell displays, as the live object
 * @param advice what to do about a compiler's message, if that can be told from its first line
 */
public record EvaluatorSetup(
    List<String> imports,
    DisplayRegistry displays,
    List<Class<? extends Throwable>> plainFaults,
    Consumer<Object> shown,
    Function<String, Optional<String>> advice) {
  /** Copies the lists. */
  public EvaluatorSetup {
    imports = List.copyOf(imports);
    plainFaults = List.copyOf(plainFaults);
  }

  /** A setup without advice. */
  public EvaluatorSetup(
      List<String> imports,
      DisplayRegistry displays,
      List<Class<? extends Throwable>> plainFaults,
      Consumer<Object> shown) {
    this(imports, displays, plainFaults, shown, message -> Optional.empty());
  }

  /** No imports, no displays but plain text, no plain faults, nobody listening. */
  public static EvaluatorSetup bare() {
    return new EvaluatorSetup(List.of(), DisplayRegistry.plain(), List.of(), value -> {});
  }

  /** This setup with another listener. */
  public EvaluatorSetup withShown(Consumer<Object> listener) {
    return new EvaluatorSetup(imports, displays, plainFaults, listener, advice);
  }

  /** This setup with other advice. */
  public EvaluatorSetup withAdvice(Function<String, Optional<String>> advisor) {
    return new EvaluatorSetup(imports, displays, plainFaults, shown, advisor);
  }
}
