package hingewise.wizard.model;

import hingewise.assessment.Assessor;
import hingewise.intake.ListingReader;
import hingewise.rulebook.RuleBook;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Callable;
import java.util.function.Function;

/**
 * What the wizard works with.
 *
 * @param rules reads rule book and prices; what it throws is shown, so its message is a sentence
 * @param reader makes a reader of texts by that rule book
 * @param shelf lists the cases that can be opened
 * @param cases the folder in which new cases are kept
 * @param by who is recorded as giving the answers
 * @param clock when they are given
 * @param reckoning runs what takes long; several may run at once
 * @param pricing reckons the money, which takes longest; several may run at once
 * @param keeping reads and writes files, one after the other
 */
public record Setup(
        Callable<Assessor> rules,
        Function<RuleBook, ListingReader> reader,
        Callable<Shelf> shelf,
        Path cases,
        String by,
        Clock clock,
        Background reckoning,
        Background pricing,
        Background keeping) {}
