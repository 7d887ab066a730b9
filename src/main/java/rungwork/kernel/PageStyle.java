package rungwork.kernel;

/**
 * The look of a page beyond its plain layout.
 *
 * @param styleSheet CSS that follows the layout's own
 * @param footer a fragment of HTML at the foot of the page; empty for none
 */
public record PageStyle(String styleSheet, String footer) {
  /** The plain layout. */
  public static PageStyle plain() {
    return new PageStyle("", "");
  }
}
