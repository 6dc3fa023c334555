// SPDX-License-Identifier: Apache-2.0
package cablewright.lessons.fuzz;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Changes a sound file as a stranger might: numbers, texts and signs are replaced, left out, doubled and moved, so that what
 * comes out is often nearly sound; then, now and then, bytes are spoilt as well.
 */
final class TokenMutator {

    private static final Pattern TOKEN =
            Pattern.compile("\"(?:[^\"\\\\\n]++|\\\\.)*+\"|[-+0-9.eE]+|\\w+|\\s+|.", Pattern.DOTALL);
    private static final List<String> ODD = List.of(
            "0",
            "-0",
            "-1",
            "1",
            "2",
            "1e308",
            "-1e308",
            "1e309",
            "1e-308",
            "5e-324",
            "1e-300",
            "NaN",
            "Infinity",
            "-Infinity",
            "2147483648",
            "-2147483649",
            "9223372036854775808",
            "99999999999999999999",
            "0x10",
            "1_000",
            "1.5e",
            "١٢",
            "null",
            "true",
            "false",
            "\"\"",
            "\" \"",
            "\"\\u0000\"",
            "\"\\u001b[2J\"",
            "\"\\ud800\"",
            "\"../../etc/passwd\"",
            "{}",
            "[]",
            "[[[[[[[[",
            "{\"a\":",
            ",",
            ":",
            "]",
            "}",
            "\n",
            "\r",
            "\u001b[2J",
            "\u202e",
            "\u0000",
            "#",
            "!",
            "[Version] 2.0",
            "[Reference] 1e308",
            "[Network Data]",
            "[Mixed-Mode Order] D1,2 C1,2",
            "# HZ S RI R 1e308",
            "# GHZ Z DB R 0 0");
    private static final int MOST_BYTES = 60_000;

    private final SplittableRandom random;

    TokenMutator(long seed) {
        this.random = new SplittableRandom(seed);
    }

    byte[] changed(byte[] sound) {
        List<String> tokens = tokens(new String(sound, StandardCharsets.UTF_8));
        int changes = 1 + random.nextInt(random.nextInt(8) == 0 ? 20 : 3);
        for (int i = 0; i < changes; i++) {
            change(tokens);
        }
        byte[] bytes = bytes(tokens);
        return random.nextInt(6) == 0 ? spoilt(bytes) : bytes;
    }

    private static List<String> tokens(String text) {
        List<String> tokens = new ArrayList<>();
        Matcher matcher = TOKEN.matcher(text);
        while (matcher.find()) {
            tokens.add(matcher.group());
        }
        return tokens;
    }

    private void change(List<String> tokens) {
        if (tokens.isEmpty()) {
            tokens.add(pick(ODD));
            return;
        }
        int at = random.nextInt(tokens.size());
        int end = Math.min(tokens.size(), at + 1 + random.nextInt(random.nextInt(4) == 0 ? 60 : 3));
        switch (random.nextInt(8)) {
            case 0, 1 -> tokens.set(at, pick(ODD));
            case 2 -> tokens.set(at, pick(tokens));
            case 3 -> tokens.subList(at, end).clear();
            case 4 -> tokens.addAll(at, List.copyOf(tokens.subList(at, end)));
            case 5 -> tokens.add(at, pick(ODD));
            case 6 -> replaceNumber(tokens, at);
            default -> move(tokens, at, end);
        }
    }

    /** The next number, since odd numbers find more than odd signs. */
    private void replaceNumber(List<String> tokens, int from) {
        for (int i = from; i < tokens.size(); i++) {
            if (tokens.get(i).matches("-?\\d.*")) {
                double value = Math.scalb(random.nextDouble() - 0.5, random.nextInt(-60, 60));
                tokens.set(
                        i, random.nextBoolean() ? Double.toString(value) : Integer.toString(random.nextInt(-9, 2000)));
                return;
            }
        }
    }

    private void move(List<String> tokens, int at, int end) {
        List<String> moved = List.copyOf(tokens.subList(at, end));
        tokens.subList(at, end).clear();
        tokens.addAll(random.nextInt(tokens.size() + 1), moved);
    }

    private String pick(List<String> all) {
        return all.get(random.nextInt(all.size()));
    }

    private static byte[] bytes(List<String> tokens) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        for (String token : tokens) {
            if (out.size() > MOST_BYTES) {
                break;
            }
            out.writeBytes(token.getBytes(StandardCharsets.UTF_8));
        }
        return out.toByteArray();
    }

    private byte[] spoilt(byte[] bytes) {
        if (bytes.length == 0 || random.nextInt(3) == 0) {
            return Arrays.copyOf(bytes, bytes.length == 0 ? 1 : random.nextInt(bytes.length));
        }
        for (int i = random.nextInt(1, 5); i > 0; i--) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }
}
