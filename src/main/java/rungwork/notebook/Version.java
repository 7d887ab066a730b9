package rungwork.notebook;

import java.util.Optional;

/** Which Rungwork this is. */
final class Version {
  private Version() {}

  /** The version in the jar's manifest; "development" where classes are read from a folder. */
  static String number() {
    return Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
        .orElse("development");
  }

  static String banner() {
    return "Rungwork " + number() + ": a screening calculation, not an approval";
  }
}
