package fencerow.content;

import fencerow.explainers.Picture;
import fencerow.explainers.Pictures;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads the drawings and sees that each has a topic or job to stand beside, and that their parts lead to topics. */
final class PictureReader {
    private static final String FOLDER = "pictures/";
    private static final String ENDING = ".svg";
    private static final List<String> TRACTORS =
            Arrays.stream(Pictures.Side.values()).map(Pictures.Side::pictureName).toList();

    private final Sources sources;
    private final Ids ids;
    private final Problems problems;

    PictureReader(Sources sources, Ids ids, Problems problems) {
        this.sources = sources;
        this.ids = ids;
        this.problems = problems;
    }

    /** Takes the names of all drawings into use. */
    void declare() {
        for (String file : files()) {
            ids.declare(Kind.PICTURE, nameOf(file), placeOf(file));
        }
    }

    /** Reads all drawings; topics have to be declared by now. */
    Pictures read() {
        Map<String, Picture> pictures = new TreeMap<>();
        DrawingReader reader = new DrawingReader(problems);
        for (String file : files()) {
            String name = nameOf(file);
            checkName(name, placeOf(file));
            Optional<DrawingReader.Read> read = sources.drawing(file).flatMap(reader::read);
            read.ifPresent(found -> {
                found.parts().forEach((part, place) -> ids.require(part, place, Kind.TOPIC));
                pictures.put(name, new Picture(name, found.drawing()));
            });
        }
        return new Pictures(pictures);
    }

    private List<String> files() {
        return sources.contentNames(FOLDER, "", ENDING);
    }

    private Place placeOf(String file) {
        return new Place(sources.contentName(file), 1);
    }

    private static String nameOf(String file) {
        return file.substring(FOLDER.length(), file.length() - ENDING.length());
    }

    private void checkName(String name, Place place) {
        if (TRACTORS.contains(name)) {
            return;
        }
        if (name.startsWith(Pictures.JOB)) {
            ids.require(name.substring(Pictures.JOB.length()), place, Kind.JOB);
            return;
        }
        boolean without = name.endsWith(Pictures.WITHOUT);
        String topic = without ? name.substring(0, name.length() - Pictures.WITHOUT.length()) : name;
        if (!ids.knows(Kind.TOPIC, topic)) {
            problems.error(place, "there is no explainer [" + topic + "] for this drawing to stand beside",
                    Nearest.advice(topic, ids.all(Kind.TOPIC), "name the file after a topic, after a topic and "
                            + Pictures.WITHOUT + ", after " + Pictures.JOB + " and a job, or one of " + TRACTORS));
        } else if (without && ids.find(Kind.PICTURE, topic).isEmpty()) {
            problems.error(place, "there is no drawing [" + topic + "] for this one to stand beside",
                    "draw " + topic + ENDING + ", or rename this one");
        }
    }
}
