package club.yearline.exchange;

import picocli.CommandLine.IVersionProvider;

/** The version of the packaged application. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    String version = Version.class.getPackage().getImplementationVersion();
    return new String[] {"yearline " + (version == null ? "from its sources" : version)};
  }
}
