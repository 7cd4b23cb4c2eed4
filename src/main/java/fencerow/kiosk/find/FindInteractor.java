package fencerow.kiosk.find;

import fencerow.explainers.Explainer;
import fencerow.explainers.Library;
import fencerow.kiosk.find.FindModel.Card;
import fencerow.kiosk.find.FindModel.Filter;
import fencerow.kiosk.find.FindModel.Found;
import fencerow.kiosk.find.FindModel.KindChip;
import fencerow.kiosk.find.FindModel.Narrowed;
import fencerow.kiosk.find.FindModel.TagChip;
import fencerow.kiosk.find.FindModel.Target;
import fencerow.kiosk.frame.Search;
import fencerow.search.Hit;
import fencerow.search.Intent;
import fencerow.search.Kind;
import fencerow.search.LostWords;
import fencerow.search.Marked;
import fencerow.search.Query;
import fencerow.search.Results;
import fencerow.search.Tag;
import fencerow.stock.Unit;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.MachineClass;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.Labels;
import fencerow.wording.Phrases;
import java.text.Collator;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Knows what to look for on behalf of this shopper, and how to show what was found. */
final class FindInteractor {
    private static final int MOST_HITS = 24;
    /** How much more a hit counts that is about a job the shopper wants done. */
    private static final double OWN_JOB = 1.25;
    /** How much more a hit counts that is about equipment of a unit the shopper has pinned. */
    private static final double OWN_UNIT = 1.1;

    private final Library library;
    private final Showroom showroom;
    private final Phrases phrases;
    private final Search search;

    FindInteractor(Library library, Showroom showroom, Phrases phrases, Search search) {
        this.library = library;
        this.showroom = showroom;
        this.phrases = phrases;
        this.search = search;
    }

    /** What is found for the words typed. Called in the background. */
    Found found(String typed, Narrowed wanted, Visit visit) {
        if (typed.isBlank()) {
            return new Found(Optional.of(say("type", Map.of())), Optional.empty(), Optional.empty(), List.of(),
                    List.of(), List.of(), everything(), false);
        }
        Query query = Query.of(typed, phrases.texts().language())
                .withFavoured(favoured(visit))
                .withLimit(MOST_HITS);
        Results narrow = search.find(
                query.withKinds(wanted.kind().map(Set::of).orElse(Set.of())).withOnly(wanted.only()));
        // What was chosen for other words gives way where it would leave nothing.
        boolean fits = !narrow.hits().isEmpty() || wanted.equals(Narrowed.NOT);
        Narrowed narrowed = fits ? wanted : Narrowed.NOT;
        Results found = fits ? narrow : search.find(query);
        boolean nothing = found.hits().isEmpty();
        return new Found(
                nothing ? Optional.of(say("nothing", Map.of("words", typed.strip()))) : Optional.empty(),
                found.didYouMean(),
                understood(found.intent()),
                kinds(found, narrowed.kind()),
                filters(found, narrowed.only()),
                found.completions(),
                cards(nothing ? found.nearest() : found.hits()),
                nothing);
    }

    /** All explainers by name, so that each can be jumped to without typing. */
    private List<Card> everything() {
        Collator alphabet = Collator.getInstance(phrases.texts().locale());
        return library.explainers().stream()
                .sorted(Comparator.comparing(Explainer::title, alphabet))
                .map(each -> new Card(say("kind." + Kind.EXPLAINER.id(), Map.of()), Marked.plain(each.title()),
                        Marked.plain(""), new Target(Kind.EXPLAINER, each.topic().value())))
                .toList();
    }

    /** What may be counted of words that were not found. Called in the background, for it reads a list. */
    List<String> lost(String typed, Found found) {
        // Words put right still find something; if nobody wants it, they were meant as written.
        return found.deadEnd() || found.didYouMean().isPresent() ? LostWords.load().of(typed) : List.of();
    }

    private Map<Tag, Double> favoured(Visit visit) {
        Map<Tag, Double> favoured = new HashMap<>();
        showroom.needs(visit).musts().stream()
                .flatMap(must -> must.why().job().stream())
                .forEach(job -> favoured.put(Tag.job(job), OWN_JOB));
        for (Unit unit : showroom.units()) {
            if (visit.pinned().contains(unit.id())) {
                showroom.catalogue().features().stream()
                        .filter(feature -> unit.fact(feature.id()) instanceof Fact.Fitted)
                        .map(Feature::id)
                        .forEach(id -> favoured.put(Tag.topic(new TopicId(id.value())), OWN_UNIT));
            }
        }
        return favoured;
    }

