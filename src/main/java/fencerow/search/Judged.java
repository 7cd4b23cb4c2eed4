package fencerow.search;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A query with the hits someone judged right for it.
 *
 * @param text     the query
 * @param language of the session
 * @param grades   3 the very thing, 2 answers it well, 1 has to do with it; by {@code kind/id}, or by an id alone
 *                 where any kind will do
 */
public record Judged(String text, String language, Map<String, Integer> grades) {
    private static final int HIGHEST = 3;

    /** Copies the grades. */
    public Judged {
        grades = Map.copyOf(grades);
    }

    /**
     * Reads lines of the form {@code query<TAB>language<TAB>id:grade,id:grade}. Empty lines and lines that begin with
     * {@code #} are passed over.
     *
     * @param file  its name, for errors
     * @param lines of the file
     * @throws IllegalArgumentException if a line has another form
     */
    public static List<Judged> read(String file, List<String> lines) {
        List<Judged> all = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (!line.isBlank() && !line.startsWith("#")) {
                all.add(read(line, file + ":" + (i + 1)));
            }
        }
        return all;
    }

    private static Judged read(String line, String where) {
        String[] fields = line.split("\t", -1);
        if (fields.length != 3 || fields[0].isBlank() || fields[1].isBlank()) {
            throw new IllegalArgumentException(where + ": " + fields.length
                    + " fields; write query, language and id:grade,... with a tab between");
        }
        Map<String, Integer> grades = new LinkedHashMap<>();
        for (String judgment : fields[2].split(",", -1)) {
            int colon = judgment.lastIndexOf(':');
            String grade = judgment.substring(colon + 1).strip();
            if (colon < 1 || !grade.matches("[0-" + HIGHEST + "]")) {
                throw new IllegalArgumentException(
                        where + ": [" + judgment + "] is no judgment; write id:grade, the grade 0 to " + HIGHEST);
            }
            grades.put(judgment.substring(0, colon).strip(), Integer.valueOf(grade));
        }
        return new Judged(fields[0].strip(), fields[1].strip(), grades);
    }
}
