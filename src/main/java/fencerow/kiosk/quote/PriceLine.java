package fencerow.kiosk.quote;

import fencerow.stock.AskingPrice;
import fencerow.terms.Money;
import java.util.Optional;

/** A line of what a seller asks. */
enum PriceLine {
    ASKING("asking"),
    FREIGHT("freight"),
    SETUP("setup"),
    FEES("fees"),
    TRADE("trade");

    private final String id;

    PriceLine(String id) {
        this.id = id;
    }

    /** The word used in text keys. */
    String id() {
        return id;
    }

    Money in(AskingPrice price) {
        return switch (this) {
            case ASKING -> price.asking();
            case FREIGHT -> price.freight();
            case SETUP -> price.setup();
            case FEES -> price.fees();
            case TRADE -> price.trade().orElse(Money.ZERO);
        };
    }

    /** The same price with this line changed. */
    AskingPrice changed(AskingPrice price, Money amount) {
        return new AskingPrice(
                this == ASKING ? amount : price.asking(),
                price.promo(),
                this == FREIGHT ? amount : price.freight(),
                this == SETUP ? amount : price.setup(),
                this == FEES ? amount : price.fees(),
                this == TRADE ? Optional.of(amount) : price.trade());
    }
}
