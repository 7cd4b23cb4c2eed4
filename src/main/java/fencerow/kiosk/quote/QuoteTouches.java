package fencerow.kiosk.quote;

import fencerow.terms.FeatureId;
import fencerow.terms.UnitId;
import java.util.Optional;

/** What the shopper touched while telling. */
interface QuoteTouches {
    void size(String key);

    void state(String key);

    void hours(String key);

    void changeHours(int by);

    void line(PriceLine line);

    void digits(String digits);

    void takeAway();

    void seen(FeatureId feature, Optional<Boolean> there);

    void next();

    void again();

    void forget();

    void open(UnitId unit);

    void list();
}
