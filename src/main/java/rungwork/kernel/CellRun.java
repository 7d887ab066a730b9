package rungwork.kernel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import jdk.jshell.DeclarationSnippet;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.JShellException;
import jdk.jshell.Snippet;
import jdk.jshell.Snippet.Status;
import jdk.jshell.Snippet.SubKind;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis.Completeness;
import jdk.jshell.SourceCodeAnalysis.CompletionInfo;
import jdk.jshell.UnresolvedReferenceException;

/** One run of one cell: statement by statement, until the end or the first failure. */
final class CellRun {
  private static final CellOutput.Failure STOPPED =
      FaultText.failure(
          "Interrupted", "the cell was stopped; names defined before it stay usable", List.of());

  /** The analysis splits these off from what follows and adds a semicolon that is missing. */
  static final Set<Completeness> WHOLE =
      Set.of(Completeness.COMPLETE, Completeness.COMPLETE_WITH_SEMI);

  private static final Set<Status> UNRESOLVED =
      Set.of(Status.RECOVERABLE_DEFINED, Status.RECOVERABLE_NOT_DEFINED);

  private final Session session;
  private final Cell cell;
  private final CellOutputs outputs;
  private final Supplier<Optional<Stop>> stopping;
  private final FaultText words;
  private final List<Snippet> snippets = new ArrayList<>();
  private CellEnd failed = CellEnd.FAILED;

  /**
   * What every run shares.
   *
   * @param shell compiles and runs snippets
   * @param control keeps the live value of the last one
   * @param places remembers where snippets came from
   * @param setup how values are shown and faults worded
   * @param help knows the names of the cells and the library's documentation
   * @param memory makes room after a cell that filled it
   */
  record Session(
      JShell shell,
      KeptControl control,
      CellPlaces places,
      EvaluatorSetup setup,
      CodeHelp help,
      FullMemory memory) {}

  CellRun(Session session, Cell cell, CellOutputs outputs, Supplier<Optional<Stop>> stopping) {
    this.session = session;
    this.cell = cell;
    this.outputs = outputs;
    this.stopping = stopping;
    this.words = new FaultText(session.places(), session.setup().plainFaults());
  }

  /** Runs the cell; every failure is put out, none is thrown. */
  CellEnd run() {
    Optional<CellOutput.Failure> failure;
    try {
      session.memory().prepare();
      failure = statements();
    } catch (OutOfMemoryError e) {
      failure = Optional.of(full(FaultText.Memory.TOO_SMALL, List.of()));
    } catch (Throwable e) { // an escaped Error would leave a process that never answers again
      failure =
          Optional.of(
              FaultText.failure("KernelFault", "the cell could not be run: " + e, List.of()));
    }
    failure.ifPresent(outputs::put);
    return failure.isPresent() ? failed : CellEnd.FINISHED;
  }

  private Optional<CellOutput.Failure> statements() {
    String source = cell.source();
    int at = 0;
    while (at < source.length()) {
      if (Character.isWhitespace(source.charAt(at))) {
        at++;
        continue;
      }
      String rest = source.substring(at);
      CompletionInfo info = session.shell().sourceCodeAnalysis().analyzeCompletion(rest);
      if (info.completeness() == Completeness.EMPTY) {
        break;
      }
      boolean whole = WHOLE.contains(info.completeness());
      Optional<CellOutput.Failure> failure = statement(whole ? info.source() : rest, at);
      if (failure.isPresent()) {
        return failure;
      }
      at = whole ? source.length() - info.remaining().length() : source.length();
    }
    return unresolved().or(this::showLast);
  }

  /** Definitions may use names that the same cell defines further down, but none that stay open. */
  private Optional<CellOutput.Failure> unresolved() {
    return snippets.stream()
        .filter(snippet -> UNRESOLVED.contains(session.shell().status(snippet)))
        .map(this::notCompiled)
        .findFirst();
  }

