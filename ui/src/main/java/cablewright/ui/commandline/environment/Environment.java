// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.environment;

import cablewright.lessons.file.AtomicSave;
import cablewright.lessons.text.Texts;
import cablewright.simulator.check.VisibleText;
import cablewright.ui.drawing.text.TerminalStyle;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where the program runs: its three streams, whether people sit at them, the environment and the working folder. Commands
 * know the outer world through this alone, so that tests can give them another one.
 *
 * @param in what people type, or what is piped in
 * @param out where data go, as bytes
 * @param err where remarks go
 * @param interactive whether in and out are both a terminal
 * @param environment environment variables
 * @param folder working folder
 */
public record Environment(
        InputStream in,
        OutputStream out,
        PrintStream err,
        boolean interactive,
        Map<String, String> environment,
        Path folder) {

    /** The bundle of the command line's own sentences. */
    public static final String MESSAGES = "cablewright.ui.commandline.commandline";

    /**
     * Returns the surroundings of this process.
     *
     * @return real streams, real environment
     */
    public static Environment ofProcess() {
        return new Environment(
                new FileInputStream(FileDescriptor.in),
                new FileOutputStream(FileDescriptor.out),
                new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8),
                System.console() != null,
                System.getenv(),
                Path.of(""));
    }

    /**
     * Returns what may be written for people: Unicode where the locale says so, colours only on a terminal that did not
     * ask to be spared them (the NO_COLOR convention).
     *
     * @return the style
     */
    public TerminalStyle style() {
        return new TerminalStyle(showsUnicode(), showsColour());
    }

    /**
     * Returns the language of messages: that of LC_ALL, LC_MESSAGES or LANG (POSIX.1-2017, chapter 8.2), English for the
     * POSIX locale, and where none of them is set, as on Windows, that of the system.
     *
     * @return the language
     */
    public Locale locale() {
        Optional<String> named = firstSet("LC_ALL", "LC_MESSAGES", "LANG");
        if (named.isEmpty()) {
            return Locale.getDefault(Locale.Category.DISPLAY);
        }
        String tag = named.get().replaceAll("[.@].*", "").replace('_', '-');
        return tag.equals("C") || tag.equals("POSIX") ? Locale.ROOT : Locale.forLanguageTag(tag);
    }

    /**
     * Makes a sentence in the language of messages.
     *
     * @param key its key in the command line's bundle
     * @param arguments what its places take
     * @return the sentence
     */
    public String say(String key, Object... arguments) {
        return new Texts(MESSAGES, locale()).say(key, arguments);
    }

    private Optional<String> firstSet(String... names) {
        return Stream.of(names)
                .map(name -> environment.getOrDefault(name, ""))
                .filter(value -> !value.isBlank())
                .findFirst();
    }

    private boolean showsUnicode() {
        String lower = firstSet("LC_ALL", "LC_CTYPE", "LANG").orElse("").toLowerCase(Locale.ROOT);
        return lower.contains("utf-8") || lower.contains("utf8") || environment.containsKey("WT_SESSION");
    }

    private boolean showsColour() {
        boolean spared = !environment.getOrDefault("NO_COLOR", "").isEmpty()
                || environment.getOrDefault("TERM", "").equals("dumb");
        return interactive && !spared;
    }

    /**
     * Writes data to standard output.
     *
     * @param bytes the data
     * @throws InputProblem if they can't be written
     * @throws ReaderGone if nobody reads any more
     */
    public void writeOut(byte[] bytes) {
        writeOut(to -> to.write(bytes));
    }

    /**
     * Writes data to standard output that need not fit into memory.
     *
     * @param contents the data
     * @throws InputProblem if they can't be written
     * @throws ReaderGone if nobody reads any more
     */
    public void writeOut(AtomicSave.Contents contents) {
        try {
            OutputStream buffered = new BufferedOutputStream(out);
            contents.writeTo(buffered);
            buffered.flush();
            out.flush();
        } catch (IOException e) {
            throw outputLost(e);
        }
    }

    /**
     * Says why standard output can't be written.
     *
     * @param e what the system said
     * @return what to throw
     */
    public static RuntimeException outputLost(IOException e) {
        String message = String.valueOf(e.getMessage());
        boolean pipe = message.contains("Broken pipe") || message.contains("pipe is being closed");
        return pipe ? new ReaderGone() : InputProblem.of("output.lost", message);
    }

    /**
     * Writes text for people to standard output.
     *
     * @param text the text; signs that the terminal can't show are spelt out
     */
    public void print(String text) {
        writeOut(style().plain(text).getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Returns where files go that nobody asked for.
     *
     * @return what TMPDIR names, or else the usual folder of this system
     */
    public Path temporaryFolder() {
        String named = environment.getOrDefault("TMPDIR", "");
        return Path.of(named.isEmpty() ? System.getProperty("java.io.tmpdir") : named);
    }

    /**
     * Writes a remark to standard error, on one line whatever names and values it quotes.
     *
     * @param text the remark
     */
    public void remark(String text) {
        err.println(style().plain(VisibleText.line(text)));
    }
}
