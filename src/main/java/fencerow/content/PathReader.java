package fencerow.content;

import fencerow.explainers.Outline;
import java.util.Locale;

/** Reads path data: M L H V C S Q T A Z, in capitals with absolute and in small letters with relative numbers. */
final class PathReader {
    private final NumberScanner numbers;
    private final Pen pen = new Pen();
    private char last = ' ';
    // The last control point, which S and T mirror.
    private double controlX;
    private double controlY;

    private PathReader(String data) {
        this.numbers = new NumberScanner(data);
    }

    /** @throws IllegalArgumentException if the data are not a path */
    static Outline read(String data) {
        PathReader reader = new PathReader(data);
        while (!reader.numbers.atEnd()) {
            reader.readCommand();
        }
        if (reader.last == ' ') {
            throw new IllegalArgumentException("the path is empty; draw something or delete it");
        }
        return reader.pen.outline();
    }

    private void readCommand() {
        String at = numbers.rest();
        char command = numbers.take();
        char kind = String.valueOf(command).toUpperCase(Locale.ROOT).charAt(0);
        if ("MLHVCSQTAZ".indexOf(kind) < 0) {
            throw new IllegalArgumentException(
                    "[" + at + "] starts with no command of a path; use M L H V C S Q T A Z");
        }
        if (last == ' ' && kind != 'M') {
            throw new IllegalArgumentException("the path starts with [" + command + "]; start it with M");
        }
        boolean relative = command != kind;
        if (kind == 'Z') {
            pen.close();
            remember('Z', pen.x(), pen.y());
            return;
        }
        do {
            draw(kind, relative ? pen.x() : 0, relative ? pen.y() : 0);
            // More pairs after a move are lines.
            kind = kind == 'M' ? 'L' : kind;
        } while (numbers.atNumber());
    }

    private void draw(char kind, double fromX, double fromY) {
        switch (kind) {
            case 'M' -> pen.move(x(fromX), y(fromY));
            case 'L' -> pen.line(x(fromX), y(fromY));
            case 'H' -> pen.line(x(fromX), pen.y());
            case 'V' -> pen.line(pen.x(), y(fromY));
            case 'C' -> curve(x(fromX), y(fromY), fromX, fromY);
            case 'S' -> curve(mirrored("CS", pen.x(), controlX), mirrored("CS", pen.y(), controlY), fromX, fromY);
            case 'Q' -> quadratic(x(fromX), y(fromY), fromX, fromY);
            case 'T' -> quadratic(
                    mirrored("QT", pen.x(), controlX), mirrored("QT", pen.y(), controlY), fromX, fromY);
            default -> pen.arc(
                    numbers.number(), numbers.number(), numbers.number(), numbers.flag(), numbers.flag(),
                    x(fromX), y(fromY));
        }
        if ("CSQT".indexOf(kind) < 0) {
            remember(kind, pen.x(), pen.y());
        } else {
            last = kind;
        }
    }

    private void curve(double x1, double y1, double fromX, double fromY) {
        double x2 = x(fromX);
        double y2 = y(fromY);
        pen.curve(x1, y1, x2, y2, x(fromX), y(fromY));
        remember('C', x2, y2);
    }

    private void quadratic(double x1, double y1, double fromX, double fromY) {
        pen.quadratic(x1, y1, x(fromX), y(fromY));
        remember('Q', x1, y1);
    }

    private double mirrored(String after, double here, double control) {
        return after.indexOf(last) < 0 ? here : 2 * here - control;
    }

    private void remember(char kind, double x, double y) {
        last = kind;
        controlX = x;
        controlY = y;
    }

    private double x(double from) {
        return from + numbers.number();
    }

    private double y(double from) {
        return from + numbers.number();
    }
}
