// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.exam.seal;

import cablewright.simulator.file.PlainFile;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.AclEntry;
import java.nio.file.attribute.AclEntryPermission;
import java.nio.file.attribute.AclEntryType;
import java.nio.file.attribute.AclFileAttributeView;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * An examiner's key in a file that its owner alone may read: the identity file of the age program, with remarks behind
 * {@code #}.
 */
public final class KeyFile {

    /** Fewest characters of a passphrase for a backup (common practice, no source). */
    public static final int LEAST_PASSPHRASE = 12;

    private static final int MOST_BYTES = 64 * 1024;
    private static final Set<PosixFilePermission> OWNER_ONLY = PosixFilePermissions.fromString("rw-------");

    private KeyFile() {}

    /**
     * Writes a key into a new file.
     *
     * @param file the file; it must not be there yet, so that no key is ever written over
     * @param key the key
     * @param now when it was made
     * @throws IOException if it can't be written, or is there
     */
    public static void write(Path file, ExaminerKey key, Instant now) throws IOException {
        writePrivate(file, text(key, now).getBytes(StandardCharsets.US_ASCII));
    }

    /**
     * Writes bytes into a new file that its owner alone may read.
     *
     * @param file the file; it must not be there yet
     * @param bytes what to write
     * @throws IOException if it can't be written, or is there
     */
    public static void writePrivate(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(
                file, EnumSet.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), ownerOnly(file))) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
        AclFileAttributeView acl = Files.getFileAttributeView(file, AclFileAttributeView.class);
        if (acl != null) {
            acl.setAcl(List.of(AclEntry.newBuilder()
                    .setType(AclEntryType.ALLOW)
                    .setPrincipal(acl.getOwner())
                    .setPermissions(EnumSet.allOf(AclEntryPermission.class))
                    .build()));
        }
    }

    private static FileAttribute<?>[] ownerOnly(Path file) {
        boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
        return posix
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(OWNER_ONLY)}
                : new FileAttribute<?>[0];
    }

    /**
     * Writes a key as text, as it stands in a file or on paper.
     *
     * @param key the key
     * @param now when it was made
     * @return the lines of an identity file of age
     */
    public static String text(ExaminerKey key, Instant now) {
        return "# Secret key of an examiner. Who has it reads every paper and every answer sealed to it.\n"
                + "# Lost, nothing sealed to it can be opened again by anybody.\n"
                + "# created: " + now + "\n"
                + "# public key: " + key.publicKey() + "\n" + key.secret() + "\n";
    }

    /**
     * Backs a key up under a passphrase, into a file that the age program opens too.
     *
     * @param file the file; it must not be there yet
     * @param key the key
     * @param passphrase at least {@value #LEAST_PASSPHRASE} characters
     * @param now when the backup is made
     * @throws IOException if it can't be written, or is there
     */
    public static void backUp(Path file, ExaminerKey key, String passphrase, Instant now) throws IOException {
        if (passphrase.length() < LEAST_PASSPHRASE) {
            throw new IllegalArgumentException(
                    "passphrase has " + passphrase.length() + " characters; it must have at least " + LEAST_PASSPHRASE);
        }
        byte[] text = text(key, now).getBytes(StandardCharsets.US_ASCII);
        writePrivate(file, AgeSeal.sealUnder(passphrase, text));
    }

    /**
     * Opens a backup.
     *
     * @param file the backup
     * @param passphrase its passphrase
     * @return the key
     * @throws IOException if it can't be read or holds no key
     * @throws SealException if the passphrase is another one, or the file was changed
     */
    public static ExaminerKey openBackup(Path file, String passphrase) throws IOException, SealException {
        byte[] sealed = PlainFile.bytes(file, MOST_BYTES);
        return parse(file.toString(), AgeSeal.openUnder(passphrase, sealed));
    }

    /**
     * Reads a key. Permissions are looked at where the file system has those of POSIX; on Windows the file gets those of its
     * owner when it is written.
     *
     * @param file the file
     * @return the key
     * @throws IOException if it can't be read, others may read it, or it holds no key; the message says what to do
     */
    public static ExaminerKey read(Path file) throws IOException {
        if (!Files.exists(file)) {
            throw new IOException(file + " does not exist; look at the name and the folder");
        }
        refuseReadableByOthers(file);
        if (Files.size(file) > MOST_BYTES) {
            throw new IOException(file + " is too long for a key file; choose the file with AGE-SECRET-KEY-1");
        }
        return parse(file.toString(), Files.readAllBytes(file));
    }

    private static void refuseReadableByOthers(Path file) throws IOException {
        PosixFileAttributeView posix = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (posix == null) {
            return;
        }
        Set<PosixFilePermission> permissions = posix.readAttributes().permissions();
        if (!OWNER_ONLY.containsAll(permissions) && others(permissions)) {
            throw new IOException(file + " can be read or changed by others ("
                    + PosixFilePermissions.toString(permissions) + "); a secret key must be its owner's alone: run "
                    + "'chmod 600 " + file + "', and if somebody else may have read it, make a new key");
        }
    }

    private static boolean others(Set<PosixFilePermission> permissions) {
        return permissions.stream().anyMatch(one -> !one.name().startsWith("OWNER_"));
    }

    /**
     * Reads a key from the text of a file.
     *
     * @param name what messages call the file
     * @param bytes its bytes
     * @return the key
     * @throws IOException if it holds no key, or more than one
     */
    public static ExaminerKey parse(String name, byte[] bytes) throws IOException {
        List<String> keys = new String(bytes, StandardCharsets.UTF_8)
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .toList();
        if (keys.size() != 1) {
            throw new IOException(name + " holds " + keys.size() + " keys; it must hold one line AGE-SECRET-KEY-1…");
        }
        try {
            return ExaminerKey.of(keys.get(0));
        } catch (IllegalArgumentException e) {
            throw new IOException(name + ": " + e.getMessage(), e);
        }
    }
}
