package fencerow.kiosk.work;

import fencerow.kiosk.kit.Sign;
import fencerow.sizing.FrontBallast;
import fencerow.sizing.RearBallast;
import fencerow.sizing.UsualLoad;
import fencerow.sizing.catalogue.Inputs;
import fencerow.sizing.catalogue.Measured;
import fencerow.sizing.catalogue.Result;
import fencerow.terms.Amount;
import fencerow.terms.Mass;
import fencerow.terms.Quantity;
import fencerow.terms.Spread;
import fencerow.visit.Worksheet;
import fencerow.wording.SizingWords;
import fencerow.wording.Texts;
import fencerow.wording.Ticks;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Draws results to scale, as values; a view gives them lines. */
final class Pictures {
    private static final int POINTS = 40;
    private static final int MOST_TICKS = 5;
    /** Room above the curve. */
    private static final double HEADROOM = 1.15;
    /** Loads far above the curve do not make it flat: they are cut off at so many times its height. */
    private static final double HIGHEST_LOAD = 1.8;
    /** Where nothing can be lifted, the loads still need a scale. */
    private static final Mass LIGHTEST = UsualLoad.ROUND_BALE_4_BY_4.mass().high();
    private static final String LOAD = "load";

    private final Worksheet sheet;
    private final SizingWords words;
    private final Texts texts;

    Pictures(Worksheet sheet, SizingWords words) {
        this.sheet = sheet;
        this.words = words;
        this.texts = words.texts();
    }

    /** The picture of a result, where the sheet has one and there is something to draw. */
    Optional<Picture> of(Result result, Inputs inputs) {
        if (sheet.picture().isEmpty()) {
            return Optional.empty();
        }
        if (sheet.picture().get() instanceof Worksheet.Picture.Curve curve) {
            return sheet.findNumber(curve.along()).flatMap(along -> curve(curve, along, result, inputs));
        }
        return Optional.of(axles(result));
    }

    /** A place on the axes: along, and the answer there. */
    private record Sample(Amount at, Spread<Amount> found) {}

    private Optional<Sample> sample(String along, Amount at, Inputs inputs) {
        try {
            return sheet.answer()
                    .flatMap(sheet.calculation().run(inputs.with(along, at))::findAmount)
                    .map(found -> new Sample(at, found));
        } catch (IllegalArgumentException e) {
            return Optional.empty(); // beyond where the formula holds: the curve ends there
        }
    }

