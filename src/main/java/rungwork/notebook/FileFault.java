package rungwork.notebook;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** What the file system refused, in words; its own exceptions often say no more than a path. */
final class FileFault {
  private FileFault() {}

  static String words(FileSystemException fault) {
    if (fault instanceof AccessDeniedException) {
      return fault.getFile() + ": no permission";
    }
    if (fault instanceof FileAlreadyExistsException) {
      return fault.getFile() + " is there already and is no folder";
    }
    if (fault instanceof NoSuchFileException) {
      return fault.getFile() + " is not there";
    }
    return fault.getMessage();
  }
}
