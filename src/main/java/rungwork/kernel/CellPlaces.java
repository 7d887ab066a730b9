package rungwork.kernel;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import jdk.jshell.Snippet;

/** Remembers from which cell and which place in it each snippet came. */
final class CellPlaces {
  private final Map<String, Place> places = new HashMap<>();

  /**
   * Where a snippet's text begins.
   *
   * @param cell the cell
   * @param offset characters of the cell before the snippet
   */
  record Place(Cell cell, int offset) {
    /** The cell's line, from 1, that holds a position of the snippet. */
    int lineAt(int position) {
      int end = Math.min(offset + position, cell.source().length());
      return 1 + (int) cell.source().substring(0, end).chars().filter(c -> c == '\n').count();
    }

    /** The cell's line, from 1, of a line of the snippet, from 1. */
    int line(int snippetLine) {
      return lineAt(0) + snippetLine - 1;
    }

    /** The text of one line of the cell. */
    String text(int line) {
      return cell.source().split("\n", -1)[line - 1];
    }
  }

  void put(Snippet snippet, Place place) {
    places.put(snippet.id(), place);
  }

  Optional<Place> of(Snippet snippet) {
    return of(snippet.id());
  }

  Optional<Place> of(String snippetId) {
    return Optional.ofNullable(places.get(snippetId));
  }
}