    private <Q extends Quantity> Optional<Picture> curve(
            Worksheet.Picture.Curve curve, Measured<Q> along, Result result, Inputs inputs) {
        double from = Math.max(along.usual().low().si(), along.bounds().min().si());
        double to = Math.min(along.usual().high().si(), along.bounds().max().si());
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            double si = from + (to - from) * i / POINTS;
            sample(curve.along(), new Amount(along.dimension(), si), inputs).ifPresent(samples::add);
        }
        boolean nothing = samples.stream().allMatch(each -> each.found().high().si() <= 0);
        if (samples.size() < 2 || nothing && !curve.loads()) {
            return Optional.empty();
        }
        var frame = new Axes(new Amount(along.dimension(), from), new Amount(along.dimension(), to), samples);
        Optional<Sample> now = Optional.ofNullable(result.inputs().get(curve.along()))
                .filter(range -> range.low().si() >= from && range.high().si() <= to)
                .flatMap(range -> sheet.answer().flatMap(result::findAmount)
                        .map(found -> new Sample(middle(range), found)));
        List<Picture.Load> loads = curve.loads() ? loads(curve.along(), inputs, frame) : List.of();
        return Optional.of(new Picture.Curve(samples.stream().map(frame::point).toList(), now.map(frame::point), loads,
                frame.across(), frame.up(), words.input(sheet.calculation(), along),
                alternative(words.input(sheet.calculation(), along), samples, now, loads)));
    }

    private static Amount middle(Spread<Amount> range) {
        return new Amount(range.low().dimension(), (range.low().si() + range.high().si()) / 2);
    }

    private String alternative(
            String along, List<Sample> samples, Optional<Sample> now, List<Picture.Load> loads) {
        Sample first = samples.get(0);
        Sample last = samples.get(samples.size() - 1);
        List<String> sentences = new ArrayList<>();
        sentences.add(texts.get("kiosk.plot.curve", Map.of(
                "result", sheet.answerOutput().map(out -> words.result(sheet.calculation(), out)).orElse(""),
                "along", along, "start", words.amount(first.found()), "from", words.quantities().show(first.at()),
                "end", words.amount(last.found()), "to", words.quantities().show(last.at()))));
        now.ifPresent(each -> sentences.add(texts.get("kiosk.plot.now", Map.of(
                "value", words.amount(each.found()), "at", words.quantities().show(each.at())))));
        loads.forEach(load -> sentences.add(load.words() + "."));
        return String.join(" ", sentences);
    }

    private List<Picture.Load> loads(String along, Inputs inputs, Axes frame) {
        List<Picture.Load> loads = new ArrayList<>();
        for (UsualLoad load : UsualLoad.values()) {
            load(texts.get("work.load." + load.id()), load.mass().amounts(), load.center().amount(), along, inputs,
                    frame).ifPresent(loads::add);
        }
        Optional<Spread<Amount>> center = Optional.ofNullable(inputs.numbers().get(along))
                .or(() -> sheet.findNumber(along).flatMap(Measured::preset).map(Spread::amounts));
        Optional.ofNullable(inputs.numbers().get(LOAD)).ifPresent(mass -> center.ifPresent(at -> load(
                texts.get("kiosk.plot.load-yours"), mass, middle(at), along, inputs, frame).ifPresent(loads::add)));
        return loads;
    }

    private Optional<Picture.Load> load(
            String name, Spread<Amount> mass, Amount center, String along, Inputs inputs, Axes frame) {
        return sample(along, center, inputs).map(there -> {
            boolean all = mass.high().si() <= there.found().low().si();
            boolean none = mass.low().si() > there.found().high().si();
            String key = all ? "ok" : none ? "over" : "maybe";
            Sign.Kind sign = all ? Sign.Kind.YES : none ? Sign.Kind.NEVER : Sign.Kind.UNKNOWN;
            return new Picture.Load(frame.point(new Sample(center, mass)), sign, texts.get(
                    "kiosk.plot.load-" + key, Map.of("name", name, "mass", words.amount(mass))));
        });
    }

    /** The two axes of a curve, from nothing to somewhat above its highest point. */
    private final class Axes {
        private final Amount from;
        private final Amount to;
        private final Amount top;

        Axes(Amount from, Amount to, List<Sample> samples) {
            double highest = samples.stream().mapToDouble(each -> each.found().high().si()).max().orElse(1);
            this.from = from;
            this.to = to;
            this.top = new Amount(samples.get(0).found().high().dimension(),
                    isWithLoads() ? Math.max(highest, LIGHTEST.si()) * HIGHEST_LOAD : highest * HEADROOM);
        }

        private double share(double si) {
            return Math.max(0, Math.min(1, si / top.si()));
        }

        private double acrossShare(Amount at) {
            return (at.si() - from.si()) / (to.si() - from.si());
        }

        Picture.Point point(Sample sample) {
            return new Picture.Point(acrossShare(sample.at()), share(sample.found().low().si()),
                    share(sample.found().high().si()));
        }

        List<Picture.Tick> across() {
            return Ticks.of(Spread.of(from, to), MOST_TICKS, words.quantities()).stream()
                    .map(tick -> new Picture.Tick(acrossShare(tick.at()), tick.words()))
                    .toList();
        }

        List<Picture.Tick> up() {
            Amount nothing = new Amount(top.dimension(), 0);
            return Ticks.of(Spread.of(nothing, top), MOST_TICKS, words.quantities()).stream()
                    .filter(tick -> tick.at().si() > 0)
                    .map(tick -> new Picture.Tick(share(tick.at().si()), tick.words()))
                    .toList();
        }
    }

    private boolean isWithLoads() {
        return sheet.picture().filter(each -> each instanceof Worksheet.Picture.Curve curve && curve.loads())
                .isPresent();
    }

    private Picture axles(Result result) {
        Spread<Amount> front = result.getAmount("front-axle-load");
        Spread<Amount> rear = result.getAmount("rear-axle-load");
        double longest = Math.max(1, Math.max(front.high().si(), rear.high().si()));
        Optional<Double> unladen = Optional.ofNullable(result.inputs().get("front-axle"))
                .flatMap(f -> Optional.ofNullable(result.inputs().get("rear-axle"))
                        .map(r -> middle(f).si() + middle(r).si()));
        return new Picture.Axles(
                bar("front", front, longest, unladen.map(all -> all * FrontBallast.FRONT_SHARE.si())),
                bar("rear", rear, longest, unladen.map(all -> all * RearBallast.REAR_SHARE.si())),
                unladen.isPresent() ? texts.get("kiosk.plot.least") : "",
                texts.get("kiosk.plot.axles", Map.of("front", words.amount(front), "rear", words.amount(rear))));
    }

    private Picture.Bar bar(String key, Spread<Amount> load, double longest, Optional<Double> least) {
        return new Picture.Bar(texts.get("kiosk.plot." + key), words.amount(load),
                Math.max(0, load.high().si() / longest), least.map(each -> Math.min(1, each / longest)));
    }
}
