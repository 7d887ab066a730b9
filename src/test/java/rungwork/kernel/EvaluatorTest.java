package rungwork.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a reader may expect of cells. */
public class EvaluatorTest {
  private static final Duration LIMIT = Duration.ofSeconds(60);

  private final List<CellOutput> outputs = Collections.synchronizedList(new ArrayList<>());
  private final List<Object> shown = new ArrayList<>();
  private Evaluator evaluator;
  private int count;

  /** A fault whose message is enough. */
  public static final class Plain extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** A fault with a message. */
    public Plain(String message) {
      super(message);
    }
  }

  @BeforeEach
  void start() {
    DisplayRegistry displays =
        DisplayRegistry.plain()
            .with(List.class, list -> MimeBundle.text("list of " + list.size()).html("<ul></ul>"));
    evaluator =
        new Evaluator(
            new EvaluatorSetup(
                List.of("import java.util.*;", "import java.util.concurrent.TimeUnit;"),
                displays,
                List.of(Plain.class),
                shown::add));
  }

  @AfterEach
  void stop() {
    evaluator.close();
  }

  private CellEnd run(String source) {
    return run(source, LIMIT);
  }

  private CellEnd run(String source, Duration limit) {
    outputs.clear();
    count++;
    return evaluator.run(new Cell(count, source), limit, outputs::add);
  }

  private CellOutput.Failure failed(String source) {
    assertEquals(CellEnd.FAILED, run(source), () -> outputs.toString());
    return (CellOutput.Failure) outputs.get(outputs.size() - 1);
  }

  private String result(String source) {
    assertEquals(CellEnd.FINISHED, run(source), () -> outputs.toString());
    return ((CellOutput.Result) outputs.get(outputs.size() - 1)).bundle().text();
  }

  private String printed(String stream) {
    return outputs.stream()
        .filter(each -> each instanceof CellOutput.Text text && text.stream().equals(stream))
        .map(each -> ((CellOutput.Text) each).text())
        .collect(Collectors.joining());
  }

  private static String plain(CellOutput.Failure failure) {
    return String.join("\n", failure.trace()).replaceAll("\u001b\\[[0-9;]*m", "");
  }

  @Test
  void what_a_cell_defines_later_cells_see() {
    run("int width = 40;\nrecord Size(int w) {}\nint twice(int x) { return 2 * x; }");
    assertEquals("Size[w=80]", result("new Size(twice(width))"));
  }

  @Test
  void a_method_may_use_one_that_the_same_cell_defines_further_down() {
    assertEquals("7", result("int a() { return b() + 1; }\nint b() { return 6; }\na()"));
  }

  @Test
  void the_live_value_of_the_last_expression_is_shown_in_its_registered_forms() {
    run("var kept = new ArrayList<Integer>(List.of(1, 2));");
    assertEquals("list of 2", result("kept"));
    CellOutput.Result result = (CellOutput.Result) outputs.get(0);
    assertEquals("<ul></ul>", result.bundle().forms().get(MimeBundle.HTML));
    assertEquals(List.of(1, 2), shown.get(0));
    result("kept");
    assertSame(shown.get(0), shown.get(1));
  }

  @Test
  void an_import_that_a_cell_repeats_takes_none_of_the_others_away() {
    assertEquals("SECONDS", result("import java.util.*;\nTimeUnit.SECONDS"));
    assertEquals("SECONDS", result("TimeUnit.SECONDS"));
  }

  @Test
  void a_semicolon_keeps_the_last_value_from_being_shown() {
    run("1 + 1; // two");
    assertTrue(outputs.isEmpty(), outputs::toString);
    assertEquals("2", result("1 + 1 // two"));
  }

  @Test
  void a_call_without_a_value_and_a_definition_show_nothing() {
    run("List.of().forEach(x -> {})");
    assertTrue(outputs.isEmpty(), outputs::toString);
    run("int silent = 3");
    assertTrue(outputs.isEmpty(), outputs::toString);
  }

  @Test
  void a_null_value_shows_as_null() {
    assertEquals("null", result("Map.of().get(1)"));
  }

  @Test
  void cells_and_library_share_one_copy_of_every_class() {
    result("new rungwork.kernel.Cell(1, \"x\")");
    assertTrue(shown.get(0) instanceof Cell);
  }

  @Test
  void printed_text_comes_in_order_and_apart_by_stream() {
    run("System.out.println(\"a ä\"); System.err.println(\"b\"); System.out.print(\"c\"); 5");
    assertEquals(
        List.of(
            new CellOutput.Text("stdout", "a ä\n"),
            new CellOutput.Text("stderr", "b\n"),
            new CellOutput.Text("stdout", "c"),
            new CellOutput.Result(MimeBundle.text("5"))),
        outputs);
  }

  @Test
  void twenty_thousand_lines_come_whole_and_in_few_pieces() {
    run("for (int i = 0; i < 20000; i++) System.out.println(\"line é \" + i);");
    String text = printed("stdout");
    assertEquals(20000, text.lines().count());
    assertTrue(text.endsWith("line é 19999\n"));
    assertFalse(text.contains("\uFFFD"));
    assertTrue(outputs.size() < 100, () -> "pieces: " + outputs.size());
  }

  @Test
  void text_beyond_one_mebibyte_is_cut_and_the_cut_is_said() {
    run("for (int i = 0; i < 300000; i++) System.out.println(\"0123456789\");");
    String text = printed("stdout");
    assertTrue(text.endsWith("[output cut here: a cell shows at most 1 MiB of printed text]\n"));
    assertTrue(text.length() < (1 << 20) + 100);
  }

  @Test
  void a_compile_error_points_at_the_line_with_a_caret() {
    CellOutput.Failure failure = failed("int a = 1;\n\nint b = a + wrong;");
    assertEquals(
        "CompileError: cannot find symbol\n"
            + "cell [1], line 3: cannot find symbol\n"
            + "    int b = a + wrong;\n"
            + "                ^^^^^\n"
            + "  symbol:   variable wrong",
        plain(failure));
    assertEquals("1", result("a"));
  }

  @Test
  void text_that_is_no_java_fails_at_its_line() {
    assertTrue(
        plain(failed("int a = 1;\nfoo bar baz;")).contains("cell [1], line 2: ';' expected"));
    assertTrue(plain(failed("System.out.println(")).contains("cell [2], line 1"));
  }

  @Test
  void a_definition_whose_names_stay_open_fails() {
    String text = plain(failed("int area() {\n  return widht * 2;\n}"));
    assertTrue(
        text.contains(
            "cell [1], line 2: cannot find variable widht\n"
                + "      return widht * 2;\n"
                + "             ^^^^^"),
        text);
  }

  @Test
  void an_exception_names_the_lines_of_all_cells_it_passed() {
    run("int part(int x) {\n  return 10 / x;\n}");
    CellOutput.Failure failure = failed("int y = 0;\n\n// a note\npart(y)");
    assertEquals(
        "ArithmeticException: / by zero\n"
            + "    cell [1], line 2, in part:  return 10 / x;\n"
            + "    cell [2], line 4:  part(y)",
        plain(failure));
    assertEquals("0", result("y"));
  }

  @Test
  void a_library_exception_shows_its_own_frames_but_none_of_the_kernel() {
    String text = plain(failed("Integer.parseInt(\"x\")"));
    assertTrue(text.contains("Integer.parseInt"), text);
    assertTrue(text.endsWith("cell [1], line 1:  Integer.parseInt(\"x\")"), text);
    assertFalse(text.contains("rungwork.kernel"), text);
  }

  @Test
  void causes_are_named() {
    String text =
        plain(failed("throw new IllegalStateException(\"outer\", new Error(\"inner\"));"));
    assertTrue(text.contains("caused by Error: inner"), text);
  }

  @Test
  void a_plain_fault_shows_its_message_and_the_line_alone() {
    CellOutput.Failure failure =
        failed("int n = 2;\nthrow new rungwork.kernel.EvaluatorTest.Plain(\"wall too thick\");");
    assertEquals(
        "wall too thick\n"
            + "    cell [1], line 2:  throw new rungwork.kernel.EvaluatorTest.Plain(\"wall too"
            + " thick\");",
        plain(failure));
    assertEquals("Plain", failure.name());
  }

  @Test
  void a_cell_that_ends_the_program_fails_by_name() {
    String refused = "ExitRefused: a cell cannot end the program; remove the call";
    run("void leave() { System.exit(0); }");
    assertTrue(plain(failed("leave()")).startsWith(refused));
    assertTrue(plain(failed("Runtime.getRuntime().exit(0)")).startsWith(refused));
    assertTrue(plain(failed("Runtime.getRuntime().halt(1)")).startsWith(refused));
    assertTrue(
        plain(failed("java.util.function.IntConsumer c = System::exit;\nc.accept(3);"))
            .startsWith(refused));
    assertTrue(
        plain(failed("class A { static { System.exit(2); } }\nnew A()")).startsWith(refused));
    assertEquals("1", result("Math.min(1, Runtime.getRuntime().availableProcessors())"));
  }

  @Test
  void a_cell_that_ends_the_program_under_another_name_fails_too() {
    String refused = "ExitRefused: a cell cannot end the program; remove the call";
    run(
        "import java.lang.invoke.*;\n"
            + "var halt = Runtime.class.getMethod(\"halt\", int.class);\n"
            + "var lookup = MethodHandles.lookup();\n"
            + "var oneNumber = MethodType.methodType(void.class, int.class);\n"
            + "var call = java.lang.reflect.Method.class"
            + ".getMethod(\"invoke\", Object.class, Object[].class);\n"
            + "interface Call { Object by(Object on, Object[] all) throws Exception; }");
    for (String code :
        List.of(
            "halt.invoke(Runtime.getRuntime(), 0);",
            "System.class.getMethod(\"exit\", int.class).invoke(null, 0);",
            "call.invoke(halt, Runtime.getRuntime(), new Object[] {0});",
            "call.invoke(call, halt, new Object[] {Runtime.getRuntime(), new Object[] {0}});",
            "Call named = halt::invoke;\nnamed.by(Runtime.getRuntime(), new Object[] {0});",
            "lookup.findStatic(System.class, \"exit\", oneNumber);",
            "lookup.findVirtual(Runtime.class, \"halt\", oneNumber);",
            "lookup.bind(Runtime.getRuntime(), \"exit\", oneNumber);",
            "lookup.unreflect(halt);",
            "lookup.unreflect(call).invoke(halt, Runtime.getRuntime(), new Object[] {0});",
            "lookup.findVirtual(java.lang.reflect.Method.class, \"invoke\", MethodType.methodType("
                + "Object.class, Object.class, Object[].class))"
                + ".invoke(halt, Runtime.getRuntime(), new Object[] {0});",
            "MethodHandles.Lookup.class.getMethod(\"unreflect\", java.lang.reflect.Method.class)"
                + ".invoke(lookup, halt);")) {
      String text = plain(failed(code));
      assertTrue(text.startsWith(refused), () -> code + "\n" + text);
      assertFalse(text.contains("ExitGuard"), text);
    }
  }

  @Test
  void other_calls_by_name_do_what_they_did() {
    run(
        "import java.lang.invoke.*;\n"
            + "class Bar { private int twice(int x) { return 2 * x; } static String of(Object..."
            + " all) { return all.length + \"\"; } }\n"
            + "int pick(String s) { switch (s) { case \"a\": return 1; case \"b\": return 2;"
            + " default: switch (s.length()) { case 1: return 3; case 900: return 4; } return (int)"
            + " (long) 5L; } }");
    assertEquals(
        "6",
        result(
            "pick(\"a\");\n"
                + "Bar.class.getDeclaredMethod(\"twice\", int.class).invoke(new Bar(), 3)"));
    assertEquals(
        "2",
        result(
            "Bar.class.getDeclaredMethod(\"of\", Object[].class)"
                + ".invoke(null, (Object) new Object[] {1, 2})"));
    assertEquals("3", result("String.class.getMethod(\"length\").invoke(\"abc\")"));
    assertEquals(
        "3",
        result(
            "(int) MethodHandles.lookup().findVirtual(String.class, \"length\","
                + " MethodType.methodType(int.class)).invokeExact(\"abc\")"));
    assertEquals(
        "InvocationTargetException",
        failed("Integer.class.getMethod(\"parseInt\", String.class).invoke(null, \"x\")").name());
    assertEquals(
        "[1, 2, 3, 5]",
        result("List.of(pick(\"a\"), pick(\"b\"), pick(\"c\"), pick(\"dd\")).toString()"));
  }

  @Test
  void errors_of_the_machine_leave_the_evaluator_usable() {
    run("int kept = 5; int deep(int x) { return deep(x + 1) + 1; }");
    CellOutput.Failure deep = failed("deep(0)");
    assertEquals("StackOverflowError", deep.name());
    assertTrue(deep.trace().size() < 30);
    CellOutput.Failure full = failed("1 + 1;\nnew long[Integer.MAX_VALUE]");
    assertEquals(
        "OutOfMemoryError: the memory (%d MiB) does not hold this; names are kept\n    cell [3], line 2:  new long[Integer.MAX_VALUE]"
            .formatted(Runtime.getRuntime().maxMemory() >> 20),
        plain(full));
    assertEquals(
        "ExceptionInInitializerError",
        failed("class B { static int x = Integer.parseInt(\"?\"); }\nB.x").name());
    assertEquals("5", result("kept"));
  }

  @Test
  void a_value_that_cannot_be_shown_fails_the_cell_alone() {
    String text =
        plain(failed("new Object() { public String toString() { throw new Error(\"no\"); } }"));
    assertTrue(text.contains("the value cannot be shown"), text);
    assertEquals("2", result("1 + 1"));
  }

  @Test
  void an_endless_loop_stops_when_its_time_is_up_and_names_stay() {
    run("int kept = 7;");
    CellOutput.Failure failure = failedWithin("while (true) { kept++; }", Duration.ofSeconds(1));
    assertEquals("Interrupted", failure.name());
    assertEquals("Interrupted", failedWithin("Thread.sleep(60000);", Duration.ofSeconds(1)).name());
    assertTrue(printed("stderr").contains("longer than its limit of 1 s"));
    assertEquals("true", result("kept > 7"));
  }

  @Test
  void a_value_whose_text_never_ends_can_be_stopped() {
    CellOutput.Failure failure =
        failedWithin(
            "new Object() { public String toString() { while (true) { Math.random(); } } }",
            Duration.ofSeconds(1));
    assertEquals("Interrupted", failure.name());
  }

  private CellOutput.Failure failedWithin(String source, Duration limit) {
    assertEquals(CellEnd.FAILED, run(source, limit), () -> outputs.toString());
    return (CellOutput.Failure) outputs.get(outputs.size() - 1);
  }

  @Test
  void a_cell_that_catches_everything_is_given_up_within_six_seconds() {
    long[] asked = new long[1];
    CellEnd end =
        evaluator.run(
            new Cell(1, "while (true) { try { Thread.sleep(10); } catch (Throwable e) { } }"),
            Duration.ofSeconds(2),
            output -> {
              asked[0] = asked[0] == 0 ? System.nanoTime() : asked[0];
              outputs.add(output);
            });
    assertEquals(CellEnd.STUCK, end);
    assertTrue(printed("stderr").contains("longer than its limit of 2 s"));
    assertTrue(System.nanoTime() - asked[0] < 6_000_000_000L);
    CellOutput.Failure failure = (CellOutput.Failure) outputs.get(outputs.size() - 1);
    assertEquals("Restart", failure.name());
  }

  @Test
  void display_in_the_middle_of_a_cell_comes_in_its_place() {
    evaluator.close();
    evaluator = new Evaluator(EvaluatorSetup.bare());
    Hook.target = evaluator;
    run("System.out.print(1); rungwork.kernel.EvaluatorTest.Hook.display(2); System.out.print(3);");
    assertEquals(
        List.of(
            new CellOutput.Text("stdout", "1"),
            new CellOutput.Display(MimeBundle.text("2")),
            new CellOutput.Text("stdout", "3")),
        outputs);
  }

  /** Gives a cell the way to the evaluator of this test. */
  public static final class Hook {
    static final CountDownLatch GO_ON = new CountDownLatch(1);
    static Evaluator target;

    private Hook() {}

    /** Waits until the test goes on. */
    public static void pause() {
      try {
        GO_ON.await();
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }

    /** The evaluator of this test. */
    public static Evaluator target() {
      return target;
    }

    /** Shows the value. */
    public static void display(Object value) {
      target.display(value);
    }
  }

  @Test
  void a_name_that_is_nearly_right_gets_a_hint() {
    run("int crossMember = 3;\nclass Sidebeam { static int foldedChannel() { return 1; } }");
    String hint = "cannot find symbol; did you mean ";
    assertEquals(hint + "foldedChannel?", failed("Sidebeam.foldedChanel()").message());
    assertEquals(hint + "crossMember?", failed("1 + crosMember").message());
    assertEquals(hint + "Sidebeam?", failed("new Sidebeem()").message());
    assertEquals("cannot find symbol", failed("entirelyElsewhere + 1").message());
    String inside = failed("int area() { return crossMembre * 2; }").message();
    assertEquals("cannot find variable crossMembre; did you mean crossMember?", inside);
  }

  @Test
  void what_a_thread_prints_after_its_cell_is_over_goes_to_that_cell() throws Exception {
    List<CellOutput> first = Collections.synchronizedList(new ArrayList<>());
    String leaves =
        "new Thread(() -> { rungwork.kernel.EvaluatorTest.Hook.pause();"
            + " System.out.println(\"late\"); }).start();";
    assertEquals(CellEnd.FINISHED, evaluator.run(new Cell(7, leaves), LIMIT, first::add));
    assertEquals("2", result("1 + 1")); // does not wait for the thread
    assertEquals(List.of(), first);
    Hook.GO_ON.countDown();
    for (int i = 0; i < 1000 && first.isEmpty(); i++) {
      Thread.sleep(20);
    }
    assertEquals(List.of(new CellOutput.Text(CellOutput.OUT, "late\n")), first);
    assertEquals(1, outputs.size());
  }

  @Test
  void a_value_shown_under_an_id_is_replaced_under_it() {
    Hook.target = evaluator;
    String hook = "rungwork.kernel.EvaluatorTest.Hook";
    run(hook + ".target().display(720, \"mass\");");
    assertEquals(List.of(new CellOutput.Display(MimeBundle.text("720"), "mass")), outputs);
    run(hook + ".target().update(710, \"mass\");");
    assertEquals(List.of(new CellOutput.Update(MimeBundle.text("710"), "mass")), outputs);
  }

  @Test
  void printing_outside_a_cell_is_left_alone_after_the_evaluator_is_closed() {
    evaluator.close();
    PrintStream before = System.out;
    evaluator = new Evaluator(EvaluatorSetup.bare());
    assertNotSame(before, System.out);
    evaluator.close();
    assertSame(before, System.out);
  }
}
