package fencerow.printing;

import fencerow.content.Content;
import fencerow.content.ShippedContent;
import fencerow.wording.Texts;
import java.nio.file.Path;

/** The content as shipped, read once. */
final class Shipped {
    static final Content CONTENT = ShippedContent.get();
    static final Texts ENGLISH = CONTENT.getTexts("en");
    static final Path PAPER = Path.of("kiosk-config", "paper");

    private Shipped() {}
}
