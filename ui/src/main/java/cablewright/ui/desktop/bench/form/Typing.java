// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.form;

import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.StringProperty;

/** What a field of text shows and takes. */
public interface Typing {

    /**
     * What stands in the field.
     *
     * @return the property
     */
    StringProperty textProperty();

    /**
     * Why what stands there can't be taken.
     *
     * @return the property; empty where it was taken
     */
    ReadOnlyStringProperty problemProperty();

    /** Ends the visit to the field. */
    void leave();

    /**
     * Takes the last step back.
     *
     * @return false where the field is to do that by itself
     */
    boolean undo();

    /**
     * Does the last step again.
     *
     * @return false where the field is to do that by itself
     */
    boolean redo();
}
