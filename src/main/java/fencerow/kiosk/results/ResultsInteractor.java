package fencerow.kiosk.results;

import fencerow.kiosk.frame.BackRoom;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.matching.Asked;
import fencerow.kiosk.matching.MatchWords;
import fencerow.kiosk.matching.UnitCard;
import fencerow.kiosk.matching.UnitLine;
import fencerow.match.Match;
import fencerow.match.Ranking;
import fencerow.match.Verdict;
import fencerow.needs.Answers;
import fencerow.needs.Question;
import fencerow.terms.Money;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.AnswerWords;
import fencerow.wording.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Thinks about what to show of a ranking. */
final class ResultsInteractor {
    private static final int CARDS = 3;
    private static final int LINES = 4;
    private static final int PAIR_UNITS = 10;
    /** Scores this near each other say no more than that both are worth a look. */
    private static final int CLOSE_POINTS = 10;

    private final MatchWords words;
    private final Showroom showroom;
    private final AnswerWords answerWords;
    private final Phrases phrases;

    ResultsInteractor(Showroom showroom, AnswerWords answerWords) {
        this.showroom = showroom;
        this.answerWords = answerWords;
        this.phrases = answerWords.phrases();
        this.words = new MatchWords(showroom, phrases);
    }

    ResultsModel model(Outlook outlook, boolean all) {
        Visit visit = outlook.visit();
        Ranking ranking = outlook.ranking();
        List<Match> matches = ranking.matches();
        List<Match> first = matches.subList(0, Math.min(CARDS, matches.size()));
        List<Match> others = matches.subList(first.size(), matches.size());
        List<Match> shown = all ? others : others.subList(0, Math.min(LINES, others.size()));
        Money longest = MatchWords.longest(first);
        List<UnitCard> cards = first.stream()
                .map(match -> words.card(match, ranking, visit, longest))
                .toList();
        int count = ranking.ready().size();
        return new ResultsModel(count, phrases.texts().get("kiosk.results.summary",
                        Map.of("count", count, "all", matches.size())),
                notes(visit, first), rescue(ranking), cards, groups(shown, ranking, visit),
                others.size() - shown.size(), words.asked(visit, ranking), visit.pinned().size());
    }

    private List<String> notes(Visit visit, List<Match> first) {
        List<String> notes = new ArrayList<>();
        if (visit.answers().equals(Answers.NONE)) {
            notes.add(phrases.texts().get("kiosk.results.nothing-told"));
        }
        if (first.size() > 1 && isClose(first.get(0), first.get(1)) && notes.isEmpty()) {
            notes.add(phrases.texts().get("kiosk.results.close"));
        }
        return notes;
    }

    private static boolean isClose(Match one, Match other) {
        return one.verdict() == other.verdict()
                && one.verdict().hasPlan()
                && one.overBudget().isPresent() == other.overBudget().isPresent()
                && Math.abs(one.score().percent() - other.score().percent()) < CLOSE_POINTS;
    }

    private Optional<Asked.Change> rescue(Ranking ranking) {
        if (!ranking.ready().isEmpty()) {
            return Optional.empty();
        }
        return ranking.whatIf().changes().stream()
                .max(Comparator.comparingInt(change -> change.gained().size()))
                .map(change -> new Asked.Change(change.dropped().id(), phrases.change(change)));
    }

    /**
     * The two must-haves, and the one answer, without which the most units could be made ready; empty where there are
     * none such. The jobs are left alone: without them there is nothing to do. Takes long.
     */
    Optional<ResultsModel.InTheWay> inTheWay(Outlook outlook) {
        Visit visit = outlook.visit();
        List<String> sentences = new ArrayList<>();
        outlook.ranking().whatIf()
                .pair(PAIR_UNITS, BackRoom::isDropped)
                .ifPresent(pair -> sentences.add(phrases.change(pair)));
        Optional<Question> most = Optional.empty();
        int freed = 0;
        for (Question question : showroom.questionnaire().applying(visit.answers())) {
            boolean given = visit.answers().find(question.id()).isPresent();
            if (given && question.choose() != Question.Choose.JOBS) {
                Visit without = visit.unanswered(question.id());
                int ready = showroom.ranking(without, outlook.ranking()).ready().size();
                if (ready > freed) {
                    freed = ready;
                    most = Optional.of(question);
                }
            }
        }
        int count = freed;
        most.ifPresent(question -> sentences.add(phrases.texts().get("kiosk.results.in-the-way", Map.of(
                "ask", answerWords.ask(question),
                "answer", visit.answers().find(question.id())
                        .map(answer -> answerWords.answer(question, answer)).orElse(""),
                "count", count))));
        return sentences.isEmpty()
                ? Optional.empty()
                : Optional.of(new ResultsModel.InTheWay(sentences, most.map(Question::id)));
    }

    /** Whether nothing is ready and no single must-have is to blame. */
    static boolean isStuck(ResultsModel model) {
        return model.count() == 0 && model.rescue().isEmpty();
    }

    private List<ResultsModel.Group> groups(List<Match> shown, Ranking ranking, Visit visit) {
        Map<Verdict, List<UnitLine>> byVerdict = new EnumMap<>(Verdict.class);
        for (Match match : shown) {
            byVerdict.computeIfAbsent(match.verdict(), verdict -> new ArrayList<>())
                    .add(words.line(match, ranking, visit));
        }
        return byVerdict.entrySet().stream()
                .map(entry -> new ResultsModel.Group(
                        phrases.texts().get("verdict." + entry.getKey().id() + ".name"), entry.getValue()))
                .toList();
    }
}
