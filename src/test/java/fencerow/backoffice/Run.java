package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import fencerow.content.Content;
import fencerow.content.ShippedContent;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * One run of a command in this process, on the shipped content.
 *
 * @param code     exit code
 * @param out      what it printed
 * @param err      what it complained of
 * @param launched where kiosks were opened
 */
record Run(int code, String out, String err, List<Folders> launched) {
    static final Path SHOPPERS = Path.of("src/test/resources/shoppers");
    static final List<String> SHOPPER_NAMES = List.of("long-drive", "lawn-and-garden", "small-farm");
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T15:30:00Z"), ZoneOffset.UTC);

    static final Machine MACHINE =
            new Machine("Linux", Path.of("/"), Map.of(), Path.of(System.getProperty("java.io.tmpdir")));

    private static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    static Run of(String... arguments) {
        return on(MACHINE, arguments);
    }

    /** The same on another machine. */
    static Run on(Machine machine, String... arguments) {
        return run(machine, Path.of("there is no such data folder"), arguments);
    }

    /** One that may keep something in a folder. */
    static Run in(Path data, String... arguments) {
        return run(MACHINE, data, arguments);
    }

    /** The same on another machine. */
    static Run in(Path data, Machine machine, String... arguments) {
        return run(machine, data, arguments);
    }

    private static Run run(Machine machine, Path data, String... arguments) {
        var out = new StringWriter();
        var err = new StringWriter();
        List<Folders> launched = new ArrayList<>();
        var surroundings = new Surroundings(Path.of(""), CLOCK, machine, ShippedContent::read, folders -> {
            launched.add(folders);
            return FencerowCommand.FINE;
        }, config -> data, new PrintWriter(out), new PrintWriter(err));
        int code = FencerowCommand.run(surroundings, arguments);
        return new Run(code, out.toString(), err.toString(), launched);
    }

    static String answers(String shopper) {
        return SHOPPERS.resolve(shopper + ".yaml").toString();
    }

    static String beliefs(String shopper) {
        return SHOPPERS.resolve(shopper + "-beliefs.yaml").toString();
    }

    /** What is shipped. */
    static Content shipped() {
        return ShippedContent.get();
    }

    /** Copies a folder, so that a test can spoil a file of it. */
    static Path copy(String folder, Path to) {
        try (Stream<Path> all = Files.walk(Path.of(folder))) {
            for (Path each : all.toList()) {
                Files.copy(each, to.resolve(each.toString()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return to.resolve(folder);
    }

    /** This run went well. */
    Run fine() {
        assertEquals("", err);
        assertEquals(FencerowCommand.FINE, code, out);
        return this;
    }

    /** This run failed with the code and said nothing on standard output. */
    Run failed(int expected) {
        assertEquals(expected, code, err);
        assertEquals("", out);
        return this;
    }

    /** The document printed, after a check that it has the names declared, all of them, in that order. */
    <T extends Record> T document(Class<T> type) {
        try {
            JsonNode tree = MAPPER.readTree(out);
            assertDeclared(tree, type, "");
            return MAPPER.treeToValue(tree, type);
        } catch (IOException e) {
            throw new UncheckedIOException(out, e);
        }
    }

    private static void assertDeclared(JsonNode node, Type type, String path) {
        if (type instanceof ParameterizedType outer && !node.isNull()) {
            Type inner = outer.getActualTypeArguments()[0];
            if (outer.getRawType() == List.class) {
                assertEquals(true, node.isArray(), path);
                node.forEach(each -> assertDeclared(each, inner, path + "[]"));
            } else {
                assertDeclared(node, inner, path);
            }
        } else if (type instanceof Class<?> record && record.isRecord()) {
            List<String> found = new ArrayList<>();
            node.fieldNames().forEachRemaining(found::add);
            List<RecordComponent> declared = Arrays.asList(record.getRecordComponents());
            assertEquals(declared.stream().map(RecordComponent::getName).toList(), found, path);
            declared.forEach(each -> assertDeclared(
                    node.get(each.getName()), each.getGenericType(), path + "." + each.getName()));
        }
    }
}
