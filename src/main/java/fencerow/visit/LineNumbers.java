package fencerow.visit;

import fencerow.checklist.ChecklistLine;
import fencerow.checklist.LineNumber;
import fencerow.match.Levels;
import fencerow.needs.Answers;
import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.sizing.FieldMachine;
import fencerow.stock.Attachment;
import fencerow.stock.Catalogue;
import fencerow.stock.Model;
import fencerow.terms.Amount;
import fencerow.terms.Area;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Figure;
import fencerow.terms.JobId;
import fencerow.terms.MachineClass;
import fencerow.terms.Relation;
import fencerow.terms.Spread;
import fencerow.terms.Threshold;
import fencerow.terms.Time;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Puts the shopper's own numbers to the lines of their list. */
final class LineNumbers {
    private static final String BALLAST = "rear-ballast";
    private static final CapabilityId LOADER_LIFT = CapabilityId.of(Figure.LOADER_LIFT);

    private final Needs needs;
    private final Catalogue catalogue;
    private final Workbook workbook;
    private final Set<MachineClass> classes;

    /** For machines of these classes. */
    LineNumbers(Needs needs, Catalogue catalogue, Workbook workbook, Set<MachineClass> classes) {
        this.needs = needs;
        this.catalogue = catalogue;
        this.workbook = workbook;
        this.classes = classes;
    }

    ChecklistLine on(ChecklistLine line) {
        return line.template().number().flatMap(this::find).map(line::with).orElse(line);
    }

    private Optional<LineNumber> find(LineNumber.Kind kind) {
        Optional<Spread<Amount>> amount = switch (kind) {
            case LIFT -> lift();
            case HEIGHT, MASS, GATE_WIDTH -> fixed(kind, Relation.AT_MOST).min(bySize()).map(Spread::exactly);
            case LOADER_HEIGHT -> fixed(kind, Relation.AT_LEAST).max(bySize()).map(Spread::exactly);
            case PTO_POWER -> asked(Figure.PTO_POWER);
            case HITCH_LIFT -> asked(Figure.HITCH_LIFT);
            case FLOW -> asked(Figure.HYDRAULIC_FLOW);
            case MOWING_WIDTH -> mowingWidth().max(bySize()).map(Spread::exactly);
            case BALLAST -> heaviest().flatMap(this::ballast);
        };
        return amount.map(known -> new LineNumber(kind, known));
    }

    private static Comparator<Amount> bySize() {
        return Comparator.comparingDouble(Amount::si);
    }

    /** The rating that does on any of the showroom's models of the shopper's classes. */
    private Optional<Spread<Amount>> lift() {
        return needs.musts().stream()
                .map(Requirement::demand)
                .filter(demand -> demand.of().equals(LOADER_LIFT) && demand.relation() == Relation.AT_LEAST)
                .flatMap(demand -> models().map(model -> Levels.on(model, demand.threshold())))
                .max(bySize())
                .map(Spread::exactly);
    }

    private Stream<Model> models() {
        return catalogue.models().stream().filter(model -> classes.contains(model.machineClass()));
    }

    private Stream<Amount> fixed(LineNumber.Kind kind, Relation relation) {
        return needs.musts().stream()
                .map(Requirement::demand)
                .filter(demand -> demand.of().equals(kind.capability()) && demand.relation() == relation)
                .flatMap(demand -> fixed(demand).stream());
    }

    private static Optional<Amount> fixed(Demand demand) {
        return demand.threshold() instanceof Threshold.Fixed fixed ? Optional.of(fixed.amount()) : Optional.empty();
    }

    private Stream<Amount> mowingWidth() {
        return needs.musts().stream()
                .map(must -> must.demand().threshold())
                .filter(Threshold.MowingWidth.class::isInstance)
                .map(Threshold.MowingWidth.class::cast)
                .map(lawn -> FieldMachine.LAWN_MOWER
                        .typicalWidth(new Area(lawn.area().si()), new Time(lawn.time().si()))
                        .amount());
    }

    private Optional<Amount> heaviest() {
        return needs.musts().stream()
                .map(must -> must.demand().threshold())
                .filter(Threshold.Counterweight.class::isInstance)
                .map(each -> ((Threshold.Counterweight) each).load())
                .max(bySize());
    }

    /** What the showroom's models of the shopper's classes need behind, from the least to the most. */
    private Optional<Spread<Amount>> ballast(Amount load) {
        List<Amount> all = workbook.find(BALLAST).stream()
                .flatMap(sheet -> models()
                        .map(model -> sheet.fill(Answers.NONE, Optional.of(model)))
                        .filter(filled -> filled.inputs().numbers().keySet().containsAll(
                                UnitFigure.Kind.BALLAST.needed()))
                        .flatMap(filled -> sheet.calculation().run(filled.inputs().with("front-load", load))
                                .findAmount("ballast-on-hitch").stream())
                        .map(Spread::high))
                .sorted(bySize())
                .toList();
        boolean any = !all.isEmpty() && all.get(all.size() - 1).si() > 0;
        return any ? Optional.of(Spread.of(all.get(0), all.get(all.size() - 1))) : Optional.empty();
    }

    /** What the least demanding tool for the most demanding of the shopper's jobs asks of a tractor's figure. */
    private Optional<Spread<Amount>> asked(Figure figure) {
        return needs.musts().stream()
                .flatMap(must -> must.why().job().stream())
                .map(job -> least(job, figure))
                .filter(amount -> amount.si() > 0)
                .max(bySize())
                .map(Spread::exactly);
    }

    private Amount least(JobId job, Figure figure) {
        return catalogue.items().stream()
                .filter(Attachment.class::isInstance)
                .map(Attachment.class::cast)
                .filter(tool -> tool.does().contains(job))
                .filter(tool -> tool.classes().stream().anyMatch(classes::contains))
                .map(tool -> asked(tool, figure))
                .min(bySize())
                .orElse(new Amount(figure.dimension(), 0));
    }

    private static Amount asked(Attachment tool, Figure figure) {
        return tool.needs().stream()
                .filter(demand -> demand.of().equals(CapabilityId.of(figure)) && demand.relation() == Relation.AT_LEAST)
                .flatMap(demand -> fixed(demand).stream())
                .max(bySize())
                .orElse(new Amount(figure.dimension(), 0));
    }
}
