package rungwork.kernel;

import java.util.BitSet;
import java.util.Set;

/**
 * Takes from a cell's bytecode the power to end the program.
 *
 * <p>In the class file each call of {@code System.exit}, {@code Runtime.exit} or {@code
 * Runtime.halt} goes through one entry of the constant pool: method reference → (class, name and
 * type). The entry is given a new name and type whose name is {@link #MARK}, a method that exists
 * nowhere. The class still loads and verifies; the call itself fails with a {@link
 * NoSuchMethodError} that carries the mark, and the cell fails by name.
 *
 * <p>A call of a method that calls or finds methods by their names goes the same way to the method
 * of that name in {@link ExitGuard.Calls}, which takes the receiver as its first argument. Only
 * cells are rewritten; what compiled libraries look up on their own is not seen, and whoever owns
 * the process must not take an unfinished run for a finished one.
 *
 * <p>Source: The Java Virtual Machine Specification, Java SE 17 Edition, §4.4.2, §4.4.8 and §6.5.
 */
final class ExitCalls {
  /** The name of the method that does not exist; no Java source can declare it. */
  static final String MARK = "a-cell-cannot-end-the-program";

  private static final int INVOKE_VIRTUAL = 182;
  private static final int INVOKE_STATIC = 184;
  private static final int HANDLE_OF_VIRTUAL = 5;
  private static final int HANDLE_OF_STATIC = 6;

  private static final Set<String> REFUSED =
      Set.of("java/lang/System.exit", "java/lang/Runtime.exit", "java/lang/Runtime.halt");

  private static final String LOOKUP = "java/lang/invoke/MethodHandles$Lookup";
  private static final Set<String> GUARDED =
      Set.of(
          "java/lang/reflect/Method.invoke",
          LOOKUP + ".findStatic",
          LOOKUP + ".findVirtual",
          LOOKUP + ".bind",
          LOOKUP + ".unreflect");

  private final ClassFile file;
  private final BitSet guarded = new BitSet();

  private ExitCalls(ClassFile file) {
    this.file = file;
  }

  /** The class file with every call that would end the program made to fail. */
  static byte[] disarm(byte[] classFile) {
    ExitCalls calls = new ExitCalls(new ClassFile(classFile));
    calls.references();
    if (!calls.guarded.isEmpty()) {
      calls.handles();
      Instructions.forEach(calls.file, calls::instruction);
    }
    return calls.file.bytes();
  }

  private void references() {
    for (int i = 1; i < file.entries(); i++) {
      int entry = file.entry(i, ClassFile.METHOD_REFERENCE);
      if (entry > 0) {
        reference(i, entry);
      }
    }
  }

  private void reference(int index, int entry) {
    String owner = file.text(entry + 1);
    int nameAndType = file.followed(entry + 3);
    String name = file.text(nameAndType + 1);
    if (REFUSED.contains(owner + "." + name)) {
      file.setIndex(entry + 3, file.addNameAndType(MARK, "(I)V"));
    } else if (GUARDED.contains(owner + "." + name)) {
      String type = "(L" + owner + ";" + file.text(nameAndType + 3).substring(1);
      file.setIndex(entry + 1, file.addClass(ExitGuard.Calls.class.getName().replace('.', '/')));
      file.setIndex(entry + 3, file.addNameAndType(name, type));
      guarded.set(index);
    }
  }

  /** References to methods, as in {@code method::invoke}. */
  private void handles() {
    for (int i = 1; i < file.entries(); i++) {
      int entry = file.entry(i, ClassFile.METHOD_HANDLE);
      if (entry > 0
          && file.at(entry + 1) == HANDLE_OF_VIRTUAL
          && guarded.get(file.unsigned(entry + 2))) {
        file.set(entry + 1, HANDLE_OF_STATIC);
      }
    }
  }

  private void instruction(int at) {
    if (file.at(at) == INVOKE_VIRTUAL && guarded.get(file.unsigned(at + 1))) {
      file.set(at, INVOKE_STATIC);
    }
  }
}
