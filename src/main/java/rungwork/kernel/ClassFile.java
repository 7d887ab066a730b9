package rungwork.kernel;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Map;

/**
 * A class file whose bytes may be changed and whose constant pool may grow at its end.
 *
 * <p>Source of the layout: The Java Virtual Machine Specification, Java SE 17 Edition, §4.1 and
 * §4.4.
 */
final class ClassFile {
  static final int UTF8 = 1;
  static final int CLASS = 7;
  static final int METHOD_REFERENCE = 10;
  static final int NAME_AND_TYPE = 12;
  static final int METHOD_HANDLE = 15;

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
          Map.entry(METHOD_HANDLE, 3),
          Map.entry(16, 2),
          Map.entry(17, 4),
          Map.entry(18, 4),
          Map.entry(19, 2),
          Map.entry(20, 2));

  private final byte[] bytes;
  private final ByteBuffer file;
  private final int[] entries;
  private final int poolEnd;
  private final ByteArrayOutputStream added = new ByteArrayOutputStream();
  private int next;

  ClassFile(byte[] classFile) {
    bytes = classFile.clone();
    file = ByteBuffer.wrap(bytes);
    entries = new int[unsigned(POOL_COUNT_AT)];
    poolEnd = locateEntries();
    next = entries.length;
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

  /** How many entries the pool had, the unused first one included. */
  int entries() {
    return entries.length;
  }

  /** Where the pool ends and the class begins. */
  int poolEnd() {
    return poolEnd;
  }

  /** Where an entry of the pool lies, if it is of that kind; else 0. */
  int entry(int index, int tag) {
    return entries[index] > 0 && bytes[entries[index]] == tag ? entries[index] : 0;
  }

  /** The text to which a two-byte index at a position leads: a UTF-8 entry, or a class's name. */
  String text(int at) {
    int entry = entries[unsigned(at)];
    return bytes[entry] == CLASS ? text(entry + 1) : utf8(entry + 1);
  }

  private String utf8(int at) {
    try {
      return new DataInputStream(new ByteArrayInputStream(bytes, at, bytes.length - at)).readUTF();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Where the entry lies to which a two-byte index at a position leads. */
  int followed(int at) {
    return entries[unsigned(at)];
  }

  int unsigned(int at) {
    return Short.toUnsignedInt(file.getShort(at));
  }

  int length(int at) {
    return file.getInt(at);
  }

  int at(int at) {
    return Byte.toUnsignedInt(bytes[at]);
  }

  void set(int at, int value) {
    bytes[at] = (byte) value;
  }

  void setIndex(int at, int index) {
    file.putShort(at, (short) index);
  }

  /** Adds a class of that name; returns its index. */
  int addClass(String name) {
    return add(CLASS, addText(name));
  }

  /** Adds a method's name and descriptor; returns their index. */
  int addNameAndType(String name, String type) {
    return add(NAME_AND_TYPE, addText(name), addText(type));
  }

  private int addText(String text) {
    try (DataOutputStream out = new DataOutputStream(added)) {
      out.writeByte(UTF8);
      out.writeUTF(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return next++;
  }

  private int add(int tag, int... indices) {
    added.write(tag);
    for (int index : indices) {
      added.write(index >> 8);
      added.write(index);
    }
    return next++;
  }

  /** The class file as it is now. */
  byte[] bytes() {
    ByteArrayOutputStream grown = new ByteArrayOutputStream(bytes.length + added.size());
    setIndex(POOL_COUNT_AT, next);
    grown.write(bytes, 0, poolEnd);
    grown.writeBytes(added.toByteArray());
    grown.write(bytes, poolEnd, bytes.length - poolEnd);
    return grown.toByteArray();
  }
}
