package hingewise.intake;

import hingewise.intake.Clauses.Sentence;
import hingewise.rulebook.Phrase;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds the claims of one sentence. */
final class SentenceReader {
    private static final double HEDGED = .7;
    private static final double HEARD = .6;
    private static final double CARRIED = .9;
    private static final double MISSPELT = .95;
    private static final int LONGEST_ANSWER = 3;
    /** A longer first clause does not take up what the sentence before said. */
    private static final int LONGEST_TAKING = 5;

    private final Roles roles;
    private final Map<Integer, List<Rule>> byHead;
    private final Denial denial;
    private final Binding binding;
    private final Silence silence;

    SentenceReader(Roles roles, BitSet heads, Map<Integer, List<Rule>> byHead) {
        this.roles = roles;
        this.byHead = byHead;
        this.denial = new Denial(roles, heads);
        this.binding = new Binding(roles, heads);
        this.silence = new Silence(roles);
    }

    /**
     * What a sentence was found to say.
     *
     * @param spoken parts that it spoke of
     * @param last its last clause that said something of this phone
     */
    record Read(List<Found> found, List<List<Mention>> spoken, Optional<Clause> last) {
        static final Read NOTHING = new Read(List.of(), List.of(), Optional.empty());
    }

    /** What words like "yes" and "no" answer. */
    enum Reply {
        NONE,
        YES,
        NO,
        UNKNOWN
    }

    /**
     * Something that is said.
     *
     * @param clause in which it is said
     * @param of parts it is said of
     * @param turned whether it is turned round by what stands outside its clause
     */
    private record Saying(Clause clause, Mention what, List<Mention> of, boolean turned, double certainty) {}

    /**
     * @param next the clause behind this sentence, which may answer it
     * @param earlier what the sentence before said
     */
    Read read(Sentence sentence, Optional<Clause> next, Read earlier) {
        List<Clause> clauses = sentence.clauses();
        if (clauses.stream().anyMatch(c -> c.has(roles.sarcasm()))) {
            return Read.NOTHING;
        }
        boolean question = sentence.after() == Word.Gap.QUESTION;
        List<Found> found = new ArrayList<>();
        List<List<Mention>> waiting = List.of();
        List<List<Mention>> spoken = List.of();
        boolean back = clauses.get(0).has(roles.there())
                || clauses.get(0).groups(roles).isEmpty()
                        && clauses.get(0).at(clauses.get(0).from(), roles.pronoun());
        List<Saying> announced = new ArrayList<>();
        boolean heard = false;
        BitSet silent = silence.of(clauses);
        Optional<Clause> claimed = isBare(clauses.get(0)) ? earlier.last() : Optional.empty();
        for (int i = 0; i < clauses.size(); i++) {
            Clause clause = clauses.get(i);
            if (clause.at(clause.from(), roles.but())) {
                waiting = List.of();
            }
            heard |= clause.has(roles.hearsay());
            boolean last = i == clauses.size() - 1;
            Reply reply = last && question
                    ? next.map(this::begins).orElse(Reply.NONE)
                    : last || !clauses.get(i + 1).before().announces() ? Reply.NONE : reply(clauses.get(i + 1));
            boolean mute = question && !(last && reply != Reply.NONE) || reply == Reply.UNKNOWN || silent.get(i);
            double certainty = Suggestion.PLAIN * (heard ? HEARD : 1) * (hedged(clauses, i) ? HEDGED : 1);
            List<Mention> sayings =
                    clause.mentions().stream().filter(binding::saysSomething).toList();
            List<Clause.Group> groups = clause.groups(roles);
            boolean turned = (reply == Reply.NO) != denial.goesOn(clauses, i);
            if (sayings.isEmpty() && !groups.isEmpty()) {
                List<List<Mention>> here =
                        groups.stream().flatMap(g -> g.each().stream()).toList();
                boolean exception = clause.has(roles.except());
                tick(clause).ifPresent(t -> {
                    if (!mute) {
                        sayOf(new Saying(clause, t.what, List.of(), t.turned, certainty), here, found);
                    }
                });
                List<Saying> taken = exception
                        ? turnedWorks(clauses.subList(0, i), certainty)
                        : !announced.isEmpty()
                                ? announced
                                : claimed.stream()
                                        .flatMap(c -> takenUp(c, clause, certainty))
                                        .toList();
                for (Saying s : taken) {
                    if (!mute) {
                        sayOf(s, here, found);
                    }
                }
                waiting = exception || !taken.isEmpty() && announced.isEmpty()
                        ? List.of()
                        : Binding.joined(waiting, here);
            }
            for (Mention m : clause.mentions()) {
                if (!mute && (binding.saysSomething(m) || m.isInAny(roles.topics()))) {
                    List<List<Mention>> of = binding.of(clause, m, waiting, spoken);
                    int before = found.size();
                    sayOf(new Saying(clause, m, List.of(), turned, certainty), of, found);
                    if (back && found.size() == before && of.isEmpty()) {
                        sayOf(new Saying(clause, m, List.of(), turned, certainty * CARRIED), earlier.spoken(), found);
                    }
                }
            }
            if (!sayings.isEmpty()) {
                claimed = mute ? Optional.empty() : Optional.of(clause);
                if (!groups.isEmpty()) {
                    spoken = groups.get(0).each();
                } else if (!waiting.isEmpty()) {
                    spoken = waiting;
                }
                waiting = List.of();
                if (groups.isEmpty() && !mute && !last && clauses.get(i + 1).before() == Word.Gap.COLON) {
                    double c = certainty;
                    announced = sayings.stream()
                            .map(m -> new Saying(clause, m, List.of(), false, c))
                            .toList();
                }
            }
        }
        return new Read(found, spoken.isEmpty() && back ? earlier.spoken() : spoken, claimed);
    }

