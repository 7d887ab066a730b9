package rungwork.kernel;

import java.util.function.IntConsumer;

/**
 * The places of all instructions of a class file.
 *
 * <p>Source of the layout: The Java Virtual Machine Specification, Java SE 17 Edition, §4.5 to
 * §4.7.3 (fields, methods, the Code attribute) and §6.5 (lengths of the instructions).
 */
final class Instructions {
  private static final int TABLE_SWITCH = 170;
  private static final int LOOKUP_SWITCH = 171;
  private static final int WIDE = 196;
  private static final int INCREMENT = 132;

  /** Lengths of the instructions 0 to 201 in bytes; 0 where a length is not fixed. */
  private static final String LENGTHS =
      "1".repeat(16)
          + "23"
          + "233"
          + "2".repeat(5)
          + "1".repeat(28)
          + "2".repeat(5)
          + "1".repeat(73)
          + "3"
          + "1".repeat(20)
          + "3".repeat(16)
          + "200"
          + "1".repeat(6)
          + "3".repeat(7)
          + "55"
          + "323"
          + "11"
          + "33"
          + "11"
          + "0"
          + "4"
          + "33"
          + "55";

  private final ClassFile file;
  private final IntConsumer place;

  private Instructions(ClassFile file, IntConsumer place) {
    this.file = file;
    this.place = place;
  }

  /** Tells the place of every instruction. */
  static void forEach(ClassFile file, IntConsumer place) {
    new Instructions(file, place).members();
  }

  private void members() {
    int interfacesAt = file.poolEnd() + 6;
    int at = interfacesAt + 2 + 2 * file.unsigned(interfacesAt);
    at = members(at); // fields
    members(at); // methods
  }

  private int members(int countAt) {
    int at = countAt + 2;
    for (int i = 0; i < file.unsigned(countAt); i++) {
      at = attributes(at + 6);
    }
    return at;
  }

  private int attributes(int countAt) {
    int at = countAt + 2;
    for (int i = 0; i < file.unsigned(countAt); i++) {
      if (file.text(at).equals("Code")) {
        code(at + 14, file.length(at + 10));
      }
      at += 6 + file.length(at + 2);
    }
    return at;
  }

  private void code(int start, int length) {
    int at = start;
    while (at < start + length) {
      place.accept(at);
      at += length(at, start);
    }
  }

  private int length(int at, int start) {
    int operands = at + 4 - (at - start) % 4; // of a switch: aligned to four bytes
    return switch (file.at(at)) {
      case TABLE_SWITCH ->
          operands + 12 + 4 * (file.length(operands + 8) - file.length(operands + 4) + 1) - at;
      case LOOKUP_SWITCH -> operands + 8 + 8 * file.length(operands + 4) - at;
      case WIDE -> file.at(at + 1) == INCREMENT ? 6 : 4;
      default -> LENGTHS.charAt(file.at(at)) - '0';
    };
  }
}
