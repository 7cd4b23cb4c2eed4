package fencerow.kiosk.find;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.kit.Boxes;
import fencerow.kiosk.kit.Words;
import fencerow.stock.Attachment;
import fencerow.terms.ItemId;
import fencerow.terms.MachineClass;
import fencerow.terms.PriceRange;
import fencerow.wording.Labels;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.layout.VBox;

/** What an attachment is, what it does and what it costs, laid over the screen on which it was touched. */
final class AttachmentSheet {
    private AttachmentSheet() {}

    static void lay(Frame frame, ItemId id) {
        frame.premises().showroom().catalogue().findItem(id)
                .filter(Attachment.class::isInstance)
                .map(Attachment.class::cast)
                .ifPresent(attachment -> frame.lay(new Labels(frame.texts()).item(id), page(frame, attachment)));
    }

    private static VBox page(Frame frame, Attachment attachment) {
        String key = "attachment." + attachment.id();
        VBox page = Boxes.stack(Words.lead(frame.texts().get(key + ".short")));
        frame.texts().find(key + ".trade-off").ifPresent(words -> page.getChildren().add(Words.body(words)));
        List<String> jobs = attachment.does().stream()
                .map(job -> frame.texts().get("job." + job + ".name"))
                .toList();
        if (!jobs.isEmpty()) {
            page.getChildren().add(Words.body(frame.say("find.does", Map.of("jobs", frame.phrases().list(jobs)))));
        }
        price(frame, attachment).ifPresent(range -> page.getChildren().add(Words.body(
                frame.say("find.price", Map.of("range", frame.phrases().range(range))))));
        return page;
    }

    /** Over all classes it comes for. */
    private static Optional<PriceRange> price(Frame frame, Attachment attachment) {
        var prices = frame.premises().showroom().catalogue().prices();
        return PriceRange.spanning(Arrays.stream(MachineClass.values())
                .flatMap(each -> prices.findLater(attachment.id(), each).stream())
                .toList());
    }
}
