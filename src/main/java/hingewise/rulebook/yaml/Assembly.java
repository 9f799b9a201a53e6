package hingewise.rulebook.yaml;

import hingewise.plain.Quoted;
import hingewise.rulebook.Access;
import hingewise.rulebook.Cause;
import hingewise.rulebook.Caution;
import hingewise.rulebook.Choice;
import hingewise.rulebook.Component;
import hingewise.rulebook.Confirmation;
import hingewise.rulebook.Examples;
import hingewise.rulebook.Family;
import hingewise.rulebook.Grade;
import hingewise.rulebook.Hint;
import hingewise.rulebook.History;
import hingewise.rulebook.Language;
import hingewise.rulebook.Lapse;
import hingewise.rulebook.Marginal;
import hingewise.rulebook.Model;
import hingewise.rulebook.Observation;
import hingewise.rulebook.Part;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.RuleCase;
import hingewise.rulebook.Tool;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** The documents of a rule book put together and checked against each other. */
final class Assembly {
    private final Context context;

    private Assembly(Context context) {
        this.context = context;
    }

    /**
     * A rule book, to be handed out only if no problem was told meanwhile.
     *
     * @param whole whether every section of every file could be opened
     * @param bookFile where what must be said once is to be added if it is missing
     */
    static RuleBook of(List<Document> documents, Entries entries, boolean whole, Place bookFile, Problems problems) {
        BookReader.Book book = new BookReader(Context.before(problems, entries, whole), documents, bookFile).read();
        Assembly assembly = new Assembly(book.context());
        RuleBook rules = assembly.rules(book);
        if (whole) {
            new Consistency(rules, entries, problems).check();
        }
        return rules;
    }

    /** The example sentences, likewise; none where the documents that hold them were left out. */
    static List<Examples> examples(Entries entries, boolean whole, Problems problems) {
        Assembly assembly = new Assembly(Context.before(problems, entries, whole));
        return List.copyOf(
                assembly.each(Section.EXAMPLES, PhraseReader::examples).values());
    }

    private RuleBook rules(BookReader.Book book) {
        Map<String, Component> components = each(Section.COMPONENTS, ModelReader::component);
        Map<String, Tool> tools = each(Section.TOOLS, (id, f) -> new Tool(id, f.text("label")));
        Map<String, Family> families = each(Section.FAMILIES, ModelReader::family);
        Map<String, History> histories = each(Section.HISTORIES, ModelReader::history);
        Map<String, Cause> causes = each(Section.CAUSES, ModelReader::cause);
        Map<String, Observation> observations =
                each(Section.OBSERVATIONS, (id, f) -> QuestionReader.observation(id, f, book));
        Map<String, Choice> choices = each(Section.CHOICES, QuestionReader::choice);
        Map<String, Confirmation> confirmations = each(Section.CONFIRMATIONS, ActReader::confirmation);
        Map<String, Access> access = each(Section.ACCESS, ActReader::access);
        Map<String, Part> parts = each(Section.PARTS, ActReader::part);
        Map<String, Caution> cautions = each(Section.CAUTIONS, ActReader::caution);
        Map<String, Lapse> lapses = each(Section.MEANWHILE, ActReader::lapse);
        Map<String, Grade> grades = each(Section.GRADES, ActReader::grade);
        Map<String, Marginal> marginals = each(Section.MARGINALS, ModelReader::marginal);
        Map<String, Language> languages = each(Section.LANGUAGES, PhraseReader::language);
        Map<String, Hint> hints = each(Section.HINTS, PhraseReader::hint);
        CaseReader caseReader = new CaseReader(observations, choices);
        Map<String, RuleCase> cases = each(Section.CASES, caseReader::read);
        Map<String, Model> models = each(Section.MODELS, ModelReader::model);
        RuleBook rules = new RuleBook(
                book.title(),
                book.bench(),
                book.words(),
                book.reliability(),
                components,
                tools,
                families,
                histories,
                causes,
                observations,
                choices,
                confirmations,
                access,
                parts,
                cautions,
                lapses,
                grades,
                marginals,
                languages,
                hints,
                new ArrayList<>(cases.values()));
        return rules.withModels(List.copyOf(models.values()));
    }

    private <T> Map<String, T> each(Section section, BiFunction<String, Fields, T> reader) {
        Map<String, T> result = new LinkedHashMap<>();
        for (Entries.Entry entry : context.entries().all(section)) {
            String owner = section.singular() + " " + Quoted.of(entry.id());
            Fields.read(context, entry.value(), owner, f -> reader.apply(entry.id(), f))
                    .ifPresent(t -> result.putIfAbsent(entry.id(), t));
        }
        return result;
    }
}
