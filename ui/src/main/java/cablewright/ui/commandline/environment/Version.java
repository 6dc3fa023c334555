// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.environment;

import picocli.CommandLine.IVersionProvider;

/** Says which version this is. */
public final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"cablewright " + number(), "Java " + System.getProperty("java.version")};
    }

    /** The version from the jar's manifest; "unpackaged" where classes run without one. */
    public static String number() {
        String version = Version.class.getPackage().getImplementationVersion();
        return version == null ? "unpackaged" : version;
    }
}
