package rungwork.kernel;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * An archive of the classes that a kernel's start loads, parsed and checked beforehand. The Java
 * that reads it takes it only where Java and jars are still those that it was made with; otherwise
 * it starts without, as it would with no archive.
 *
 * <p>Source: the JDK's tool reference, {@code java}, "Creating Dynamic CDS Archive File with
 * -XX:ArchiveClassesAtExit", Java SE 17.
 */
final class ClassArchive {
  private static final String NAME = "classes.jsa";
  private static final int SECONDS = 120;

  private ClassArchive() {}

  /**
   * Makes the archive by running a program to its end.
   *
   * @param java the java launcher
   * @param program the class path option, the main class and its words
   * @param folder where the archive is put
   * @return the options by which a later run of the same program uses it; none if it was not made
   */
  static List<String> make(String java, List<String> program, Path folder) throws IOException {
    Path archive = folder.resolve(NAME);
    List<String> command = new ArrayList<>(List.of(java, "-XX:ArchiveClassesAtExit=" + archive));
    command.add("-Xlog:disable");
    command.addAll(program);
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start();
    if (ended(process) && process.exitValue() == 0 && Files.isRegularFile(archive)) {
      return List.of("-XX:SharedArchiveFile=" + archive, "-Xshare:auto", "-Xlog:disable");
    }
    Files.deleteIfExists(archive);
    return List.of();
  }

  private static boolean ended(Process process) throws IOException {
    try {
      return process.waitFor(SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      throw new IOException(e);
    } finally {
      process.destroyForcibly();
    }
  }
}
