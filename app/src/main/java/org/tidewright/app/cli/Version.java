package org.tidewright.app.cli;

import picocli.CommandLine.IVersionProvider;

/** The version from the packaged program's manifest. */
public final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = Version.class.getPackage().getImplementationVersion();
        return new String[] {"Tidewright " + (version == null ? "(built from sources)" : version)};
    }
}
