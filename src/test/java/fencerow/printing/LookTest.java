package fencerow.printing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.*;
import org.junit.jupiter.api.Test;

class LookTest {
    @Test
    void look() throws Exception {
        RandomHandouts handouts = new RandomHandouts(Long.getLong("seed", 1L), ShippedWords.texts("en"));
        Paper paper = Paper.of(Path.of("kiosk-config/paper"), 13, 6, System.err::println);
        PageFormat format = new PageFormat(Boolean.getBoolean("a4") ? PageFormat.Size.A4 : PageFormat.Size.LETTER, Boolean.getBoolean("large"));
        for (int i = 0; i < Integer.getInteger("n", 3); i++) {
            Handout handout = handouts.next();
            long t = System.nanoTime();
            List<Sheet> sheets = new ArrayList<>();
            for (String s : System.getProperty("sheets", "LIST,COMPARISON").split(",")) sheets.add(Sheet.valueOf(s));
            Printout out = paper.print(handout, handouts.phrases(), format, sheets);
            System.err.println((System.nanoTime() - t) / 1_000_000 + " ms " + out.pages() + " pages, on page one " + out.lines().stream().filter(l -> l.place() == fencerow.checklist.ChecklistLine.Place.PAGE_ONE).count()+ " of " + out.lines().size());
            Files.write(Path.of("/tmp/look" + i + ".pdf"), out.pdf());
        }
    }
}
