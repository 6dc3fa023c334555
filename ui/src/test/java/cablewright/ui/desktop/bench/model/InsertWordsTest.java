// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.desktop.bench.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import cablewright.lessons.bench.edit.Insertable;
import cablewright.lessons.text.Texts;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import cablewright.ui.desktop.bench.BenchView;
import cablewright.ui.words.LengthUnit;
import cablewright.ui.words.Words;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class InsertWordsTest {

    private final InsertWords words =
            new InsertWords(Words.in(LengthUnit.METRES, Locale.ROOT), new Texts(BenchView.BUNDLE, Locale.ROOT));

    @Test
    void everyThingHasANameAndALetterOfItsOwn() {
        List<Insertable> all = Arrays.asList(Insertable.values());
        for (CableType type : Catalogue.standard().types()) {
            List<Insertable> here = Insertable.on(type);
            assertEquals(
                    here.size(), new HashSet<>(here.stream().map(words::letter).toList()).size(), type.id());
        }
        assertEquals(all.size(), new HashSet<>(all.stream().map(words::name).toList()).size());
    }
}