  private Optional<CellOutput.Failure> showLast() {
    if (snippets.isEmpty() || !isShown(snippets.get(snippets.size() - 1))) {
      return Optional.empty();
    }
    if (!(session.control().last() instanceof Kept.Value live)) {
      return Optional.empty();
    }
    Kept bundle = session.control().run(() -> bundle(live.value()));
    if (bundle instanceof Kept.Value made && made.value() instanceof MimeBundle forms) {
      outputs.put(new CellOutput.Result(forms));
      return Optional.empty();
    }
    return Optional.of(
        bundle instanceof Kept.Thrown thrown
            ? FaultText.failure(
                "DisplayFault", "the value cannot be shown: " + thrown.cause(), List.of())
            : stopped());
  }

  private MimeBundle bundle(Object value) {
    if (value == null) {
      return MimeBundle.text("null");
    }
    MimeBundle forms = session.setup().displays().bundle(value);
    session.setup().shown().accept(value);
    return forms;
  }

  /** An expression is shown unless a semicolon makes it a statement. */
  private static boolean isShown(Snippet snippet) {
    boolean expression =
        snippet.kind() == Snippet.Kind.EXPRESSION
            || snippet.subKind() == SubKind.TEMP_VAR_EXPRESSION_SUBKIND;
    String text = snippet.source().stripTrailing();
    String code = text.replaceAll("(//[^\n]*|/\\*[^*]*\\*/)$", "").stripTrailing();
    return expression && !text.endsWith(";") && !code.endsWith(";");
  }

  private Optional<CellOutput.Failure> statement(String text, int offset) {
    if (stopping.get().isPresent()) {
      return Optional.of(stopped());
    }
    session.control().forget();
    CellPlaces.Place place = new CellPlaces.Place(cell, offset);
    for (SnippetEvent event : session.shell().eval(text)) {
      if (event.causeSnippet() == null) {
        session.places().put(event.snippet(), place);
        snippets.add(event.snippet());
      }
      Optional<CellOutput.Failure> failure = failure(event);
      if (failure.isPresent()) {
        return failure;
      }
    }
    return Optional.empty();
  }

  private Optional<CellOutput.Failure> failure(SnippetEvent event) {
    if (event.status() == Status.REJECTED) {
      return Optional.of(notCompiled(event.snippet()));
    }
    boolean stopped = session.control().last() instanceof Kept.Stopped;
    if (stopped || event.exception() != null && stopping.get().isPresent()) {
      return Optional.of(
          stopped()); // newer JDKs stop a cell by an interrupt, which it may throw on
    }
    return Optional.ofNullable(event.exception()).map(this::thrown);
  }

  private CellOutput.Failure thrown(JShellException thrown) {
    if (thrown instanceof UnresolvedReferenceException unresolved) {
      return notCompiled(unresolved.getSnippet());
    }
    Throwable live = session.control().last() instanceof Kept.Thrown kept ? kept.cause() : thrown;
    if (live instanceof OutOfMemoryError) {
      return full(FaultText.Memory.TOO_SMALL, words.line(thrown));
    }
    return words.thrown(live, thrown);
  }

  private CellOutput.Failure stopped() {
    boolean memory = stopping.get().filter(stop -> stop.reason() == Stop.Reason.MEMORY).isPresent();
    return memory ? full(FaultText.Memory.FILLED, List.of()) : STOPPED;
  }

  private CellOutput.Failure full(FaultText.Memory how, List<String> where) {
    FullMemory.Relief relief = session.memory().relieve(snippets);
    failed = relief.enough() ? CellEnd.FAILED : CellEnd.STUCK;
    return FaultText.outOfMemory(how, relief, where);
  }

  private CellOutput.Failure notCompiled(Snippet snippet) {
    CellPlaces.Place place = session.places().of(snippet).orElse(new CellPlaces.Place(cell, 0));
    List<CompileError> errors =
        session.shell().diagnostics(snippet).filter(Diag::isError).map(CompileError::of).toList();
    if (errors.isEmpty() && snippet instanceof DeclarationSnippet declaration) {
      errors =
          session
              .shell()
              .unresolvedDependencies(declaration)
              .map(name -> CompileError.unresolved(name, declaration.source()))
              .toList();
    }
    NearName near = new NearName(session.help());
    return words.notCompiled(
        place,
        errors.stream()
            .map(error -> advised(error).orElseGet(() -> near.hinted(error, snippet.source())))
            .toList());
  }

  private Optional<CompileError> advised(CompileError error) {
    return session.setup().advice().apply(error.summary()).map(error::advised);
  }
}
