package flankfit.cli;

import picocli.CommandLine;

/** The version, from the jar's manifest. */
final class Version implements CommandLine.IVersionProvider {
  @Override
  public String[] getVersion() {
    String version = Version.class.getPackage().getImplementationVersion();
    return new String[] {"flankfit " + (version == null ? "(not packaged)" : version)};
  }
}
