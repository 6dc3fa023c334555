// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import cablewright.lessons.course.LiveFigure;
import cablewright.lessons.exercise.Exercise;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.cable.Event;
import cablewright.simulator.cable.FarEnd;
import cablewright.simulator.cable.hardware.BridgedTap;
import cablewright.simulator.cable.hardware.Splitter;
import cablewright.simulator.line.CableType;
import cablewright.simulator.line.Catalogue;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the cable types that a file must bring along: those that the catalogue does not have just so. */
final class TypesUsed {

    private final Map<String, CableType> types = new LinkedHashMap<>();

    private TypesUsed() {}

    static List<CableType> of(Document document) {
        TypesUsed used = new TypesUsed();
        if (document instanceof Document.OfCable cable) {
            used.add(cable.cable());
        } else if (document instanceof Document.OfExercise exercise) {
            used.add(exercise.exercise().cable());
        } else if (document instanceof Document.OfLesson lesson) {
            lesson.lesson().exercises().stream().map(Exercise::cable).forEach(used::add);
            lesson.lesson().figures().stream().map(LiveFigure::cable).forEach(used::add);
        } else if (document instanceof Document.OfExaminersPart part) {
            part.part().lesson().exercises().stream().map(Exercise::cable).forEach(used::add);
        }
        return used.types.values().stream()
                .filter(type -> !Catalogue.standard().find(type.id()).equals(Optional.of(type)))
                .toList();
    }

    private void add(Cable cable) {
        cable.testLead().ifPresent(lead -> add(lead.type()));
        cable.runs().forEach(run -> add(run.type()));
        if (cable.farEnd() instanceof FarEnd.Endless endless) {
            add(endless.type());
        }
        for (Event event : cable.events()) {
            if (event instanceof BridgedTap tap) {
                add(tap.branch());
            } else if (event instanceof Splitter splitter) {
                add(splitter.leg());
            }
        }
    }

    private void add(CableType type) {
        CableType before = types.putIfAbsent(type.id(), type);
        if (before != null && !before.equals(type)) {
            throw new IllegalArgumentException("two different cable types have the id \"" + type.id()
                    + "\"; give each an id of its own before they go into one file");
        }
    }
}
