// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.exam;

import cablewright.lessons.exam.seal.ExaminerKey;
import cablewright.lessons.exam.seal.KeyFile;
import cablewright.lessons.exam.seal.SealException;
import cablewright.lessons.text.Texts;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.ExitCode;
import cablewright.ui.commandline.environment.InputProblem;
import cablewright.ui.commandline.option.RootCommand;
import cablewright.ui.print.KeyPaper;
import cablewright.ui.print.PaperSize;
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
@Command(name = "keys", mixinStandardHelpOptions = true)
public final class KeysCommand implements Callable<Integer> {

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
        RESTORE,
        /** Writes it as a PDF to print. */
        PAPER
    }

    @Parameters(index = "0", paramLabel = "new|show|backup|restore|paper", descriptionKey = "parameter.action")
    private Action action;

    @Parameters(index = "1", paramLabel = "FILE", descriptionKey = "parameter.file")
    private Path file;

    @Parameters(index = "2", arity = "0..1", paramLabel = "TARGET", descriptionKey = "parameter.target")
    private Path target;

    @Option(names = "--secret")
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
                case PAPER -> paper(named, target());
            }
        } catch (FileAlreadyExistsException e) {
            throw new InputProblem(texts().say("keys.exists", e.getFile()));
        } catch (IOException e) {
            throw new InputProblem(e.getMessage());
        }
        return ExitCode.DONE;
    }

    private Texts texts() {
        return ExamTexts.of(root);
    }

    private Path target() {
        if (target == null) {
            throw new InputProblem(texts().say("keys.noTarget"));
        }
        return root.surroundings().folder().resolve(target);
    }

    private void make(Path named) throws IOException {
        ExaminerKey key = ExaminerKey.make();
        KeyFile.write(named, key, Clock.systemUTC().instant());
        root.surroundings().print(key.publicKey() + "\n");
        root.remark(texts().say("keys.made", named));
    }

    private void show(ExaminerKey key) {
        root.surroundings().print(secret ? KeyFile.text(key, Clock.systemUTC().instant()) : key.publicKey() + "\n");
    }

    private void backup(Path named, Path to) throws IOException {
        ExaminerKey key = KeyFile.read(named);
        if (Files.exists(to)) {
            throw new InputProblem(texts().say("keys.there", to));
        }
        String passphrase = passphrase(texts().say("keys.ask.new"));
        if (passphrase.length() < KeyFile.LEAST_PASSPHRASE) {
            throw new InputProblem(texts().say("keys.short", passphrase.length(), KeyFile.LEAST_PASSPHRASE));
        }
        KeyFile.backUp(to, key, passphrase, Clock.systemUTC().instant());
        root.remark(texts().say("keys.backedUp", to));
    }

    private void restore(Path backup, Path to) throws IOException {
        if (Files.exists(to)) {
            throw new InputProblem(texts().say("keys.exists", to));
        }
        try {
            ExaminerKey key = KeyFile.openBackup(backup, passphrase(texts().say("keys.ask")));
            KeyFile.write(to, key, Clock.systemUTC().instant());
            root.surroundings().print(key.publicKey() + "\n");
        } catch (SealException e) {
            throw new InputProblem(texts().say("keys.cantOpen", backup, e.getMessage()));
        }
    }

    private void paper(Path named, Path to) throws IOException {
        ExaminerKey key = KeyFile.read(named);
        KeyPaper paper = new KeyPaper(key, Clock.systemUTC().instant(), PaperSize.A4, root.words());
        KeyFile.writePrivate(to, paper.pages().pdf());
        root.remark(texts().say("keys.paper", to));
    }

    /** Asked for without showing it on a terminal; else the first line that is piped in. */
    private String passphrase(String question) throws IOException {
        Environment surroundings = root.surroundings();
        if (surroundings.interactive() && System.console() != null) {
            return new String(System.console().readPassword(question));
        }
        String line = new BufferedReader(new InputStreamReader(surroundings.in(), StandardCharsets.UTF_8)).readLine();
        if (line == null) {
            throw new InputProblem(texts().say("keys.noPassphrase"));
        }
        return line;
    }
}
