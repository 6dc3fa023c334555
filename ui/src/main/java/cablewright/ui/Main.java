package cablewright.ui;

import cablewright.ui.desktop.Desktop;

/**
 * Where the program starts.
 *
 * <p>Not itself a JavaFX application: Java refuses to start one of those from a plain jar.
 */
public final class Main {
    private static final int EXIT_INPUT_WRONG = 1;

    private Main() {}

    /**
     * Opens the desktop. Ends with exit code 1, after saying why, where no window can be opened.
     *
     * @param arguments what was typed after the program's name
     */
    public static void main(String[] arguments) {
        try {
            Desktop.open(arguments);
        } catch (UnsupportedOperationException noWindow) {
            System.err.println("cablewright: the desktop can't open a window here: " + noWindow.getMessage());
            System.err.println("Start it where there is a display. On Debian, 'sh .setup/install-packages.sh run'"
                    + " brings the packages it needs.");
            System.exit(EXIT_INPUT_WRONG);
        }
    }
}
