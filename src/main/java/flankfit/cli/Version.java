package flankfit.cli;

import java.util.Optional;
import picocli.CommandLine;

/** The version, from the jar's manifest. */
final class Version implements CommandLine.IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"flankfit " + packaged().orElse("(not packaged)")};
  }

  /** The version; empty when not run from a jar. */
  static Optional<String> packaged() {
    return Optional.ofNullable(Version.class.getPackage().getImplementationVersion());
  }
}
