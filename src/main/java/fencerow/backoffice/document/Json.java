package fencerow.backoffice.document;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;

/** Turns documents into JSON text (RFC 8259). */
public final class Json {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private Json() {}

    /** The document as indented text that ends with a line feed. */
    public static String text(Record document) {
        var indent = new DefaultIndenter("  ", "\n");
        var printer = new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
        try {
            return MAPPER.writer(printer).writeValueAsString(document) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a document cannot be written: " + e.getOriginalMessage(), e);
        }
    }
}
