package rungwork.notebook;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.time.Duration;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rungwork.kernel.Evaluator;
import rungwork.kernel.KernelEnd;
import rungwork.kernel.KernelIdentity;
import rungwork.kernel.KernelServer;
import rungwork.kernel.KernelSpec;
import rungwork.kernel.NotebookRun;
import rungwork.kernel.NotebookRunner;

/** What the command line can do; each command returns the program's exit status. */
final class Commands {
  private static final int DONE = 0;
  private static final int FAILED = 1;
  private static final int MISUSED = 2;
  private static final Path NOTEBOOKS = Path.of("notebooks");
  private static final Path PAGES = Path.of("target", "notebooks");
  private static final Duration CELL_LIMIT = Duration.ofMinutes(10);
  private static final String USAGE =
      """
      commands:
        (none)                                     run every notebook in notebooks/
        run FILE.ipynb --out DIR [--cell-timeout S] run one notebook; S in whole seconds
        install [--prefix DIR]                     put the kernel where Jupyter finds it
      """;

  private final PrintStream out;
  private final PrintStream err;

  Commands(PrintStream out, PrintStream err) {
    this.out = out;
    this.err = err;
  }

  int run(String... arguments) {
    try {
      if (arguments.length == 0) {
        return runAll(NOTEBOOKS, PAGES);
      }
      List<String> rest = List.of(arguments).subList(1, arguments.length);
      return switch (arguments[0]) {
        case "run" -> runOne(new Options(rest));
        case "install" -> install(new Options(rest));
        case "kernel" -> kernel(new Options(rest));
        default -> throw new UsageException("there is no command " + arguments[0]);
      };
    } catch (UsageException e) {
      err.println(e.getMessage());
      err.print(USAGE);
      return MISUSED;
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      err.println(e.getMessage());
      return FAILED;
    }
  }

  private int runAll(Path notebooks, Path pages) throws IOException {
    List<Path> files = notebooks(notebooks);
    if (files.isEmpty()) {
      throw new UsageException("there is no notebook in " + notebooks.toAbsolutePath());
    }
    int worst = DONE;
    for (Path file : files) {
      worst = Math.max(worst, runNotebook(file, pages, CELL_LIMIT));
    }
    return worst;
  }

  private static List<Path> notebooks(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".ipynb")).sorted().toList();
    }
  }

  private int runOne(Options options) throws IOException {
    Path file = Path.of(options.only("a notebook file"));
    Path folder = Path.of(options.value("--out"));
    Duration limit = options.seconds("--cell-timeout").orElse(CELL_LIMIT);
    options.refuseOthers();
    if (!Files.isRegularFile(file)) {
      throw new UsageException("there is no file " + file);
    }
    return runNotebook(file, folder, limit);
  }

  private int install(Options options) throws IOException {
    Path kernels =
        options
            .optional("--prefix")
            .map(prefix -> KernelSpec.folderUnder(Path.of(prefix)))
            .orElseGet(KernelSpec::userFolder);
    options.refuseOthers();
    Path folder = Composition.KERNEL.install(kernels);
    out.println("kernel " + Composition.KERNEL.name() + " is in " + folder);
    return DONE;
  }

  /** What Jupyter starts. */
  private int kernel(Options options) throws IOException {
    Path connectionFile = Path.of(options.only("a connection file"));
    options.refuseOthers();
    KernelIdentity identity = new KernelIdentity("rungwork", Version.number(), Version.banner());
    try (Evaluator evaluator = new Evaluator(Composition.setup(value -> {}))) {
      Rungwork.begin(evaluator);
      KernelEnd end = new KernelServer(evaluator, identity).serve(connectionFile);
      return end == KernelEnd.SHUT_DOWN ? DONE : FAILED;
    } catch (GeneralSecurityException e) {
      throw new IllegalArgumentException("the connection file's key cannot be used", e);
    }
  }

  private int runNotebook(Path file, Path folder, Duration limit) throws IOException {
    Set<String> headlines = Collections.synchronizedSet(new LinkedHashSet<>());
    NotebookRun run;
    try (Evaluator evaluator =
        new Evaluator(Composition.setup(value -> headlines.addAll(Headlines.of(value))))) {
      Rungwork.begin(evaluator);
      run = new NotebookRunner(evaluator, Composition.style(), limit).run(file, folder);
    }
    out.println(file.getFileName() + ": " + run.remark());
    headlines.forEach(line -> out.println("  " + line));
    out.println("  page: " + run.page());
    out.flush();
    return run.complete() ? DONE : FAILED;
  }
}
