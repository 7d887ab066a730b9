package rungwork.kernel;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/**
 * Gathers what one cell puts out and passes it on in order: printed text in large pieces, at most
 * {@link #LIMIT} bytes of it a cell.
 */
final class CellOutputs {
  /** Bytes of printed text that a cell may put out; what comes after is dropped and said. */
  static final int LIMIT = 1 << 20;

  private static final int PIECE = 1 << 16;
  private static final String CUT =
      "\n[output cut here: a cell shows at most 1 MiB of printed text]\n";

  private final Consumer<CellOutput> sink;
  private final ByteArrayOutputStream waiting = new ByteArrayOutputStream();
  private String waitingStream = CellOutput.OUT;
  private int printed;

  CellOutputs(Consumer<CellOutput> sink) {
    this.sink = sink;
  }

  /** Takes bytes of UTF-8 text; they may end inside a character. */
  synchronized void print(String stream, byte[] bytes, int length) {
    if (printed >= LIMIT) {
      return;
    }
    if (!stream.equals(waitingStream)) {
      flush();
      waitingStream = stream;
    }
    int taken = Math.min(length, LIMIT - printed);
    waiting.write(bytes, 0, taken);
    printed += taken;
    if (printed >= LIMIT) {
      flush();
      sink.accept(new CellOutput.Text(stream, CUT));
    } else if (waiting.size() >= PIECE) {
      flush();
    }
  }

  /** Passes on what was printed so far, then the output. */
  synchronized void put(CellOutput output) {
    flush();
    sink.accept(output);
  }

  /** Passes on what was printed so far, except a last character of which only a part has come. */
  synchronized void flush() {
    byte[] bytes = waiting.toByteArray();
    int whole = printed >= LIMIT ? bytes.length : wholeCharacters(bytes);
    if (whole > 0) {
      sink.accept(
          new CellOutput.Text(waitingStream, new String(bytes, 0, whole, StandardCharsets.UTF_8)));
    }
    waiting.reset();
    waiting.write(bytes, whole, bytes.length - whole);
  }

  /** Length without an unfinished UTF-8 sequence at the end (RFC 3629, section 3). */
  private static int wholeCharacters(byte[] bytes) {
    int lead = bytes.length - 1;
    while (lead >= 0 && lead > bytes.length - 4 && (bytes[lead] & 0xC0) == 0x80) {
      lead--;
    }
    if (lead < 0 || bytes[lead] >= 0) {
      return bytes.length;
    }
    int need = Integer.numberOfLeadingZeros(~(bytes[lead] << 24));
    return lead + need > bytes.length ? lead : bytes.length;
  }
}
