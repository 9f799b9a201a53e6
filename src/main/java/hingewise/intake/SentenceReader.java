package hingewise.intake;

import hingewise.intake.Clauses.Sentence;
import hingewise.intake.Replies.Reply;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Finds the claims of one sentence. */
final class SentenceReader {
    private static final double HEDGED = .7;
    private static final double HEARD = .6;
    private static final double CARRIED = .9;
    private static final int LONGEST_HEADING = 5;
    private static final int LONGEST_WHOLE = 30;
    private static final int LONGEST_AFTERTHOUGHT = 7;

    private final Roles roles;
    private final Denial denial;
    private final Binding binding;
    private final Matching matching;
    private final Silence silence;
    private final Replies replies;
    private final TakingUp takingUp;

    SentenceReader(Roles roles, BitSet heads, Map<Integer, List<Rule>> byHead) {
        this.roles = roles;
        this.denial = new Denial(roles, heads);
        this.binding = new Binding(roles, heads);
        this.matching = new Matching(roles, byHead, denial, binding);
        this.silence = new Silence(roles);
        this.replies = new Replies(roles);
        this.takingUp = new TakingUp(roles, denial, binding);
    }

    Replies replies() {
        return replies;
    }

    /**
     * What a sentence was found to say.
     *
     * @param spoken parts that it spoke of
     * @param last its last clause that said something of this phone
     * @param heading parts that it named, if it is short and says nothing of them: what follows is about them
     * @param told what it tells as it stands
     */
    record Read(
            List<Found> found,
            List<List<Mention>> spoken,
            Optional<Clause> last,
            List<List<Mention>> heading,
            List<Told> told) {
        static final Read NOTHING = new Read(List.of(), List.of(), Optional.empty(), List.of(), List.of());
    }

    /**
     * Words that tell of this phone as they stand: neither asked nor turned by others.
     *
     * @param past whether they tell what was
     * @param silent whether they seem to tell of another phone, or on a condition, or what nobody looked at
     * @param part whether they name a part of the phone
     */
    record Told(List<Word> words, boolean past, boolean silent, boolean part, double certainty) {}

    /**
     * @param next the clause behind this sentence, which may answer it
     * @param earlier what the sentence before said
     */
    Read read(Sentence sentence, Optional<Clause> next, Read earlier) {
        if (sentence.clauses().stream().anyMatch(c -> c.has(roles.sarcasm()))) {
            return Read.NOTHING;
        }
        Course course = new Course(sentence, next, earlier);
        for (int i = 0; i < sentence.clauses().size(); i++) {
            course.clause(i);
        }
        if (sentence.clauses().size() > 1 && sentence.words().size() <= LONGEST_WHOLE) {
            course.whole(sentence);
        }
        course.altogether();
        return course.read();
    }

    /** A sentence while it is read, clause by clause. */
    private final class Course {
        private final List<Clause> clauses;
        private final boolean question;
        private final Optional<Clause> next;
        private final Read earlier;
        /** Whether the sentence speaks of what the one before spoke of. */
        private final boolean back;

        private final List<Mention> context;
        private final BitSet silent;
        private final List<Found> found = new ArrayList<>();
        private final List<Told> told = new ArrayList<>();
        /** Parts of which nothing was said yet. */
        private List<List<Mention>> waiting;

        private List<List<Mention>> spoken = List.of();
        /** What was said ahead of the parts it is said of. */
        private List<Saying> announced = List.of();

        private boolean heard;
        private Optional<Clause> claimed;

        Course(Sentence sentence, Optional<Clause> next, Read earlier) {
            this.clauses = sentence.clauses();
            this.question = sentence.after() == Word.Gap.QUESTION;
            this.next = next;
            this.earlier = earlier;
            Clause first = clauses.get(0);
            this.back = first.has(roles.there()) || first.groups().isEmpty() && first.at(first.from(), roles.pronoun());
            this.context = clauses.stream().allMatch(c -> c.groups().isEmpty())
                    ? earlier.spoken().stream().flatMap(List::stream).toList()
                    : List.of();
            this.silent = silence.of(clauses);
            this.claimed = Replies.isBare(first) ? earlier.last() : Optional.empty();
            this.waiting = first.groups().isEmpty() ? earlier.heading() : List.of();
        }

        Read read() {
            return new Read(found, spoken.isEmpty() && back ? earlier.spoken() : spoken, claimed, heading(), told);
        }

        /** "The hinge." stands ahead of what is said of it; the phone itself is no heading. */
        private List<List<Mention>> heading() {
            Clause only = clauses.get(0);
            boolean names = clauses.size() == 1
                    && only.size() <= LONGEST_HEADING
                    && !only.groups().isEmpty()
                    && only.mentions().stream().noneMatch(binding::saysSomething)
                    && only.groups().stream().noneMatch(g -> g.topics().stream().allMatch(t -> t.isIn(roles.phone())));
            return names
                    ? only.groups().stream().flatMap(g -> g.each().stream()).toList()
                    : List.of();
        }

        void clause(int i) {
            Clause clause = clauses.get(i);
            if (clause.at(clause.from(), roles.but()) && !clause.groups().isEmpty()) {
                waiting = List.of();
            }
            heard |= clause.has(roles.hearsay());
            Reply reply = reply(i);
            boolean unanswered = question && (!isLast(i) || reply == Reply.NONE);
            boolean mute = unanswered || reply == Reply.UNKNOWN || silent.get(i);
            double certainty = Suggestion.PLAIN * (heard ? HEARD : 1) * (hedged(i) ? HEDGED : 1);
            boolean turned = (reply == Reply.NO) != denial.goesOn(clauses, i);
            List<Mention> sayings =
                    clause.mentions().stream().filter(binding::saysSomething).toList();
            if (sayings.isEmpty() && !clause.groups().isEmpty()) {
                partsOnly(i, mute, certainty);
            }
            if (!mute) {
                clause.mentions().forEach(m -> mention(clause, m, turned, certainty));
            }
            if (!turned && !question && reply != Reply.UNKNOWN) {
                tell(i, certainty);
            }
            if (!sayings.isEmpty()) {
                claimed = mute ? Optional.empty() : Optional.of(clause);
                said(i, sayings, mute, certainty);
            }
        }

