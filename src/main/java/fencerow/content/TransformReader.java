package fencerow.content;

import fencerow.explainers.Affine;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a {@code transform}: translate, rotate, and scale alike in both directions, so that lines keep their width. */
final class TransformReader {
    private static final Pattern ONE = Pattern.compile("\\s*([a-zA-Z]+)\\s*\\(([^()]*)\\)\\s*,?");

    private TransformReader() {}

    /** @throws IllegalArgumentException if it is not a list of these */
    static Affine read(String text) {
        Affine all = Affine.NONE;
        Matcher matcher = ONE.matcher(text);
        int at = 0;
        while (at < text.length()) {
            if (!matcher.find(at) || matcher.start() != at) {
                throw new IllegalArgumentException("[" + text.substring(at) + "] is no transform; "
                        + "write it like translate(10 20) rotate(15) scale(2)");
            }
            all = all.after(one(matcher.group(1), numbers(matcher.group(2))));
            at = matcher.end();
        }
        return all;
    }

    private static Affine one(String name, List<Double> numbers) {
        String shape = name + "/" + numbers.size();
        return switch (shape) {
            case "translate/1" -> Affine.translate(numbers.get(0), 0);
            case "translate/2" -> Affine.translate(numbers.get(0), numbers.get(1));
            case "rotate/1" -> Affine.rotate(numbers.get(0), 0, 0);
            case "rotate/3" -> Affine.rotate(numbers.get(0), numbers.get(1), numbers.get(2));
            case "scale/1" -> scale(numbers.get(0), numbers.get(0));
            case "scale/2" -> scale(numbers.get(0), numbers.get(1));
            default -> throw new IllegalArgumentException("[" + name + "] with " + numbers.size()
                    + " numbers is not read; use translate(x y), rotate(degrees), rotate(degrees x y) or scale(n)");
        };
    }

    private static Affine scale(double x, double y) {
        if (x == 0 || Math.abs(x) != Math.abs(y)) {
            throw new IllegalArgumentException("scale(" + x + " " + y + ") changes width and height differently; "
                    + "use one number other than 0, or the same with another sign to mirror");
        }
        return Affine.scale(x, y);
    }

    private static List<Double> numbers(String text) {
        List<Double> numbers = new ArrayList<>();
        NumberScanner scanner = new NumberScanner(text);
        while (!scanner.atEnd()) {
            numbers.add(scanner.number());
        }
        return numbers;
    }
}