    /** What was read out of the words about equipment and price, so that the shopper sees why these units are here. */
    private Optional<String> understood(Intent intent) {
        if (intent.isNone()) {
            return Optional.empty();
        }
        var labels = new Labels(phrases.texts());
        List<String> parts = new ArrayList<>();
        intent.equipment().forEach(any -> parts.add(any.stream()
                .sorted()
                .map(labels::feature)
                .map(labels::inSentence)
                .collect(Collectors.joining(" / "))));
        intent.atLeast().ifPresent(low -> parts.add(say("at-least", Map.of("amount", phrases.money(low)))));
        intent.atMost().ifPresent(high -> parts.add(say("at-most", Map.of("amount", phrases.money(high)))));
        return Optional.of(say("understood", Map.of("what", phrases.list(parts))));
    }

    private List<KindChip> kinds(Results results, Optional<Kind> chosen) {
        if (results.groups().size() < 2) {
            return List.of();
        }
        int sum = results.groups().stream().mapToInt(Results.Group::count).sum();
        List<KindChip> chips = new ArrayList<>();
        chips.add(new KindChip(Optional.empty(), say("all", Map.of("count", sum)), chosen.isEmpty()));
        results.groups().forEach(group -> chips.add(new KindChip(
                Optional.of(group.kind()),
                say("kinds." + group.kind().id(), Map.of("count", group.count())),
                chosen.equals(Optional.of(group.kind())))));
        return chips;
    }

    private List<Filter> filters(Results results, Set<Tag> chosen) {
        List<Filter> filters = new ArrayList<>();
        for (Tag.Of of : List.of(Tag.Of.STOP, Tag.Of.MACHINE_CLASS)) {
            List<Results.Facet> facets = results.facets().stream()
                    .filter(facet -> facet.tag().of() == of)
                    .sorted(Comparator.comparing(facet -> order(facet.tag())))
                    .toList();
            boolean narrows = facets.stream().map(Results.Facet::count).distinct().count() > 1;
            boolean isChosen = chosen.stream().anyMatch(tag -> tag.of() == of);
            if (isChosen || narrows) {
                filters.add(new Filter(of, say("by." + key(of), Map.of()), chips(of, facets, chosen, isChosen)));
            }
        }
        return filters;
    }

    private List<TagChip> chips(Tag.Of of, List<Results.Facet> facets, Set<Tag> chosen, boolean isChosen) {
        List<TagChip> chips = new ArrayList<>();
        chips.add(new TagChip(Optional.empty(), say("any." + key(of), Map.of()), !isChosen));
        facets.forEach(facet -> chips.add(new TagChip(
                Optional.of(facet.tag()),
                say("counted", Map.of(
                        "what", phrases.texts().get(key(of) + "." + facet.tag().value()), "count", facet.count())),
                chosen.contains(facet.tag()))));
        return chips;
    }

    private static String key(Tag.Of of) {
        return of == Tag.Of.STOP ? "stop" : "class";
    }

    /** Parts in the order of a walk around the tractor, sizes from the smallest. */
    private static int order(Tag tag) {
        List<Tag> all = Stream.concat(
                        Stream.of(Stop.values()).map(Tag::stop),
                        Stream.of(MachineClass.values()).map(Tag::machineClass))
                .toList();
        return all.indexOf(tag);
    }

    private List<Card> cards(List<Hit> hits) {
        return hits.stream()
                .map(hit -> new Card(say("kind." + hit.kind().id(), Map.of()), hit.title(), text(hit),
                        new Target(hit.kind(), hit.id())))
                .toList();
    }

    /** Of a unit its price: its equipment would fill the card. */
    private Marked text(Hit hit) {
        if (hit.kind() != Kind.UNIT) {
            return hit.excerpt();
        }
        return showroom.units().stream()
                .filter(unit -> unit.id().value().equals(hit.id()))
                .findFirst()
                .map(unit -> Marked.plain(
                        say("asking", Map.of("amount", phrases.money(unit.price().asking())))))
                .orElse(hit.excerpt());
    }

    private String say(String key, Map<String, ?> words) {
        return phrases.texts().get("kiosk.find." + key, words);
    }
}
