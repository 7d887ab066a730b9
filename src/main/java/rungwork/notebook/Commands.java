package rungwork.notebook;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import rungwork.kernel.Evaluator;
import rungwork.kernel.KernelEnd;
import rungwork.kernel.KernelIdentity;
import rungwork.kernel.KernelServer;
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
        (none)                                       run every notebook in notebooks/
        run FILE.ipynb --out DIR [--cell-timeout S]  run one notebook; S in whole seconds
        install [--user | --prefix DIR] [--name N]   put the kernel where Jupyter finds it
        uninstall [--user | --prefix DIR] [--name N] take the kernel away again
                                                     --user is meant where neither is given
      """;

  private final PrintStream out;
  private final PrintStream err;
  private final Surroundings around;

  Commands(PrintStream out, PrintStream err, Surroundings around) {
    this.out = out;
    this.err = err;
    this.around = around;
  }

  int run(String... arguments) {
    try {
      if (arguments.length == 0) {
        return runAll(NOTEBOOKS, PAGES);
      }
      List<String> rest = List.of(arguments).subList(1, arguments.length);
      return run(arguments[0], new Options(rest));
    } catch (UsageException e) {
      err.println(e.getMessage());
      err.print(USAGE);
      return MISUSED;
    } catch (FileSystemException e) {
      err.println(FileFault.words(e));
      return FAILED;
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      err.println(e.getMessage());
      return FAILED;
    }
  }

  private int run(String command, Options options) throws IOException {
    switch (command) {
      case "run":
        return runOne(options);
      case "install":
        new Installation(out, around, options).install();
        return DONE;
      case "uninstall":
        new Installation(out, around, options).uninstall();
        return DONE;
      case "rehearse":
        return rehearse(options);
      case "kernel":
        return kernel(options);
      case "help", "--help":
        out.print(USAGE);
        return DONE;
      default:
        throw new UsageException("there is no command " + command);
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

  /** What Jupyter starts; words after the connection file are meant for the client that did so. */
  private int kernel(Options options) throws IOException {
    Path connectionFile = Path.of(options.only("a connection file"));
    around.onEndOfStarter(() -> System.exit(FAILED));
    return serve(server -> server.serve(connectionFile));
  }

  /** What an installation runs once, to learn which classes a start needs. */
  private int rehearse(Options options) throws IOException {
    options.refuseOthers();
    return serve(server -> server.rehearse(Composition.REHEARSAL));
  }

  /** One way to serve. */
  private interface Serving {
    KernelEnd by(KernelServer server) throws IOException, GeneralSecurityException;
  }

  private int serve(Serving serving) throws IOException {
    KernelIdentity identity = new KernelIdentity("rungwork", Version.number(), Version.banner());
    try (Evaluator evaluator = new Evaluator(Composition.setup(value -> {}))) {
      Rungwork.begin(evaluator, Path.of(""));
      KernelEnd end = serving.by(new KernelServer(evaluator, identity));
      if (end == KernelEnd.CUT_OFF) {
        err.println("the kernel was cut off from its clients and ends; every name is lost");
      }
      return end == KernelEnd.SHUT_DOWN ? DONE : FAILED;
    } catch (GeneralSecurityException e) {
      throw new IllegalArgumentException("the connection file's key cannot be used", e);
    }
  }

  private int runNotebook(Path file, Path folder, Duration limit) throws IOException {
    Set<String> headlines = Collections.synchronizedSet(new LinkedHashSet<>());
    Instant begun = Instant.now();
    NotebookRun run;
    try (Evaluator evaluator =
        new Evaluator(Composition.setup(value -> headlines.addAll(Headlines.of(value))))) {
      Rungwork.begin(evaluator, folder);
      run = runner(evaluator, limit, file).run(file, folder);
    } finally {
      around.live().accept("");
    }
    out.println(file.getFileName() + ": " + run.remark() + ", " + seconds(begun, Instant.now()));
    headlines.forEach(line -> out.println("  " + line));
    out.println("  page: " + run.page());
    out.flush();
    return run.complete() ? DONE : FAILED;
  }

  private NotebookRunner runner(Evaluator evaluator, Duration limit, Path file) {
    return new NotebookRunner(
        evaluator,
        Composition.style(),
        limit,
        at ->
            around
                .live()
                .accept(
                    "%s: cell %d of %d, %d s"
                        .formatted(
                            file.getFileName(), at.cell(), at.of(), at.soFar().toSeconds())));
  }

  private static String seconds(Instant begun, Instant now) {
    return String.format(Locale.ROOT, "%.1f s", Duration.between(begun, now).toMillis() / 1000.0);
  }
}
