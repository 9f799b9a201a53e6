package hingewise.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A stretch of a sentence in which one thing is said.
 *
 * @param sentence the words of the whole sentence, which positions count in
 * @param from index of its first word
 * @param to index just behind its last word
 * @param before what stands before it
 * @param mentions in order
 * @param over for each word, the mentions that lie over it
 * @param groups the parts named in it, those together that only small words join
 */
record Clause(
        List<Word> sentence,
        int from,
        int to,
        Word.Gap before,
        List<Mention> mentions,
        List<List<Mention>> over,
        List<Group> groups) {
    static Clause of(List<Word> sentence, int from, int to, List<Mention> mentions, Roles roles) {
        List<List<Mention>> over = IntStream.range(from, to)
                .mapToObj(i -> mentions.stream()
                        .filter(m -> m.from() <= i && i < m.to())
                        .toList())
                .toList();
        Clause bare = new Clause(sentence, from, to, sentence.get(from).before(), mentions, over, List.of());
        return new Clause(sentence, from, to, bare.before, mentions, over, bare.grouped(roles));
    }

    /** The mentions that lie over a word; none outside the clause. */
    private List<Mention> over(int word) {
        return word < from || word >= to ? List.of() : over.get(word - from);
    }

    /**
     * Parts of a phone named in one breath.
     *
     * @param each the parts one by one, where "and" or a sign for it joins them; those that only "of" and its like join
     *     are one: "touch of the inner screen"
     */
    record Group(int from, int to, List<List<Mention>> each) {
        List<Mention> topics() {
            return each.stream().flatMap(List::stream).toList();
        }
    }

    int size() {
        return to - from;
    }

    List<Word> words() {
        return sentence.subList(from, to);
    }

    boolean has(int set) {
        return mentions.stream().anyMatch(m -> m.isIn(set));
    }

    Optional<Mention> first(int set) {
        return mentions.stream().filter(m -> m.isIn(set)).findFirst();
    }

    /** Whether a mention of this set lies over the word. */
    boolean at(int word, int set) {
        for (Mention m : over(word)) {
            if (m.isIn(set)) {
                return true;
            }
        }
        return false;
    }

    boolean mentioned(int word) {
        return !over(word).isEmpty();
    }

    /** Whether it tells what was; what it was "since", such as a repair, does not make it so. */
    boolean speaksOfThePast(Roles roles) {
        return mentions.stream()
                .filter(p -> p.isIn(roles.past()))
                .anyMatch(p -> mentions.stream().noneMatch(s -> s.isIn(roles.since()) && s.from() < p.from()));
    }

    private List<Group> grouped(Roles roles) {
        List<Group> groups = new ArrayList<>();
        List<Mention> run = new ArrayList<>();
        List<Mention> topics = mentions.stream()
                .filter(m -> m.isInAny(roles.topics()))
                .sorted(Comparator.comparingInt(Mention::from))
                .toList();
        for (Mention topic : topics) {
            if (!run.isEmpty() && !joined(run.get(run.size() - 1).to(), topic.from(), roles)) {
                groups.add(group(run, roles));
                run.clear();
            }
            run.add(topic);
        }
        if (!run.isEmpty()) {
            groups.add(group(run, roles));
        }
        return List.copyOf(groups);
    }

    private Group group(List<Mention> run, Roles roles) {
        int to = run.stream().mapToInt(Mention::to).max().orElseThrow();
        List<List<Mention>> each = new ArrayList<>();
        List<Mention> one = new ArrayList<>();
        for (Mention topic : run) {
            if (!one.isEmpty() && separate(one.get(one.size() - 1).to(), topic.from(), roles)) {
                each.add(List.copyOf(one));
                one.clear();
            }
            one.add(topic);
        }
        each.add(List.copyOf(one));
        return new Group(run.get(0).from(), to, List.copyOf(each));
    }

    /** Whether "and" stands between two parts. */
    private boolean separate(int to, int from, Roles roles) {
        for (int i = to; i <= from; i++) {
            boolean sign = sentence.get(i).before() == Word.Gap.JOIN;
            if (sign || i < from && (at(i, roles.and()) || at(i, roles.or()))) {
                return true;
            }
        }
        return false;
    }

    private boolean joined(int from, int to, Roles roles) {
        for (int i = from; i < to; i++) {
            if (!at(i, roles.of()) && !at(i, roles.fill()) && !at(i, roles.and()) && !at(i, roles.or())) {
                return false;
            }
        }
        return true;
    }
}
