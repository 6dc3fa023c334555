package cablewright.ui.commandline;

/** Whoever read the program's output has stopped: there is nothing more to do, and nothing wrong. */
final class ReaderGone extends RuntimeException {

    private static final long serialVersionUID = 1L;
}
