package rungwork.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import rungwork.check.Member.BucklingLengths;
import rungwork.check.Member.Weld;
import rungwork.fault.ModelException;

class MemberTest {
  private static final BucklingLengths FULL = new BucklingLengths(1, 1, "full length");

  @Test
  void a_member_without_a_beam_is_refused() {
    refused(
        "part front crossmember has no beam; name one at least",
        () -> new Member("front crossmember", List.of(), FULL, List.of()));
  }

  @Test
  void a_buckling_length_of_nothing_is_refused() {
    refused(
        "buckling length in the frame's plane 0 mm is not above zero",
        () -> new BucklingLengths(0, 1, "full length"));
    refused(
        "buckling length out of the frame's plane -100.0 mm is not above zero",
        () -> new BucklingLengths(1, -0.1, "full length"));
  }

  @Test
  void a_buckling_length_without_a_reason_is_refused() {
    refused(
        "a reason for a buckling length has no name; give it one",
        () -> new BucklingLengths(1, 1, ""));
  }

  @Test
  void a_weld_before_the_start_of_its_member_is_refused() {
    refused("place of weld tab -10.00 mm is below zero", () -> new Weld("tab", -0.01));
  }

  private static void refused(String message, Executable making) {
    assertEquals(message, assertThrows(ModelException.class, making).getMessage());
  }
}
