package fencerow.printing;

import fencerow.content.Content;
import fencerow.content.ContentReader;
import fencerow.content.Reading;
import fencerow.wording.Texts;
import java.nio.file.Path;
import java.util.Optional;

/** The content as shipped, read once. */
final class Shipped {
    static final Content CONTENT = read();
    static final Texts ENGLISH = CONTENT.getTexts("en");
    static final Path PAPER = Path.of("kiosk-config", "paper");

    private Shipped() {}

    private static Content read() {
        Reading<Content> reading =
                new ContentReader().read(Path.of("content"), Path.of("kiosk-config"), Optional.empty());
        if (reading instanceof Reading.Good<Content> good) {
            return good.content();
        }
        throw new AssertionError("the shipped content has problems: " + ((Reading.Bad<Content>) reading).problems());
    }
}
