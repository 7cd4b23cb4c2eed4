package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shoppers' files and drawings spoilt at random. Long with {@code -Dfencerow.fuzz=5000}. */
class MutatedShopperFilesTest {
    private static final int READINGS = 5 * Integer.getInteger("fencerow.fuzz", 40);
    private static final long SEED = 20_261_125;
    private static final Duration HANGS = Duration.ofMinutes(2);

    @TempDir
    private Path folder;

    private static List<Path> files(String below, String end) throws IOException {
        try (Stream<Path> all = Files.walk(Path.of(below))) {
            return all.filter(file -> file.toString().endsWith(end)).sorted().toList();
        }
    }

    /** How many spoilt files are refused; each refusal is looked at. */
    private static int refused(List<Path> files, Function<byte[], List<Problem>> read) throws IOException {
        var random = new Random(SEED);
        int refused = 0;
        for (int i = 0; i < READINGS; i++) {
            Path file = files.get(random.nextInt(files.size()));
            byte[] spoilt = Files.readAllBytes(file);
            for (int times = 1 + random.nextInt(3); times > 0; times--) {
                spoilt = Mutation.of(spoilt, random);
            }
            byte[] bytes = spoilt;
            String what = "seed " + SEED + ", reading " + i + ", " + file + ": ";
            try {
                List<Problem> problems = assertTimeoutPreemptively(HANGS, () -> read.apply(bytes), what + "hangs");
                if (!problems.isEmpty()) {
                    Mutation.assertClear(problems, what);
                    refused++;
                }
            } catch (RuntimeException | StackOverflowError e) {
                fail(what + new String(bytes, StandardCharsets.UTF_8), e);
            }
        }
        return refused;
    }

    private static List<Problem> problems(Reading<?> reading) {
        return reading instanceof Reading.Bad<?> bad ? bad.problems() : List.of();
    }

    @Test
    void spoiltAnswersAndBeliefsAreRefusedClearlyOrTaken() throws IOException {
        var showroom = TinyContent.copyTo(folder).readGood().showroom();
        Path file = folder.resolve("shopper.yaml");
        int refused = refused(files("src/test/resources/shoppers", ".yaml"), bytes -> {
            try {
                Files.write(file, bytes);
            } catch (IOException e) {
                throw new AssertionError("cannot be written", e);
            }
            List<Problem> beliefs = problems(new BeliefsReader(showroom.quiz()).read(file));
            List<Problem> answers = problems(new AnswersReader(showroom.questionnaire()).read(file));
            return answers.isEmpty() ? beliefs : answers;
        });
        assertTrue(refused > READINGS / 4, "only " + refused + " were refused");
    }

    @Test
    void spoiltDrawingsAreRefusedClearlyOrTaken() throws IOException {
        int refused = refused(files("content/pictures", ".svg"), bytes -> {
            var problems = new Problems();
            boolean taken = SourceFile.decode(bytes, "a.svg", problems)
                    .flatMap(text -> new DrawingReader(problems).read(text))
                    .isPresent();
            assertTrue(taken || problems.hasErrors(), "refused without a reason");
            return problems.errors();
        });
        assertTrue(refused > READINGS / 8, "only " + refused + " were refused");
    }

    @Test
    void rawHtmlPicturesAndFarLinksOfAnArticleAreRefused() {
        TinyContent tiny = TinyContent.copyTo(folder);
        String article = "content/en/explainers/resale.md";
        String before = tiny.text(article);
        for (String bad : List.of("<script>alert(1)</script>", "<b>bold</b>", "![a](https://far.invalid/a.png)",
                "[there](https://far.invalid/)", "<https://far.invalid/>", "<!-- a note -->")) {
            tiny.write(article, before + "\n" + bad + "\n");
            List<Problem> problems = problems(tiny.read());
            Mutation.assertClear(problems, bad + ": ");
            assertTrue(problems.stream().allMatch(each -> each.place().file().equals(article)), problems::toString);
            tiny.write(article, before);
        }
    }

    @Test
    void filesLargerThanTheLimitAreNotRead() {
        TinyContent tiny = TinyContent.copyTo(folder);
        String prices = tiny.text("kiosk-config/prices.csv");
        tiny.write("kiosk-config/prices.csv", prices + "# more\n".repeat((int) SourceFile.MOST_BYTES / 7 + 1));

        assertTrue(problems(tiny.read()).stream().anyMatch(each -> each.toString().contains("is the most")));
        assertTrue(Optional.of(tiny.write("kiosk-config/prices.csv", prices).read())
                .filter(Reading.Good.class::isInstance).isPresent());
    }
}
