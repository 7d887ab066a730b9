package rungwork.kernel;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Map;
import java.util.Set;

/**
 * Takes from a cell's bytecode the power to end the program.
 *
 * <p>In the class file each call of {@code System.exit}, {@code Runtime.exit} or {@code
 * Runtime.halt} goes through one entry of the constant pool: method reference → (class, name and
 * type). The entry is given a new name and type whose name is {@link #MARK}, a method that exists
 * nowhere. The class still loads and verifies; the call itself fails with a {@link
 * NoSuchMethodError} that carries the mark, and the cell fails by name. Only cells are rewritten. A
 * call through reflection is not seen here; whoever owns the process must not take an unfinished
 * run for a finished one.
 *
 * <p>Source of the layout: The Java Virtual Machine Specification, Java SE 17 Edition, §4.1 and
 * §4.4.
 */
final class ExitCalls {
  /** The name of the method that does not exist; no Java source can declare it. */
  static final String MARK = "a-cell-cannot-end-the-program";

  private static final int UTF8 = 1;
  private static final int CLASS = 7;
  private static final int METHOD_REFERENCE = 10;
  private static final int NAME_AND_TYPE = 12;
  private static final int POOL_COUNT_AT = 8;
  private static final int POOL_AT = 10;

  /** Bytes after the tag, by tag; a UTF-8 entry adds its own length to the two given here. */
  private static final Map<Integer, Integer> SIZES =
      Map.ofEntries(
          Map.entry(UTF8, 2),
          Map.entry(3, 4),
          Map.entry(4, 4),
          Map.entry(5, 8),
          Map.entry(6, 8),
          Map.entry(CLASS, 2),
          Map.entry(8, 2),
          Map.entry(9, 4),
          Map.entry(METHOD_REFERENCE, 4),
          Map.entry(11, 4),
          Map.entry(NAME_AND_TYPE, 4),
          Map.entry(15, 3),
          Map.entry(16, 2),
          Map.entry(17, 4),
          Map.entry(18, 4),
          Map.entry(19, 2),
          Map.entry(20, 2));

  private static final Set<String> REFUSED =
      Set.of("java/lang/System.exit", "java/lang/Runtime.exit", "java/lang/Runtime.halt");

  private final byte[] bytes;
  private final ByteBuffer file;
  private final int[] entries;
  private final int poolEnd;

  private ExitCalls(byte[] classFile) {
    bytes = classFile.clone();
    file = ByteBuffer.wrap(bytes);
    entries = new int[Short.toUnsignedInt(file.getShort(POOL_COUNT_AT))];
    poolEnd = locateEntries();
  }

  /** The class file with every call that would end the program made to fail. */
  static byte[] disarm(byte[] classFile) {
    return new ExitCalls(classFile).disarmed();
  }

  private int locateEntries() {
    int at = POOL_AT;
    for (int i = 1; i < entries.length; i++) {
      entries[i] = at;
      int tag = bytes[at];
      at += 1 + SIZES.get(tag) + (tag == UTF8 ? unsigned(at + 1) : 0);
      boolean takesTwo = tag == 5 || tag == 6;
      i += takesTwo ? 1 : 0;
    }
    return at;
  }

  private byte[] disarmed() {
    int markAt = entries.length;
    boolean found = false;
    for (int entry : entries) {
      if (entry > 0 && bytes[entry] == METHOD_REFERENCE && REFUSED.contains(called(entry))) {
        file.putShort(entry + 3, (short) (markAt + 1));
        found = true;
      }
    }
    return found ? withMark(markAt) : bytes;
  }

  private String called(int reference) {
    int owner = entries[unsigned(reference + 1)];
    int nameAndType = entries[unsigned(reference + 3)];
    return utf8(unsigned(owner + 1)) + "." + utf8(unsigned(nameAndType + 1));
  }

  /** Appends the mark and a name and type {@code (MARK, (I)V)} to the pool. */
  private byte[] withMark(int markAt) {
    ByteArrayOutputStream grown = new ByteArrayOutputStream(bytes.length + 64);
    file.putShort(POOL_COUNT_AT, (short) (entries.length + 3));
    grown.write(bytes, 0, poolEnd);
    try (DataOutputStream out = new DataOutputStream(grown)) {
      out.writeByte(UTF8);
      out.writeUTF(MARK);
      out.writeByte(NAME_AND_TYPE);
      out.writeShort(markAt);
      out.writeShort(markAt + 2);
      out.writeByte(UTF8);
      out.writeUTF("(I)V");
      out.write(bytes, poolEnd, bytes.length - poolEnd);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return grown.toByteArray();
  }

  private int unsigned(int at) {
    return Short.toUnsignedInt(file.getShort(at));
  }

  private String utf8(int index) {
    int at = entries[index] + 1;
    try {
      return new DataInputStream(new ByteArrayInputStream(bytes, at, bytes.length - at)).readUTF();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
