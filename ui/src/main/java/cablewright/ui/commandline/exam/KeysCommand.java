// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.exam;

import cablewright.lessons.exam.seal.AgeSeal;
import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exam.seal.KeyFile;
import cablewright.lessons.exam.seal.SealException;
import cablewright.lessons.file.AtomicSave;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.RootCommand;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Examiners' keys. */
@Command(
        name = "keys",
        mixinStandardHelpOptions = true,
        header = {"Makes, shows and backs up an examiner's key.", ""},
        description = {
            "An examiner's key opens sealed papers and the answers to them. 'keys new' makes one, in a file that only you can "
                    + "read. The public key, which 'keys show' prints, is for sealing: anybody may have it.",
            "If the key is lost, nobody can ever open what was sealed to it: no paper, no answer. If somebody else gets it, they "
                    + "can read all of it. So make a backup under a passphrase, keep it elsewhere, and make a new key for each "
                    + "examination period.",
            "The files are those of the open age format; the age program reads them too.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  cablewright keys new examiner.key",
            "  cablewright keys show examiner.key",
            "  cablewright keys backup examiner.key examiner-backup.age",
            "  cablewright keys restore examiner-backup.age examiner.key",
            "  cablewright keys show --secret examiner.key     (to write it on paper)"
        })
public final class KeysCommand implements Callable<Integer> {

    private static final int LEAST_PASSPHRASE = 12;

    @ParentCommand
    private RootCommand root;

    /** What can be done with a key. */
    enum Action {
        /** Makes one. */
        NEW,
        /** Prints its public key. */
        SHOW,
        /** Seals it under a passphrase. */
        BACKUP,
        /** Opens such a backup. */
        RESTORE
    }

    @Parameters(index = "0", paramLabel = "new|show|backup|restore", description = "What to do.")
    private Action action;

    @Parameters(index = "1", paramLabel = "FILE", description = "The key file; for 'restore' the backup.")
    private Path file;

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "TARGET",
            description = "For 'backup' the file to write, for 'restore' the key file to write.")
    private Path target;

    @Option(names = "--secret", description = "With 'show': print the secret key too, to write it on paper.")
    private boolean secret;

    @Override
    public Integer call() {
        Path named = root.surroundings().folder().resolve(file);
        try {
            switch (action) {
                case NEW -> make(named);
                case SHOW -> show(KeyFile.read(named));
                case BACKUP -> backup(named, target());
                case RESTORE -> restore(named, target());
            }
        } catch (FileAlreadyExistsException e) {
            throw new InputProblem(e.getFile() + " is there already; no key is ever written over");
        } catch (IOException e) {
            throw new InputProblem(e.getMessage());
        }
        return ExitCode.DONE;
    }

    private Path target() {
        if (target == null) {
            throw new InputProblem("a second file is missing: type it like 'keys backup examiner.key backup.age'");
        }
        return root.surroundings().folder().resolve(target);
    }

    private void make(Path named) throws IOException {
        ExaminerKey key = ExaminerKey.make();
        KeyFile.write(named, key, Clock.systemUTC().instant());
        root.surroundings().print(key.publicKey() + "\n");
        root.remark("The key is in " + named
                + ", for you alone. Lost, nothing sealed to it can be opened again by anybody: "
                + "make a backup with 'cablewright keys backup'.");
    }

    private void show(ExaminerKey key) {
        root.surroundings().print(secret ? KeyFile.text(key, Clock.systemUTC().instant()) : key.publicKey() + "\n");
    }

    private void backup(Path named, Path to) throws IOException {
        ExaminerKey key = KeyFile.read(named);
        if (Files.exists(to)) {
            throw new InputProblem(to + " is there already; choose another name");
        }
        String passphrase = passphrase("Passphrase for the backup: ");
        if (passphrase.length() < LEAST_PASSPHRASE) {
            throw new InputProblem("the passphrase has " + passphrase.length() + " characters; use at least "
                    + LEAST_PASSPHRASE + ", such as five words drawn by dice");
        }
        byte[] text = KeyFile.text(key, Clock.systemUTC().instant()).getBytes(StandardCharsets.UTF_8);
        AtomicSave.save(to, AgeSeal.sealUnder(passphrase, text));
        root.remark("Keep " + to + " elsewhere, and the passphrase apart from it. Without the passphrase the backup is "
                + "worthless, with it anybody has the key.");
    }

    private void restore(Path backup, Path to) throws IOException {
        if (Files.exists(to)) {
            throw new InputProblem(to + " is there already; no key is ever written over");
        }
        byte[] sealed = Files.readAllBytes(backup);
        try {
            byte[] text = AgeSeal.openUnder(passphrase("Passphrase of the backup: "), sealed);
            ExaminerKey key = KeyFile.parse(backup.toString(), text);
            KeyFile.write(to, key, Clock.systemUTC().instant());
            root.surroundings().print(key.publicKey() + "\n");
        } catch (SealException e) {
            throw new InputProblem(backup + " can't be opened: " + e.getMessage());
        }
    }

    /** Asked for without showing it on a terminal; else the first line that is piped in. */
    private String passphrase(String question) throws IOException {
        Environment surroundings = root.surroundings();
        if (surroundings.interactive() && System.console() != null) {
            return new String(System.console().readPassword(question));
        }
        String line = new BufferedReader(new InputStreamReader(surroundings.in(), StandardCharsets.UTF_8)).readLine();
        if (line == null) {
            throw new InputProblem("no passphrase was given; type it, or pipe it in as one line");
        }
        return line;
    }
}
