// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format.codec;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Function;

/** A value that may be left out. */
final class OptionalCodec implements Codec {

    private final Codec value;
    private final Object empty;
    private final Function<Object, Object> wrap;
    private final Function<Object, Object> unwrap;

    private OptionalCodec(Codec value, Object empty, Function<Object, Object> wrap, Function<Object, Object> unwrap) {
        this.value = value;
        this.empty = empty;
        this.wrap = wrap;
        this.unwrap = unwrap;
    }

    static OptionalCodec of(Codec value) {
        return new OptionalCodec(value, Optional.empty(), Optional::of, held -> ((Optional<?>) held).orElseThrow());
    }

    static OptionalCodec ofDouble() {
        return new OptionalCodec(
                Scalars.DOUBLE,
                OptionalDouble.empty(),
                held -> OptionalDouble.of((Double) held),
                held -> ((OptionalDouble) held).orElseThrow());
    }

    static OptionalCodec ofLong() {
        return new OptionalCodec(
                Scalars.LONG, OptionalLong.empty(), held -> OptionalLong.of((Long) held), held -> ((OptionalLong) held)
                        .orElseThrow());
    }

    Codec value() {
        return value;
    }

    @Override
    public Optional<Object> read(JsonNode node, At at, ReadingState reading) {
        return value.read(node, at, reading).map(wrap);
    }

    @Override
    public void write(Object held, JsonGenerator out) throws IOException {
        value.write(unwrap.apply(held), out);
    }

    @Override
    public Optional<Object> absent() {
        return Optional.of(empty);
    }
}