        private boolean isLast(int i) {
            return i == clauses.size() - 1;
        }

        private Reply reply(int i) {
            if (isLast(i)) {
                return question ? next.map(replies::begins).orElse(Reply.NONE) : Reply.NONE;
            }
            Clause behind = clauses.get(i + 1);
            return behind.before().announces() ? replies.announced(behind) : Reply.NONE;
        }

        /** A hedge counts in its own clause, and in the next when it says nothing else: "I think, …". */
        private boolean hedged(int i) {
            return clauses.get(i).has(roles.hedge())
                    || i > 0
                            && clauses.get(i - 1).has(roles.hedge())
                            && clauses.get(i - 1).mentions().stream().noneMatch(binding::saysSomething);
        }

        /** A clause that only names parts. */
        private void partsOnly(int i, boolean mute, double certainty) {
            Clause clause = clauses.get(i);
            List<List<Mention>> here =
                    clause.groups().stream().flatMap(g -> g.each().stream()).toList();
            boolean exception = clause.has(roles.except());
            List<Saying> taken = exception
                    ? takingUp.exception(clauses.subList(0, i), certainty)
                    : !announced.isEmpty()
                            ? announced
                            : claimed.stream()
                                    .flatMap(c -> takingUp.from(c, clause, certainty))
                                    .toList();
            if (!mute) {
                replies.tick(clause, certainty).ifPresent(t -> found.addAll(matching.of(t, here)));
                taken.forEach(s -> found.addAll(matching.of(s, here)));
            }
            waiting = exception || !taken.isEmpty() && announced.isEmpty() ? List.of() : Binding.joined(waiting, here);
        }

        private void mention(Clause clause, Mention m, boolean turned, double certainty) {
            if (!binding.isHead(m)) {
                return;
            }
            List<List<Mention>> of = binding.of(clause, m, waiting, spoken);
            List<Found> claims = matching.of(new Saying(clause, m, List.of(), context, turned, certainty), of);
            found.addAll(claims);
            if ((back || goesOn()) && claims.isEmpty() && of.isEmpty()) {
                found.addAll(matching.of(new Saying(clause, m, turned, certainty * CARRIED), earlier.spoken()));
            }
        }

        /** Terms that stand in several clauses of a sentence, where none of them is silent. */
        void whole(Sentence sentence) {
            if (!silent.isEmpty() || question) {
                return;
            }
            List<Word> words = sentence.words();
            Clause all = Clause.of(
                    words,
                    0,
                    words.size(),
                    clauses.stream().flatMap(c -> c.mentions().stream()).toList(),
                    roles);
            Set<String> known = found.stream().map(Found::about).collect(Collectors.toSet());
            all.mentions().stream()
                    .filter(binding::isHead)
                    .flatMap(m -> matching
                            .of(
                                    new Saying(all, m, List.of(), context, false, Suggestion.PLAIN * CARRIED),
                                    binding.of(all, m, List.of(), List.of()))
                            .stream())
                    .filter(f -> !known.contains(f.about()))
                    .map(Found::spread)
                    .forEach(found::add);
        }

        /** A clause tells something alone, and something else with the one before it. */
        private void tell(int i, double certainty) {
            tell(i, i, certainty);
            if (i > 0 && clauses.size() > 2 && !silent.get(i - 1)) {
                tell(i - 1, i, certainty);
            }
        }

        private void tell(int first, int last, double certainty) {
            List<Clause> of = clauses.subList(first, last + 1);
            told.add(new Told(
                    of.get(0)
                            .sentence()
                            .subList(of.get(0).from(), clauses.get(last).to()),
                    of.stream().anyMatch(c -> c.speaksOfThePast(roles)),
                    silent.get(first, last + 1).cardinality() > 0,
                    of.stream().anyMatch(c -> !c.groups().isEmpty()),
                    certainty));
        }

        /** What the sentence tells as a whole, where no clause of it is silent. */
        void altogether() {
            if (silent.isEmpty() && !question && clauses.size() > 1) {
                tell(
                        0,
                        clauses.size() - 1,
                        told.stream().mapToDouble(Told::certainty).min().orElse(Suggestion.PLAIN));
            }
        }

        /** Whether it is so short, and names no part, that it must go on about those of the sentence before. */
        private boolean goesOn() {
            return !context.isEmpty() && clauses.stream().mapToInt(Clause::size).sum() <= LONGEST_AFTERTHOUGHT;
        }

        /** What becomes of the parts once something was said of them. */
        private void said(int i, List<Mention> sayings, boolean mute, double certainty) {
            Clause clause = clauses.get(i);
            if (!clause.groups().isEmpty()) {
                spoken = Binding.joined(waiting, clause.groups().get(0).each());
            } else if (!waiting.isEmpty()) {
                spoken = waiting;
            }
            waiting = List.of();
            boolean heading = !isLast(i) && clauses.get(i + 1).before() == Word.Gap.COLON;
            if (clause.groups().isEmpty() && !mute && heading) {
                announced = sayings.stream()
                        .map(m -> new Saying(clause, m, false, certainty))
                        .toList();
            }
        }
    }
}