    private Reply reply(Clause clause) {
        return clause.size() > LONGEST_ANSWER ? Reply.NONE : begins(clause);
    }

    /** What a clause answers by its first words. */
    Reply begins(Clause clause) {
        if (clause.has(roles.unknown())) {
            return Reply.UNKNOWN;
        }
        Optional<Mention> first = clause.mentions().stream()
                .filter(m -> m.from() == clause.from())
                .findFirst();
        if (first.isEmpty()) {
            return Reply.NONE;
        }
        Mention word = first.get();
        return word.isIn(roles.noWord()) ? Reply.NO : word.isIn(roles.yesWord()) ? Reply.YES : Reply.NONE;
    }

    /** A hedge counts in its own clause, and in the next when it says nothing else: "I think, …". */
    private boolean hedged(List<Clause> clauses, int i) {
        return clauses.get(i).has(roles.hedge())
                || i > 0
                        && clauses.get(i - 1).has(roles.hedge())
                        && clauses.get(i - 1).mentions().stream().noneMatch(binding::saysSomething);
    }

    /** A yes or a no behind a part stands for "works" and its opposite: "speaker yes, fingerprint no". */
    private Optional<Saying> tick(Clause clause) {
        return clause.mentions().stream()
                .filter(m -> m.to() == clause.to() && m.from() > clause.from())
                .filter(m -> m.isIn(roles.noWord()) || m.isIn(roles.yesWord()))
                .filter(m -> roles.works() >= 0)
                .findFirst()
                .map(m -> {
                    BitSet works = new BitSet();
                    works.set(roles.works());
                    Mention what = new Mention(m.from(), m.to(), works, false, m.exact());
                    return new Saying(clause, what, List.of(), m.isIn(roles.noWord()), Suggestion.PLAIN);
                });
    }

    /** "Everything works except …": what works there does not work here. */
    private List<Saying> turnedWorks(List<Clause> before, double certainty) {
        for (int i = before.size() - 1; i >= 0; i--) {
            Clause clause = before.get(i);
            Optional<Mention> works = clause.first(roles.works());
            if (works.isPresent()) {
                boolean denied = denial.count(clause, works.get(), List.of()) % 2 == 1;
                return denied ? List.of() : List.of(new Saying(clause, works.get(), List.of(), true, certainty));
            }
        }
        return List.of();
    }

