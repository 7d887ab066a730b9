package rungwork.validation;

import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Writes the run's rows when the last test is over. JUnit finds it as a service; a run without
 * checks leaves the file of an earlier one alone.
 */
public final class ValidationFile implements BeforeAllCallback {
  @Override
  public void beforeAll(ExtensionContext context) {
    context
        .getRoot()
        .getStore(ExtensionContext.Namespace.create(ValidationFile.class))
        .getOrComputeIfAbsent("at the run's end", key -> (AutoCloseable) ValidationFile::write);
  }

  private static void write() {
    if (!ValidationTable.ofThisRun().rows().isEmpty()) {
      ValidationTable.ofThisRun().write(ValidationTable.FILE);
    }
  }
}
