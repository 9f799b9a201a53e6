package hingewise.terminal;

import hingewise.rulebook.RuleBook;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The rule book to use. */
final class RulesOption {
    @Option(names = "--rules", paramLabel = "DIR", description = "Use the rule book in this folder.")
    private Optional<Path> folder = Optional.empty();

    RuleBook read() {
        return Inputs.rules(folder);
    }
}
