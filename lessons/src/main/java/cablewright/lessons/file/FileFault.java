// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.file;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;

/** Why a file can't be read or written, in one sentence that names the file. */
public final class FileFault {

    private FileFault() {}

    /**
     * Says why a file can't be read.
     *
     * @param file the file
     * @param fault what the system said
     * @return one sentence
     */
    public static String reading(Path file, IOException fault) {
        return file + " can't be read: " + reason(file, fault, "this account may not read it");
    }

    /**
     * Says why a file can't be written.
     *
     * @param file the file
     * @param fault what the system said
     * @return one sentence
     */
    public static String writing(Path file, IOException fault) {
        if (fault instanceof NoSuchFileException) {
            return file + " can't be written: there is no folder "
                    + file.toAbsolutePath().getParent();
        }
        return file + " can't be written: " + reason(file, fault, "this account may not write there");
    }

    /**
     * Says why a file can't be read or written, where the fault itself names it.
     *
     * @param fault what the system said
     * @return one sentence
     */
    public static String sentence(IOException fault) {
        if (fault instanceof FileSystemException system && system.getFile() != null) {
            return writing(Path.of(system.getFile()), fault);
        }
        return reason(Path.of(""), fault, "this account may not write there");
    }

    private static String reason(Path file, IOException fault, String denied) {
        if (fault instanceof AccessDeniedException) {
            return denied;
        }
        if (fault instanceof CharacterCodingException) {
            return "it is not text in UTF-8";
        }
        if (fault instanceof DirectoryNotEmptyException) {
            return "it is a folder";
        }
        if (fault instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        String said = fault.getMessage();
        boolean isOnlyTheName = said == null || said.equals(file.toString());
        return isOnlyTheName ? "the system does not say why (" + kind(fault) + ")" : said;
    }

    /** "NoSuchFileException" as "no such file". */
    private static String kind(IOException fault) {
        return fault.getClass()
                .getSimpleName()
                .replace("Exception", "")
                .replaceAll("(?<=[a-z])(?=[A-Z])", " ")
                .toLowerCase(Locale.ROOT);
    }
}
