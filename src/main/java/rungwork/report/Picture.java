package rungwork.report;

import rungwork.fault.Guard;

/**
 * A drawing and the words that stand in for it where drawings cannot be shown.
 *
 * @param title what it shows
 * @param svg an {@code svg} element that needs nothing around it
 * @param text the same in plain text
 */
public record Picture(String title, String svg, String text) {
  /** Refuses a picture without a title. */
  public Picture {
    title = Guard.name("picture", title);
  }

  @Override
  public String toString() {
    return text;
  }
}
