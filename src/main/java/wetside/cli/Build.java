package wetside.cli;

import picocli.CommandLine;

/** Which version of the program this is. */
final class Build implements CommandLine.IVersionProvider {
    private Build() {}

    @Override
    public String[] getVersion() {
        String version = Build.class.getPackage().getImplementationVersion();
        return new String[] {"wetside " + (version == null ? "(not packaged)" : version)};
    }
}
