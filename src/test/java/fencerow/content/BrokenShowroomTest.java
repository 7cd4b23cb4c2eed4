package fencerow.content;

import static fencerow.content.Break.broken;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Breaks the showroom's own files, one at a time. */
class BrokenShowroomTest {
    private static final String SHOWROOM = "kiosk-config/showroom.yaml";
    private static final String PRICES = "kiosk-config/prices.csv";
    private static final String HIRE = "kiosk-config/hire.csv";
    private static final String STOCK = "kiosk-config/stock.csv";
    private static final String ALIASES = "kiosk-config/aliases.txt";

    @TempDir
    private Path folder;

    static List<Break> configuration() {
        return List.of(
                broken(SHOWROOM, "languages: [en]", "languages: [english!]", "[english!] is no language"),
                broken(SHOWROOM, "languages: [en]", "languages: []", "no language is offered").at("name:"),
                broken(SHOWROOM, "measures: us", "measures: uk", "[uk] is none of the words"),
                broken(SHOWROOM, "warn-after: 75 s", "warn-after: 5 s", "idle times 5 s"),
                broken(SHOWROOM, "warn-after: 75 s", "warn-after: 75", "[75] has no unit"),
                broken(SHOWROOM, "diagonal: 24 in", "diagonal: 2 in", "panel diagonal"),
                broken(SHOWROOM, "freight: 600 USD", "freight: -600 USD", "[freight] is negative"),
                broken(SHOWROOM, "{demo: \"2468\"}", "{demo: \"abcd\"}", "not 4 to 8 digits"),
                broken(SHOWROOM, "wish: 0.5", "wish: 2", "[2] is out of range"),
                broken(SHOWROOM, "wish: 0.5, else: 0.2", "wish: 0.1, else: 0.2", "must not rise"),
                broken(PRICES, "coupler-kit,,300,700", "coupler-kit,,-300,700",
                        "column [order-low]: [-300] is negative"),
                broken(PRICES, "coupler-kit,,300,700", "coupler-kit,,700,300", "the low price is above the high one"),
                broken(PRICES, "coupler-kit,,300,700", "coupler-kit,,300,", "the cell is empty and its pair is not"),
                broken(PRICES, "coupler-kit,,300,700", "coupler-kit,,$300,700", "[$300] is no whole number"),
                broken(PRICES, "remote-kit,small", "remote-kit,smal", "[smal] is no machine class"),
                broken(PRICES, "remote-kit,small", "remote-kit,subcompact", "has a price for [subcompact] already")
                        .at("remote-kit,small,400,800,500,900\n".replace("small", "subcompact") + "hose"),
                broken(PRICES, "hose-kit,", "hose-kit,,", "the row has 7 cells"),
                broken(PRICES, "item,class", "item,clas", "did you mean [class]?"),
                broken(PRICES, "hose-kit,,,,100,200", "hose-kit,,,,\"100\"x,200", "the quotes in this row"),
                broken(HIRE, "move-pallets,hire", "move-palets,hire", "did you mean [move-pallets]?"),
                broken(HIRE, "move-pallets,hire", "move-pallets,higher", "[higher] is none of the words"),
                broken(STOCK, "n-1,wren-24", "n-1,wren-42", "did you mean [wren-24]?"),
                broken(STOCK, "n-2,wren-24", "n-1,wren-24",
                        "the unit [n-1] is already there").at("n-1,wren-24,new,2026,0"),
                broken(STOCK, "plate,1", "plank,1", "column [quick-attach]: [plank] is not understood"),
                broken(STOCK, "plate,1", "plate,3", "takes at most 1"),
                broken(STOCK, "12900", "cheap", "column [asking]: [cheap] is no whole number"),
                broken(STOCK, "12900", "", "column [asking]: the cell is empty").at("u-1"),
                broken(STOCK, "orderable,60", "orderable,", "column [lead-days]").at("n-2,"),
                broken(STOCK, "used,2019", "old,2019", "[old] is none of the words"),
                broken(STOCK, "pallet-forks,worn-tires", "pallet-forc,worn-tires", "did you mean [pallet-forks]?"),
                broken(STOCK, "pallet-forks,worn-tires", "pallet-forks,worn-tire", "did you mean [worn-tires]?"),
                broken(STOCK, "quick-attach,rear-remotes", "quick-atach,rear-remotes",
                        "did you mean [quick-attach]?"),
                broken(ALIASES, "scv = rear-remotes", "scv = rear-remote", "did you mean [rear-remotes]?"),
                broken(ALIASES, "scv = rear-remotes", "scv: rear-remotes", "no word with a topic"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("configuration")
    void itIsNamedWithItsLineAndNothingElseIs(Break each) {
        each.check(folder);
    }
}
