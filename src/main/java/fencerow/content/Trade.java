package fencerow.content;

import fencerow.checklist.Composer;
import fencerow.checklist.LineTemplate;
import fencerow.desk.Settings;
import fencerow.needs.Job;
import fencerow.needs.Question;
import fencerow.needs.Questionnaire;
import fencerow.quiz.Quiz;
import fencerow.quiz.QuizQuestion;
import fencerow.stock.Catalogue;
import fencerow.stock.Item;
import fencerow.stock.Model;
import fencerow.stock.PriceBook;
import fencerow.stock.Unit;
import fencerow.terms.Capability;
import fencerow.terms.Feature;
import fencerow.visit.Showroom;
import fencerow.visit.Workbook;
import fencerow.visit.Worksheet;
import java.util.List;

/** All records read but words and settings; some may be missing as long as problems were reported. */
record Trade(
        List<Capability> capabilities,
        List<Feature> features,
        List<Item> items,
        List<Model> models,
        PriceBook prices,
        List<Question> questions,
        List<Job> jobs,
        List<QuizQuestion> quiz,
        List<LineTemplate> lines,
        List<Unit> units,
        List<Worksheet> worksheets,
        UnitReader unitReader) {

    /** The showroom they make, once none is missing. */
    Showroom showroom(SettingsReader.Set set) {
        Settings.PaperSettings paper = set.settings().paper();
        return Showroom.of(
                new Catalogue(features, capabilities, items, models, prices),
                new Questionnaire(questions, jobs),
                new Quiz(quiz),
                new Composer(lines, paper.pageOne(), paper.signs()),
                set.weights(),
                units,
                new Workbook(worksheets));
    }
}
