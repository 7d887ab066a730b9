package rungwork.notebook;

/** The command line. It alone decides the program's exit status. */
public final class Main {
  private Main() {}

  /**
   * Runs the command and ends the program with its status. However the program is ended before
   * that, even by a cell with status 0, the status says that the run did not finish.
   */
  public static void main(String[] arguments) {
    Thread unfinished = new Thread(Main::unfinished);
    Runtime.getRuntime().addShutdownHook(unfinished);
    Surroundings around = Surroundings.ofProcess(System.out);
    int status = new Commands(System.out, System.err, around).run(arguments);
    Runtime.getRuntime().removeShutdownHook(unfinished);
    if (status != 0) {
      System.exit(status);
    }
  }

  private static void unfinished() {
    System.err.println("the run was ended before it finished");
    Runtime.getRuntime().halt(1);
  }
}
