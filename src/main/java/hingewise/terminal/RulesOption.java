package hingewise.terminal;

import hingewise.intake.ListingReader;
import hingewise.intake.store.Readers;
import hingewise.rulebook.RuleBook;
import hingewise.rulebook.yaml.RuleFiles;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The rule book to use; the option may stand before the command or after it. */
final class RulesOption {
    private static final String NAME = "--rules";

    @Option(names = NAME, paramLabel = "DIR", description = "Use the rule book in this folder.")
    private Optional<Path> folder = Optional.empty();

    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec command;

    /** The folder that was named; empty for the rules that come with the program. */
    Optional<Path> folder() {
        return folder.or(
                () -> Optional.ofNullable(command).map(CommandSpec::parent).flatMap(RulesOption::givenTo));
    }

    RuleFiles files() {
        return new RuleFiles(folder());
    }

    RuleBook read() {
        return Inputs.rules(files());
    }

    /** @param rules as they were read */
    ListingReader reader(RuleBook rules, Console console) {
        return Readers.of(
                files(),
                rules,
                () -> console.complain("learning from the examples of this rule book, which are not the program's own:"
                        + " this may take a few minutes"));
    }

    private static Optional<Path> givenTo(CommandSpec outer) {
        OptionSpec option = outer.findOption(NAME);
        return option == null ? Optional.empty() : option.getValue();
    }
}
