package rungwork.csv;

import rungwork.fault.ModelException;

/**
 * A line of a file, for messages.
 *
 * @param file the file's name
 * @param line the line, from 1
 */
record CsvPlace(String file, long line) {
  ModelException refusal(String column, String reason) {
    return new ModelException(file + " line " + line + ", " + column + ": " + reason);
  }

  ModelException refusal(String reason) {
    return new ModelException(file + " line " + line + ": " + reason);
  }
}
