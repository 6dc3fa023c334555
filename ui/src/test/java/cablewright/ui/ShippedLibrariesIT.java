// SPDX-License-Identifier: Apache-2.0
package cablewright.ui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What lies beside the packaged program is what its bytecode, and that of what it uses, refers to. */
class ShippedLibrariesIT {

    private static final Path PROGRAM = Path.of("target", "cablewright.jar");

    /** Loaded by name: the screen in memory by JavaFX, for the property {@code glass.platform=Monocle}. */
    private static final Set<String> BY_NAME = Set.of("openjfx-monocle");

    /** What a jar holds and what it asks for. */
    private record Contents(Set<String> classes, Set<String> wanted, Set<String> services) {}

    @Test
    void noLibraryIsShippedThatNobodyUses() throws IOException {
        Map<String, Contents> jars = new HashMap<>();
        for (Path jar : jars()) {
            jars.put(jar.getFileName().toString(), contents(jar));
        }
        assertTrue(jars.size() > 10, "the program is packaged: " + jars.keySet());
        Set<String> used = new HashSet<>();
        Deque<String> open = new ArrayDeque<>(List.of(PROGRAM.getFileName().toString()));
        while (!open.isEmpty()) {
            String jar = open.remove();
            if (used.add(jar)) {
                Contents user = jars.get(jar);
                jars.forEach((name, other) -> {
                    if (isUsed(user, other)) {
                        open.add(name);
                    }
                });
            }
        }
        Set<String> unused = new TreeSet<>(jars.keySet());
        unused.removeAll(used);
        unused.removeIf(name -> BY_NAME.stream().anyMatch(name::startsWith));
        assertEquals(Set.of(), unused);
    }

    private static boolean isUsed(Contents user, Contents other) {
        return user.wanted().stream().anyMatch(other.classes()::contains)
                || other.services().stream()
                        .anyMatch(service -> user.classes().contains(service)
                                || user.wanted().contains(service));
    }

    private static List<Path> jars() throws IOException {
        List<Path> all = new ArrayList<>(List.of(PROGRAM));
        try (Stream<Path> files = Files.list(Path.of("target", "lib"))) {
            files.filter(file -> file.toString().endsWith(".jar")).forEach(all::add);
        }
        return all;
    }

    private static Contents contents(Path path) throws IOException {
        Contents contents = new Contents(new HashSet<>(), new HashSet<>(), new HashSet<>());
        try (JarFile jar = new JarFile(path.toFile())) {
            for (JarEntry entry : jar.stream().toList()) {
                String name = entry.getName();
                if (name.startsWith("META-INF/services/")) {
                    contents.services()
                            .add(name.substring("META-INF/services/".length()).replace('.', '/'));
                } else if (name.endsWith(".class") && !name.endsWith("-info.class") && !name.startsWith("META-INF/")) {
                    contents.classes().add(name.substring(0, name.length() - ".class".length()));
                    byte[] bytes = jar.getInputStream(entry).readAllBytes();
                    contents.wanted().addAll(classesIn(bytes));
                }
            }
        }
        contents.wanted().removeAll(contents.classes());
        return contents;
    }

    /** The classes in the constant pool of a class (Java Virtual Machine Specification, Java SE 17, section 4.4). */
    private static Set<String> classesIn(byte[] bytes) throws IOException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
        in.skipNBytes(8);
        int count = in.readUnsignedShort();
        String[] texts = new String[count];
        List<Integer> named = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            int tag = in.readUnsignedByte();
            switch (tag) {
                case 1 -> texts[i] = in.readUTF();
                case 7 -> named.add(in.readUnsignedShort());
                case 8, 16, 19, 20 -> in.skipNBytes(2);
                case 15 -> in.skipNBytes(3);
                case 5, 6 -> {
                    in.skipNBytes(8);
                    i++;
                }
                default -> in.skipNBytes(4);
            }
        }
        Set<String> classes = new HashSet<>();
        named.forEach(place -> classes.add(texts[place].replaceAll("^\\[+L|;$", "")));
        return classes;
    }
}
