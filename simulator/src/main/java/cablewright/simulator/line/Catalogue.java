// SPDX-License-Identifier: Apache-2.0
package cablewright.simulator.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The cable types to choose from, by id. Immutable; adding a type gives a new catalogue. */
public final class Catalogue {

    private static final Catalogue STANDARD = new Catalogue(standardTypes());
    private static final int NAMES_OFFERED = 3;

    private final Map<String, CableType> byId;

    private Catalogue(List<CableType> types) {
        Map<String, CableType> map = new LinkedHashMap<>();
        for (CableType type : types) {
            if (map.put(type.id(), type) != null) {
                throw new IllegalArgumentException(
                        "id \"" + type.id() + "\" is there twice; give each type its own id.");
            }
        }
        byId = map;
    }

    private static List<CableType> standardTypes() {
        List<CableType> all = new ArrayList<>();
        all.addAll(DropCoaxTypes.all());
        all.addAll(PlantCoaxTypes.all());
        all.addAll(SolidCoaxTypes.all());
        all.addAll(TelephonePairTypes.all());
        all.addAll(DataPairTypes.all());
        all.addAll(BuildingWireTypes.all());
        all.addAll(ReferenceTypes.all());
        return all;
    }

    /**
     * The types that come with the program.
     *
     * @return the catalogue
     */
    public static Catalogue standard() {
        return STANDARD;
    }

    /**
     * All types, in the order of the catalogue.
     *
     * @return the types, not to be changed
     */
    public List<CableType> types() {
        return List.copyOf(byId.values());
    }

    /**
     * Looks a type up.
     *
     * @param id its id
     * @return the type, or nothing
     */
    public Optional<CableType> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * Looks a type up that must be there.
     *
     * @param id its id
     * @return the type
     * @throws IllegalArgumentException if there is none; the message offers the nearest ids
     */
    public CableType type(String id) {
        return find(id).orElseThrow(() ->
                new IllegalArgumentException("No cable type has the id \"" + id + "\". Nearest: " + nearest(id) + "."));
    }

    /**
     * The catalogue with one more type.
     *
     * @param type a type with an id of its own
     * @return the larger catalogue
     * @throws IllegalArgumentException if the id is taken
     */
    public Catalogue with(CableType type) {
        List<CableType> all = new ArrayList<>(byId.values());
        all.add(type);
        return new Catalogue(all);
    }

    private String nearest(String id) {
        return byId.keySet().stream()
                .sorted(Comparator.comparingInt((String known) -> distance(id, known)))
                .limit(NAMES_OFFERED)
                .collect(Collectors.joining(", "));
    }

    /** Number of letters to insert, drop or change to get from one word to the other (Levenshtein). */
    private static int distance(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j < row.length; j++) {
                int change = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }
}
