package rungwork.notebook;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
        (none)                                       run every notebook in notebooks/
        run FILE.ipynb --out DIR [--cell-timeout S]  run one notebook; S in whole seconds
        install [--user | --prefix DIR] [--name N]   put the kernel where Jupyter finds it
        uninstall [--user | --prefix DIR] [--name N] take the kernel away again
      """;

  private static final String NO_JUPYTER =
      "  Jupyter is not on this machine's PATH; once it is installed it finds the kernel.\n"
          + "  Without Jupyter a notebook runs by: run FILE.ipynb --out DIR";

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
      return switch (arguments[0]) {
        case "run" -> runOne(new Options(rest));
        case "install" -> install(new Options(rest));
        case "uninstall" -> uninstall(new Options(rest));
        case "rehearse" -> rehearse(new Options(rest));
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
    Path kernels = kernels(options);
    KernelSpec spec = spec(options);
    options.refuseOthers();
    KernelSpec.Installed installed = spec.install(kernels);
    out.println("kernel " + spec.name() + " is in " + installed.folder());
    if (!installed.archived()) {
      out.println("  no archive of its classes could be made; it starts more slowly");
    }
    if (!around.haveJupyter()) {
      out.println(NO_JUPYTER);
    }
    return DONE;
  }

  private int uninstall(Options options) throws IOException {
    Path kernels = kernels(options);
    KernelSpec spec = spec(options);
    options.refuseOthers();
    Optional<Path> gone = spec.uninstall(kernels);
    out.println(
        gone.map(folder -> "kernel " + spec.name() + " is gone from " + folder)
            .orElse("there was no kernel " + spec.name() + " in " + kernels));
    return DONE;
  }

  private static KernelSpec spec(Options options) {
    return Composition.kernel(options.optional("--name").orElse(Composition.KERNEL));
  }

  private static Path kernels(Options options) {
    Optional<String> prefix = options.optional("--prefix");
    if (options.flag("--user") && prefix.isPresent()) {
      throw new UsageException("give --user or --prefix, not both");
    }
    return prefix
        .map(under -> KernelSpec.folderUnder(Path.of(under)))
        .orElseGet(KernelSpec::userFolder);
  }

  /** What Jupyter starts. */
  private int kernel(Options options) throws IOException {
    Path connectionFile = Path.of(options.only("a connection file"));
    options.refuseOthers();
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

  private static int serve(Serving serving) throws IOException {
    KernelIdentity identity = new KernelIdentity("rungwork", Version.number(), Version.banner());
    try (Evaluator evaluator = new Evaluator(Composition.setup(value -> {}))) {
      Rungwork.begin(evaluator, Path.of(""));
      KernelEnd end = serving.by(new KernelServer(evaluator, identity));
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
