package rungwork.notebook;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import rungwork.kernel.KernelSpec;

/** Puts the kernel where Jupyter finds it, and takes it away again. */
final class Installation {
  private static final String NO_ARCHIVE =
      "  no archive of its classes could be made; it starts more slowly";
  private static final String NO_JUPYTER =
      "  Jupyter is not on this machine's PATH; once it is installed it finds the kernel.\n"
          + "  Get it by \"pip install notebook\", on Debian and its like by \"apt install"
          + " jupyter-notebook\".\n"
          + "  Without Jupyter a notebook runs by: run FILE.ipynb --out DIR";

  private final PrintStream out;
  private final Surroundings around;
  private final KernelSpec spec;
  private final Optional<Path> prefix;

  /** Takes its options; nothing else may be left. */
  Installation(PrintStream out, Surroundings around, Options options) {
    this.out = out;
    this.around = around;
    boolean user = options.flag("--user");
    this.prefix = options.optional("--prefix").map(Path::of).map(Path::toAbsolutePath);
    this.spec = Composition.kernel(options.optional("--name").orElse(Composition.KERNEL));
    options.refuseOthers();
    prefix.filter(Files::isRegularFile).ifPresent(Installation::refuseFile);
    if (user && prefix.isPresent()) {
      throw new UsageException("give --user or --prefix, not both");
    }
  }

  private static void refuseFile(Path prefix) {
    throw new UsageException("--prefix " + prefix + " is a file; name a folder");
  }

  /** Installs the kernel, over an older copy where there is one. */
  void install() throws IOException {
    KernelSpec.Installed installed = spec.install(kernels());
    out.println("kernel " + spec.name() + " is in " + installed.folder());
    if (!installed.archived()) {
      out.println(NO_ARCHIVE);
    }
    prefix.map(KernelSpec::folderUnder).map(Path::getParent).ifPresent(this::sayWhoLooksThere);
    if (!around.haveJupyter()) {
      out.println(NO_JUPYTER);
    }
  }

  private void sayWhoLooksThere(Path data) {
    out.println(
        "  A Jupyter that is not installed under this prefix finds it by JUPYTER_PATH=" + data);
  }

  /** Takes the kernel away where there is one. */
  void uninstall() throws IOException {
    Path kernels = kernels();
    Optional<Path> gone = spec.uninstall(kernels);
    out.println(
        gone.map(folder -> "kernel " + spec.name() + " is gone from " + folder)
            .orElse("there was no kernel " + spec.name() + " in " + kernels));
  }

  private Path kernels() {
    return prefix.map(KernelSpec::folderUnder).orElseGet(around::userKernels);
  }
}
