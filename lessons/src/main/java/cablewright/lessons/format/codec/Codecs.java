// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import cablewright.lessons.exam.paper.ExamAnswers;
import cablewright.lessons.exam.paper.ExaminersPart;
import cablewright.lessons.exam.paper.SealedPaper;
import cablewright.lessons.exercise.AttemptSheet;
import cablewright.lessons.exercise.Exercise;
import cablewright.lessons.exercise.Lesson;
import cablewright.lessons.exercise.draft.UnfinishedWork;
import cablewright.simulator.cable.Cable;
import cablewright.simulator.check.Lines;
import cablewright.simulator.line.CableType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** Finds the codec of each type, once for all that files can hold. */
public final class Codecs {

    private final Map<Class<?>, RecordCodec> records = new HashMap<>();
    private final Map<Class<?>, VariantCodec> families = new HashMap<>();
    private final Map<Class<?>, List<Variant>> words = KindWords.families();

    /** Makes the codecs. */
    public Codecs() {
        ofRecord(CableType.class);
        ofRecord(Cable.class);
        ofRecord(Exercise.class);
        ofRecord(Lesson.class);
        ofRecord(AttemptSheet.class);
        ofRecord(SealedPaper.class);
        ofRecord(ExaminersPart.class);
        ofRecord(ExamAnswers.class);
        ofRecord(UnfinishedWork.class);
    }

    /** Returns the codec of the content of a kind of file. */
    public Codec content(Class<?> type) {
        return ofClass(type);
    }

    /** Returns the codec of the cable types that a file brings along. */
    public Codec types() {
        return new ListCodec(ofRecord(CableType.class));
    }

    RecordCodec ofRecord(Class<?> type) {
        RecordCodec known = records.get(type);
        if (known != null) {
            return known;
        }
        RecordCodec codec = new RecordCodec(type);
        records.put(type, codec);
        codec.resolve(this);
        return codec;
    }

    VariantCodec ofFamily(Class<?> family) {
        VariantCodec known = families.get(family);
        if (known != null) {
            return known;
        }
        VariantCodec codec = new VariantCodec();
        families.put(family, codec);
        codec.resolve(words.get(family), this);
        return codec;
    }

    Codec of(RecordComponent component) {
        return component.isAnnotationPresent(Lines.class) ? new LinesCodec() : of(component.getGenericType());
    }

    private Codec of(Type type) {
        if (type instanceof ParameterizedType generic) {
            Codec inner = of(generic.getActualTypeArguments()[0]);
            return generic.getRawType() == Optional.class ? OptionalCodec.of(inner) : new ListCodec(inner);
        }
        return ofClass((Class<?>) type);
    }

    private Codec ofClass(Class<?> type) {
        if (type == CableType.class) {
            return new CableTypeCodec();
        }
        if (type == Cable.class) {
            return new CableCodec(ofRecord(type));
        }
        if (type == OptionalDouble.class) {
            return OptionalCodec.ofDouble();
        }
        if (type == OptionalLong.class) {
            return OptionalCodec.ofLong();
        }
        if (words.containsKey(type)) {
            return ofFamily(type);
        }
        if (type.isRecord()) {
            return ofRecord(type);
        }
        return type.isEnum() ? new EnumCodec(type) : scalar(type);
    }

    private static Codec scalar(Class<?> type) {
        Map<Class<?>, Codec> scalars = Map.of(
                double.class, Scalars.DOUBLE,
                Double.class, Scalars.DOUBLE,
                int.class, Scalars.INT,
                Integer.class, Scalars.INT,
                long.class, Scalars.LONG,
                boolean.class, Scalars.BOOLEAN,
                String.class, Scalars.STRING,
                Instant.class, Scalars.INSTANT);
        Codec codec = scalars.get(type);
        if (codec == null) {
            throw new IllegalStateException("no codec is known for " + type);
        }
        return codec;
    }
}
