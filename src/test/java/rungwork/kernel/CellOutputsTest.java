package rungwork.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellOutputsTest {
  private final List<CellOutput> passed = new ArrayList<>();
  private final CellOutputs outputs = new CellOutputs(passed::add);

  @ParameterizedTest
  @ValueSource(strings = {"ä", "€", "😀", "aä€😀"})
  void a_character_is_never_torn_by_a_flush(String text) {
    StringBuilder seen = new StringBuilder();
    for (byte each : text.getBytes(StandardCharsets.UTF_8)) {
      outputs.print(CellOutput.OUT, new byte[] {each}, 1);
      outputs.flush();
    }
    passed.forEach(output -> seen.append(((CellOutput.Text) output).text()));
    assertEquals(text, seen.toString());
  }

  @Test
  void text_comes_before_the_output_that_followed_it() {
    outputs.print(CellOutput.OUT, new byte[] {'a', 'b'}, 2);
    outputs.put(new CellOutput.Display(MimeBundle.text("shown")));
    assertEquals(
        List.of(
            new CellOutput.Text("stdout", "ab"), new CellOutput.Display(MimeBundle.text("shown"))),
        passed);
  }

  @Test
  void bytes_that_are_no_text_are_passed_on_as_replacement_characters() {
    outputs.print(CellOutput.OUT, new byte[] {(byte) 0x80, (byte) 0x80, (byte) 0x80, 'a'}, 4);
    outputs.flush();
    assertEquals(List.of(new CellOutput.Text("stdout", "\uFFFD\uFFFD\uFFFDa")), passed);
  }
}
