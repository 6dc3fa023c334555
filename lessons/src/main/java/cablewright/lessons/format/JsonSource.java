// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.format;

import cablewright.lessons.format.codec.FormatProblem;
import cablewright.lessons.format.codec.Shown;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Turns bytes into a JSON tree, within bounds that keep a bad file from filling the memory. */
final class JsonSource {

    private static final int MOST_NESTING = 64;
    private static final int MOST_STRING = 20_000;
    private static final int MOST_NAME = 200;
    private static final int MOST_DIGITS = 400;
    private static final long MOST_TOKENS = 2_000_000;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final JsonMapper mapper = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(MOST_NESTING)
                            .maxStringLength(MOST_STRING)
                            .maxNameLength(MOST_NAME)
                            .maxNumberLength(MOST_DIGITS)
                            .maxTokenCount(MOST_TOKENS)
                            .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    JsonNode tree(String file, byte[] bytes) throws LessonFormatException {
        String text = text(file, bytes);
        if (text.isBlank()) {
            throw problem(file, "is empty", "choose a file of ours, which begins with a brace");
        }
        try {
            return mapper.readTree(text);
        } catch (JsonEOFException e) {
            throw cutOff(file, e);
        } catch (StreamConstraintsException e) {
            throw problem(
                    file,
                    "is not like any file of ours: " + Shown.text(firstSentence(e)),
                    "nesting may go " + MOST_NESTING + " deep, a text may have " + MOST_STRING + " characters, a file "
                            + MOST_TOKENS + " values");
        } catch (JsonProcessingException e) {
            if (firstSentence(e).startsWith("Unexpected end-of-input")) {
                throw cutOff(file, e);
            }
            throw problem(file, "is not sound JSON at " + place(e) + ": " + plain(e), "mend it there");
        }
    }

    private static LessonFormatException cutOff(String file, JsonProcessingException e) {
        return problem(
                file, "ends in the middle, at " + place(e), "it may have been cut off on its way: fetch it again");
    }

    private static String text(String file, byte[] bytes) throws LessonFormatException {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw problem(file, "is not text in UTF-8", "save it as UTF-8, or choose a file of ours");
        }
    }

    private static String place(JsonProcessingException e) {
        JsonLocation location = e.getLocation();
        return location == null
                ? "an unknown place"
                : "line " + location.getLineNr() + ", column " + location.getColumnNr();
    }

    private static String plain(JsonProcessingException e) {
        String message = firstSentence(e);
        if (message.startsWith("Non-standard token")) {
            return "NaN and infinity are no numbers of JSON";
        }
        return Shown.text(message);
    }

    private static String firstSentence(JsonProcessingException e) {
        String message = e.getOriginalMessage();
        int end = message.indexOf('\n');
        return end < 0 ? message : message.substring(0, end);
    }

    static LessonFormatException problem(String file, String fault, String remedy) {
        return new LessonFormatException(file, List.of(new FormatProblem("", "this file " + fault, remedy)));
    }
}