    /** Whether it is short and there is nothing in it that is not understood. */
    private static boolean isBare(Clause clause) {
        return clause.size() <= LONGEST_TAKING
                && IntStream.range(clause.from(), clause.to()).allMatch(clause::mentioned);
    }

    /**
     * What an earlier clause says, taken up for other parts: "… on the pad, but not by cable", "… does not, the cable
     * does", "…, the back too".
     */
    private Stream<Saying> takenUp(Clause before, Clause clause, double certainty) {
        boolean denies = clause.has(roles.not()) || clause.has(roles.notAfter());
        boolean too = clause.has(roles.too());
        if (!denies && !too && !clause.has(roles.does())) {
            return Stream.of();
        }
        return before.mentions().stream().filter(binding::mayTurnOn).flatMap(m -> {
            boolean denied = denial.count(before, m, List.of()) % 2 == 1;
            boolean same = too && denied == denies;
            return same || denied != denies
                    ? Stream.of(new Saying(before, m, List.of(), !same, certainty))
                    : Stream.of();
        });
    }

    private void sayOf(Saying s, List<List<Mention>> parts, List<Found> found) {
        if (parts.isEmpty()) {
            say(s, found);
        }
        parts.forEach(p -> say(new Saying(s.clause, s.what, p, s.turned, s.certainty), found));
    }

    private void say(Saying saying, List<Found> found) {
        saying.what.sets().stream()
                .mapToObj(n -> byHead.getOrDefault(n, List.of()))
                .flatMap(List::stream)
                .distinct()
                .forEach(rule -> match(rule, saying).ifPresent(found::add));
    }

    private Optional<Found> match(Rule rule, Saying saying) {
        Clause clause = saying.clause;
        if (!rule.past() && clause.has(roles.past())) {
            return Optional.empty();
        }
        List<Mention> used = new ArrayList<>();
        used.add(saying.what);
        for (Rule.Term term : rule.rest()) {
            List<Mention> of =
                    saying.of.stream().filter(t -> t.isInAny(term.any())).toList();
            List<Mention> beside = term.topic()
                    ? of
                    : clause.mentions().stream()
                            .filter(o -> !o.overlaps(saying.what) && o.isInAny(term.any()))
                            .toList();
            boolean met = switch (term.mode()) {
                case PRESENT -> !beside.isEmpty();
                case ABSENT -> beside.isEmpty();
                case UNLESS_SAID -> !of.isEmpty() || saying.of.stream().allMatch(t -> t.isIn(roles.phone()));
            };
            if (!met) {
                return Optional.empty();
            }
            if (term.mode() == Phrase.Mode.PRESENT) {
                used.add(beside.get(0));
            }
        }
        int denials = used.stream()
                .filter(u -> u == saying.what || binding.saysSomething(u))
                .mapToInt(u -> denial.count(clause, u, used))
                .max()
                .orElse(0);
        if (denials > 1) {
            return Optional.empty();
        }
        boolean denied = (denials == 1) != saying.turned;
        if (denied && !rule.turns()) {
            return Optional.empty();
        }
        boolean exact = used.stream().allMatch(Mention::exact);
        int terms = (int) (1
                + rule.rest().stream()
                        .filter(t -> t.mode() == Phrase.Mode.PRESENT)
                        .count());
        return Optional.of(span(rule, saying, used, denied, saying.certainty * (exact ? 1 : MISSPELT), terms));
    }

    /** From the first word used in the clause to the last, the denial included. */
    private Found span(Rule rule, Saying saying, List<Mention> used, boolean denied, double certainty, int terms) {
        List<Word> words = saying.clause.sentence();
        int from = saying.what.from();
        int to = saying.what.to();
        for (Mention m : saying.clause.mentions()) {
            boolean denies = m.isIn(roles.not()) || m.isIn(roles.notAny()) || m.isIn(roles.notAfter());
            if (used.contains(m) || denied && denies) {
                from = Math.min(from, m.from());
                to = Math.max(to, m.to());
            }
        }
        return new Found(
                rule.about(),
                rule.yes() != denied,
                certainty,
                terms,
                words.get(from).start(),
                words.get(to - 1).end());
    }
}
