// SPDX-License-Identifier: Apache-2.0
package cablewright.ui.commandline.practice;

import cablewright.lessons.classbook.AttemptRecord;
import cablewright.lessons.classbook.ClassRecords;
import cablewright.lessons.classbook.TraineeLog;
import cablewright.lessons.file.FileFault;
import cablewright.ui.commandline.environment.Environment;
import cablewright.ui.commandline.environment.InputProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Where attempts of the terminal are kept: in a log that was named, or for a trainee who gave a name in the records that the
 * desktop keeps too; else nowhere.
 */
final class TerminalRecords {

    private final Environment surroundings;
    private final Optional<TraineeLog> log;
    private final Optional<ClassRecords> shared;

    TerminalRecords(Environment surroundings, Optional<Path> log, boolean isNamed) {
        this.surroundings = surroundings;
        this.log = log.map(file -> new TraineeLog(surroundings.folder().resolve(file)));
        this.shared = isNamed && log.isEmpty()
                ? Optional.of(ClassRecords.ofThisUser(surroundings.environment()))
                : Optional.empty();
    }

    /** One sentence that says where attempts go. */
    String note() {
        if (log.isPresent()) {
            return surroundings.say("practise.toLog");
        }
        return surroundings.say(shared.isPresent() ? "practise.toRecords" : "practise.toNothing");
    }

    List<AttemptRecord> read() {
        if (log.isPresent()) {
            try {
                TraineeLog.Contents contents = log.get().read();
                contents.faults().forEach(this::remark);
                return contents.records();
            } catch (IOException e) {
                throw InputProblem.of("practise.logUnreadable", e.getMessage());
            }
        }
        return shared.map(ClassRecords::read)
                .map(contents -> {
                    contents.faults().forEach(this::remark);
                    return contents.records();
                })
                .orElse(List.of());
    }

    private void remark(String fault) {
        surroundings.remark("cablewright: " + fault);
    }

    /** Keeps a record; where it can't be kept, that is said, and practice goes on with its marks. */
    void append(AttemptRecord record) {
        try {
            if (log.isPresent()) {
                log.get().append(record);
            } else if (shared.isPresent()) {
                shared.get().append(record);
            }
        } catch (IOException e) {
            remark(surroundings.say("practise.notKept", FileFault.sentence(e)));
        }
    }
}
